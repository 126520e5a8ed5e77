package corewright.desktop.walk;

import corewright.desktop.state.Units;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the points of a walk are called: by their squares, and where several lie in one square by their places too. */
final class WalkNames {
    private static final double ON_LINE_MM = 0.5;

    private WalkNames() {}

    /** A name for each, all different. */
    static List<String> of(PlaceNames names, List<Spot> points, Units units) {
        Map<String, Integer> used = new HashMap<>();
        points.forEach(p -> used.merge(square(names, p), 1, Integer::sum));
        List<String> all = new ArrayList<>();
        for (Spot p : points) {
            String square = square(names, p);
            boolean alone = used.getOrDefault(square, 0) == 1;
            all.add(
                    alone
                            ? square
                            : square + " (" + figure(p.xMm(), units) + ", " + figure(Math.abs(p.yMm()), units)
                                    + unit(units) + ")");
        }
        return all;
    }

    /** The centreline is neither port nor starboard; on a wall there is none. */
    private static String square(PlaceNames names, Spot p) {
        String square = names.at(p.xMm(), p.yMm());
        boolean sided = square.contains("starboard") || square.contains("port");
        return sided && Math.abs(p.yMm()) < ON_LINE_MM
                ? square.substring(0, square.indexOf(',')) + ", centreline"
                : square;
    }

    /** As finely as a spacing of 10 mm needs. */
    private static String figure(double mm, Units units) {
        return String.format(Locale.ROOT, "%.2f", units.deck(mm));
    }

    /** Metres go without saying, as in every file; feet do not. */
    private static String unit(Units units) {
        return units == Units.METRIC ? "" : " " + units.deckUnit();
    }
}
