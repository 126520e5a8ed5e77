package corewright.stiffness;

import corewright.sandwich.spec.CoreMaterial;
import corewright.survey.settings.Resin;

/** How stiff a cured mix is. */
final class Foam {
    /** Solid epoxy: common mean values (from memory). */
    private static final double SOLID_KG_M3 = 1160;

    private static final double SOLID_MPA = 2900;
    private static final double POISSON = 0.3;

    /** Modulus goes with density to this power: Stefani et al., J. Appl. Polym. Sci. 90 (2003) 2992, 215 to 490 kg/m³. */
    private static final double POWER = 1.8;

    private Foam() {}

    /** Density after the rise; a cavity holds {@code pack} times what it would hold of free foam. */
    static double densityKgM3(Resin resin) {
        return resin.densityKgM3() * resin.pack() / resin.expansion();
    }

    /**
     * Young's modulus by the density law, an upper bound.
     *
     * @param densityKgM3 of the cured foam, at most solid
     */
    static double modulusMPa(double densityKgM3) {
        return SOLID_MPA * ofSolid(densityKgM3);
    }

    /** Modulus or compressive strength over that of solid epoxy; both follow the same law. */
    static double ofSolid(double densityKgM3) {
        return Math.pow(Math.min(1, densityKgM3 / SOLID_KG_M3), POWER);
    }

    /**
     * A cured filling as a core.
     *
     * @param derating share of the law's modulus to count on: until a cured sample is weighed and tested 0.5 to 0.7, common
     *     practice
     * @param expansionFactor how much farther it rises than its sheet says
     */
    static CoreMaterial material(Resin resin, double derating, double expansionFactor) {
        double e = derating * modulusMPa(densityKgM3(resin) / expansionFactor);
        double g = e / (2 * (1 + POISSON));
        return new CoreMaterial(g, g, e);
    }
}
