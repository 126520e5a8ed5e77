package corewright.field;

/** Estimates at nodes, in node order, each with its variance. Immutable. */
public final class Estimates {
    private final double[] estimate;
    private final double[] variance;

    /** Takes the arrays over; callers inside the package hand in fresh ones. */
    Estimates(double[] estimate, double[] variance) {
        this.estimate = estimate;
        this.variance = variance;
    }

    public int size() {
        return estimate.length;
    }

    public double estimate(int node) {
        return estimate[node];
    }

    /** Value unit squared; never negative. */
    public double variance(int node) {
        return variance[node];
    }

    /** A copy. */
    public double[] estimates() {
        return estimate.clone();
    }

    /** A copy. */
    public double[] variances() {
        return variance.clone();
    }
}
