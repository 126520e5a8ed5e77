package corewright.desktop.work;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Point2D;

/** Where a figure stands beside its hole: under it, unless another hole, the way from hole to hole or another figure lies there. */
final class WorkLabels {
    /** Of its type's size, a figure such as 12.5 or 105 g with its bar. */
    private static final double WIDE = 2.4;

    private static final double TALL = 1.5;
    private static final double GAP = 4;

    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> lines = new ArrayList<>();

    /** A hole's or vent's mark. */
    void disc(double x, double y, double radius) {
        taken.add(new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    /** The bar of a plug. */
    void plug(double x, double y, double half) {
        taken.add(new Rectangle2D.Double(x - half, y - GAP, 2 * half, 2 * GAP));
    }

    /** The way from one hole to the next. */
    void line(double x1, double y1, double x2, double y2) {
        lines.add(new Line2D.Double(x1, y1, x2, y2));
    }

    /**
     * The top middle of a figure beside a mark of that radius; it is taken from then on.
     *
     * @param px the size of its type
     */
    Point2D beside(double x, double y, double radius, double px) {
        double aside = radius + GAP + px * WIDE / 2;
        double middle = y - px * TALL / 2;
        Point2D place = Stream.of(
                        new Point2D(x, y + radius),
                        new Point2D(x + aside, middle),
                        new Point2D(x - aside, middle),
                        new Point2D(x, y - radius - 2 * GAP - px * TALL))
                .min(Comparator.comparingInt(p -> hits(box(p, px)))) // the first of the best
                .orElseThrow();
        taken.add(box(place, px));
        return place;
    }

    private static Rectangle2D box(Point2D top, double px) {
        return new Rectangle2D.Double(top.getX() - px * WIDE / 2, top.getY() + 1, px * WIDE, px * TALL);
    }

    private int hits(Rectangle2D box) {
        return (int) (taken.stream().filter(box::intersects).count()
                + lines.stream().filter(box::intersectsLine).count());
    }
}
