package corewright.repair.pattern;

import corewright.repair.mix.ReachLaw;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Reach;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the places at which a space is filled: through the openings that are there as far as that saves holes, then holes. */
public final class HolePlacing {
    /** The gap this near to a hole decides how far the mix gets from it (measured in simulated gaps). */
    private static final double HOLE_NEIGHBOURHOOD_MM = 25;

    /** Share of the cells for which a nozzle is brought in though it saves no hole. Practice. */
    private static final double MATTERS = 0.01;

    private final SpaceTask task;
    private final EmptySpace space;
    private final ReachLaw law;

    public HolePlacing(SpaceTask task, ReachLaw law) {
        this.task = task;
        space = task.space();
        this.law = law;
    }

    /**
     * No cell where none may be drilled and none is in reach of a nozzle.
     *
     * @param reach at the middle gap
     */
    public PlacedHoles holes(Reach reach) {
        Drilling drilling = law.drilling();
        Cavity cavity = Cavity.of(task, space.area(), Cavity.cellFor(space.area(), reach.mm()));
        DrillPlaces places = DrillPlaces.of(cavity, space.area(), task.face(), drilling.edgeClearanceMm());
        double[] cellReach = new double[cavity.size()];
        double[] holeReach = new double[cavity.size()];
        for (int c : cavity.cells) {
            cellReach[c] = law.at(cavity.gapMm[c]).mm();
            holeReach[c] = places.allowed[c] ? law.at(gapNear(cavity, c)).mm() : 0;
        }
        LockedHoles locked = LockedHoles.of(task.moved(), space, cavity, places);
        return fewest(new CoverTask(cavity, places, holeReach, reach.mm(), new Travel(cavity, cellReach)), locked);
    }

    /** With as many places of the nozzle as let the mix get farthest or else save most holes, the fewest of these. */
    private PlacedHoles fewest(CoverTask pattern, LockedHoles locked) {
        PlacedHoles without = placed(pattern, locked, List.of());
        List<NozzleTips.Tip> tips = tips(pattern, locked);
        if (tips.isEmpty()) {
            return without;
        }
        int many = 0;
        HolePattern.Rough best = HolePattern.roughly(pattern, locked.cells());
        for (int n = 1; n <= tips.size(); n++) {
            List<NozzleTips.Tip> first = tips.subList(0, n);
            HolePattern.Rough rough = HolePattern.roughly(with(pattern, first), fixed(locked, first));
            if (rough.compareTo(best) < 0) {
                best = rough;
                many = n;
            }
        }
        if (many == 0) {
            return without;
        }
        PlacedHoles with = placed(pattern, locked, tips.subList(0, many));
        boolean farther = with.covered() > without.covered() + pattern.cavity().cells.length * MATTERS;
        return farther || with.drilled().length < without.drilled().length ? with : without;
    }

    private static PlacedHoles placed(CoverTask task, LockedHoles locked, List<NozzleTips.Tip> tips) {
        CoverTask all = with(task, tips);
        int[] fixed = fixed(locked, tips);
        int[] cells =
                locked.only() ? Arrays.stream(fixed).sorted().distinct().toArray() : HolePattern.holes(all, fixed);
        return new PlacedHoles(all, cells, locked, NozzleTips.deepestFirst(tips));
    }

    /** The same with the reach of the nozzle's mouth where it is put. */
    private static CoverTask with(CoverTask task, List<NozzleTips.Tip> tips) {
        double[] reachMm = task.holeReachMm().clone();
        tips.forEach(t -> reachMm[t.cell()] = t.reachMm());
        return new CoverTask(task.cavity(), task.places(), reachMm, task.reachMm(), task.travel());
    }

    private static int[] fixed(LockedHoles locked, List<NozzleTips.Tip> tips) {
        return IntStream.concat(Arrays.stream(locked.cells()), tips.stream().mapToInt(NozzleTips.Tip::cell))
                .toArray();
    }

    private List<NozzleTips.Tip> tips(CoverTask pattern, LockedHoles locked) {
        Cavity cavity = pattern.cavity();
        boolean[] filled = new boolean[cavity.size()];
        for (int hole : locked.cells()) {
            Arrays.stream(pattern.travel().coveredFrom(hole, pattern.holeReachMm()[hole]))
                    .forEach(c -> filled[c] = true);
        }
        double[] reachMm = new double[cavity.size()];
        for (int c : cavity.cells) {
            reachMm[c] = law.fromNozzle(gapNear(cavity, c)).mm();
        }
        return new NozzleTips(
                        cavity, law.drilling(), task.rods(), at -> task.laminateAt(new Spot(space.face(), at.x, at.y))
                                .outerSkinMm())
                .chosen(task.face(), pattern.travel(), reachMm, filled).stream()
                        .filter(t -> !locked.spots().containsKey(t.cell()))
                        .toList();
    }

    public static double middleGapMm(Cavity cavity) {
        return median(
                Arrays.stream(cavity.cells).mapToDouble(c -> cavity.gapMm[c]).toArray());
    }

    /** Middle empty height round a cell, by which the mix goes in there. */
    public static double gapNear(Cavity cavity, int cell) {
        int window = (int) (HOLE_NEIGHBOURHOOD_MM / cavity.cell);
        int row = cell / cavity.columns;
        int column = cell % cavity.columns;
        double[] gaps = new double[(2 * window + 1) * (2 * window + 1)];
        int n = 0;
        for (int r = Math.max(0, row - window); r <= Math.min(cavity.rows - 1, row + window); r++) {
            for (int c = Math.max(0, column - window); c <= Math.min(cavity.columns - 1, column + window); c++) {
                int i = r * cavity.columns + c;
                boolean near = Math.hypot(r - row, c - column) * cavity.cell <= HOLE_NEIGHBOURHOOD_MM;
                if (near && cavity.inside(i)) {
                    gaps[n++] = cavity.gapMm[i];
                }
            }
        }
        return median(Arrays.copyOf(gaps, n));
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int n = values.length;
        return 0.5 * (values[(n - 1) / 2] + values[n / 2]);
    }
}
