package corewright.sandwich;

/**
 * The place where a loose skin nears what is below it most.
 *
 * @param linearMm approach by the linear calculation
 * @param restrainedMm approach when the skin's own membrane pull is counted, at most the gap
 * @param gapMm how far it can go
 * @param overstated whether the linear figure is more than half the skin's thickness, and so too large
 */
public record LooseSkin(double x, double y, double linearMm, double restrainedMm, double gapMm, boolean overstated) {
    /**
     * Factor of the cubic term for a clamped disc under a force at its centre whose edge may draw in, nu 0.3. Source: S.
     * Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells (1959), ch. 13, table of large deflections (from
     * memory). Within 1.5 % of a von Karman calculation of an elliptical void under a foot, see docs/stiffness.md.
     */
    private static final double CUBIC = 0.200;

    static LooseSkin of(double x, double y, double linearMm, double gapMm, double thicknessMm) {
        double restrained = Math.min(gapMm, restrained(linearMm, thicknessMm));
        return new LooseSkin(x, y, linearMm, restrained, gapMm, linearMm > thicknessMm / 2);
    }

    /** Solves {@code s + A s³ = w/t} for s; returns s t. */
    static double restrained(double linearMm, double thicknessMm) {
        double target = Math.abs(linearMm) / thicknessMm;
        double s = Math.min(target, Math.cbrt(target / CUBIC));
        for (int pass = 0; pass < 50; pass++) { // Newton from above: falls monotonically
            s -= (s + CUBIC * s * s * s - target) / (1 + 3 * CUBIC * s * s);
        }
        return Math.copySign(s * thicknessMm, linearMm);
    }
}
