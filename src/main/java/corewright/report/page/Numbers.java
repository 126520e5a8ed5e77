package corewright.report.page;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files want them: a decimal point, no grouping, no exponent, the same on every machine. */
public final class Numbers {
    private Numbers() {}

    /** Every digit the number has; empty where it is not a number. */
    public static String full(double value) {
        return Double.isFinite(value) ? plain(BigDecimal.valueOf(value)) : "";
    }

    /** Rounded half up to so many decimals, trailing zeros dropped; empty where it is not a number. */
    public static String rounded(double value, int decimals) {
        return Double.isFinite(value) ? plain(decimal(value, decimals)) : "";
    }

    /** Tenths of a gram, as a scale shows them. Totals add these, so that they equal the sum of what is printed. */
    public static BigDecimal grams(double value) {
        return decimal(value, 1);
    }

    private static BigDecimal decimal(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
