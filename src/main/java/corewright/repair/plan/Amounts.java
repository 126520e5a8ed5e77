package corewright.repair.plan;

import java.util.Locale;

/** Figures as a person reads them: rounded to what is known. */
public final class Amounts {
    private Amounts() {}

    public static String litres(double mm3) {
        double l = mm3 / 1e6;
        return l >= 0.0995
                ? String.format(Locale.ROOT, l >= 9.95 ? "%.1f litres" : "%.2f litres", l)
                : String.format(Locale.ROOT, "%.0f millilitres", l * 1000);
    }

    public static String grams(double g) {
        return String.format(Locale.ROOT, g < 9.95 ? "%.1f g" : "%.0f g", g);
    }

    public static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.0995 ? "%.1f %%" : "%.0f %%", share * 100);
    }

    /** A bare number without needless zeros. */
    public static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }
}
