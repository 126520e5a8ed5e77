package corewright.repair.plan;

import corewright.survey.settings.Resin;

/** How hard a rising mix can push on the skin. */
public final class Restraint {
    private static final double ATMOSPHERE_KPA = 101.325;
    private static final double GRAVITY = 9.81;

    /** Mix at the start and late in its rise. Practice. */
    private static final double EARLY_PA_S = 10;

    private static final double LATE_PA_S = 100;

    /** Glass laminate of low fibre share. Practice. */
    private static final double SKIN_MPA = 9000;

    private static final double SKIN_NU = 0.3;

    private Restraint() {}

    /**
     * A sealed cavity from which the air has gone before, the gas of the mix squeezed at constant temperature: {@code p = p0
     * [pack (1 - 1/X) / (1 - pack/X) - 1]} (Boyle). Not an upper bound, see {@link #trappedKPa}. Zero for a mix that does
     * not rise.
     */
    public static double sealedKPa(Resin resin) {
        double x = resin.expansion();
        if (x <= resin.pack()) {
            return 0;
        }
        return ATMOSPHERE_KPA * (resin.pack() * (1 - 1 / x) / (1 - resin.pack() / x) - 1);
    }

    /**
     * Upper bound: sealed with its air beside the mix, {@code p = p0 pack (1 - 1/X) / (1 - pack/X)} gauge (Boyle). Zero for
     * a mix that does not rise.
     */
    public static double trappedKPa(Resin resin) {
        double x = resin.expansion();
        return x <= resin.pack() ? 0 : ATMOSPHERE_KPA * resin.pack() * (1 - 1 / x) / (1 - resin.pack() / x);
    }

    /** Weight that holds a pressure, kilograms per square metre. */
    static double ballastKgM2(double kPa) {
        return kPa * 1000 / GRAVITY;
    }

    /**
     * What a rising mix may push with at the place farthest from an open hole.
     *
     * @param lowKPa early in the rise
     * @param highKPa late in it, at most what a sealed cavity with its air would give
     */
    public record Range(double lowKPa, double highKPa) {}

    /**
     * With vents open, at {@code awayMm} from the nearest one, which all mix of that circle has to pass: {@code 2 (ln(R/r0) -
     * 1/2)} times the pressure of a disc that is open all round.
     *
     * @param gapMm empty height
     * @param holeRadiusMm of a vent
     */
    public static Range range(Resin resin, double temperatureC, double awayMm, double gapMm, double holeRadiusMm) {
        double sealed = trappedKPa(resin);
        double riseS = resin.timeFactor(temperatureC) * (resin.riseEndS() - resin.firstRiseS());
        if (sealed <= 0 || riseS <= 0) {
            return new Range(0, 0);
        }
        double perS = (resin.expansion() - 1) / riseS;
        double narrow = Math.max(1, 2 * Math.log(awayMm / holeRadiusMm) - 1);
        double thin = narrow * viscousKPa(EARLY_PA_S, perS, awayMm, gapMm);
        double thick = narrow * viscousKPa(LATE_PA_S, perS, awayMm, gapMm);
        return new Range(Math.min(thin, sealed), Math.min(thick, sealed));
    }

    /** {@code 3 mu s R^2 / h^2}: plates, uniform growth at the rate s, way R to the opening (Hele-Shaw 1898). */
    public static double viscousKPa(double viscosityPaS, double growthPerS, double awayMm, double gapMm) {
        return 3 * viscosityPaS * growthPerS * awayMm * awayMm / (gapMm * gapMm) / 1000;
    }

    /** Lift of the skin over a free circle, clamped: {@code p R^4 / (64 D)} (Timoshenko and Woinowsky-Krieger, 62). */
    public static double liftMm(double kPa, double freeRadiusMm, double skinMm) {
        double stiffness = SKIN_MPA * Math.pow(skinMm, 3) / (12 * (1 - SKIN_NU * SKIN_NU));
        return kPa / 1000 * Math.pow(freeRadiusMm, 4) / (64 * stiffness);
    }
}
