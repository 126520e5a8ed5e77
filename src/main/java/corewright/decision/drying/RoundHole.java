package corewright.decision.drying;

/**
 * Core round a drilled hole, which dries into the hole alone: nothing passes the circle midway to the next holes. l is the hole's
 * radius. The hollow cylinder of Crank 1975, 5.4, with its outer face sealed: {@code phi(r) = J0(br) Y1(bR) - Y0(br) J1(bR)} has no
 * slope at the outer radius R, and the inner face asks {@code phi'(1) = L phi(1)}.
 */
public final class RoundHole extends Body {
    private final double outer;
    private final double resistance;
    private double before;

    /**
     * @param ratio outer over inner radius, above 1
     * @param l the surface's number L, infinite for no resistance
     */
    public RoundHole(double ratio, double l) {
        if (!(ratio > 1)) {
            throw new IllegalArgumentException("the circle of a hole must be wider than the hole, was " + ratio);
        }
        outer = ratio;
        resistance = l;
        before = 1e-6 / ratio;
    }

    private double value(double b) {
        return Bessel.j(0, b) * Bessel.y(1, b * outer) - Bessel.y(0, b) * Bessel.j(1, b * outer);
    }

    private double slope(double b) {
        return b * (Bessel.y(1, b) * Bessel.j(1, b * outer) - Bessel.j(1, b) * Bessel.y(1, b * outer));
    }

    @Override
    Term term(int n) {
        double l = resistance;
        double step = Math.PI / (outer - 1) / 8; // roots lie about pi over the ring's width apart
        double b = Double.isInfinite(l)
                ? next(this::value, before, step)
                : next(x -> slope(x) - l * value(x), before, step);
        before = b * (1 + 1e-9);
        double atHole = Double.isInfinite(l) ? 0 : value(b);
        double slope = slope(b);
        double atRim = -2 / (Math.PI * b * outer); // the functions' determinant
        double whole = slope / (b * b); // integral of r phi
        double square = (outer * outer * atRim * atRim - slope * slope / (b * b) - atHole * atHole) / 2;
        return new Term(b, 2 * whole * whole / ((outer * outer - 1) * square), atRim * whole / square);
    }
}
