package corewright.stiffness;

import corewright.sandwich.spec.Strengths.Bond;
import corewright.sandwich.spec.Strengths.OfCore;
import corewright.survey.Materials;
import corewright.survey.settings.Resin;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * How strong a core is that is not as built, in MPa.
 *
 * <ul>
 *   <li>Wet: the Wood Handbook gives 18 % less shear and 35 % less crushing strength along the grain at 20 % water than at 12;
 *       by its own form {@code (P12/Pg)^((12-M)/(25-12))} that is 0.72 and 0.50 from 25 % up (from memory). Foam cores lose
 *       less: this is the low end for them.
 *   <li>Rotted: 0.05 of both, as of the moduli: common practice counts on nothing.
 *   <li>Foam: crushing goes with density to the power 1.8 like the modulus (Stefani et al., J. Appl. Polym. Sci. 90 (2003)
 *       2992), from 100 MPa of solid epoxy (from memory), with the same share until a sample is tested; shear is that over the
 *       root of three (von Mises).
 *   <li>Bond of foam: half the foam's shear strength, sliding and pulled, as nobody can sand the faces of a cavity: assumed.
 *   <li>Bond of a renewed core on sanded faces: 2 MPa, sliding and pulled (common practice, no source).
 * </ul>
 */
final class CoreStrengths {
    private static final double WET_SHEAR = 0.7;
    private static final double WET_CRUSH = 0.5;
    private static final double ROTTED = 0.05;
    private static final double SOLID_MPA = 100;
    private static final double SHEAR_OF_CRUSH = 1 / Math.sqrt(3);
    private static final double BOND_OF_FOAM = 0.5;
    private static final double RENEWED_BOND_MPA = 2;

    private final Materials.Core built;

    /** @param built the panel's own core, sound */
    CoreStrengths(Materials.Core built) {
        this.built = built;
    }

    /** Wet or rotted core that holds both skins. */
    OfCore softened(Softening softening) {
        return softening.equals(Softening.ROTTED)
                ? of("rotted", ROTTED, ROTTED, "0.05 of the sound core, common practice")
                : of(
                        "wet",
                        WET_SHEAR,
                        WET_CRUSH,
                        "0.7 (shear) and 0.5 (crushing) of the sound core: Wood Handbook, from memory");
    }

    private OfCore of(String name, double shear, double crush, String source) {
        return new OfCore(
                name,
                OptionalDouble.of(shear * built.shearStrengthMPa()),
                OptionalDouble.of(crush * built.crushMPa()),
                Bond.UNKNOWN,
                source);
    }

    /**
     * A cavity's filling with what core remains: the weaker of the two holds what both must carry. What the mix's sheet says wins.
     *
     * @param derating share of the law to count on
     * @param rest the core that remains, as built or softened; empty where none does
     */
    static OfCore filled(Resin resin, double derating, Optional<OfCore> rest) {
        double law = derating * crushMPa(Foam.densityKgM3(resin));
        double crush = given(resin.crushMPa(), law);
        double shear = given(resin.shearStrengthMPa(), SHEAR_OF_CRUSH * law);
        return new OfCore(
                "foam",
                OptionalDouble.of(Math.min(shear, left(rest, OfCore::shear))),
                OptionalDouble.of(Math.min(crush, left(rest, OfCore::crush))),
                new Bond(
                        OptionalDouble.of(given(resin.bondShearMPa(), BOND_OF_FOAM * shear)),
                        OptionalDouble.of(given(resin.bondPeelMPa(), BOND_OF_FOAM * shear))),
                "the mix's sheet where it says, else by density (Stefani et al. 2003; solid epoxy 100 MPa, from memory) and"
                        + " half of it for the bond (assumed); or the core that remains if weaker");
    }

    /** Sound core as built. */
    OfCore sound() {
        return of("sound", 1, 1, "the survey's materials");
    }

    /** A core that is put in, bonded to sanded faces. */
    static OfCore renewed(Materials.Core core) {
        return new OfCore(
                "new core",
                OptionalDouble.of(core.shearStrengthMPa()),
                OptionalDouble.of(core.crushMPa()),
                new Bond(OptionalDouble.of(RENEWED_BOND_MPA), OptionalDouble.of(RENEWED_BOND_MPA)),
                "the survey's materials; bond on sanded faces 2 MPa, common practice, no source");
    }

    /**
     * Compressive strength of cured foam by the density law.
     *
     * @param densityKgM3 at most solid
     */
    static double crushMPa(double densityKgM3) {
        return SOLID_MPA * Foam.ofSolid(densityKgM3);
    }

    private static double left(Optional<OfCore> rest, Function<OfCore, OptionalDouble> strength) {
        return rest.map(strength).orElse(OptionalDouble.empty()).orElse(Double.POSITIVE_INFINITY);
    }

    private static double given(double sheet, double law) {
        return sheet > 0 ? sheet : law;
    }
}
