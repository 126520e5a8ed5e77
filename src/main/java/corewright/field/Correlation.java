package corewright.field;

/** A variogram's correlation with its trigonometry done once: the inner loop of every kriging system. */
final class Correlation {
    private final Shape shape;
    /** The symmetric metric {@code a^2 = xx dx^2 + 2 xy dx dy + yy dy^2} of the scaled distance. */
    private final double xx;

    private final double xy;
    private final double yy;

    Correlation(Variogram v) {
        shape = v.shape();
        double along = 1 / v.range();
        if (v.ratio() == 1) {
            xx = along * along;
            xy = 0;
            yy = xx;
            return;
        }
        double across = along / v.ratio();
        double cos = Math.cos(Math.toRadians(v.majorDeg()));
        double sin = Math.sin(Math.toRadians(v.majorDeg()));
        xx = along * along * cos * cos + across * across * sin * sin;
        xy = (along * along - across * across) * cos * sin;
        yy = along * along * sin * sin + across * across * cos * cos;
    }

    double at(double dx, double dy) {
        double squared = xx * dx * dx + 2 * xy * dx * dy + yy * dy * dy;
        return shape.correlation(Math.sqrt(Math.max(squared, 0)));
    }
}
