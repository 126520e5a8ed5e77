package corewright.repair.mix;

import corewright.repair.plan.Hole;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;

/**
 * How long mix takes to go in: at the tool's rate, or, where that takes more than its pressure p, as gap and nozzle let it
 * through.
 *
 * <p>Between plates of gap h a front at R stands against {@code 6 mu ln(R/r0) / (pi h^3)} of pressure a flow (Hele-Shaw
 * 1898), so that {@code Q = p / (mu (6 ln(R/r0) / (pi h^3) + nozzle))}, R from the liquid that is in. The mix thickens
 * meanwhile, all of it at its own age.
 *
 * @param temperatureC of the mix
 */
public record Pour(Resin resin, Drilling drilling, double temperatureC) {
    private static final double PA_PER_KPA = 1000;
    private static final double MM3_PER_ML = 1000;

    /** Equal parts of the liquid; twice as many change the time by less than a hundredth. */
    private static final int PARTS = 60;

    /** Of just mixed liquid, mixed grams less waste. */
    public double seconds(Hole hole, double netG) {
        return seconds(hole, netG, drilling.mixingS(), 0);
    }

    /**
     * For so much liquid, mixed grams less waste.
     *
     * @param ageS of the mix when it begins to go in
     * @param beforeG went in here just before, from another cup
     * @return infinite where the mix gels before it is all in
     */
    public double seconds(Hole hole, double netG, double ageS, double beforeG) {
        Curing curing = Curing.of(resin, temperatureC);
        double mm3 = netG / ReachLaw.densityGPerMm3(resin);
        double beforeMm3 = beforeG / ReachLaw.densityGPerMm3(resin);
        double nozzle = hole.drilled() ? 0 : ReachLaw.nozzleResistance(drilling);
        double seconds = 0;
        for (int i = 0; i < PARTS; i++) {
            double age = ageS + seconds;
            if (curing.set(age)) {
                return Double.POSITIVE_INFINITY;
            }
            double resistance = nozzle + gapResistance(hole, (i + 0.5) / PARTS * mm3 + beforeMm3);
            double flow = PA_PER_KPA * drilling.pressureKPa() / (curing.viscosity(age) * resistance);
            seconds += mm3 / PARTS / Math.min(MM3_PER_ML * drilling.rateMlPerS(), flow);
        }
        return seconds;
    }

    /** Pressure over viscosity and flow, 1/mm3; none where the gap is not known. */
    private double gapResistance(Hole hole, double inMm3) {
        double h = hole.gapMm();
        if (h <= 0) {
            return 0;
        }
        double r0 = drilling.holeDiameterMm() / 2;
        double frontOverHole = Math.sqrt(1 + inMm3 / (Math.PI * h * r0 * r0));
        return 6 / (Math.PI * h * h * h) * Math.log(frontOverHole);
    }
}
