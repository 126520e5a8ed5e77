package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Lengths as people write them at the boat: {@code 1040}, {@code 1.2 m}, {@code 3' 4 1/2"}, {@code 40½ in}. */
public final class Lengths {
    /** A kilometre: no deck is longer, and sums of squares keep their digits. */
    public static final double LARGEST_MM = 1e6;

    private static final int LONGEST = 60;
    private static final String NUMBER = "[0-9]{1,9}(?:[.,][0-9]{1,9})?";
    private static final String WITH_FRACTION = "(?:([0-9]{1,9})[ -]+)?([0-9]{1,4})/([0-9]{1,4})|(" + NUMBER + ")";
    private static final Pattern FEET = Pattern.compile("([+-]?) ?(" + NUMBER + ") ?(?:'|ft\\.?|feet|foot)(?: ?-? ?(?:"
            + WITH_FRACTION + ") ?(?:\"|inches|inch|in\\.?)?)?");
    private static final Pattern INCHES =
            Pattern.compile("([+-]?) ?(?:" + WITH_FRACTION + ") ?(?:\"|inches|inch|in\\.?)");
    private static final Pattern FRACTION = Pattern.compile("([+-]?) ?(?:" + WITH_FRACTION + ")");
    private static final Pattern SUFFIX = Pattern.compile("(.*[0-9.,]) ?(mm|cm|m)");

    private Lengths() {}

    /** Millimetres, or null where the text is no length or lies beyond a kilometre. */
    public static @Nullable Double parse(String text, LengthUnit unit, Decimal decimal) {
        if (Numerals.isPlain(text, decimal)) {
            return within(Double.parseDouble(text) * unit.mm);
        }
        String tidy = Numerals.tidy(marks(text));
        if (tidy.length() > LONGEST) {
            return null;
        }
        Double mm = inMm(tidy, unit, decimal);
        return mm == null ? null : within(mm);
    }

    private static @Nullable Double within(double mm) {
        return Math.abs(mm) <= LARGEST_MM ? mm : null;
    }

    private static @Nullable Double inMm(String tidy, LengthUnit unit, Decimal decimal) {
        Matcher feet = FEET.matcher(tidy);
        if (feet.matches()) {
            boolean alone = feet.group(4) == null && feet.group(6) == null;
            Double whole = Numerals.parse(feet.group(2), decimal);
            Double inches = alone ? (Double) 0.0 : inches(feet, 3);
            return whole == null || inches == null
                    ? null
                    : signed(feet, whole * LengthUnit.FT.mm + inches * LengthUnit.IN.mm);
        }
        Matcher inch = INCHES.matcher(tidy);
        if (inch.matches()) {
            Double inches = inches(inch, 2);
            return inches == null ? null : signed(inch, inches * LengthUnit.IN.mm);
        }
        Matcher suffix = SUFFIX.matcher(tidy);
        if (suffix.matches()) {
            LengthUnit own = LengthUnit.named(suffix.group(2));
            Double value = Numerals.parse(suffix.group(1), decimal);
            return own == null || value == null ? null : (Double) (value * own.mm);
        }
        return plain(tidy, unit, decimal);
    }

    private static @Nullable Double plain(String tidy, LengthUnit unit, Decimal decimal) {
        Matcher fraction = FRACTION.matcher(tidy);
        if (tidy.indexOf('/') > 0 && fraction.matches() && (unit == LengthUnit.IN || unit == LengthUnit.FT)) {
            Double value = inches(fraction, 2);
            return value == null ? null : signed(fraction, value * unit.mm);
        }
        Double value = Numerals.parse(tidy, decimal);
        return value == null ? null : (Double) (value * unit.mm);
    }

    /** The value of {@link #WITH_FRACTION}, whose first group is {@code first}; null for none or a zero denominator. */
    private static @Nullable Double inches(Matcher m, int first) {
        if (m.group(first + 3) != null) {
            return number(m.group(first + 3));
        }
        if (m.group(first + 1) == null) {
            return null;
        }
        double denominator = number(m.group(first + 2));
        double whole = m.group(first) == null ? 0 : number(m.group(first));
        return denominator == 0 ? null : (Double) (whole + number(m.group(first + 1)) / denominator);
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static double signed(Matcher m, double value) {
        return "-".equals(m.group(1)) ? -value : value;
    }

    /** Typographic quotes, accents and primes to plain foot and inch marks; two single ones make an inch mark. */
    private static String marks(String text) {
        return text.replaceAll("[\u2018\u2019\u201B\u2032\u00B4`\u02B9]", "'")
                .replaceAll("[\u201C\u201D\u201F\u2033\u02BA]", "\"")
                .replace("''", "\"")
                .toLowerCase(Locale.ROOT);
    }
}
