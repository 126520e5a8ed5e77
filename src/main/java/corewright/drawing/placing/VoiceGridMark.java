package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.kit.VoiceGrid;
import java.util.List;

/** The voice grid on paper: dotted lines 0.10, letters 8.5 pt bold above and below, rows at the right. */
public final class VoiceGridMark {
    /** From the deck's aft end to the middle of the row names. */
    static final double ROW_NAMES_GAP = 6.6;

    private static final double LEAST_ROW = 3;
    private static final Type LETTER = Type.LABEL_BOLD;
    private static final Type ROW = new Type(Typeface.CONDENSED_SEMIBOLD, 7);

    /** Paper the letters need above and below a map. */
    public static final double MARGIN = 4.5;

    private VoiceGridMark() {}

    /**
     * @param area paper between the letters above and below
     * @param rowNamesX where the names of the rows stand
     */
    public static void paint(Paper paper, VoiceGrid grid, PlanView view, Box area, double rowNamesX) {
        List<VoiceGrid.Strip> columns = grid.columns();
        for (VoiceGrid.Strip column : columns) {
            double middle = view.x((column.from() + column.to()) / 2);
            paper.line(Pen.GRID, view.x(column.from()), area.y(), view.x(column.from()), area.bottom());
            if (view.x(column.to()) - view.x(column.from()) > LETTER.width(column.name()) + 0.6) {
                paper.text(column.name(), middle, area.y() - 1.2, LETTER, Paper.Anchor.CENTRE);
                paper.text(column.name(), middle, area.bottom() + 3.6, LETTER, Paper.Anchor.CENTRE);
            }
        }
        double left = view.x(grid.extent().getMinX());
        double right = view.x(grid.extent().getMaxX());
        for (VoiceGrid.Strip row : grid.rows()) {
            double middle = view.y((row.from() + row.to()) / 2);
            double tall = Math.abs(view.y(row.from()) - view.y(row.to()));
            if (row.from() > grid.extent().getMinY()) {
                paper.line(Pen.GRID, left, view.y(row.from()), right, view.y(row.from()));
            }
            if (tall > LEAST_ROW) {
                name(paper, row.name(), rowNamesX, middle, tall);
            }
        }
    }

    /** Turned where the row is tall enough, else only its figure. */
    private static void name(Paper paper, String name, double x, double y, double tall) {
        if (ROW.width(name) < tall) {
            paper.turnedText(name, x - ROW.capMm() / 2, y, Math.PI / 2, ROW, Paper.Anchor.CENTRE);
        } else {
            String shorter = name.substring(0, 1) + name.substring(name.indexOf(' ') + 1);
            paper.text(shorter, x, y + ROW.capMm() / 2, ROW, Paper.Anchor.CENTRE);
        }
    }
}
