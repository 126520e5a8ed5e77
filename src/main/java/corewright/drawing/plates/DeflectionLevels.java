package corewright.drawing.plates;

import corewright.drawing.kit.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Deflections at which lines are drawn, the same in all pictures that are compared. */
final class DeflectionLevels {
    /** More lines than greys would say nothing more. */
    private static final int MOST = 7;

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};

    private static final double TENTH_OF_AN_INCH_MM = 2.54;

    private DeflectionLevels() {}

    /**
     * Even steps where the pictures lie close together; 1, 2, 5, 10 ... where one gives many times more than the other,
     * so that both have lines.
     *
     * @param measure so that the figures in the lines are round ones where they are read
     * @param smallestMm the largest deflection of the stiffest picture
     * @param largestMm that of the softest
     */
    static List<Double> between(Measure measure, double smallestMm, double largestMm) {
        double[] steps = Arrays.stream(STEPS).map(s -> s * unitMm(measure)).toArray();
        List<Double> levels = new ArrayList<>();
        if (largestMm > 3 * smallestMm) {
            for (double level : steps) {
                if (level >= smallestMm / 5 && level < largestMm) {
                    levels.add(level);
                }
            }
            return levels.subList(0, Math.min(MOST, levels.size()));
        }
        for (double step : steps) {
            if (largestMm / step <= MOST + 1) {
                for (int k = 1; k * step < largestMm && levels.size() < MOST; k++) {
                    levels.add(k * step);
                }
                return levels;
            }
        }
        return levels;
    }

    /** Whether a line stands out: at 1 and 10 mm, at a tenth of an inch and at one. */
    static boolean heavy(Measure measure, double levelMm) {
        double units = levelMm / unitMm(measure);
        return Math.abs(units - 1) < 1e-9 || Math.abs(units - 10) < 1e-9;
    }

    private static double unitMm(Measure measure) {
        return measure == Measure.METRIC ? 1 : TENTH_OF_AN_INCH_MM;
    }
}
