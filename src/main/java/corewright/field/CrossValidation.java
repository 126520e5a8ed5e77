package corewright.field;

/**
 * Leave-one-out: each sample estimated from the others, the variogram held fixed. Errors are observed minus estimated.
 *
 * @param samples how many places were left out in turn
 * @param meanError value unit; near 0 when unbiased
 * @param rootMeanSquare value unit
 * @param meanAbsolute value unit
 * @param meanZ mean of error over its standard error; 0 is ideal
 * @param rmsZ root mean square of the same; 1 when the stated errors are honest
 */
public record CrossValidation(
        int samples, double meanError, double rootMeanSquare, double meanAbsolute, double meanZ, double rmsZ) {

    /**
     * Ordinary kriging, leave-one-out. From all samples by Dubrule's (1983) closed formula, with {@code P = C^-1 - C^-1 1 1'
     * C^-1 / 1' C^-1 1}: error {@code (P z)_i / P_ii}, variance {@code 1 / P_ii}; one factorisation instead of n.
     *
     * @param neighbours how many nearest others each sample uses; 0 uses all
     */
    public static CrossValidation leaveOneOut(Samples samples, Variogram variogram, int neighbours) {
        Samples merged = samples.merged();
        int n = merged.size();
        if (n < 2) {
            return new CrossValidation(0, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        KrigingSystem system = new KrigingSystem(merged, variogram, Mean.unknown(), Target.VALUE);
        double[] error = new double[n];
        double[] variance = new double[n];
        if (neighbours == 0 || neighbours >= n - 1) {
            byFormula(system, error, variance);
        } else {
            byNeighbours(system, neighbours, error, variance);
        }
        return score(error, variance);
    }

    private static void byFormula(KrigingSystem system, double[] error, double[] variance) {
        KrigingSystem.Local all = system.all();
        int n = error.length;
        int block = 48; // as in kriging: the block stays in cache
        for (int from = 0; from < n; from += block) {
            int count = Math.min(block, n - from);
            double[] unit = new double[n * count];
            for (int c = 0; c < count; c++) {
                unit[(from + c) * count + c] = 1;
            }
            all.factor.forward(unit, count);
            for (int c = 0; c < count; c++) {
                double inverse = 0;
                double one = 0;
                double z = 0;
                for (int i = from; i < n; i++) { // L^-1 e_i is 0 above row i
                    double v = unit[i * count + c];
                    inverse += v * v;
                    one += v * all.ones[i];
                    z += v * all.residual[i];
                }
                double p = inverse - one * one / all.precision;
                error[from + c] = z / p;
                variance[from + c] = system.scaled(1 / p);
            }
        }
    }

    private static void byNeighbours(KrigingSystem system, int neighbours, double[] error, double[] variance) {
        Samples s = system.samples;
        double[] estimate = new double[1];
        double[] spread = new double[1];
        for (int i = 0; i < error.length; i++) {
            KrigingSystem.Local local = system.of(system.nearestOthers(i, neighbours));
            double[] k = local.toNodes(new double[] {s.x(i)}, new double[] {s.y(i)}, 0, 1);
            local.estimate(k, 1, 0, estimate, spread);
            error[i] = s.value(i) - estimate[0];
            variance[i] = spread[0] + s.errorVariance(i);
        }
    }

    private static CrossValidation score(double[] error, double[] variance) {
        double sum = 0;
        double squares = 0;
        double absolute = 0;
        double sumZ = 0;
        double squaresZ = 0;
        int n = error.length;
        for (int i = 0; i < n; i++) {
            double z = variance[i] > 0 ? error[i] / Math.sqrt(variance[i]) : 0;
            sum += error[i];
            squares += error[i] * error[i];
            absolute += Math.abs(error[i]);
            sumZ += z;
            squaresZ += z * z;
        }
        return new CrossValidation(n, sum / n, Math.sqrt(squares / n), absolute / n, sumZ / n, Math.sqrt(squaresZ / n));
    }
}
