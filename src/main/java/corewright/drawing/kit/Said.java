package corewright.drawing.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences written in metric units, said in US units. Every figure that stands before its unit is converted, with as many
 * significant digits as it had, at least two, but rounded down after "past"; ranges, pairs and sizes together: {@code 0.1 to 4.9 kPa}, {@code 100 × 100 mm}.
 * Grams stay: they are read on the scale that weighs the mix, and log.csv takes them. Factors: NIST SP 811 (2008), appendix B.
 */
final class Said {
    private static final double MM_PER_INCH = 25.4;
    private static final double M_PER_FOOT = 0.3048;
    private static final double M2_PER_FOOT2 = 0.09290304;
    private static final double LITRES_PER_QUART = 0.946352946;
    private static final double ML_PER_FLUID_OUNCE = 29.5735296;
    private static final double KG_PER_POUND = 0.45359237;
    private static final double KPA_PER_PSI = 6.894757;
    private static final double N_PER_POUND = 4.4482216;
    private static final double G_PER_OUNCE = 28.349523;
    private static final double YARD2_PER_M2 = 1.19599;
    private static final int MOST_DECIMALS = 2;

    /** A unit as it is written, and what it becomes. */
    private record Unit(String metric, String us, double factor, double offset) {
        Unit(String metric, String us, double factor) {
            this(metric, us, factor, 0);
        }
    }

    /** Longer ones first. */
    private static final List<Unit> UNITS = List.of(
            new Unit("kg on a square metre", "lb on a square foot", M2_PER_FOOT2 / KG_PER_POUND),
            new Unit("g per millilitre", "g per fluid ounce", ML_PER_FLUID_OUNCE),
            new Unit("g per litre", "g per quart", LITRES_PER_QUART),
            new Unit("kg/m³", "lb/ft³", 0.06242796),
            new Unit("g/m²|g/m2", "oz/yd²", 1 / (G_PER_OUNCE * YARD2_PER_M2)),
            new Unit("N per mm|N/mm", "lbf per in", MM_PER_INCH / N_PER_POUND),
            new Unit("square metres|square metre|m²|m2", "ft²", 1 / M2_PER_FOOT2),
            new Unit("cm²", "in²", 100 / (MM_PER_INCH * MM_PER_INCH)),
            new Unit("mm²", "in²", 1 / (MM_PER_INCH * MM_PER_INCH)),
            new Unit("millimetres|millimetre|mm", "in", 1 / MM_PER_INCH),
            new Unit("cm", "in", 10 / MM_PER_INCH),
            new Unit("kPa", "psi", 1 / KPA_PER_PSI),
            new Unit("kN", "lbf", 1000 / N_PER_POUND),
            new Unit("kg", "lb", 1 / KG_PER_POUND),
            new Unit("litres|litre|L", "quarts", 1 / LITRES_PER_QUART),
            new Unit("ml", "fl oz", 1 / ML_PER_FLUID_OUNCE),
            new Unit("°C", "°F", 1.8, 32),
            new Unit("m", "ft", 1 / M_PER_FOOT),
            new Unit("N", "lbf", 1 / N_PER_POUND));

    private static final String NUMBER = "[-−]?\\d+(?:[\u2009 ]\\d{3})*(?:\\.\\d+)?";
    private static final String SPACE = "[ \u00a0\u2009]?";
    private static final Pattern FIGURES =
            Pattern.compile("(?<![\\w.,/:-])(each |past )?(" + NUMBER + "(?: (?:to|and|of|by|x|×)[ \u00a0]"
                    + NUMBER + ")*)(" + SPACE + ")("
                    + String.join("|", UNITS.stream().map(Unit::metric).toList())
                    + ")(?![\\w²³/])");
    private static final Pattern ONE = Pattern.compile(NUMBER);

    private Said() {}

    static String us(String metric) {
        Matcher m = FIGURES.matcher(metric);
        StringBuilder said = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(said, Matcher.quoteReplacement(converted(m.toMatchResult())));
        }
        return m.appendTail(said).toString();
    }

    private static String converted(MatchResult m) {
        Unit unit = UNITS.stream()
                .filter(u -> List.of(u.metric.split("\\|")).contains(m.group(4)))
                .findFirst()
                .orElseThrow();
        String before = m.group(1) == null ? "" : m.group(1);
        double offset = before.equals("each ") ? 0 : unit.offset; // a difference of temperatures
        RoundingMode rounding =
                before.equals("past ") ? RoundingMode.DOWN : RoundingMode.HALF_UP; // never drill past it
        Matcher one = ONE.matcher(m.group(2));
        String figures = one.replaceAll(n -> figure(n.group(), unit.factor, offset, rounding));
        return before + figures + (m.group(3).isEmpty() ? " " : m.group(3)) + unit.us;
    }

    private static String figure(String shown, double factor, double offset, RoundingMode rounding) {
        String plain = shown.replaceAll("[\u2009 ]", "").replace('−', '-');
        double value = Double.parseDouble(plain) * factor + offset;
        int digits =
                Math.max(2, plain.replaceAll("[-.]", "").replaceFirst("^0+", "").length());
        int decimals = value == 0 || offset != 0
                ? 0
                : Math.max(0, Math.min(MOST_DECIMALS, digits - 1 - (int) Math.floor(Math.log10(Math.abs(value)))));
        String figure = BigDecimal.valueOf(value).setScale(decimals, rounding).toPlainString();
        return String.format(Locale.ROOT, "%s", shown.startsWith("−") ? figure.replace('-', '−') : figure);
    }
}
