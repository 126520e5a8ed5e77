package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The units a survey is written in. */
public record Units(LengthUnit length, LengthUnit depth, boolean fahrenheit) {
    public static final Units DEFAULT = new Units(LengthUnit.MM, LengthUnit.MM, false);

    /** Degrees Celsius of a cell such as {@code 21.5}, {@code 21,5 °C} or {@code 70 F}; null where it is none. */
    @Nullable
    public Double celsius(String text, Decimal decimal) {
        if (Numerals.isPlain(text, decimal)) {
            double value = Double.parseDouble(text);
            return fahrenheit ? (value - 32) / 1.8 : value;
        }
        String tidy = Numerals.tidy(text).replace("°", "").strip().toUpperCase(Locale.ROOT);
        boolean inF = tidy.endsWith("F") || (fahrenheit && !tidy.endsWith("C"));
        String digits = tidy.endsWith("F") || tidy.endsWith("C") ? tidy.substring(0, tidy.length() - 1) : tidy;
        Double value = Numerals.parse(digits, decimal);
        if (value == null) {
            return null;
        }
        return inF ? (value - 32) / 1.8 : value;
    }
}
