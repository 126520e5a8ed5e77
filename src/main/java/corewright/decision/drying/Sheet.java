package corewright.decision.drying;

/**
 * A flat sheet: l is half its thickness where both faces dry, the whole where one is sealed (Crank 1975, 4.3.1, and 4.3.6 with a
 * surface resistance). It dries last in the middle, or at the sealed face.
 */
public final class Sheet extends Body {
    private final double resistance;

    /** @param l the surface's number L, infinite for no resistance */
    public Sheet(double l) {
        resistance = l;
    }

    /** Share left at a place, 0 where it dries last, 1 at the face; without resistance. */
    static double left(double place, double time) {
        double sum = 0;
        Sheet sheet = new Sheet(Double.POSITIVE_INFINITY);
        for (int n = 0; n < 4000; n++) {
            Term term = sheet.term(n);
            double exponent = term.root() * term.root() * time;
            if (exponent > 40) {
                break;
            }
            sum += term.last() * Math.exp(-exponent) * Math.cos(term.root() * place);
        }
        return sum;
    }

    @Override
    Term term(int n) {
        double sign = n % 2 == 0 ? 1 : -1;
        if (Double.isInfinite(resistance)) {
            double b = (n + 0.5) * Math.PI;
            return new Term(b, 2 / (b * b), sign * 2 / b);
        }
        double l = resistance;
        double b = root(x -> x * Math.sin(x) - l * Math.cos(x), n * Math.PI, (n + 0.5) * Math.PI);
        double norm = b * b + l * l + l;
        return new Term(b, 2 * l * l / (b * b * norm), 2 * l / (norm * Math.cos(b)));
    }
}
