package corewright.drawing.plates;

import java.util.ArrayList;
import java.util.List;

/** Deflections at which lines are drawn, the same in all pictures that are compared. */
final class DeflectionLevels {
    /** More lines than greys would say nothing more. */
    private static final int MOST = 7;

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};

    private DeflectionLevels() {}

    /**
     * Even steps where the pictures lie close together; 1, 2, 5, 10 ... where one gives many times more than the other,
     * so that both have lines.
     *
     * @param smallestMm the largest deflection of the stiffest picture
     * @param largestMm that of the softest
     */
    static List<Double> between(double smallestMm, double largestMm) {
        List<Double> levels = new ArrayList<>();
        if (largestMm > 3 * smallestMm) {
            for (double level : STEPS) {
                if (level >= smallestMm / 5 && level < largestMm) {
                    levels.add(level);
                }
            }
            return levels.subList(0, Math.min(MOST, levels.size()));
        }
        for (double step : STEPS) {
            if (largestMm / step <= MOST + 1) {
                for (int k = 1; k * step < largestMm && levels.size() < MOST; k++) {
                    levels.add(k * step);
                }
                return levels;
            }
        }
        return levels;
    }
}
