package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The part of a factorisation that eliminates all nodes but some.
 *
 * @param front the one that eliminates the last of them; negative if there are none
 */
record Eliminated(Cholesky factor, int front) {
    static final int NONE = -1;

    /**
     * An elimination, and what it leaves on its boundary: apart, as that is large and wanted once.
     *
     * @param lower triangle by rows
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    record Left(Eliminated others, double[][] lower) {}

    /** Unknowns on the boundary, in the order of what is left. */
    int[] rows() {
        if (front < 0) {
            return new int[0];
        }
        int[] all = factor.fronts().rows[front];
        return Arrays.copyOfRange(all, factor.fronts().pivots[front], all.length);
    }

    /**
     * What is left of forces on the unknowns that are kept, by rows.
     *
     * @param kept of each unknown its number among those kept; -1 if it is eliminated
     */
    double[][] carried(List<SparseVector> forces, int[] kept, int size) {
        double[][] carried = new double[forces.size()][size];
        List<SparseVector> others = new ArrayList<>();
        boolean any = false;
        for (int v = 0; v < carried.length; v++) {
            SparseVector force = forces.get(v);
            for (int e = 0; e < force.length(); e++) {
                int at = kept[force.index(e)];
                if (at >= 0) {
                    carried[v][at] += force.value(e);
                }
            }
            others.add(force.without(kept));
            any |= others.get(v).length() > 0;
        }
        if (any) {
            int[] rows = rows();
            double[][] further = factor.eliminate(others, front, new double[0]);
            for (int v = 0; v < carried.length; v++) {
                for (int i = 0; i < rows.length; i++) {
                    carried[v][kept[rows[i]]] += further[v][i];
                }
            }
        }
        return carried;
    }
}
