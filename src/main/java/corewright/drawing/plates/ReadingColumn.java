package corewright.drawing.plates;

import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.ShownAreas;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.kit.VoiceGrid;
import corewright.drawing.placing.FilledSpaces;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.RegionWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The column right of a plate's map: how to read it, how to say a place, and the areas, adding up. */
final class ReadingColumn {
    private static final double WIDTH = 67;
    private static final double SAMPLE = 14;
    private static final double TOP = 24;
    private static final double FOOT = 171;
    private static final Type HEAD = new Type(Typeface.TEXT_BOLD, 10);
    private static final Type TEXT = new Type(Typeface.TEXT, 8);
    private static final Type BOLD = new Type(Typeface.TEXT_SEMIBOLD, 8);
    private static final double LEAD = 3.5;
    private static final double SWATCH_PITCH = 7.6;
    private static final double MARK_PITCH = 5.2;
    private static final double FIGURE = 46;
    private static final double UNIT = 48;
    private static final double TABLE_PITCH = 3.7;
    private static final double NAME_WIDTH = 37;

    private record Row(String name, double squareMetres) {}

    private final Paper paper;
    private final MapLayout layout;
    private final FaceDamage damage;
    private final PlateKind kind;
    private final double left;

    ReadingColumn(Paper paper, MapLayout layout, PlateKind kind) {
        this.paper = paper;
        this.layout = layout;
        this.damage = layout.spec().damage();
        this.kind = kind;
        this.left = LyingSheet.of(layout.spec().assessment().survey()).rightMm() - WIDTH;
    }

    void paint() {
        List<LegendLine> entries = Legend.of(layout);
        List<Row> rows =
                switch (kind) {
                    case CONDITION -> conditions();
                    case REPAIR -> methods();
                    case FILL_CHECK -> checked();
                };
        List<String> voice = TEXT.wrap(layout.spec().measure().say(voice()), WIDTH);
        double blocks = 9
                + voice.size() * LEAD
                + 8
                + (lines(rows) + BOLD.wrap(totalName(), NAME_WIDTH).size()) * TABLE_PITCH
                + 2;
        double squeeze = Math.min(1, (FOOT - TOP - 4 - blocks) / height(entries));
        double y = legend(entries, squeeze);
        y = voice(voice, y + 1.2);
        table(rows, y + 1.2);
    }

    private static int lines(List<Row> rows) {
        return rows.stream().mapToInt(r -> TEXT.wrap(r.name, NAME_WIDTH).size()).sum();
    }

    private static double height(List<LegendLine> entries) {
        return entries.stream().mapToDouble(ReadingColumn::height).sum();
    }

    private static double height(LegendLine entry) {
        double pitch = entry.swatch() ? SWATCH_PITCH : MARK_PITCH;
        return pitch + (Math.max(1, entry.words().size()) - 1) * 3.3;
    }

    private double legend(List<LegendLine> entries, double squeeze) {
        paper.text("How to read this map", left, TOP, HEAD, Paper.Anchor.LEFT);
        double y = TOP + 2.6;
        for (LegendLine entry : entries) {
            double tall = height(entry) * squeeze;
            double middle = y + tall / 2;
            entry.sample().paint(paper, left + 5.5, middle);
            double first = middle + TEXT.capMm() / 2 - (entry.words().size() - 1) * 3.3 / 2;
            for (int i = 0; i < entry.words().size(); i++) {
                String words = entry.words().get(i);
                Type type = TEXT.within(words, WIDTH - SAMPLE, 1);
                paper.text(words, left + SAMPLE, first + i * 3.3, type, Paper.Anchor.LEFT);
            }
            y += tall;
        }
        return y;
    }

    private double voice(List<String> lines, double y) {
        paper.line(Pen.LEADER, left, y, left + WIDTH, y);
        paper.text("Find a place by voice", left, y + 4.4, HEAD, Paper.Anchor.LEFT);
        for (int i = 0; i < lines.size(); i++) {
            paper.text(lines.get(i), left, y + 8.6 + i * LEAD, TEXT, Paper.Anchor.LEFT);
        }
        return y + 8.6 + lines.size() * LEAD - 1.4;
    }

    /** The rule of the grid, with a square that is on this map as its example. */
    private String voice() {
        VoiceGrid grid = layout.grid();
        List<VoiceGrid.Strip> columns = grid.columns();
        List<VoiceGrid.Strip> rows = grid.rows();
        VoiceGrid.Strip column = columns.get(columns.size() / 2);
        VoiceGrid.Strip row = rows.get(rows.size() - 1 - rows.size() / 4);
        String side = row.name().substring(0, row.name().indexOf(' '));
        double from = grid.columnStart(column);
        double rowFrom = grid.rowStart(row);
        String start = grid.originX() == 0
                ? "the datum"
                : Figures.fixed(-grid.originX() / 1000, 1) + " m forward of the datum";
        String rule =
                grid.steep() ? "then rows up or down from the datum" : "then side and row out from the centreline";
        String number = word(row.name().substring(row.name().indexOf(' ') + 1));
        return "Letter aft from " + start + ", " + rule + ": “" + column.name() + ", " + side + " " + number
                + "” is the square " + span(from) + " m aft, " + span(rowFrom) + " m "
                + (grid.steep() ? side : "to " + side)
                + ".";
    }

