package corewright.damage;

import corewright.survey.Meter;
import corewright.survey.Moisture;

/**
 * Temperature correction of pin meters: electrical resistance of wood falls as it warms.
 *
 * <p>Source: Pfaff and Garrahan (1986), New temperature correction factors for the portable resistance-type moisture meter,
 * Forest Products Journal 36(3) (formula from memory; at 20 degrees it returns the reading to 0.02 %; at 15 % a published
 * chart in whole per cent has +2 at 10 degrees and -3 at 40, the formula +1.1 and -2.0). Not for capacitance meters.
 */
final class PinMeter {
    private PinMeter() {}

    /** What the meter would have shown at 20 degrees; as read for other meters and where no temperature was noted. */
    static double value(Meter meter, Moisture m) {
        Double celsius = m.temperatureC();
        return meter.kind() == Meter.Kind.PIN && celsius != null ? percent(m.value(), celsius) : m.value();
    }

    /** {@code (R + 0.567 - 0.0260 x + 0.000051 x²) / (0.881 * 1.0056^x)}, {@code x = T + 2.8}. */
    static double percent(double read, double celsius) {
        double x = celsius + 2.8;
        return Math.max(0, (read + 0.567 - 0.0260 * x + 0.000051 * x * x) / (0.881 * Math.pow(1.0056, x)));
    }
}
