package corewright.report.cards;

import corewright.drawing.kit.Figures;
import corewright.report.page.Conversions;

/** Times on a card: minutes while a watch counts them, hours and days after. */
final class CardClock {
    private static final long HOURS_FROM_MIN = 100;
    private static final long DAYS_FROM_MIN = 24 * 60;

    private CardClock() {}

    /** {@code 14}, {@code 1 h 44}, {@code 26 h}. */
    static String minutes(double seconds) {
        long minutes = Math.round(seconds / Conversions.SECONDS_PER_MINUTE);
        if (minutes < HOURS_FROM_MIN) {
            return String.valueOf(minutes);
        }
        long rest = minutes % 60;
        boolean coarse = minutes >= DAYS_FROM_MIN || rest == 0;
        return coarse ? Figures.fixed(minutes / 60.0, 0) + " h" : minutes / 60 + " h " + (rest < 10 ? "0" : "") + rest;
    }

    /** The same with its unit: {@code 14 min}. */
    static String said(double seconds) {
        String text = minutes(seconds);
        return text.contains("h") ? text : text + " min";
    }
}
