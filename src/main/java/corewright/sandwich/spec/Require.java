package corewright.sandwich.spec;

import java.util.Locale;

/** Checks of record components; written so that NaN fails too. */
public final class Require {
    private Require() {}

    public static void positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s, must be above 0", name, value));
        }
    }

    static void within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s, must be %s to %s", name, value, low, high));
        }
    }
}
