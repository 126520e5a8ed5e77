package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The products {@code g_k' K⁻¹ f_k = (U⁻ᵀ g_k)·(U⁻ᵀ f_k)} of pairs of sparse vectors. Every sum has a fixed order. */
final class PairProducts extends Climb {
    private final double[] products;

    PairProducts(Cholesky factor, Fronts fronts, List<SparseVector> f, List<SparseVector> g) {
        super(factor, fronts, both(f, g));
        products = new double[f.size()];
    }

    private static List<SparseVector> both(List<SparseVector> f, List<SparseVector> g) {
        List<SparseVector> both = new ArrayList<>(f);
        both.addAll(g);
        return both;
    }

    double[] products() {
        climb();
        return products;
    }

    @Override
    void take(int[] here, double[][] mine) {
        for (int k = 0; k < here.length && here[k] < products.length; k++) {
            int other = Arrays.binarySearch(here, here[k] + products.length);
            if (other >= 0) {
                products[here[k]] += Dense.dot(mine[k], mine[other], 0);
            }
        }
    }
}
