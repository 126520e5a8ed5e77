package corewright.desktop.sketch;

import org.locationtech.jts.geom.Coordinate;

/**
 * Where a picture lies under a plan: from its pixels to survey millimetres, turned and scaled so that two of its points fall
 * where they were measured. A picture has the hands of the plan it lies under: of a face overhead it is as seen from below.
 *
 * @param a millimetres aft a pixel to the right
 * @param b millimetres of y a pixel to the right
 * @param x of the picture's upper left corner
 * @param y of the picture's upper left corner
 * @param up 1 where a pixel up adds to y with x to the right, -1 where y runs down the plan
 */
public record Underlay(double a, double b, double x, double y, int up) {
    /**
     * The similarity that takes the pixel {@code p} to the place {@code at} with the line from {@code p} to {@code q} running
     * in direction {@code deg} (from aft towards starboard) and {@code lengthMm} long.
     */
    public static Underlay of(Coordinate p, Coordinate q, Coordinate at, double lengthMm, double deg, boolean yDown) {
        int up = yDown ? -1 : 1;
        double u = q.x - p.x;
        double v = up * (p.y - q.y); // the picture's y runs down
        double pixels2 = u * u + v * v;
        if (pixels2 == 0 || !(lengthMm > 0)) {
            throw new IllegalArgumentException("two points apart and a distance are needed to scale a picture");
        }
        double dx = lengthMm * Math.cos(Math.toRadians(deg));
        double dy = lengthMm * Math.sin(Math.toRadians(deg));
        double a = (dx * u + dy * v) / pixels2;
        double b = (dy * u - dx * v) / pixels2;
        // place = a u' - b v', b u' + a v' with u' right and v' the way y runs
        return new Underlay(a, b, at.x - a * p.x - up * b * p.y, at.y - b * p.x + up * a * p.y, up);
    }

    /** The place of a pixel. */
    public Coordinate place(double px, double py) {
        return new Coordinate(x + a * px + up * b * py, y + b * px - up * a * py);
    }
}
