package corewright.desktop.sketch;

import org.locationtech.jts.geom.Coordinate;

/**
 * Where a picture lies under a plan: from its pixels (y down) to survey millimetres (y to starboard, up), turned and scaled so
 * that two of its points fall where they were measured.
 *
 * @param a millimetres aft a pixel to the right
 * @param b millimetres to starboard a pixel to the right
 * @param x of the picture's upper left corner
 * @param y of the picture's upper left corner
 */
public record Underlay(double a, double b, double x, double y) {
    /**
     * The similarity that takes the pixel {@code p} to the place {@code at} with the line from {@code p} to {@code q} running
     * in direction {@code deg} (from aft towards starboard) and {@code lengthMm} long.
     */
    public static Underlay of(Coordinate p, Coordinate q, Coordinate at, double lengthMm, double deg) {
        double u = q.x - p.x;
        double v = p.y - q.y; // the picture's y runs down
        double pixels2 = u * u + v * v;
        if (pixels2 == 0 || !(lengthMm > 0)) {
            throw new IllegalArgumentException("two points apart and a distance are needed to scale a picture");
        }
        double dx = lengthMm * Math.cos(Math.toRadians(deg));
        double dy = lengthMm * Math.sin(Math.toRadians(deg));
        double a = (dx * u + dy * v) / pixels2;
        double b = (dy * u - dx * v) / pixels2;
        // place = a u' - b v', b u' + a v' with u' right and v' up
        return new Underlay(a, b, at.x - a * p.x - b * p.y, at.y - b * p.x + a * p.y);
    }

    /** The place of a pixel. */
    public Coordinate place(double px, double py) {
        return new Coordinate(x + a * px + b * py, y + b * px - a * py);
    }
}
