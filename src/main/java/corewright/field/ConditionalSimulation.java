package corewright.field;

import java.util.Arrays;
import java.util.Random;

/**
 * Fields that honour the samples: exact draws from the multi-normal that kriging describes, by the Cholesky factor of the
 * nodes' posterior covariance. Source: Davis (1987), Math. Geology 19:91-98; Chiles and Delfiner (2012), section 7.2.3.
 */
public final class ConditionalSimulation {
    /** Beyond this many nodes the covariance would need gigabytes. */
    public static final int MOST_NODES = 6000;

    /** Draws made together; the block stays in cache. */
    private static final int BLOCK = 48;

    private ConditionalSimulation() {}

    /**
     * Draws fields; same arguments, same fields.
     *
     * @param draws how many; 500 or more for stable P10 and P90
     */
    public static Draws draw(Kriging kriging, double[] nodesX, double[] nodesY, int draws, long seed) {
        int m = nodesX.length;
        if (m > MOST_NODES) {
            throw new IllegalArgumentException("simulation at " + m + " nodes, at most " + MOST_NODES);
        }
        Estimates centre = kriging.estimate(nodesX, nodesY, 0);
        Cholesky factor = Cholesky.ofSemiDefinite(m, kriging.system.posterior(nodesX, nodesY));
        Random random = new Random(seed);
        double[][] values = new double[draws][];
        for (int from = 0; from < draws; from += BLOCK) {
            int count = Math.min(BLOCK, draws - from);
            double[] e = new double[m * count];
            for (int d = 0; d < count; d++) {
                for (int i = 0; i < m; i++) {
                    e[i * count + d] = -random.nextGaussian(); // minus, because its product is subtracted
                }
            }
            double[] fields = new double[m * count];
            for (int i = 0; i < m; i++) {
                Arrays.fill(fields, i * count, (i + 1) * count, centre.estimate(i));
            }
            factor.subtractProduct(fields, e, count);
            for (int d = 0; d < count; d++) {
                values[from + d] = column(fields, d, count);
            }
        }
        return new Draws(m, values);
    }

    private static double[] column(double[] rows, int column, int stride) {
        double[] values = new double[rows.length / stride];
        for (int i = 0; i < values.length; i++) {
            values[i] = rows[i * stride + column];
        }
        return values;
    }
}
