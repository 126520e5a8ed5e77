package corewright.field;

import java.util.Random;

/** Equally likely fields over the same nodes. Immutable. */
public final class Draws {
    private final int nodes;
    private final double[][] values;

    /** Takes the rows over; each is one draw. */
    Draws(int nodes, double[][] values) {
        this.nodes = nodes;
        this.values = values;
    }

    /**
     * The same with every draw moved as a whole: at each node by one normal number of the draw times {@code share} of the
     * node's standard deviation, so that places that are known stay known.
     */
    public Draws together(double share, Random random) {
        double[] sd = new double[nodes];
        for (int node = 0; node < nodes; node++) {
            double sum = 0;
            double squares = 0;
            for (double[] draw : values) {
                sum += draw[node];
                squares += draw[node] * draw[node];
            }
            double mean = sum / Math.max(1, values.length);
            sd[node] = Math.sqrt(Math.max(0, squares / Math.max(1, values.length) - mean * mean));
        }
        double[][] moved = new double[values.length][nodes];
        for (int d = 0; d < moved.length; d++) {
            double step = share * random.nextGaussian();
            for (int node = 0; node < nodes; node++) {
                moved[d][node] = values[d][node] + step * sd[node];
            }
        }
        return new Draws(nodes, moved);
    }

    public double at(int draw, int node) {
        return values[draw][node];
    }
}
