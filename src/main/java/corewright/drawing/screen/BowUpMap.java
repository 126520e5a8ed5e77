package corewright.drawing.screen;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.VoiceGrid;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.Structure;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * A face with its bow up, as the surveyor stands who walks over it: the plan that lies bow to the left, turned by a quarter
 * to the right. Pixels of the window, origin at the upper left.
 */
public final class BowUpMap {
    private static final double K = ScreenMap.PX_PER_MM;

    /** Room for letters and row names, pixels. */
    private static final double MARGIN = 62;

    private static final Type LETTER = Type.LABEL_BOLD;
    private static final double LETTERS_AT = 4.6;
    private static final double ROWS_AT = 6.6;
    private static final double LINES_FROM = 8;

    private final Face face;
    private final double widthPx;
    private final double heightPx;
    private final PlanView view;
    private final double acrossMm;

    /** The whole face as large as it fits. */
    public BowUpMap(Face face, double widthPx, double heightPx) {
        this.face = face;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        acrossMm = widthPx / K;
        Envelope extent = face.outline().getEnvelopeInternal();
        double scale = K
                * Math.max(
                        extent.getHeight() / Math.max(1, widthPx - 2 * MARGIN),
                        extent.getWidth() / Math.max(1, heightPx - 2 * MARGIN));
        double middle = (MARGIN + extent.getWidth() * K / scale / 2) / K;
        view = PlanView.centred(face, extent, scale, middle, acrossMm / 2);
    }

    /** Where a place of the face stands in the window. */
    public Point2D at(double xMm, double yMm) {
        return new Point2D.Double(K * (acrossMm - view.y(yMm)), K * view.x(xMm));
    }

    /** Survey millimetres aft of what stands at these pixels. */
    public double xMm(double py) {
        return view.surveyX(py / K);
    }

    /** Survey millimetres to starboard, or up, of what stands at these pixels. */
    public double yMm(double px) {
        return view.surveyY(acrossMm - px / K);
    }

    /** Survey millimetres to one pixel. */
    public double mmPerPx() {
        return view.scale() / K;
    }

    /** Paints structure, letters and rows on a graphics whose unit is one pixel. */
    public void paint(Graphics2D pixels, ScreenLook look) {
        Graphics2D g = (Graphics2D) pixels.create();
        g.setColor(look.tone().ground());
        g.fill(new Rectangle2D.Double(0, 0, widthPx, heightPx));
        g.scale(K, K);
        Paper upright = new Paper(g, look.tone());
        grid(upright);
        Graphics2D quarter = (Graphics2D) g.create();
        quarter.translate(acrossMm, 0);
        quarter.rotate(Math.PI / 2);
        Structure.paint(new Paper(quarter, look.tone()), view, face, Structure.Shows.ALL);
        quarter.dispose();
        for (Feature.Fitting f : face.all(Feature.Fitting.class)) {
            Coordinate c = f.geometry().getCentroid().getCoordinate();
            new FittingMark(acrossMm - view.y(c.y), view.x(c.x), f.metal(), f.loadBearing()).paint(upright);
        }
        g.dispose();
    }

    private void grid(Paper paper) {
        VoiceGrid grid = VoiceGrid.of(face);
        Box all = new Box(0, 0, acrossMm, heightPx / K);
        for (VoiceGrid.Strip column : grid.columns()) {
            double from = view.x(column.from());
            double middle = (from + view.x(column.to())) / 2;
            paper.text(column.name(), LETTERS_AT, middle + LETTER.capMm() / 2, LETTER, Paper.Anchor.CENTRE);
            paper.line(Pen.GRID, LINES_FROM, from, all.right() - LETTERS_AT, from);
        }
        Envelope extent = grid.extent();
        for (VoiceGrid.Strip row : grid.rows()) {
            double from = acrossMm - view.y(row.from());
            double middle = (from + acrossMm - view.y(row.to())) / 2;
            paper.text(row.shortName(), middle, ROWS_AT, LETTER, Paper.Anchor.CENTRE);
            paper.line(Pen.GRID, from, LINES_FROM + 1, from, view.x(extent.getMaxX()));
        }
        double bow = acrossMm - view.y(0);
        if (extent.getMinY() < 0 && extent.getMaxY() > 0) {
            double foot = view.x(extent.getMinX()) - 1;
            paper.fill(Paper.closed(bow - 1.5, foot, bow + 1.5, foot, bow, foot - 2.7));
        }
    }
}
