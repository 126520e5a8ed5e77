package corewright.repair.mix;

import corewright.repair.plan.Hole;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;

/**
 * How long mix takes to go in: at the tool's rate, or as its bore lets it through a long nozzle, just mixed.
 *
 * @param temperatureC of the mix
 */
public record Pour(Resin resin, Drilling drilling, double temperatureC) {
    private static final double PA_PER_KPA = 1000;

    /** For so much liquid, mixed grams less waste. */
    public double seconds(Hole hole, double netG) {
        double mm3 = netG / ReachLaw.densityGPerMm3(resin);
        double rate = 1000 * drilling.rateMlPerS();
        return mm3 / (hole.drilled() ? rate : Math.min(rate, nozzleMm3PerS()));
    }

    private double nozzleMm3PerS() {
        double viscosity = Curing.of(resin, temperatureC).viscosity(drilling.mixingS());
        return PA_PER_KPA * drilling.pressureKPa() / (viscosity * ReachLaw.nozzleResistance(drilling));
    }
}
