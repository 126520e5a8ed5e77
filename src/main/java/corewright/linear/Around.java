package corewright.linear;

import java.util.List;

/**
 * A factorisation that eliminates some nodes last, and what it left of the matrix on these on its way.
 *
 * @param kept the matrix on these nodes
 */
public record Around(Cholesky factor, Condensation kept) {
    /** The solution at the nodes kept, by forces anywhere; zeros at the others, which are not solved for. */
    public double[] solve(SparseVector forces) {
        double[] x = kept.onWhole(kept.carried(List.of(forces))[0]);
        factor.solveAfter(kept.eliminated(), x);
        return x;
    }
}
