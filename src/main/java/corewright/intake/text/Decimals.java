package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as programs write them; Java's own reader would also take 1f, 0x1p3 and Infinity. */
public final class Decimals {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,4})?");
    private static final int LONGEST = 60;

    private Decimals() {}

    /** The number, or null where the text is none or the number lies beyond {@code largest}. */
    public static @Nullable Double parse(String text, double largest) {
        double brief = Numerals.brief(text, Decimal.DOT);
        if (!Double.isNaN(brief)) {
            return Math.abs(brief) <= largest ? (Double) brief : null;
        }
        boolean plain = Numerals.isPlain(text, Decimal.DOT);
        if (!plain && (text.length() > LONGEST || !NUMBER.matcher(text).matches())) {
            return null;
        }
        double number = Double.parseDouble(text);
        return Math.abs(number) <= largest ? (Double) number : null;
    }
}
