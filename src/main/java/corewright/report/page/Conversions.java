package corewright.report.page;

import corewright.damage.Quantiles;

/** From the units inside to those people and files read. */
public final class Conversions {
    public static final double MM2_PER_M2 = 1e6;
    public static final double MM3_PER_LITRE = 1e6;
    public static final double SECONDS_PER_MINUTE = 60;

    private Conversions() {}

    public static double squareMetres(double mm2) {
        return mm2 / MM2_PER_M2;
    }

    public static Quantiles squareMetres(Quantiles mm2) {
        return mm2.times(1 / MM2_PER_M2);
    }

    public static Quantiles litres(Quantiles mm3) {
        return mm3.times(1 / MM3_PER_LITRE);
    }
}
