package corewright.drawing.kit;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * How the map of change is drawn, in paper millimetres: none of these is a condition's pattern, and all can be told without colour. Ticks are
 * mended, level lines are left, crosses are new, nothing inside a broken edge is not proven; broken uprights are, as everywhere, not known.
 */
public enum ChangePattern {
    /** Ticks 2.0 wide every 3.6. */
    MENDED,
    /** Level lines 0.50 every 1.50. */
    REMAINS,
    /** Upright crosses 2.0 of 0.70 every 3.4. */
    NEW,
    /** Only a broken edge. */
    NOT_PROVEN,
    /** As what is undecided on the other maps. */
    NOT_READ;

    private static final double LEVEL_PITCH = 1.5;
    private static final Pen LEVEL = Pen.solid(0.50);
    private static final Pen TICK = Pen.solid(0.35);
    private static final Pen CROSS = Pen.solid(0.70);
    private static final double TICK_PITCH = 3.6;
    private static final double CROSS_PITCH = 3.4;

    /** Half of what a tick or a cross takes. */
    private static final double HALF = 1.0;

    /** Fills and edges a polygon that is already on paper. */
    public void paint(Paper paper, Polygon onPaper) {
        Shape shape = PlanView.shape(onPaper);
        switch (this) {
            case MENDED -> marks(onPaper, TICK_PITCH).forEach(c -> tick(paper, c));
            case REMAINS -> paper.within(shape, clipped -> level(clipped, onPaper.getEnvelopeInternal()));
            case NEW -> marks(onPaper, CROSS_PITCH).forEach(c -> cross(paper, c));
            case NOT_READ -> Pattern.UNDECIDED.paint(paper, onPaper, corner(onPaper));
            case NOT_PROVEN -> {}
        }
        paper.draw(shape, edge());
    }

    private Pen edge() {
        return switch (this) {
            case REMAINS, NEW -> Pen.LIKELY;
            case MENDED -> Pen.LEADER;
            case NOT_PROVEN -> Pen.POSSIBLE;
            case NOT_READ -> Pen.UNDECIDED;
        };
    }

    private static java.awt.geom.Point2D corner(Polygon area) {
        Envelope box = area.getEnvelopeInternal();
        return new java.awt.geom.Point2D.Double(box.getMinX(), box.getMinY());
    }

    private static void level(Paper paper, Envelope box) {
        for (double y = box.getMinY() + LEVEL_PITCH / 2; y < box.getMaxY(); y += LEVEL_PITCH) {
            paper.line(LEVEL, box.getMinX(), y, box.getMaxX(), y);
        }
    }

    private static void tick(Paper paper, Coordinate c) {
        paper.line(TICK, c.x - HALF, c.y, c.x - HALF / 3, c.y + HALF * 0.7, c.x + HALF, c.y - HALF * 0.8);
    }

    private static void cross(Paper paper, Coordinate c) {
        Path2D both = new Path2D.Double();
        both.append(Paper.path(c.x - HALF, c.y, c.x + HALF, c.y), false);
        both.append(Paper.path(c.x, c.y - HALF, c.x, c.y + HALF), false);
        paper.draw(both, CROSS);
    }

    /** Rows staggered, counted from the middle of the largest circle inside, so that one always falls within. */
    private static List<Coordinate> marks(Polygon area, double pitch) {
        Coordinate middle = MaximumInscribedCircle.getCenter(area, 0.1).getCoordinate();
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        Envelope box = area.getEnvelopeInternal();
        double rows = pitch * 0.8;
        List<Coordinate> marks = new ArrayList<>();
        long last = (long) Math.floor((box.getMaxY() - middle.y) / rows);
        for (long k = (long) Math.ceil((box.getMinY() - middle.y) / rows); k <= last; k++) {
            double shift = Math.floorMod(k, 2) == 1 ? pitch / 2 : 0;
            long end = (long) Math.floor((box.getMaxX() - middle.x - shift) / pitch);
            for (long j = (long) Math.ceil((box.getMinX() - middle.x - shift) / pitch); j <= end; j++) {
                Coordinate at = new Coordinate(middle.x + j * pitch + shift, middle.y + k * rows);
                boolean clear = k == 0 && j == 0
                        || area.getBoundary().distance(area.getFactory().createPoint(at)) >= HALF * 0.9;
                if (clear && inside.locate(at) != Location.EXTERIOR) {
                    marks.add(at);
                }
            }
        }
        return marks;
    }
}
