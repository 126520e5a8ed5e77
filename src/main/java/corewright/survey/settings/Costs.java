package corewright.survey.settings;

/**
 * What work costs. Defaults are common practice without a source and only stand in until the yard's own are entered
 * under {@code costs} in survey.yaml.
 *
 * @param currency as printed before a sum
 * @param ratePerHour yard rate
 * @param injectHoursLow hours per square metre, low
 * @param recoreHoursLow hours per square metre, low
 * @param dryHoursLow hours per square metre, low
 * @param visitHours hours of a survey visit
 * @param materialPerM2 core, laminate and filler for a square metre opened
 * @param resinPerKg of mixed resin
 * @param hoursPerDay of one person
 */
public record Costs(
        String currency,
        double ratePerHour,
        double injectHoursLow,
        double injectHoursHigh,
        double recoreHoursLow,
        double recoreHoursHigh,
        double dryHoursLow,
        double dryHoursHigh,
        double visitHours,
        double materialPerM2,
        double resinPerKg,
        double hoursPerDay) {
    static final Costs DEFAULT = new Costs("€", 75, 2, 4, 10, 25, 1, 3, 4, 180, 28, 7);
}
