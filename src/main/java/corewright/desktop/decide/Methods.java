package corewright.desktop.decide;

import corewright.decision.Method;
import java.util.Locale;

/** Methods by their words in files, and as keys name them. */
final class Methods {
    private Methods() {}

    static Method of(String word) {
        return Method.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    static String name(Method method) {
        return switch (method) {
            case MONITOR -> "Monitor";
            case DRY_OUT -> "Dry out";
            case INJECT -> "Inject";
            case RECORE -> "Cut out, recore";
        };
    }
}
