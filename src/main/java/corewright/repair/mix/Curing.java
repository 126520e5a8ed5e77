package corewright.repair.mix;

import corewright.survey.settings.Resin;

/**
 * How a mix thickens and grows with its age.
 *
 * @param densityKgM3 of the liquid
 * @param viscosityPaS when mixed; thicker by {@code exp(age / tauS)} until gel
 * @param firstRiseS age at which it begins to grow, linear to {@code expansion} at {@code riseEndS}
 * @param expansion volume at the end over volume of the liquid
 */
public record Curing(
        double densityKgM3, double viscosityPaS, double tauS, double firstRiseS, double riseEndS, double expansion) {
    /** Gel is taken where the mix is so many times as thick; see {@link ReachLaw}. */
    private static final double GEL_THICKENING = 100;

    /** Between these shares of the time to gel the skin over it is warm: 10 and 35 minutes of a mix that gels after 40; see docs/repair.md. */
    private static final double WARM_FROM_GEL = 0.25;

    private static final double WARM_UNTIL_GEL = 0.875;

    /** A resin at a temperature: cold it takes longer and is thicker by the same factor. */
    public static Curing of(Resin resin, double temperatureC) {
        double factor = resin.timeFactor(temperatureC);
        return new Curing(
                resin.densityKgM3(),
                factor * resin.viscosityPaS(),
                factor * resin.gelS() / Math.log(GEL_THICKENING),
                factor * resin.firstRiseS(),
                factor * resin.riseEndS(),
                resin.expansion());
    }

    public double viscosity(double ageS) {
        return viscosityPaS * Math.min(GEL_THICKENING, Math.exp(ageS / tauS));
    }

    public double expansion(double ageS) {
        boolean grows = expansion > 1 && riseEndS > firstRiseS;
        return grows
                ? 1 + (expansion - 1) * Math.max(0, Math.min(1, (ageS - firstRiseS) / (riseEndS - firstRiseS)))
                : 1;
    }

    /** Age from which the skin over it is warm. */
    public double warmFromS() {
        return WARM_FROM_GEL * gelS();
    }

    /** Age until which the skin over it is warm. */
    public double warmUntilS() {
        return WARM_UNTIL_GEL * gelS();
    }

    private double gelS() {
        return tauS * Math.log(GEL_THICKENING);
    }

    /** Gelled: it flows no more. */
    public boolean set(double ageS) {
        return ageS >= gelS();
    }

    public boolean rises() {
        return expansion > 1 && riseEndS > firstRiseS;
    }
}
