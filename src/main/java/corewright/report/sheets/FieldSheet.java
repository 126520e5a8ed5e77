package corewright.report.sheets;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PrintRule;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Survey;
import java.util.List;

/** One field sheet: head and lines to fill in, the plan with its places, how to write, and a row for each place. */
final class FieldSheet {
    private static final double MARGIN = 11;
    private static final double TITLE = 17;
    private static final double RULE = 20;
    private static final double BODY = 40;

    /** Above the print rule and the foot. */
    private static final double FEET = 19;

    private static final double TABLE = 133;
    private static final double ROW = 6.4;
    private static final double HEAD_ROWS = 9;
    private static final double BESIDE = 3;
    private static final double LEGEND = 46;
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 16);
    private static final Type SIDE = new Type(Typeface.TEXT, 9);
    private static final Type FIELD = new Type(Typeface.TEXT, 9);
    private static final Type HEAD = new Type(Typeface.TEXT_SEMIBOLD, 7.5);
    private static final Type NUMBER = new Type(Typeface.TEXT_BOLD, 11);
    private static final Type PLACE = new Type(Typeface.CONDENSED, 8.5);
    private static final Type SUBHEAD = new Type(Typeface.TEXT_BOLD, 10.5);

    private final Survey survey;
    private final SheetPlaces all;
    private final List<SheetPlaces.Place> rows;
    private final LyingSheet size;
    private final Measure measure;
    private final double tableLeft;

    /** @param from first of its places; {@code to}: one after the last */
    FieldSheet(Survey survey, SheetPlaces all, int from, int to, LyingSheet size) {
        this.survey = survey;
        this.all = all;
        this.rows = all.places().subList(from, to);
        this.size = size;
        measure = Measure.of(survey);
        tableLeft = size.widthMm() - MARGIN - TABLE;
    }

    private static int columns(boolean again) {
        return again ? 2 : 3;
    }

    private static int rowsInColumn(LyingSheet size) {
        return (int) ((size.heightMm() - FEET - BODY - HEAD_ROWS) / ROW);
    }

    /** Rows of a sheet. */
    static int capacity(LyingSheet size, boolean again) {
        return columns(again) * rowsInColumn(size);
    }

    void paint(Paper paper, int number, int of) {
        double right = size.widthMm() - MARGIN;
        double foot = size.heightMm() - FEET;
        Box plan = new Box(MARGIN, BODY, tableLeft - MARGIN - 5, foot - BODY - LEGEND);
        SheetPlan map = new SheetPlan(all, rows, plan, measure);
        head(paper, number, of, right);
        fields(paper, right);
        map.paint(paper);
        howTo(paper, plan.bottom() + 2, plan.right());
        table(paper);
        PrintRule.paint(paper, MARGIN, size.heightMm() - 10.5, measure);
        String scale = "Plan 1 : " + Figures.atMost(map.scale(), 0) + " on " + size.word() + " printed at 100 %.";
        paper.text(scale, right, size.heightMm() - 10.7, FIELD.at(8), Anchor.RIGHT);
        paper.text(foot(), MARGIN, size.heightMm() - 5.5, FIELD.at(8), Anchor.LEFT);
        paper.text("photograph this sheet when full", right, size.heightMm() - 5.5, FIELD.at(8), Anchor.RIGHT);
    }

    private String foot() {
        String side = all.face().wall() ? "Height: u up, d down from the datum." : "Side: s starboard, p port.";
        return "Follow the broken line from start. " + side + " Before you leave: read dry and wet again."
                + " To be typed in by these numbers, in this order.";
    }

    private void head(Paper paper, int number, int of, double right) {
        String what = Figures.fixed(all.places().size(), 0) + (all.again() ? " places of last time" : " places") + " · "
                + Orientation.of(all.face()) + " · sheet " + number + " of " + of;
        double beside = SIDE.width(what) + 6;
        String title =
                Titles.boat(survey.heading()) + " · " + Prose.plain(all.face().name()) + " · field sheet";
        Type type = NAME.within(title, right - MARGIN - beside, 1);
        List<String> lines = type.wrap(title, right - MARGIN - beside);
        paper.part(Part.TITLE, p -> {
            for (int i = 0; i < lines.size(); i++) {
                double up = (lines.size() - 1 - i) * type.leadMm() * 0.9;
                p.text(lines.get(i), MARGIN, TITLE - up, type, Anchor.LEFT);
            }
        });
        paper.text(what, right, TITLE, SIDE, Anchor.RIGHT);
        paper.line(Pen.EDGE, MARGIN, RULE, right, RULE);
    }

    private void fields(Paper paper, double right) {
        line(paper, 27, right, new String[] {"meter", "dry reads", "wet reads", "read by", "date"}, 5, 2, 2, 4, 3);
        line(
                paper,
                35,
                right,
                new String[] {"weather, surface", "°C", "began", "ended", "at the end: dry", "wet"},
                5,
                1.5,
                2,
                2,
                2,
                2);
    }

    /** Words, each with a line to write on, as long as its share of what the words leave. */
    private static void line(Paper paper, double y, double right, String[] words, double... shares) {
        double taken = 0;
        double parts = 0;
        for (int i = 0; i < words.length; i++) {
            taken += FIELD.width(words[i]) + 4.5;
            parts += shares[i];
        }
        double x = MARGIN;
        for (int i = 0; i < words.length; i++) {
            double room = shares[i] / parts * (right - MARGIN - taken + 3);
            paper.text(words[i], x, y, FIELD, Anchor.LEFT);
            x += FIELD.width(words[i]) + 1.5;
            paper.line(Pen.FAINT, x, y + 1, x + room, y + 1);
            x += room + 3;
        }
    }

    private void howTo(Paper paper, double top, double right) {
        double half = MARGIN + (right - MARGIN) * 0.56;
        paper.part(Part.HEADING, p -> p.text("Write", MARGIN, top + 4, SUBHEAD, Anchor.LEFT));
        String[][] write = {
            {"23", "as the meter shows it, no percent sign"},
            {">100", "off the scale: > and the last mark"},
            {"(23)", "metal near, or a wet surface"},
            {"–", "could not be read; say why in the notes"}
        };
        rows(paper, write, MARGIN, top + 5, half - 4, 11);
        paper.part(Part.HEADING, p -> p.text("Tap, then tick one", half, top + 4, SUBHEAD, Anchor.LEFT));
        String[][] tap = {{"S", "sound: rings clear"}, {"D", "dull: short, low"}, {"H", "hollow: drum"}};
        rows(paper, tap, half, top + 5, right, 6);
        paper.part(Part.HEADING, p -> p.text("Notes, by number", MARGIN, top + 30, SUBHEAD, Anchor.LEFT));
        for (double y = top + 37; y <= top + 44; y += 6.5) {
            paper.line(Pen.FAINT, MARGIN, y, right, y);
        }
    }

    private static void rows(Paper paper, String[][] rows, double left, double top, double right, double indent) {
        double y = top;
        for (String[] row : rows) {
            paper.text(row[0], left, y + 3.7, SUBHEAD.at(9), Anchor.LEFT);
            paper.text(row[1], left + indent, y + 3.7, FIELD.at(8), Anchor.LEFT);
            y += 5.2;
            paper.line(Pen.FAINT, left, y, right, y);
        }
    }

    // --- the table ---------------------------------------------------------------------------------------------------

    private void table(Paper paper) {
        int columns = columns(all.again());
        int high = rowsInColumn(size);
        double width = (TABLE - (columns - 1) * BESIDE) / columns;
        for (int c = 0; c < columns; c++) {
            double left = tableLeft + c * (width + BESIDE);
            heads(paper, left, width);
            for (int k = 0; k < high; k++) {
                double top = BODY + HEAD_ROWS + k * ROW;
                int at = c * high + k;
                if (at < rows.size()) {
                    words(paper, rows.get(at), left, top);
                }
                boxes(paper, left + width, top);
                paper.line(k % 4 == 3 ? Pen.MARK : Pen.FAINT, left, top + ROW, left + width, top + ROW);
            }
        }
    }

    private void heads(Paper paper, double left, double width) {
        double foot = BODY + HEAD_ROWS - 1.6;
        String unit = measure == Measure.METRIC ? "m" : "ft";
        paper.text("no.", left, foot, HEAD, Anchor.LEFT);
        paper.text("aft", left + ends(0), foot - 3.2, HEAD, Anchor.RIGHT);
        paper.text(unit, left + ends(0), foot, HEAD, Anchor.RIGHT);
        paper.text(all.face().wall() ? "up" : "side", left + ends(1), foot - 3.2, HEAD, Anchor.RIGHT);
        paper.text(unit, left + ends(1), foot, HEAD, Anchor.RIGHT);
        if (all.again()) {
            paper.text("last", left + ends(1) + 9, foot - 3.2, HEAD, Anchor.CENTRE);
            paper.text("time", left + ends(1) + 9, foot, HEAD, Anchor.CENTRE);
        }
        double right = left + width;
        paper.text("value", right - 3 * tick() - value() / 2, foot, HEAD, Anchor.CENTRE);
        String[] taps = {"S", "D", "H"};
        for (int i = 0; i < 3; i++) {
            paper.text(taps[i], right - (2.5 - i) * tick(), foot, HEAD, Anchor.CENTRE);
        }
        paper.line(Pen.MARK, left, BODY + HEAD_ROWS, right, BODY + HEAD_ROWS);
    }

    private double tick() {
        return all.again() ? 5 : 3.6;
    }

    private double value() {
        return all.again() ? 10 : 9;
    }

    /** Right end of aft and of side, from the column's left. */
    private double ends(int column) {
        double wide = all.again() ? 1.2 : 1;
        return wide * (column == 0 ? 13.4 : 21.8);
    }

    private void words(Paper paper, SheetPlaces.Place place, double left, double top) {
        double foot = top + (ROW + NUMBER.capMm()) / 2;
        Type number = place.number() > 999 ? NUMBER.at(8) : place.number() > 99 ? NUMBER.at(9.5) : NUMBER;
        paper.text(String.valueOf(place.number()), left, foot, number, Anchor.LEFT);
        Type type = measure == Measure.METRIC ? PLACE : PLACE.at(7);
        paper.text(length(place.spot().xMm()), left + ends(0), foot, type, Anchor.RIGHT);
        paper.text(side(place.spot().yMm()), left + ends(1), foot, type, Anchor.RIGHT);
        if (all.again()) {
            paper.text(place.last(), left + ends(1) + 9, foot, PLACE, Anchor.CENTRE);
        }
    }

    private void boxes(Paper paper, double right, double top) {
        double high = ROW - 1.2;
        double left = right - 3 * tick() - value();
        paper.draw(new Box(left, top + 0.6, value(), high).shape(), Pen.LEADER);
        for (int i = 0; i < 3; i++) {
            paper.draw(new Box(right - (3 - i) * tick(), top + 0.6, tick(), high).shape(), Pen.LEADER);
        }
    }

    private String side(double yMm) {
        if (Math.abs(yMm) < 5) {
            return "0";
        }
        boolean plus = yMm > 0;
        String word = all.face().wall() ? (plus == all.face().risesWithY() ? "u" : "d") : plus ? "s" : "p";
        return length(Math.abs(yMm)) + " " + word;
    }

    /** Metres to the centimetre, or feet and half inches. */
    private String length(double mm) {
        if (measure == Measure.METRIC) {
            return Figures.fixed(mm / 1000, 2);
        }
        long halves = Math.round(2 * Math.abs(mm) / Measure.MM_PER_INCH);
        String inches = Figures.atMost(halves % 24 / 2.0, 1);
        return (mm < 0 && halves > 0 ? "-" : "") + halves / 24 + "' " + inches + "\"";
    }
}
