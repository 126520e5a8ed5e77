package corewright.sandwich;

/**
 * How skins that pull stiffen a panel: with m the deflection without their pull and w with it, {@code w + A w³ = m}, as the pull goes with the
 * square of the deflection.
 *
 * @param perMm2 A
 */
record Hardening(double perMm2) {
    /** Newton's steps on the cubic: converged to rounding up to a hundredfold stiffening. */
    private static final int STEPS = 30;

    /**
     * Of a panel, or a place of it, of which both are known.
     *
     * @param linearMm m
     * @param mm w
     */
    static Hardening of(double linearMm, double mm) {
        return new Hardening((linearMm / mm - 1) / (mm * mm));
    }

    /** w by m; not less stiff than without the pull. */
    double mm(double linearMm) {
        double a = Math.max(0, perMm2);
        double w = linearMm;
        for (int pass = 0; pass < STEPS; pass++) {
            w -= (w + a * w * w * w - linearMm) / (1 + 3 * a * w * w); // from above: falls monotonically
        }
        return w;
    }
}
