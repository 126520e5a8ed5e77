package corewright.decision.drying;

import corewright.survey.settings.Drying;
import java.util.Locale;
import java.util.regex.Pattern;

/** Which way the grain of a core runs, by its name: it decides how water diffuses. */
enum Grain {
    /** Upright: water goes along it to the skins, across it sideways. */
    END,
    /** In the sheet, crossed: across it to the skins, half along and half across sideways. */
    VENEERS,
    /** Foam and honeycomb: water stands in cells, cuts and joints and runs or is shut in. */
    NONE,
    UNKNOWN;

    private static final Pattern FOAM = Pattern.compile("\\b(foam|pvc|san|pet|pu|honeycomb|aramid)\\b");

    static Grain of(String core) {
        String name = core.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
        if (name.contains("balsa")) {
            return END;
        }
        if (name.contains("ply")) {
            return VENEERS;
        }
        return FOAM.matcher(name).find() ? NONE : UNKNOWN;
    }

    boolean wood() {
        return this == END || this == VENEERS;
    }

    /** Diffusion at 20 degrees in the way that counts, mm2 a day, at a place from 0 to 1 between low and high. */
    double diffusion(Way way, Drying drying, double place) {
        double across = Draw.spread(drying.acrossLowMm2PerDay(), drying.acrossHighMm2PerDay(), place);
        double along = Draw.spread(drying.alongLowMm2PerDay(), drying.alongHighMm2PerDay(), place);
        boolean toSkin = way == Way.SKIN_OFF;
        if (this == END) {
            return toSkin ? along : across;
        }
        return toSkin ? across : (along + across) / 2;
    }
}
