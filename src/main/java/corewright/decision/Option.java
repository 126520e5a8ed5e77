package corewright.decision;

import corewright.damage.Quantiles;
import java.util.Optional;

/**
 * One way for one region, or for the whole deck; the figures of what is not offered are not told.
 *
 * @param region its name, or {@code deck}
 * @param method the word of a method; for the deck {@code leave dry advised renew}, or {@code least-cost} for what was asked for
 * @param why in sentences: why it is advised, what it asks, or why it is not offered
 * @param work hours, money and days; empty where it is not offered
 * @param panel whose stiffness is told, empty where none was calculated
 * @param stiffness of that panel over the one as built, p10 in the worse tenth of cases
 */
public record Option(
        String region,
        String method,
        Standing standing,
        String why,
        Optional<Work> work,
        Weight weight,
        String panel,
        Optional<Quantiles> stiffness) {
    /** The deck as a whole. */
    public static final String DECK = "deck";

    /** What is thought of it. */
    public enum Standing {
        ADVISED,
        OFFERED,
        NOT_OFFERED
    }

    /**
     * @param daysHigh infinite where it may never be dry
     */
    public record Work(
            double hoursLow, double hoursHigh, double costLow, double costHigh, double daysLow, double daysHigh) {}

    /**
     * @param netKg brought aboard less taken out dry
     * @param waterKg that leaves, negative; NaN where unknown
     */
    public record Weight(double netKg, double waterKg) {
        static final Weight NONE = new Weight(0, 0);

        Weight and(Weight other) {
            return new Weight(netKg + other.netKg, waterKg + other.waterKg);
        }
    }

    /** Whether it may be chosen. */
    public boolean offered() {
        return standing != Standing.NOT_OFFERED;
    }
}
