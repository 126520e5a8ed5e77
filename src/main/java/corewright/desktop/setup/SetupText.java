package corewright.desktop.setup;

import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import java.util.List;

/** How values stand in the fields of the set-up. */
final class SetupText {
    private SetupText() {}

    static String freeName(String kind, List<String> taken) {
        int n = taken.size() + 1;
        while (taken.contains(kind + " " + n)) {
            n++;
        }
        return kind + " " + n;
    }

    /** A thickness as typed: 12.5 mm or 0.492 in. */
    static String thickness(double mm, Units units) {
        return plain(units.typed(mm));
    }

    /** At most three decimals, and no separators, so that what is shown can be typed. */
    static String plain(double value) {
        return Figures.atMost(value, 3).replaceAll("[^0-9.]", "");
    }
}
