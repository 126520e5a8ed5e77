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
        OrdinaryKriging kriging = new OrdinaryKriging(merged, variogram);
        double[] error = new double[n];
        double[] variance = new double[n];
        if (neighbours == 0 || neighbours >= n - 1) {
            byFormula(kriging, error, variance);
        } else {
            byNeighbours(kriging, neighbours, error, variance);
        }
        return score(error, variance);
    }

    private static void byFormula(OrdinaryKriging kriging, double[] error, double[] variance) {
        OrdinaryKriging.Local all = kriging.all();
        double[][] inverse = all.factor.inverse();
        for (int c = 0; c < error.length; c++) {
            double square = 0;
            double one = 0;
            double z = 0;
            for (int i = c; i < error.length; i++) { // L^-1 e_c is 0 above row c
                double v = inverse[i][c];
                square += v * v;
                one += v * all.ones[i];
                z += v * all.residual[i];
            }
            double p = square - one * one / all.precision;
            error[c] = z / p;
            variance[c] = kriging.scaled(1 / p);
        }
    }

    private static void byNeighbours(OrdinaryKriging kriging, int neighbours, double[] error, double[] variance) {
        Samples s = kriging.samples;
        double[] estimate = new double[1];
        double[] spread = new double[1];
        for (int i = 0; i < error.length; i++) {
            OrdinaryKriging.Local local = kriging.around(i, neighbours);
            double[][] k = local.toNodes(new double[] {s.x(i)}, new double[] {s.y(i)}, 0, 1);
            local.estimate(k, 0, estimate, spread);
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
