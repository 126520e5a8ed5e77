package corewright.drawing;

import java.awt.geom.Rectangle2D;

/** A rectangle on paper, millimetres, y down. */
public record Box(double x, double y, double width, double height) {
    static Box of(Rectangle2D r) {
        return new Box(r.getX(), r.getY(), r.getWidth(), r.getHeight());
    }

    static Box round(double x, double y, double halfMm) {
        return new Box(x - halfMm, y - halfMm, 2 * halfMm, 2 * halfMm);
    }

    static Box between(double x1, double y1, double x2, double y2) {
        return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    double middleX() {
        return x + width / 2;
    }

    double middleY() {
        return y + height / 2;
    }

    /** Share some paper; touching edges do not count. */
    boolean meets(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    boolean holds(Box other) {
        return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
    }

    Box grown(double byMm) {
        return new Box(x - byMm, y - byMm, width + 2 * byMm, height + 2 * byMm);
    }

    Box and(Box other) {
        double left = Math.min(x, other.x);
        double top = Math.min(y, other.y);
        return new Box(left, top, Math.max(right(), other.right()) - left, Math.max(bottom(), other.bottom()) - top);
    }

    /** Paper shared with another box, square millimetres. */
    double overlap(Box other) {
        double w = Math.min(right(), other.right()) - Math.max(x, other.x);
        double h = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
        return w > 0 && h > 0 ? w * h : 0;
    }

    Rectangle2D shape() {
        return new Rectangle2D.Double(x, y, width, height);
    }
}
