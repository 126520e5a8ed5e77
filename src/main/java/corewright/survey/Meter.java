package corewright.survey;

import corewright.survey.settings.Check;
import org.jspecify.annotations.Nullable;

/**
 * A moisture meter and what its scale means on this boat.
 *
 * @param kind relative (capacitance, no unit) or pin (wood moisture, per cent)
 * @param fullScale end of the scale
 * @param dry reading over known dry core, null where the survey does not say
 * @param wet reading from which core counts as wet, null where the survey does not say
 */
public record Meter(
        String name,
        Kind kind,
        double fullScale,
        @Nullable Double dry,
        @Nullable Double wet) {
    /** What the scale stands for. */
    public enum Kind {
        RELATIVE,
        PIN
    }

    public Meter {
        Check.positive("fullScale", fullScale);
    }
}
