package corewright.repair.mix;

import corewright.repair.plan.Reach;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;

/**
 * How far a mix spreads from a hole into a gap between two plates before its work time is over.
 *
 * <p>Radial Hele-Shaw filling at constant pressure (Hele-Shaw 1898): front R, hole radius r0, gap h,
 *
 * <pre>
 *   R^2 ln(R/r0) - (R^2 - r0^2)/2 = h^2 p T / (6 mu0)
 * </pre>
 *
 * The mix thickens as {@code mu = mu0 exp(t/tau)}, uniform in space, from the moment of mixing; the same curve then holds
 * with the effective time {@code T = tau (1 - exp(-t/tau))}. Gel is taken where mu is 100 mu0, so {@code tau = gel / ln
 * 100} (practice).
 *
 * <p>The final, expanded front of one batch cannot lie beyond {@code R_v = sqrt(X V / (pi h pack))}, V the liquid that
 * enters: the batch less waste, or what the tool delivers in the work time. Relied on is the least of the safety factor
 * times R, of R and R_v less the 10 mm that a hole may stand off, and of a cap.
 */
public record ReachLaw(Resin resin, Drilling drilling, double temperatureC) {
    private static final double GEL_THICKENING = 100;

    /**
     * A hole drilled by hand stands within so much of its mark: what is relied on ends so far inside of what the mix can do. The
     * safety of the pressure's reach is more than that in all but tiny reaches. Practice.
     */
    public static final double POSITION_MM = 10;

    /** What is relied on in a gap of this height, and what limits it. */
    public Reach at(double gapMm) {
        Reach best = new Reach(drilling.reachCapMm(), "largest reach relied on");
        best = lesser(best, drilling.reachSafety() * pressureReachMm(gapMm), "pressure in the gap");
        best = lesser(best, inside(pressureReachMm(gapMm)), "pressure in the gap");
        best = lesser(best, inside(volumeFrontMm(gapMm, batchLiquidMm3())), "size of a batch");
        return lesser(best, inside(volumeFrontMm(gapMm, deliveredMm3())), "rate of the tool");
    }

    /** The same from the mouth of a long nozzle, whose bore lets through less than a hole does. */
    public Reach fromNozzle(double gapMm) {
        double tauS = tauS();
        double factor = resin.timeFactor(temperatureC);
        double pouringS = effectiveTimeS(tauS, factor * resin.workS()) - effectiveTimeS(tauS, drilling.mixingS());
        double throughMm3 = 1000
                * drilling.pressureKPa()
                * Math.max(0, pouringS)
                / (factor * resin.viscosityPaS() * nozzleResistance(drilling));
        return lesser(at(gapMm), inside(volumeFrontMm(gapMm, throughMm3)), "flow through the nozzle");
    }

    /** Pressure over viscosity and flow in a long tube, 1/mm3: {@code 8 L / (pi r^4)} (Hagen 1839, Poiseuille 1840). */
    public static double nozzleResistance(Drilling drilling) {
        return 8 * drilling.nozzleLengthMm() / (Math.PI * Math.pow(drilling.nozzleBoreMm() / 2, 4));
    }

    /** Less the play of a hole's place; half of it where it is smaller than that. */
    private static double inside(double mm) {
        return Math.max(mm - POSITION_MM, mm / 2);
    }

    private static Reach lesser(Reach sofar, double mm, String governedBy) {
        return mm < sofar.mm() ? new Reach(mm, governedBy) : sofar;
    }

    /** The front at the end of the work time, without safety. */
    double pressureReachMm(double gapMm) {
        // viscosity and times follow the same temperature rule, so the reach does not change with temperature
        // (practice)
        double factor = resin.timeFactor(temperatureC);
        return frontMm(
                gapMm,
                drilling.holeDiameterMm() / 2,
                drilling.pressureKPa(),
                factor * resin.viscosityPaS(),
                effectiveTimeS(tauS(), factor * resin.workS()));
    }

    private double tauS() {
        return resin.timeFactor(temperatureC) * resin.gelS() / Math.log(GEL_THICKENING);
    }

    private double batchLiquidMm3() {
        return drilling.largestBatchG() * (1 - drilling.wasteFraction()) / densityGPerMm3(resin);
    }

    private double deliveredMm3() {
        double pouringS = resin.timeFactor(temperatureC) * resin.workS() - drilling.mixingS();
        return Math.max(0, drilling.rateMlPerS() * 1000 * pouringS);
    }

    private double volumeFrontMm(double gapMm, double liquidMm3) {
        return Math.sqrt(resin.expansion() * liquidMm3 / (Math.PI * gapMm * resin.pack()));
    }

    static double densityGPerMm3(Resin resin) {
        return resin.densityKgM3() * 1e-6;
    }

    /** The time a mix of constant viscosity would need for what the thickening one does in {@code elapsedS}. */
    static double effectiveTimeS(double tauS, double elapsedS) {
        return tauS * -Math.expm1(-elapsedS / tauS);
    }

    /**
     * Solves the radial law for R.
     *
     * <p>The left side is convex and, from {@code e^1.5 r0} on, at least R^2; so a start at the greater of that and the
     * root of the right side lies above the solution and Newton's steps fall towards it.
     */
    static double frontMm(
            double gapMm, double holeRadiusMm, double pressureKPa, double viscosityPaS, double effectiveS) {
        double r0 = holeRadiusMm;
        double c = gapMm * gapMm * pressureKPa * 1000 * effectiveS / (6 * viscosityPaS);
        double r = Math.max(Math.exp(1.5) * r0, Math.sqrt(c));
        for (int i = 0; i < 200; i++) {
            double log = Math.log(r / r0);
            double step = (r * r * log - (r * r - r0 * r0) / 2 - c) / (2 * r * log);
            r = Math.max(r - step, r0 * (1 + 1e-12));
            if (step <= 1e-13 * r) {
                break;
            }
        }
        return r;
    }
}
