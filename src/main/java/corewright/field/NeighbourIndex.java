package corewright.field;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Nearest samples by a bucket grid: about three samples a bucket, rings of buckets searched outward. Equal distances are
 * decided by the sample's position, so the answer never depends on the search.
 */
public final class NeighbourIndex {
    /** Few enough to look at little in vain, enough to keep rings few at 24 neighbours. Judgement. */
    private static final double PER_BUCKET = 3;

    private final double[] x;
    private final double[] y;
    private final double left;
    private final double low;
    private final double side;
    private final int columns;
    private final int rows;
    /** Members of bucket b are {@code member[start[b]] .. member[start[b + 1] - 1]}. */
    private final int[] start;

    private final int[] member;

    /** Over these places; arrays of equal length. */
    public NeighbourIndex(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        int n = x.length;
        left = Arrays.stream(x).min().orElse(0);
        low = Arrays.stream(y).min().orElse(0);
        double width = Arrays.stream(x).max().orElse(0) - left;
        double height = Arrays.stream(y).max().orElse(0) - low;
        double longer = Math.max(width, height);
        double shorter = Math.max(Math.min(width, height), longer * PER_BUCKET / Math.max(n, 1));
        side = longer > 0 ? Math.sqrt(longer * shorter * PER_BUCKET / n) : 1;
        columns = (int) (width / side) + 1;
        rows = (int) (height / side) + 1;
        start = new int[columns * rows + 1];
        member = new int[n];
        fill();
    }

    private void fill() {
        for (int i = 0; i < x.length; i++) {
            start[bucket(i) + 1]++;
        }
        for (int b = 1; b < start.length; b++) {
            start[b] += start[b - 1];
        }
        int[] next = start.clone();
        for (int i = 0; i < x.length; i++) {
            member[next[bucket(i)]++] = i;
        }
    }

    private int bucket(int i) {
        return row(y[i]) * columns + column(x[i]);
    }

    private int column(double px) {
        return (int) Math.max(0, Math.min(columns - 1, (px - left) / side));
    }

    private int row(double py) {
        return (int) Math.max(0, Math.min(rows - 1, (py - low) / side));
    }

    /**
     * The nearest k samples, nearest first; all of them when there are fewer.
     *
     * @param skip a sample left out (leave-one-out), or -1
     */
    public int[] nearest(double px, double py, int k, int skip) {
        int wanted = Math.min(k, x.length - (skip >= 0 ? 1 : 0));
        int[] best = new int[wanted];
        double[] squared = new double[wanted];
        int found = 0;
        int column = column(px);
        int row = row(py);
        int rings = Math.max(Math.max(column, columns - 1 - column), Math.max(row, rows - 1 - row));
        for (int ring = 0; ring <= rings && wanted > 0; ring++) {
            if (found == wanted && reached(px, py, column, row, ring, squared[wanted - 1])) {
                break;
            }
            for (int r = Math.max(row - ring, 0); r <= Math.min(row + ring, rows - 1); r++) {
                int step = Math.abs(r - row) == ring ? 1 : 2 * ring;
                for (int c = column - ring; c <= column + ring; c += Math.max(step, 1)) {
                    if (c < 0 || c >= columns) {
                        continue;
                    }
                    int b = r * columns + c;
                    for (int m = start[b]; m < start[b + 1]; m++) {
                        int i = member[m];
                        if (i != skip) {
                            found = insert(best, squared, found, i, distanceSquared(i, px, py));
                        }
                    }
                }
            }
        }
        return best;
    }

    /** The samples of a box, its sides included, ascending. */
    int[] within(double x0, double y0, double x1, double y1) {
        IntStream.Builder found = IntStream.builder();
        for (int r = row(y0); r <= row(y1); r++) {
            for (int c = column(x0); c <= column(x1); c++) {
                for (int m = start[r * columns + c]; m < start[r * columns + c + 1]; m++) {
                    int i = member[m];
                    if (x[i] >= x0 && x[i] <= x1 && y[i] >= y0 && y[i] <= y1) {
                        found.add(i);
                    }
                }
            }
        }
        return found.build().sorted().toArray();
    }

    /** Whether no bucket of this ring or beyond can hold anything as near as {@code squared}. */
    private boolean reached(double px, double py, int column, int row, int ring, double squared) {
        double toLeft = px - (left + (column - ring + 1) * side);
        double toRight = left + (column + ring) * side - px;
        double toLow = py - (low + (row - ring + 1) * side);
        double toHigh = low + (row + ring) * side - py;
        double clear = Math.min(Math.min(toLeft, toRight), Math.min(toLow, toHigh));
        return clear > 0 && clear * clear > squared * (1 + 1e-11); // the squares are rounded to 40 digits
    }

    private double distanceSquared(int i, double px, double py) {
        double dx = x[i] - px;
        double dy = y[i] - py;
        return rounded(dx * dx + dy * dy);
    }

    /** To 40 binary digits, so that distances equal but for rounding are equal, wherever the origin lies. */
    private static double rounded(double d) {
        long half = 1L << 11;
        return Double.longBitsToDouble((Double.doubleToRawLongBits(d) + half) & -(half << 1));
    }

    /** Insertion into the sorted front; ties to the smaller index. Returns the new count. */
    private static int insert(int[] best, double[] squared, int found, int i, double d) {
        int last = found < best.length ? found : best.length - 1;
        if (found == best.length && !before(d, i, squared[last], best[last])) {
            return found;
        }
        int at = last;
        while (at > 0 && before(d, i, squared[at - 1], best[at - 1])) {
            squared[at] = squared[at - 1];
            best[at] = best[at - 1];
            at--;
        }
        squared[at] = d;
        best[at] = i;
        return Math.min(found + 1, best.length);
    }

    private static boolean before(double d, int i, double other, int j) {
        return d < other || (d == other && i < j);
    }
}