    private static String span(double fromMm) {
        return Figures.fixed(fromMm / 1000, 1) + " to " + Figures.fixed((fromMm + VoiceGrid.STEP) / 1000, 1);
    }

    private static String word(String number) {
        List<String> words = List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
        int n = Integer.parseInt(number);
        return n < words.size() ? words.get(n) : number;
    }

    private List<Row> conditions() {
        List<Row> rows = new ArrayList<>();
        ShownAreas.of(damage, Measure.METRIC).mm2().forEach((c, mm2) -> rows.add(new Row(c.word(), mm2 / 1e6)));
        return rows;
    }

    /** Regions by what is decided for them. */
    private List<Row> methods() {
        List<Row> rows = new ArrayList<>();
        for (Method method : Method.values()) {
            List<Region> regions = damage.regions().stream()
                    .filter(r ->
                            layout.spec().assessment().decision().on(r.id()).method() == method)
                    .toList();
            if (!regions.isEmpty()) {
                String ids = String.join(", ", regions.stream().map(Region::id).toList());
                double area = shown(regions);
                rows.add(new Row(RegionWords.doing(method) + ": " + ids, area));
            }
        }
        return rows;
    }

    /** Filled ground by what is known of it; rounded from the whole down, so that the rows are those of the labels' areas. */
    private List<Row> checked() {
        List<FilledSpaces.Space> spaces = layout.filled().spaces();
        double all = rounded(
                spaces.stream().mapToDouble(s -> Figures.shownArea(s.area().getArea())));
        double tapped = Math.min(all, rounded(spaces.stream().mapToDouble(s -> Figures.shownArea(s.tappedMm2()))));
        double hollow = Math.min(
                tapped,
                rounded(spaces.stream()
                        .flatMapToDouble(FilledSpaces.Space::hollowMm2)
                        .map(Figures::shownArea)));
        return List.of(
                new Row("still hollow", hollow),
                new Row("tapped, not hollow", tapped - hollow),
                new Row("not tapped", all - tapped));
    }

    /** A sum of square metres as the table shows it. */
    private static double rounded(DoubleStream squareMetres) {
        return Math.round(100 * squareMetres.sum()) / 100.0;
    }

    /** The sum of the regions' areas as their labels say them. */
    private static double shown(List<Region> regions) {
        return regions.stream()
                .mapToDouble(r -> Figures.shownArea(r.likely().getArea()))
                .sum();
    }

    /** The total is the sum of the rows as shown. */
    private void table(List<Row> rows, double y) {
        paper.line(Pen.LEADER, left, y, left + WIDTH, y);
        paper.text(tableHead(), left, y + 4.4, HEAD, Paper.Anchor.LEFT);
        double at = y + 9;
        double sum = 0;
        for (Row row : rows) {
            List<String> names = TEXT.wrap(row.name, NAME_WIDTH);
            for (String more : names.subList(0, names.size() - 1)) {
                paper.text(more, left, at, TEXT, Paper.Anchor.LEFT);
                at += TABLE_PITCH;
            }
            row(names.get(names.size() - 1), row.squareMetres, at, TEXT);
            sum += Math.round(100 * row.squareMetres) / 100.0;
            at += TABLE_PITCH;
        }
        paper.line(Pen.FAINT, left, at - 2.6, left + UNIT + 5, at - 2.6);
        List<String> total = BOLD.wrap(totalName(), NAME_WIDTH);
        for (String more : total.subList(0, total.size() - 1)) {
            paper.text(more, left, at + 0.6, BOLD, Paper.Anchor.LEFT);
            at += TABLE_PITCH;
        }
        row(total.get(total.size() - 1), sum, at + 0.6, BOLD);
    }

    private String tableHead() {
        return switch (kind) {
            case CONDITION -> "Core by condition";
            case REPAIR -> "What is decided";
            case FILL_CHECK -> "What taps after cure say";
        };
    }

    private String totalName() {
        return switch (kind) {
            case CONDITION -> "core of the " + damage.face().name();
            case REPAIR -> "damage";
            case FILL_CHECK -> "filled";
        };
    }

    private void row(String name, double squareMetres, double y, Type type) {
        paper.text(name, left, y, type, Paper.Anchor.LEFT);
        paper.text(layout.spec().measure().areaFigure(1e6 * squareMetres), left + FIGURE, y, BOLD, Paper.Anchor.RIGHT);
        paper.text(layout.spec().measure().areaUnit(), left + UNIT, y, TEXT, Paper.Anchor.LEFT);
    }
}
