package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.report.page.Numbers;
import corewright.sandwich.FootLoadMap;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** foot-load.csv: how far each panel gives under a foot at every place, in every state. */
public final class FootLoadCsv {
    private static final int STATES = State.values().length;

    private FootLoadCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table =
                new CsvTable("face,panel,x,y,as_built_mm,as_found_mm,after_injection_mm,after_recore_mm,after_plan_mm");
        for (PanelStiffness panel : assessment.stiffness().panels()) {
            rows(panel).forEach(table::add);
        }
        return table;
    }

    private record Spot(double y, double x) implements Comparable<Spot> {
        @Override
        public int compareTo(Spot o) {
            return y == o.y ? Double.compare(x, o.x) : Double.compare(y, o.y);
        }
    }

    private static List<String[]> rows(PanelStiffness panel) {
        Map<Spot, String[]> rows = new TreeMap<>();
        for (State state : panel.known()) {
            for (FootLoadMap.Place place : panel.in(state).feet().places()) {
                rows.computeIfAbsent(new Spot(place.y(), place.x()), s -> empty())[state.ordinal()] =
                        Numbers.rounded(place.deflectionMm(), 4);
            }
        }
        List<String[]> cells = new ArrayList<>();
        rows.forEach((spot, mm) -> {
            String[] row = new String[4 + STATES];
            row[0] = panel.panel().face();
            row[1] = panel.panel().name();
            row[2] = Numbers.rounded(spot.x, 1);
            row[3] = Numbers.rounded(spot.y, 1);
            System.arraycopy(mm, 0, row, 4, STATES);
            cells.add(row);
        });
        return cells;
    }

    private static String[] empty() {
        String[] cells = new String[STATES];
        java.util.Arrays.fill(cells, "");
        return cells;
    }
}
