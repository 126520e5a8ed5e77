package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveAction;

/**
 * Many products {@code g' K⁻¹ f} of vectors that touch few unknowns each. Once the fronts below and with the lowest one
 * that holds all a pair touches are eliminated, what is left of the pair lies on that front's boundary, where
 * {@code (K⁻¹)uu} is known: so no pair climbs to the root. Those blocks of the inverse are found from the root down,
 * with {@code W = U₁₁⁻¹ U₁₂}: {@code Zpu = −W Zuu} and {@code Zpp = U₁₁⁻¹ U₁₁⁻ᵀ − Zpu Wᵀ}.
 *
 * <p>K. Takahashi, J. Fagan and M.-S. Chin, Formation of a sparse bus impedance matrix and its application to short circuit
 * study, PICA conference (1973); on fronts: L. Lin et al., SelInv, ACM Trans. Math. Softw. 37 (2011).
 */
final class SelectedInverse {
    /** Pairs at one front that are eliminated together: they share the way up. */
    private static final int BUNDLE = 16;

    /** As for the factorisation: a subtree of fewer unknowns is no task of its own. */
    private static final int TASK_UNKNOWNS = 2000;

    private final Cholesky factor;
    private final Fronts fronts;
    private final List<SparseVector> f;
    private final List<SparseVector> g;
    private final double[] products;

    /** Pairs by the lowest front that holds all they touch. */
    private final List<List<Integer>> at = new ArrayList<>();

    /** Whether a subtree has pairs. */
    private final boolean[] wanted;

    private SelectedInverse(Cholesky factor, Fronts fronts, List<SparseVector> f, List<SparseVector> g) {
        this.factor = factor;
        this.fronts = fronts;
        this.f = f;
        this.g = g;
        products = new double[f.size()];
        wanted = new boolean[fronts.root + 1];
        for (int front = 0; front <= fronts.root; front++) {
            at.add(new ArrayList<>());
        }
        for (int pair = 0; pair < products.length; pair++) {
            int lowest = lowest(g.get(pair), lowest(f.get(pair), -1));
            if (lowest >= 0) {
                at.get(lowest).add(pair);
                wanted[lowest] = true;
            }
        }
        for (int front = 0; front < fronts.root; front++) { // parents come after their children
            wanted[fronts.parent[front]] |= wanted[front];
        }
    }

    /** Multiplications that the inverse at the boundaries of all fronts takes, about: what is left out of the pairs' own. */
    static double work(Fronts fronts) {
        double sum = 0;
        for (int f = 0; f <= fronts.root; f++) {
            double p = fronts.pivots[f];
            double r = fronts.rows[f].length - p;
            sum += fronts.children[f].length == 0 ? 0 : p * (r * r + p * r + p * p / 3);
        }
        return sum;
    }

    static double[] products(Cholesky factor, Fronts fronts, List<SparseVector> f, List<SparseVector> g) {
        SelectedInverse inverse = new SelectedInverse(factor, fronts, f, g);
        inverse.new Descent(fronts.root, new double[0][]).invoke();
        return inverse.products;
    }

    /** The lowest front with all of a vector's unknowns, and {@code with} unless negative, in its subtree. */
    private int lowest(SparseVector v, int with) {
        int lowest = with;
        for (int k = 0; k < v.length(); k++) {
            int other = fronts.frontOf[v.index(k)];
            while (lowest >= 0 && lowest != other) {
                if (lowest < other) {
                    lowest = fronts.parent[lowest];
                } else {
                    other = fronts.parent[other];
                }
            }
            lowest = other;
        }
        return lowest;
    }

    /** Answers the pairs of a front, then hands each child the inverse on its boundary. */
    private final class Descent extends RecursiveAction {
        private static final long serialVersionUID = 1L;

        private final int front;

        /** The inverse at the front's boundary, all of it. */
        private transient double[][] boundary;

        Descent(int front, double[][] boundary) {
            this.front = front;
            this.boundary = boundary;
        }

