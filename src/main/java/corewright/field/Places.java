package corewright.field;

import java.util.Arrays;

/** Points with the drift terms at each; immutable by use: the arrays are the caller's and are not written to. */
public final class Places {
    private final double[] x;
    private final double[] y;
    private final double[][] terms;

    /**
     * @param x millimetres, length n
     * @param y millimetres, length n
     * @param terms drift terms beyond the constant, term by place
     */
    public Places(double[] x, double[] y, double[]... terms) {
        for (double[] term : terms) {
            if (term.length != x.length) {
                throw new IllegalArgumentException(x.length + " places got " + term.length + " drift terms");
            }
        }
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " x but " + y.length + " y");
        }
        this.x = x;
        this.y = y;
        this.terms = terms;
    }

    public int size() {
        return x.length;
    }

    /** Some of them, in the order asked for. */
    public Places only(int[] which) {
        double[][] some = new double[terms.length][];
        for (int k = 0; k < some.length; k++) {
            some[k] = picked(terms[k], which);
        }
        return new Places(picked(x, which), picked(y, which), some);
    }

    /** Shrunk by a factor along a direction and drawn out by it across, with the same terms. */
    Places turned(double radians, double factor) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        double[] along = new double[x.length];
        double[] across = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            along[i] = (cos * x[i] + sin * y[i]) / factor;
            across[i] = (cos * y[i] - sin * x[i]) * factor;
        }
        return new Places(along, across, terms);
    }

    private static double[] picked(double[] values, int[] which) {
        return Arrays.stream(which).mapToDouble(i -> values[i]).toArray();
    }

    /** The places nearest to a point. */
    NeighbourIndex index() {
        return new NeighbourIndex(x, y);
    }

    /** Side of the square each place would have to itself if they were spread evenly; 1 at least. */
    double spacing() {
        double width = Arrays.stream(x).max().orElse(0) - Arrays.stream(x).min().orElse(0);
        double height =
                Arrays.stream(y).max().orElse(0) - Arrays.stream(y).min().orElse(0);
        return Math.max(1, Math.sqrt(width * height / Math.max(1, x.length)));
    }

    /** Whether all coordinates and terms are the same, bit for bit. */
    boolean same(Places other) {
        return Arrays.equals(x, other.x) && Arrays.equals(y, other.y) && Arrays.deepEquals(terms, other.terms);
    }

    /** Whether a place and its terms are the same as one of another's, bit for bit. */
    boolean same(int i, Places other, int j) {
        boolean same = x[i] == other.x[j] && y[i] == other.y[j] && terms.length == other.terms.length;
        for (int k = 0; same && k < terms.length; k++) {
            same = terms[k][i] == other.terms[k][j];
        }
        return same;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    /** Number of drift terms, the constant included. */
    public int terms() {
        return terms.length + 1;
    }

    /** Drift term at a place; term 0 is the constant. */
    public double term(int j, int i) {
        return j == 0 ? 1 : terms[j - 1][i];
    }
}
