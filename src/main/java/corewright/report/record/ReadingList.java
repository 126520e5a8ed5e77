package corewright.report.record;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import corewright.survey.Feeler;
import corewright.survey.Moisture;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Every reading of a face in figures: place and value, in the order of the files, in columns. Of a deck scanned closely, where
 * they would fill some twenty pages and more, what the meter and the hammer said is left to the survey's own files.
 */
final class ReadingList {
    private static final Type ROW = new Type(Typeface.CONDENSED, 7.5);
    private static final Type HEAD = new Type(Typeface.CONDENSED_SEMIBOLD, 7.5);
    private static final double LEAD = 3.3;
    private static final int COLUMNS = 4;
    private static final double GAP = 4;
    private static final double WIDTH = (PageFrame.FULL_WIDTH - (COLUMNS - 1) * GAP) / COLUMNS;
    private static final double AFT = 12;
    private static final double ACROSS = 22;
    private static final double WHAT = 24;
    private static final double HEADING = 9;

    /** Meter readings and taps of a face that are printed at most. Judgement: 290 fill a page. */
    private static final int MOST = 6000;

    private final Measure measure;

    ReadingList(Measure measure) {
        this.measure = measure;
    }

    private record Row(String aft, String across, String what) {}

    void of(Flow flow, Survey survey, String face) {
        Readings readings = survey.readings().on(face);
        int many = readings.moisture().size() + readings.taps().size();
        if (many > MOST) {
            flow.answer(
                    "Readings",
                    Wording.sentence(Prose.plain(face)) + ": " + Figures.fixed(many, 0)
                            + " readings by meter or hammer are not printed one by one. As many as had room are on the maps before this"
                            + " page; all are in the survey's own files, which the sum under " + Prose.bold("Rests on")
                            + " proves.");
        }
        List<Row> rows = rows(readings, many <= MOST);
        String unit = measure == Measure.METRIC ? "mm" : "in";
        for (int next = 0; next < rows.size(); ) {
            if (flow.left() < HEADING + 8 * LEAD) {
                flow.newPage();
            }
            int perColumn = (int) ((flow.left() - HEADING - LEAD) / LEAD);
            int count = Math.min(rows.size() - next, COLUMNS * perColumn);
            int high = (count + COLUMNS - 1) / COLUMNS;
            List<Row> own = rows.subList(next, next + count);
            String heading = "Readings as taken: " + Prose.plain(face) + (next == 0 ? "" : ", continued");
            flow.block(HEADING + (high + 1) * LEAD, (paper, top) -> {
                PageFrame.question(paper, heading, top + 1);
                for (int i = 0; i < own.size(); i++) {
                    double x = PageFrame.LEFT + (i / high) * (WIDTH + GAP);
                    double y = top + HEADING + (i % high + 1) * LEAD + ROW.capMm();
                    if (i % high == 0) {
                        line(paper, new Row("x, " + unit, "y, " + unit, "reading"), x, y - LEAD, HEAD);
                    }
                    line(paper, own.get(i), x, y, ROW);
                }
            });
            next += count;
        }
    }

    private static void line(Paper paper, Row row, double x, double y, Type type) {
        paper.text(row.aft, x + AFT - 1, y, type, Anchor.RIGHT);
        paper.text(row.across, x + ACROSS, y, type, Anchor.RIGHT);
        Type fitting = type.within(row.what, WIDTH - WHAT, 1);
        paper.text(fitting.wrap(row.what, WIDTH - WHAT).get(0), x + WHAT, y, fitting, Anchor.LEFT);
    }

    private List<Row> rows(Readings r, boolean all) {
        List<Row> rows = new ArrayList<>();
        for (Moisture m : all ? r.moisture() : List.<Moisture>of()) {
            String value = (m.offScale() ? ">" : "") + Figures.atMost(m.value(), 1);
            rows.add(row(m.spot(), m.meter() + " " + value + (m.reference() ? ", dry core" : "")));
        }
        for (Tap t : all ? r.taps() : List.<Tap>of()) {
            String sound = t.sound() == null ? "" : word(t.sound());
            String time = t.contactUs() == null ? "" : Figures.atMost(t.contactUs(), 0) + " µs";
            rows.add(row(t.spot(), (sound + " " + time).strip()));
        }
        for (Probe p : r.probes()) {
            String core = p.coreState() == null ? "" : ", core " + word(p.coreState());
            rows.add(row(p.spot(), "hole " + measure.depthFigure(p.voidDepthMm()) + core));
        }
        for (Feeler f : r.feelers()) {
            rows.add(row(
                    f.spot(),
                    "rod to " + measure.lengthFigure(f.tip().xMm()) + ", "
                            + measure.lengthFigure(f.tip().yMm()) + " " + word(f.end())));
        }
        for (Plug p : r.plugs()) {
            rows.add(row(p.spot(), "plug " + Figures.atMost(p.moisturePercent(), 1) + " %"));
        }
        return rows;
    }

    private Row row(Spot spot, String what) {
        return new Row(measure.lengthFigure(spot.xMm()), measure.lengthFigure(spot.yMm()), Prose.plain(what));
    }

    private static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
