package corewright.survey.settings;

import java.util.Locale;

/** Guards for record constructors. Comparisons are written so that NaN fails too. */
public final class Check {
    private Check() {}

    /** Throws unless {@code value > 0} and finite. */
    public static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must be positive, was %s", name, value));
        }
        return value;
    }

    /** Throws unless {@code value >= 0} and finite. */
    public static double notNegative(String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must not be negative, was %s", name, value));
        }
        return value;
    }

    /** Throws unless {@code value} is a number other than infinity. */
    public static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must be finite, was %s", name, value));
        }
        return value;
    }

    /** Throws unless {@code low <= value <= high}. */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be from %s to %s, was %s", name, low, high, value));
        }
        return value;
    }
}
