package corewright.survey.settings;

import java.util.List;

/**
 * A two-part mix. Times are at {@code referenceC}; rates double for every 10 °C (two makers' guides).
 *
 * @param hardenerPerResin grams of part B to one gram of part A
 * @param densityKgM3 of the mixed liquid before it rises
 * @param expansion free-rise volume over liquid volume; 1 for a mix that does not rise
 * @param pack overfill against the confined rise, at least 1; 1 for a mix that does not rise, as a liquid cannot be overfilled
 * @param viscosityPaS of the fresh mix at the reference temperature
 * @param workS work time from mixing
 * @param firstRiseS from mixing
 * @param riseEndS from mixing
 * @param gelS from mixing
 * @param hardS from mixing
 * @param structural may carry load once cured
 * @param shearStrengthMPa of the cured mix in a cavity; this and the next three are 0 where its sheet does not say
 * @param crushMPa its compressive strength
 * @param bondShearMPa of its bond with a skin or an old core, against sliding
 * @param bondPeelMPa of that bond, against tension across it
 * @param source where the figures come from
 */
public record Resin(
        String name,
        double hardenerPerResin,
        double densityKgM3,
        double expansion,
        double pack,
        double viscosityPaS,
        double workS,
        double firstRiseS,
        double riseEndS,
        double gelS,
        double hardS,
        double referenceC,
        boolean structural,
        double shearStrengthMPa,
        double crushMPa,
        double bondShearMPa,
        double bondPeelMPa,
        String source) {
    public Resin {
        Check.positive("hardenerPerResin", hardenerPerResin);
        Check.positive("densityKgM3", densityKgM3);
        Check.within("expansion", expansion, 1, 40);
        Check.within("pack", pack, 1, 2);
        pack = expansion > 1 ? pack : 1;
        Check.positive("viscosityPaS", viscosityPaS);
        Check.positive("workS", workS);
        Check.within("firstRiseS", firstRiseS, workS * 0.5, 1e6);
        Check.within("riseEndS", riseEndS, firstRiseS, 1e6);
        Check.within("gelS", gelS, workS, 1e6);
        Check.within("hardS", hardS, gelS, 1e6);
        Check.notNegative("shearStrengthMPa", shearStrengthMPa);
        Check.notNegative("crushMPa", crushMPa);
        Check.notNegative("bondShearMPa", bondShearMPa);
        Check.notNegative("bondPeelMPa", bondPeelMPa);
    }

    /** What every length of time is multiplied by at {@code temperatureC}. */
    public double timeFactor(double temperatureC) {
        return Math.pow(2, -(temperatureC - referenceC) / 10);
    }

    /**
     * Common practice, each by itself, here at 25 °C by the doubling rule: it begins to rise some 5 minutes after mixing at 28 °C;
     * the rise is slow, plainly seen in the cavity after 15 to 20 minutes; it is hard some 40 minutes after the last pour. The
     * rise is taken to end 30 minutes after mixing, a little before gel at 32, as no mix rises once it has gelled: assumed.
     */
    private static final String FOAM =
            "ratio 100:35: Stefani et al., J. Appl. Polym. Sci. 90 (2003) 2992; times and viscosity: "
                    + "common practice, end of rise and gel assumed between what is seen and hard";

    /** Generic materials for planning; the figures of the product in hand always win. */
    public static List<Resin> builtIn() {
        return List.of(foam("epoxy-foam-240", 4.83), foam("epoxy-foam-300", 3.87), thin(), pour());
    }

    private static Resin foam(String name, double expansion) {
        return new Resin(name, 0.35, 1160, expansion, 1.15, 3, 360, 370, 2220, 2400, 2950, 25, true, 0, 0, 0, 0, FOAM);
    }

    private static Resin thin() {
        String source = "low-viscosity epoxy, common practice";
        return new Resin(
                "epoxy-thin", 0.30, 1100, 1, 1, 0.4, 1200, 1200, 1200, 2700, 36000, 25, true, 0, 0, 0, 0, source);
    }

    private static Resin pour() {
        String source =
                "32 kg/m3 pour foam, suppliers' guides: rises 25 to 30 times, cream 45 s, rise 5 min; listed to be "
                        + "refused: it carries no shear";
        return new Resin(
                "polyurethane-pour", 1, 1100, 27, 1, 0.5, 45, 45, 300, 300, 1200, 25, false, 0, 0, 0, 0, source);
    }
}
