package corewright.field;

/** Equally likely fields over the same nodes. Immutable. */
public final class Draws {
    private final int nodes;
    private final double[][] values;

    /** Takes the rows over; each is one draw. */
    Draws(int nodes, double[][] values) {
        this.nodes = nodes;
        this.values = values;
    }

    /** How many draws. */
    public int count() {
        return values.length;
    }

    public int nodes() {
        return nodes;
    }

    public double at(int draw, int node) {
        return values[draw][node];
    }

    /** One draw in node order; a copy. */
    public double[] draw(int draw) {
        return values[draw].clone();
    }
}
