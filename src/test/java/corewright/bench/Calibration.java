package corewright.bench;

import corewright.contour.Raster;
import java.util.function.IntPredicate;

/** Stated probabilities against what came true, in ten bins. */
final class Calibration {
    /** A bin with fewer cells says nothing. */
    private static final int ENOUGH = 50;

    private final double[] stated = new double[10];
    private final double[] came = new double[10];
    private final int[] count = new int[10];

    void add(Raster probability, TruthGrid grid, IntPredicate truth) {
        for (int i = 0; i < grid.size(); i++) {
            double p = grid.onDeck(i) ? probability.cellAt(grid.x(i), grid.y(i)) : Double.NaN;
            if (!Double.isNaN(p)) {
                int bin = Math.min(9, (int) (10 * p));
                stated[bin] += p;
                came[bin] += truth.test(i) ? 1 : 0;
                count[bin]++;
            }
        }
    }

    /** Mean over the bins of the absolute difference. */
    double gap() {
        double sum = 0;
        int bins = 0;
        for (int b = 0; b < 10; b++) {
            if (count[b] >= ENOUGH) {
                sum += Math.abs(stated[b] - came[b]) / count[b];
                bins++;
            }
        }
        return bins == 0 ? Double.NaN : sum / bins;
    }
}
