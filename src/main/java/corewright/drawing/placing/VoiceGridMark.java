package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.kit.VoiceGrid;
import java.util.ArrayList;
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

    /** A letter or a row's name, about its middle. */
    private record Name(String text, double x, double y, Type type, boolean turned) {
        Box box() {
            double along = type.width(text) / 2;
            double across = type.capMm() / 2;
            return Box.round(x, y, 0).grown(turned ? across : along, turned ? along : across);
        }

        void paint(Paper paper) {
            double half = type.capMm() / 2;
            if (turned) {
                paper.turnedText(text, x - half, y, Math.PI / 2, type, Paper.Anchor.CENTRE);
            } else {
                paper.text(text, x, y + half, type, Paper.Anchor.CENTRE);
            }
        }
    }

    /**
     * @param area paper between the letters above and below
     * @param rowNamesX where the names of the rows stand
     */
    public static void paint(Paper paper, VoiceGrid grid, PlanView view, Box area, double rowNamesX) {
        for (VoiceGrid.Strip column : grid.columns()) {
            paper.line(Pen.GRID, view.x(column.from()), area.y(), view.x(column.from()), area.bottom());
        }
        double left = view.x(grid.extent().getMinX());
        double right = view.x(grid.extent().getMaxX());
        for (VoiceGrid.Strip row : grid.rows()) {
            if (row.from() > grid.extent().getMinY()) {
                paper.line(Pen.GRID, left, view.y(row.from()), right, view.y(row.from()));
            }
        }
        names(grid, view, area, rowNamesX).forEach(n -> n.paint(paper));
    }

    /** What the letters and the rows' names cover; as for {@link #paint}. */
    static List<Box> boxes(VoiceGrid grid, PlanView view, Box area, double rowNamesX) {
        return names(grid, view, area, rowNamesX).stream().map(Name::box).toList();
    }

    private static List<Name> names(VoiceGrid grid, PlanView view, Box area, double rowNamesX) {
        List<Name> names = new ArrayList<>();
        double half = LETTER.capMm() / 2;
        for (VoiceGrid.Strip column : grid.columns()) {
            double middle = view.x((column.from() + column.to()) / 2);
            if (view.x(column.to()) - view.x(column.from()) > LETTER.width(column.name()) + 0.6) {
                names.add(new Name(column.name(), middle, area.y() - 1.2 - half, LETTER, false));
                names.add(new Name(column.name(), middle, area.bottom() + 3.6 - half, LETTER, false));
            }
        }
        for (VoiceGrid.Strip row : grid.rows()) {
            double tall = Math.abs(view.y(row.from()) - view.y(row.to()));
            if (tall > LEAST_ROW) {
                names.add(row(row.name(), rowNamesX, view.y((row.from() + row.to()) / 2), tall));
            }
        }
        return names;
    }

    /** Turned where the row is tall enough, else only its figure. */
    private static Name row(String name, double x, double y, double tall) {
        boolean turned = ROW.width(name) < tall;
        String shorter = name.substring(0, 1) + name.substring(name.indexOf(' ') + 1);
        return new Name(turned ? name : shorter, x, y, ROW, turned);
    }
}
