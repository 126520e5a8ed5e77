package corewright.decision.drying;

import corewright.survey.settings.Check;

/**
 * The moisture that wood comes to in air, as a share of its dry mass: Hailwood and Horrobin's form with two hydrates (Trans.
 * Faraday Soc. 42B (1946) 84), constants of Glass and Zelinka, Wood Handbook, FPL-GTR-282 (2021), ch. 4, eq. 4-5, degrees Celsius.
 * Its table spans -1.1 to 132 degrees and 5 to 95 % humidity. The value lies midway between wood that takes up water and wood that
 * loses it; what a species adds is left out.
 */
public final class EquilibriumMoisture {
    private EquilibriumMoisture() {}

    /**
     * Water over dry mass, per cent.
     *
     * @param temperatureC of the air, degrees Celsius
     * @param humidityPercent relative humidity, 0 to 100
     */
    public static double percent(double temperatureC, double humidityPercent) {
        Check.within("humidityPercent", humidityPercent, 0, 100);
        double t = temperatureC;
        double h = humidityPercent / 100;
        double molar = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double dissolved = k * h / (1 - k * h);
        double first = k1 * k * h;
        double second = k1 * k2 * k * k * h * h;
        return 1800 / molar * (dissolved + (first + 2 * second) / (1 + first + second));
    }
}
