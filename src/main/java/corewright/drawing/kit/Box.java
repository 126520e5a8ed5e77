package corewright.drawing.kit;

import java.awt.geom.Rectangle2D;

/** A rectangle on paper, millimetres, y down. */
public record Box(double x, double y, double width, double height) {
    public static Box of(Rectangle2D r) {
        return new Box(r.getX(), r.getY(), r.getWidth(), r.getHeight());
    }

    public static Box round(double x, double y, double halfMm) {
        return new Box(x - halfMm, y - halfMm, 2 * halfMm, 2 * halfMm);
    }

    public static Box between(double x1, double y1, double x2, double y2) {
        return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public double middleX() {
        return x + width / 2;
    }

    public double middleY() {
        return y + height / 2;
    }

    /** Share some paper; touching edges do not count. */
    public boolean meets(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    public Box movedTo(double left, double top) {
        return new Box(left, top, width, height);
    }

    public boolean holds(Box other) {
        return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
    }

    public Box grown(double byMm) {
        return grown(byMm, byMm);
    }

    public Box grown(double sidewaysMm, double upMm) {
        return new Box(x - sidewaysMm, y - upMm, width + 2 * sidewaysMm, height + 2 * upMm);
    }

    public Box and(Box other) {
        double left = Math.min(x, other.x);
        double top = Math.min(y, other.y);
        return new Box(left, top, Math.max(right(), other.right()) - left, Math.max(bottom(), other.bottom()) - top);
    }

    /** Paper shared with another box, square millimetres. */
    public double overlap(Box other) {
        double w = Math.min(right(), other.right()) - Math.max(x, other.x);
        double h = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
        return w > 0 && h > 0 ? w * h : 0;
    }

    public Rectangle2D shape() {
        return new Rectangle2D.Double(x, y, width, height);
    }
}
