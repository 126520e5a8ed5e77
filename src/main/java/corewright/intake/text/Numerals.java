package corewright.intake.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as people and spreadsheets write them: either decimal sign, thousands set apart, any minus, exponents. */
public final class Numerals {
    /** Longer texts are no number anybody wrote; it also bounds the work of the patterns. */
    private static final int LONGEST = 40;

    /** Nothing measured on a boat comes near; larger ones are slips of the hand and would upset sums. */
    private static final double LARGEST = 1e9;

    private static final Pattern SHAPE =
            Pattern.compile("([+-]?) ?([0-9][0-9., ']*|[.,][0-9]+)(?:[eE]([+-]?[0-9]{1,3}))?");
    private static final Pattern SET_APART = Pattern.compile("[0-9]{1,3}(?:[ '][0-9]{3})+(?:[.,][0-9]*)?");

    /** With a dot or a sign at most 15 digits; each such number is known exactly. */
    private static final int MOST_BRIEF = 15;

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private Numerals() {}

    /** What a lone comma or dot before exactly three digits means: {@code 1,234} may be either. */
    public enum Decimal {
        DOT,
        COMMA
    }

    /** The number, or null where the text is none, is not finite or is beyond anything measured. */
    public static @Nullable Double parse(String text, Decimal decimal) {
        double brief = brief(text, decimal);
        if (!Double.isNaN(brief)) {
            return Math.abs(brief) <= LARGEST ? brief : null;
        }
        if (isPlain(text, decimal)) {
            return Double.valueOf(text);
        }
        String tidy = tidy(text);
        Matcher m = SHAPE.matcher(tidy);
        if (tidy.length() > LONGEST || !m.matches()) {
            return null;
        }
        String plain = unsigned(m.group(2), decimal);
        if (plain == null) {
            return null;
        }
        String exponent = m.group(3) == null ? "" : "e" + m.group(3);
        double value = Double.parseDouble(m.group(1) + plain + exponent);
        return Math.abs(value) <= LARGEST ? value : null;
    }

    /**
     * The number that up to 15 digits with at most a decimal dot say; not a number for any other text. Nearly every cell of a large file.
     * To the last bit what {@link Double#parseDouble} makes of it, as a whole number below 2^53 over a power of ten up to 10^22 is
     * rounded only once (W. D. Clinger, How to read floating point numbers accurately, PLDI 1990).
     */
    static double brief(String text, Decimal decimal) {
        int n = text.length();
        int from = n > 0 && text.charAt(0) == '-' ? 1 : 0;
        int dot = n;
        long digits = 0;
        for (int i = from; i < n && n <= MOST_BRIEF; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + c - '0';
            } else if (c == '.' && dot == n && decimal == Decimal.DOT) {
                dot = i;
            } else {
                return Double.NaN;
            }
        }
        int decimals = Math.max(0, n - dot - 1);
        boolean none = n - from == (dot < n ? 1 : 0);
        if (none || n > MOST_BRIEF) {
            return Double.NaN;
        }
        double value = digits / POWERS_OF_TEN[decimals];
        return from == 0 ? value : -value;
    }

    /** Nearly every cell of a large file: digits with at most a decimal dot. Spares them the patterns. */
    public static boolean isPlain(String text, Decimal decimal) {
        int n = text.length();
        int from = n > 0 && text.charAt(0) == '-' ? 1 : 0;
        int dot = n;
        for (int i = from; i < n; i++) {
            char c = text.charAt(i);
            if (c == '.' && dot == n && decimal == Decimal.DOT) {
                dot = i;
            } else if (c < '0' || c > '9') {
                return false;
            }
        }
        int whole = dot - from; // nine digits keep it within the largest number there is
        int digits = n - from - (dot < n ? 1 : 0);
        return digits > 0 && whole <= 9 && n <= LONGEST;
    }

    /** Compatibility forms, odd spaces and odd minus signs made plain. */
    static String tidy(String text) {
        if (text.length() > 4 * LONGEST) { // no number or length; left alone
            return text;
        }
        String spaced = text.replaceAll("([0-9])([\u00BC-\u00BE\u2150-\u215E])", "$1 $2");
        return Normalizer.normalize(spaced, Normalizer.Form.NFKC)
                .replaceAll("[\u00A0\u2007\u2009\u202F]", " ")
                .replaceAll("[\u2010-\u2015\u2212]", "-")
                .replaceAll("\\s+", " ")
                .replace('\u2044', '/')
                .strip();
    }

    /** A number for a sentence: no exponent, no trailing zeroes. */
    public static String plain(double value) {
        return new BigDecimal(Double.toString(value))
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static @Nullable String unsigned(String body, Decimal decimal) {
        String digits = body.strip();
        if (digits.indexOf(' ') >= 0 || digits.indexOf('\'') >= 0) {
            if (!SET_APART.matcher(digits).matches()) {
                return null;
            }
            digits = digits.replace(" ", "").replace("'", "");
        }
        int dot = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (dot >= 0 && comma >= 0) {
            return dot > comma ? ungroup(digits, ',', '.') : ungroup(digits, '.', ',');
        }
        if (dot < 0 && comma < 0) {
            return digits;
        }
        char sign = dot >= 0 ? '.' : ',';
        boolean several = digits.indexOf(sign) != digits.lastIndexOf(sign);
        char expected = decimal == Decimal.COMMA ? ',' : '.';
        boolean thousands = several || (sign != expected && couldBeThousands(digits));
        return thousands ? ungroup(digits, sign, sign == '.' ? ',' : '.') : digits.replace(sign, '.');
    }

    /** Whether a text with one dot or comma could also be read as thousands set apart. */
    static boolean couldBeThousands(String digits) {
        int sign = digits.length() - 4;
        if (sign < 1 || sign > 3 || digits.charAt(0) == '0') {
            return false;
        }
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            boolean fits = i == sign ? c == '.' || c == ',' : c >= '0' && c <= '9';
            if (!fits) {
                return false;
            }
        }
        return true;
    }

    private static @Nullable String ungroup(String digits, char group, char decimal) {
        String g = Pattern.quote(String.valueOf(group));
        String d = Pattern.quote(String.valueOf(decimal));
        if (!digits.matches("[0-9]{1,3}(?:" + g + "[0-9]{3})+(?:" + d + "[0-9]*)?")) {
            return null;
        }
        return digits.replace(String.valueOf(group), "").replace(decimal, '.');
    }
}
