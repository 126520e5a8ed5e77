package corewright.damage;

import java.util.Arrays;

/** Distance of each cell to the outline of the set where a value exceeds a level; negative outside it. */
final class DistanceInside {
    private DistanceInside() {}

    /**
     * @param cells flat indices, ascending
     * @param values of those cells
     * @return millimetres, cell by cell; half a cell at the outline itself. Where the set is empty or everything, a
     *     distance beyond any deck of the corresponding sign
     */
    static double[] of(Frame frame, int[] cells, double[] values, double level) {
        int columns = frame.empty().columns();
        int rows = frame.empty().rows();
        byte[] side = new byte[frame.size()];
        for (int i = 0; i < cells.length; i++) {
            side[cells[i]] = (byte) (values[i] > level ? 1 : 2);
        }
        double[] toSet = squared(side, (byte) 1, rows, columns);
        double[] toRest = squared(side, (byte) 2, rows, columns);
        double[] distance = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            boolean in = side[cells[i]] == 1;
            double d = Math.sqrt((in ? toRest : toSet)[cells[i]]) - 0.5;
            distance[i] = (in ? d : -d) * frame.cellMm();
        }
        return distance;
    }

    /**
     * Squared distance in cells to the nearest cell of a kind.
     *
     * <p>Source: Felzenszwalb and Huttenlocher, "Distance transforms of sampled functions", Theory of Computing 8 (2012)
     * 415.
     */
    private static double[] squared(byte[] side, byte kind, int rows, int columns) {
        double far = 1e8;
        double[] d = new double[rows * columns];
        for (int i = 0; i < d.length; i++) {
            d[i] = side[i] == kind ? 0 : far;
        }
        for (int r = 0; r < rows; r++) {
            line(d, r * columns, 1, columns);
        }
        for (int c = 0; c < columns; c++) {
            line(d, c, columns, rows);
        }
        return d;
    }

    /** Lower envelope of the parabolas d[q] + (p - q)² along one line. */
    private static void line(double[] d, int start, int stride, int n) {
        int[] at = new int[n];
        double[] border = new double[n + 1];
        double[] f = new double[n];
        for (int q = 0; q < n; q++) {
            f[q] = d[start + q * stride];
        }
        Arrays.fill(border, Double.POSITIVE_INFINITY);
        int k = 0;
        border[0] = Double.NEGATIVE_INFINITY;
        for (int q = 1; q < n; q++) {
            double s = crossing(f, at[k], q);
            while (s <= border[k]) {
                k--;
                s = crossing(f, at[k], q);
            }
            k++;
            at[k] = q;
            border[k] = s;
            border[k + 1] = Double.POSITIVE_INFINITY;
        }
        k = 0;
        for (int p = 0; p < n; p++) {
            while (border[k + 1] < p) {
                k++;
            }
            double h = p - at[k];
            d[start + p * stride] = h * h + f[at[k]];
        }
    }

    private static double crossing(double[] f, int p, int q) {
        return ((f[q] + (double) q * q) - (f[p] + (double) p * p)) / (2.0 * (q - p));
    }
}
