package corewright.report.page;

import corewright.damage.Quantiles;
import corewright.drawing.kit.Figures;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Figures as people read them: rounded to what is known, thousands set apart by a thin space, ranges with "to". */
public final class Wording {
    /** A space at which no line breaks; drawn as any other. */
    public static final String TIED = "\u00a0";

    private static final List<String> SMALL = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /** Shares that have a plain name. */
    private enum Share {
        FIFTIETH(1 / 50.0, "one fiftieth"),
        THIRTIETH(1 / 30.0, "one thirtieth"),
        TWENTIETH(1 / 20.0, "one twentieth"),
        FIFTEENTH(1 / 15.0, "one fifteenth"),
        TENTH(1 / 10.0, "one tenth"),
        EIGHTH(1 / 8.0, "one eighth"),
        SIXTH(1 / 6.0, "one sixth"),
        FIFTH(1 / 5.0, "one fifth"),
        QUARTER(1 / 4.0, "one quarter"),
        THIRD(1 / 3.0, "one third"),
        TWO_FIFTHS(2 / 5.0, "two fifths"),
        HALF(1 / 2.0, "half"),
        THREE_FIFTHS(3 / 5.0, "three fifths"),
        TWO_THIRDS(2 / 3.0, "two thirds"),
        THREE_QUARTERS(3 / 4.0, "three quarters"),
        FOUR_FIFTHS(4 / 5.0, "four fifths"),
        NINE_TENTHS(9 / 10.0, "nine tenths");

        private final double value;
        private final String words;

        Share(double value, String words) {
            this.value = value;
            this.words = words;
        }

        double distance(double share) {
            return Math.abs(Math.log(share / value));
        }
    }

    private Wording() {}

    /** Decimals that show two significant figures of a value, at least none and at most three. */
    public static int decimals(double value) {
        if (!(value > 0)) {
            return 1;
        }
        double rounded = BigDecimal.valueOf(value)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .doubleValue();
        return Math.max(0, Math.min(3, 1 - (int) Math.floor(Math.log10(rounded))));
    }

    /**
     * Decimals that suit a range: two significant figures of its middle, or of its upper end where the middle is nil; more, where else its
     * ends would read the same.
     */
    public static int decimals(Quantiles range) {
        int middle = range.p50() >= range.p90() / 10 ? decimals(range.p50()) : decimals(range.p90());
        return Math.max(middle, apart(range.p10(), range.p90()));
    }

    /** Decimals at which the ends of a range differ, if three do; two significant figures of the upper one at least. */
    public static int apart(double low, double high) {
        int decimals = decimals(high);
        while (decimals < 3 && high > low && Figures.fixed(low, decimals).equals(Figures.fixed(high, decimals))) {
            decimals++;
        }
        return decimals;
    }

    /** Two significant figures. */
    public static String known(double value) {
        return Figures.fixed(value, decimals(value));
    }

    /** An area to 0.01 square metre: a hand's breadth squared. */
    public static String area(double mm2) {
        return mm2 > 0 && mm2 < 5000
                ? "under 0.01" + TIED + "m²"
                : Figures.area(mm2).replace(" ", TIED);
    }

    /** {@code 3 900 to 5 600}; one figure where both ends round to it. */
    public static String range(double low, double high, int decimals) {
        String from = Figures.fixed(low, decimals);
        String to = Figures.fixed(high, decimals);
        return from.equals(to) ? from : from + " to" + TIED + to;
    }

    /** Money to what an estimate knows: tens below five hundred, hundreds above. */
    public static String money(String currency, double low, double high) {
        double step = high < 500 ? 10 : 100;
        String range = range(Math.round(low / step) * step, Math.round(high / step) * step, 0);
        return currency + TIED + range;
    }

    /** Days in whole days, a day begun counting as one. */
    public static String days(double low, double high) {
        return range(Math.ceil(low - 1e-9), Math.ceil(high - 1e-9), 0);
    }

    /** Small numbers in words, others in figures. */
    public static String count(int number) {
        return number < SMALL.size() ? SMALL.get(number) : Figures.fixed(number, 0);
    }

    /** {@code three probe holes}, {@code one probe hole}. */
    public static String count(int number, String thing) {
        return count(number) + " " + (number == 1 ? thing : plural(thing));
    }

    static String plural(String thing) {
        return thing.endsWith("s") || thing.endsWith("x") ? thing + "es" : thing + "s";
    }

    /** A share of the whole in words: {@code one fifth}, {@code about two thirds}, {@code nearly all}. */
    public static String share(double share) {
        if (share < 0.015) {
            return "less than one fiftieth";
        }
        if (share > 0.95) {
            return share > 0.995 ? "all" : "nearly all";
        }
        Share nearest = Share.FIFTIETH;
        for (Share candidate : Share.values()) {
            if (candidate.distance(share) < nearest.distance(share)) {
                nearest = candidate;
            }
        }
        // within a tenth of itself the plain word is honest, since the area's own range is wider
        return (nearest.distance(share) <= 0.1 ? "" : "about ") + nearest.words;
    }

    /** {@code R1}, {@code R1 and R2}, {@code R1, R2 and R3}. */
    public static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    /** The same with a capital at its head. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