        @Override
        protected void compute() {
            List<Integer> pairs = at.get(front);
            for (int i = 0; i < pairs.size(); i += BUNDLE) {
                answer(pairs.subList(i, Math.min(pairs.size(), i + BUNDLE)));
            }
            List<Descent> branches = new ArrayList<>();
            if (Arrays.stream(fronts.children[front]).anyMatch(child -> wanted[child])) {
                Block z = Block.of(factor.own(front), factor.rest(front), boundary);
                for (int child : fronts.children[front]) {
                    if (wanted[child]) {
                        branches.add(new Descent(child, z.gather(fronts.rowInParent[child])));
                    }
                }
            }
            boundary = new double[0][];
            if (fronts.subtree[front] > TASK_UNKNOWNS) {
                ForkJoinTask.invokeAll(branches);
            } else {
                branches.forEach(ForkJoinTask::invoke);
            }
        }

        private void answer(List<Integer> pairs) {
            List<SparseVector> both = new ArrayList<>();
            pairs.forEach(k -> both.add(f.get(k)));
            pairs.forEach(k -> both.add(g.get(k)));
            double[] sums = new double[pairs.size()];
            double[][] left = factor.eliminate(both, front, sums);
            for (int k = 0; k < sums.length; k++) {
                double[] mine = left[k];
                double[] asked = left[sums.length + k];
                double[] less = new double[mine.length]; // -Zuu times mine, row by row
                Dense.subtract(less, boundary, mine, 0, 0);
                products[pairs.get(k)] = sums[k] - Dense.dot(less, asked, 0);
            }
        }
    }

    /**
     * The inverse on a front's rows.
     *
     * @param pivots p × p, upper triangle
     * @param side p × r
     * @param boundary r × r, all of it
     */
    @SuppressWarnings("ArrayRecordComponent") // three handles passed together, never compared
    private record Block(double[][] pivots, double[][] side, double[][] boundary) {
        static Block of(double[][] own, double[][] rest, double[][] boundary) {
            int p = own.length;
            int r = boundary.length;
            double[][] w = new double[p][];
            double[][] v = new double[p][p];
            for (int k = p - 1; k >= 0; k--) {
                double[] right = Arrays.copyOfRange(own[k], k + 1, p);
                w[k] = rest[k].clone();
                v[k][k] = 1;
                Dense.subtract(w[k], w, right, k + 1, 0);
                Dense.subtract(v[k], v, right, k + 1, k + 1);
                divide(w[k], own[k][k]);
                divide(v[k], own[k][k]);
            }
            double[][] wt = transposed(w, r);
            double[][] vt = transposed(v, p);
            double[][] side = new double[p][r];
            double[][] pivots = new double[p][p];
            for (int k = 0; k < p; k++) {
                Dense.subtract(side[k], boundary, w[k], 0, 0);
                double[] less = new double[p - k];
                for (int j = k; j < p; j++) {
                    less[j - k] = -v[k][j];
                }
                Dense.subtract(pivots[k], vt, less, k, k);
                Dense.subtract(pivots[k], wt, side[k], 0, k);
            }
            return new Block(pivots, side, boundary);
        }

        private static void divide(double[] row, double by) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= by;
            }
        }

        private static double[][] transposed(double[][] a, int columns) {
            double[][] t = new double[columns][a.length];
            for (int i = 0; i < a.length; i++) {
                for (int j = 0; j < columns; j++) {
                    t[j][i] = a[i][j];
                }
            }
            return t;
        }

        /** All entries at the given rows, in ascending order. */
        double[][] gather(int[] rows) {
            int p = pivots.length;
            int n = rows.length;
            double[][] part = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = i; j < n; j++) {
                    int a = rows[i];
                    int b = rows[j];
                    double value = b < p ? pivots[a][b] : a < p ? side[a][b - p] : boundary[a - p][b - p];
                    part[i][j] = value;
                    part[j][i] = value;
                }
            }
            return part;
        }
    }
}
