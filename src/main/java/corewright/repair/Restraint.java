package corewright.repair;

import corewright.survey.Resin;

/** How hard a rising mix can push on the skin. */
final class Restraint {
    private static final double ATMOSPHERE_KPA = 101.325;
    private static final double GRAVITY = 9.81;

    private Restraint() {}

    /**
     * Upper bound: a sealed cavity, air squeezed at constant temperature, {@code p = p0 [pack (1 - 1/X) / (1 - pack/X) -
     * 1]} (Boyle). Open vents make it far lower. Zero for a mix that does not rise.
     */
    static double sealedKPa(Resin resin) {
        double x = resin.expansion();
        if (x <= resin.pack()) {
            return 0;
        }
        return ATMOSPHERE_KPA * (resin.pack() * (1 - 1 / x) / (1 - resin.pack() / x) - 1);
    }

    /** Weight that holds a pressure, kilograms per square metre. */
    static double ballastKgM2(double kPa) {
        return kPa * 1000 / GRAVITY;
    }
}
