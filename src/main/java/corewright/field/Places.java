package corewright.field;

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

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    /** Number of drift terms, the constant included. */
    int terms() {
        return terms.length + 1;
    }

    /** Drift term at a place; term 0 is the constant. */
    double term(int j, int i) {
        return j == 0 ? 1 : terms[j - 1][i];
    }
}
