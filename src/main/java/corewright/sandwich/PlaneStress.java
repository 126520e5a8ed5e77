package corewright.sandwich;

/** Stress in a skin, MPa, tension positive. */
public record PlaneStress(double x, double y, double xy) {
    static PlaneStress of(double[] s) {
        return new PlaneStress(s[0], s[1], s[2]);
    }

    PlaneStress plus(PlaneStress other, double factor) {
        return new PlaneStress(x + factor * other.x, y + factor * other.y, xy + factor * other.xy);
    }

    /** Largest principal stress. */
    public double largest() {
        return (x + y) / 2 + Math.hypot((x - y) / 2, xy);
    }

    /** Smallest principal stress: compression is negative. */
    public double smallest() {
        return (x + y) / 2 - Math.hypot((x - y) / 2, xy);
    }

    /** Magnitude of the worse principal stress. */
    public double worst() {
        return Math.max(Math.abs(largest()), Math.abs(smallest()));
    }

    /** Direction of the smallest principal stress, radians from x. */
    double smallestDirection() {
        return Math.atan2(2 * xy, x - y) / 2 + Math.PI / 2;
    }
}
