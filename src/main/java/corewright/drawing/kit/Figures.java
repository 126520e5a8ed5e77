package corewright.drawing.kit;

import corewright.survey.settings.Settings.Terms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.regex.Pattern;

/** Figures and dates as they stand on paper, the same on every machine. */
public final class Figures {
    private Figures() {}

    /** A figure with exactly so many decimals, thousands parted by a thin space: 1 090, 0.17. */
    public static String fixed(double value, int decimals) {
        String plain = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
        int point = plain.indexOf('.');
        int end = point < 0 ? plain.length() : point;
        StringBuilder grouped = new StringBuilder(plain);
        int first = plain.startsWith("-") ? 1 : 0;
        for (int i = end - 3; i > first; i -= 3) {
            grouped.insert(i, Type.THIN);
        }
        return grouped.toString();
    }

    private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

    /** Words whose figures have a decimal point, with the reader's sign. */
    public static String signed(String words, Terms.Sign decimal) {
        return decimal == Terms.Sign.POINT ? words : POINT.matcher(words).replaceAll(",");
    }

    /** A figure with at most so many decimals: 3, 2.5. */
    public static String atMost(double value, int decimals) {
        String fixed = fixed(value, decimals);
        if (fixed.indexOf('.') < 0) {
            return fixed;
        }
        return fixed.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    /** Square millimetres as square metres with two decimals and the unit, 0.17 m²; three where two would say nothing. */
    public static String area(double mm2) {
        return fixed(mm2 / 1e6, decimals(mm2)) + " m²";
    }

    /** The figure that {@link #area} shows, square metres, so that sums are those of the figures on the page. */
    public static double shownArea(double mm2) {
        return BigDecimal.valueOf(mm2 / 1e6)
                .setScale(decimals(mm2), RoundingMode.HALF_UP)
                .doubleValue();
    }

    private static int decimals(double mm2) {
        return mm2 < 10_000 ? 3 : 2;
    }

    /** Cubic millimetres as litres, two decimals under ten litres, one above. */
    public static String litres(double mm3) {
        double litres = mm3 / 1e6;
        return fixed(litres, litres < 9.995 ? 2 : 1);
    }

    /** A hole's number within its region: 3 of R1-3, V2 of R1-V2. */
    public static String holeNumber(String id) {
        return id.substring(id.indexOf('-') + 1);
    }

    /** 14 April 2026. */
    public static String date(LocalDate date) {
        return date.getDayOfMonth()
                + " "
                + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                + " "
                + date.getYear();
    }
}
