package corewright.decision.drying;

/** A long cylinder that dries from its rim inward; l is its radius (Crank 1975, 5.3.1, and 5.3.3 with a surface resistance). */
public final class Cylinder extends Body {
    /** Roots lie about pi apart. */
    private static final double STEP = Math.PI / 8;

    private final double resistance;
    private double before = 1e-9;

    /** @param l the surface's number L, infinite for no resistance */
    public Cylinder(double l) {
        resistance = l;
    }

    @Override
    Term term(int n) {
        double l = resistance;
        if (Double.isInfinite(l)) {
            double b = next(x -> Bessel.j(0, x), before, STEP);
            before = b * (1 + 1e-12);
            return new Term(b, 4 / (b * b), 2 / (b * Bessel.j(1, b)));
        }
        double b = next(x -> x * Bessel.j(1, x) - l * Bessel.j(0, x), before, STEP);
        before = b * (1 + 1e-12);
        double norm = b * b + l * l;
        return new Term(b, 4 * l * l / (b * b * norm), 2 * l / (norm * Bessel.j(0, b)));
    }
}
