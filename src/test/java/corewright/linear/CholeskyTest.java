package corewright.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CholeskyTest {
    /** A backward-stable factorisation leaves a residual of a few n·eps of |K||x|; 1e-12 allows for n = 3000. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void leavesNoResidualOnRandomGrids(long seed) {
        RandomGrid grid = RandomGrid.withUnequalNodes(seed);
        double[] wanted = grid.vector();
        double[] b = grid.matrix.times(wanted);

        double[] x = Cholesky.factor(grid.matrix, grid.x, grid.y).solve(b);

        double scale = Arrays.stream(b).map(Math::abs).max().orElseThrow();
        double[] back = grid.matrix.times(x);
        for (int i = 0; i < x.length; i++) {
            assertThat(back[i]).as("row %d", i).isCloseTo(b[i], within(ROUNDING * scale));
        }
    }

    @Test
    void solvesManyRightHandSidesFromOneFactor() {
        RandomGrid grid = RandomGrid.withUnequalNodes(11);
        Cholesky factor = Cholesky.factor(grid.matrix, grid.x, grid.y);
        for (int k = 0; k < 5; k++) {
            double[] wanted = grid.vector();
            assertThat(factor.solveRefined(grid.matrix, grid.matrix.times(wanted)))
                    .usingComparatorWithPrecision(1e-9)
                    .containsExactly(wanted);
        }
    }

    @Test
    void productsAgreeWithFullSolutions() {
        RandomGrid grid = RandomGrid.withUnequalNodes(12);
        Cholesky factor = Cholesky.factor(grid.matrix, grid.x, grid.y);
        int n = grid.matrix.size();
        List<SparseVector> f = List.of(
                SparseVector.of(Map.of(0, 1.0, n - 1, 2.0)),
                SparseVector.of(Map.of(n / 2, -1.0)),
                SparseVector.of(Map.of(n / 3, 1.0, n / 3 + 1, 1.0)));
        List<SparseVector> g = List.of(f.get(0), f.get(2), SparseVector.of(Map.of(5, 1.0)));

        double[] products = factor.products(f, g);

        for (int k = 0; k < products.length; k++) {
            double full = dot(g.get(k), factor.solve(dense(f.get(k), n)));
            assertThat(products[k]).isCloseTo(full, within(ROUNDING * Math.max(1, Math.abs(full))));
        }
    }

    @Test
    void complianceAgreesWithFullSolutions() {
        RandomGrid grid = RandomGrid.regular(20, 14, 3, 5);
        Cholesky factor = Cholesky.factor(grid.matrix, grid.x, grid.y);
        int n = grid.matrix.size();
        Random random = new Random(6);
        List<SparseVector> vectors = new ArrayList<>();
        for (int k = 0; k < 30; k++) {
            vectors.add(SparseVector.of(Map.of(random.nextInt(n / 2), 1.0, n / 2 + random.nextInt(n / 2), -0.5)));
        }

        double[][] rows = factor.compliance(vectors, 12);

        assertThat(rows).hasDimensions(12, 30);
        for (int i = 0; i < 12; i++) {
            double[] solution = factor.solve(dense(vectors.get(i), n));
            for (int j = 0; j < 30; j++) {
                assertThat(rows[i][j]).isCloseTo(vectors.get(j).dot(solution), within(ROUNDING));
            }
        }
    }

    /** What is condensed answers forces on the kept nodes as the whole does, whichever nodes are kept: some, all, one. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 17})
    void condensedAnswersAsTheWhole(int every) {
        RandomGrid grid = RandomGrid.withUnequalNodes(9);
        int[] keep = java.util.stream.IntStream.range(0, grid.matrix.nodes())
                .filter(v -> v % every == 0)
                .toArray();
        double[] b = new double[grid.matrix.size()];
        BlockMatrix condensed =
                Condensation.of(grid.matrix, grid.x, grid.y, keep).matrix();
        double[] local = new double[condensed.size()];
        double[] wanted = grid.vector();
        for (int k = 0; k < keep.length; k++) {
            for (int i = 0; i < condensed.size(k); i++) {
                local[condensed.first(k) + i] = wanted[grid.matrix.first(keep[k]) + i];
                b[grid.matrix.first(keep[k]) + i] = local[condensed.first(k) + i];
            }
        }
        double[] px = Arrays.stream(keep).mapToDouble(v -> grid.x[v]).toArray();
        double[] py = Arrays.stream(keep).mapToDouble(v -> grid.y[v]).toArray();

        double[] whole = Cholesky.factor(grid.matrix, grid.x, grid.y).solve(b);
        double[] part = Cholesky.factor(condensed, px, py).solve(local);

        for (int k = 0; k < keep.length; k++) {
            for (int i = 0; i < condensed.size(k); i++) {
                assertThat(part[condensed.first(k) + i]).isCloseTo(whole[grid.matrix.first(keep[k]) + i], within(1e-9));
            }
        }
    }

    /** One elimination for the whole and for what is kept: a clump, with forces on it and elsewhere; all nodes; one. */
    @ParameterizedTest
    @ValueSource(ints = {1, 60, 400})
    void factorsAroundNodesThatAreKept(int clump) {
        RandomGrid grid = RandomGrid.withUnequalNodes(9);
        int n = grid.matrix.nodes();
        int[] keep = java.util.stream.IntStream.range(0, n)
                .filter(v -> v < clump || v > n - clump / 8)
                .toArray();
        double[] b = grid.vector();

        Around around = Cholesky.around(grid.matrix, new int[n], grid.x, grid.y, keep);

        double[] whole = Cholesky.factor(grid.matrix, grid.x, grid.y).solve(b);
        assertThat(around.factor().solve(b)).usingComparatorWithPrecision(1e-9).containsExactly(whole);
        double[] part = around.solve(SparseVector.of(b));
        BlockMatrix alone = Condensation.of(grid.matrix, grid.x, grid.y, keep).matrix();
        double[] ones = new double[alone.size()];
        Arrays.fill(ones, 1);
        assertThat(around.kept().matrix().times(ones))
                .usingComparatorWithPrecision(1e-9)
                .containsExactly(alone.times(ones));
        for (int v : keep) {
            for (int i = grid.matrix.first(v); i < grid.matrix.first(v) + grid.matrix.size(v); i++) {
                assertThat(part[i]).isCloseTo(whole[i], within(1e-9));
            }
        }
    }

    /** Both ways, up to the root and through parts of the inverse. Neighbours, far ends, pairs with nothing. */
    @Test
    void manyProductsAgreeWithFullSolutions() {
        RandomGrid grid = RandomGrid.regular(40, 30, 3, 15);
        Cholesky factor = Cholesky.factor(grid.matrix, grid.x, grid.y);
        int n = grid.matrix.size();
        Random random = new Random(4);
        List<SparseVector> f = new ArrayList<>();
        List<SparseVector> g = new ArrayList<>();
        for (int k = 0; k < 300; k++) {
            int at = random.nextInt(n);
            int near = Math.min(n - 1, at + random.nextInt(130));
            f.add(SparseVector.of(k == 7 ? Map.of() : Map.of(at, 1.0, near == at ? 0 : near, -0.5)));
            g.add(SparseVector.of(k % 50 == 0 ? Map.of(random.nextInt(n), 2.0) : Map.of(at, 1.0)));
        }

        double[] up = new PairProducts(factor, factor.fronts(), f, g).products();
        double[] down = SelectedInverse.products(factor, factor.fronts(), f, g);

        for (int k = 0; k < f.size(); k++) {
            double full = dot(g.get(k), factor.solve(dense(f.get(k), n)));
            assertThat(up[k]).as("%d", k).isCloseTo(full, within(ROUNDING * Math.max(1, Math.abs(full))));
            assertThat(down[k]).as("%d", k).isCloseTo(full, within(ROUNDING * Math.max(1, Math.abs(full))));
        }
        assertThat(factor.products(f, g)).isIn(up, down).isEqualTo(factor.products(f, g));
    }

    @Test
    void givesTheSameBytesEveryTime() {
        RandomGrid grid = RandomGrid.regular(60, 40, 6, 13);
        double[] b = grid.vector();

        double[] once = Cholesky.factor(grid.matrix, grid.x, grid.y).solve(b);
        double[] again = Cholesky.factor(grid.matrix, grid.x, grid.y).solve(b);

        assertThat(again).isEqualTo(once);
    }

    @Test
    void solvesNodesThatAllLieAtOnePlace() {
        RandomGrid grid = RandomGrid.regular(5, 5, 3, 14);
        double[] wanted = grid.vector();

        double[] x =
                Cholesky.factor(grid.matrix, new double[25], new double[25]).solve(grid.matrix.times(wanted));

        assertThat(x).usingComparatorWithPrecision(1e-9).containsExactly(wanted);
    }

    @Test
    void saysWhenAMatrixIsNotPositiveDefinite() {
        BlockMatrix matrix = new BlockMatrix(new int[] {2}, new int[][] {{0}});
        matrix.add(0, 0, new double[] {1, 2, 2, 1});

        assertThatThrownBy(() -> Cholesky.factor(matrix, new double[1], new double[1]))
                .isInstanceOf(NotPositiveDefiniteException.class)
                .hasMessage(
                        "the matrix is not positive definite (pivot -3.00000): something is not held or not joined");
    }

    @Test
    void denseEliminationLeavesTheSchurComplement() {
        Random random = new Random(3);
        int m = 311; // more than a block of columns on either side of the last pivot
        int p = 150;
        Dense.Front f = Dense.Front.zero(p, m - p);
        double[][] a = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = i; j < m; j++) {
                a[i][j] = i == j ? m : random.nextDouble() - 0.5;
                entry(f, i, j, a[i][j]);
            }
        }

        Dense.eliminate(f);

        for (int i = 0; i < m; i++) {
            for (int j = i; j < m; j++) {
                double sum = i >= p ? f.left()[j - p][i - p] : 0;
                for (int k = 0; k <= Math.min(i, p - 1); k++) {
                    sum += upper(f, k, i) * upper(f, k, j);
                }
                assertThat(sum).as("%d, %d", i, j).isCloseTo(a[i][j], within(ROUNDING * m));
            }
        }
    }

    private static void entry(Dense.Front f, int i, int j, double value) {
        int p = f.own().length;
        if (j < p) {
            f.own()[i][j] = value;
        } else if (i < p) {
            f.rest()[i][j - p] = value;
        } else {
            f.left()[j - p][i - p] = value;
        }
    }

    private static double upper(Dense.Front f, int k, int j) {
        int p = f.own().length;
        return j < p ? f.own()[k][j] : f.rest()[k][j - p];
    }

    private static double[] dense(SparseVector v, int n) {
        double[] full = new double[n];
        for (int k = 0; k < v.length(); k++) {
            full[v.index(k)] = v.value(k);
        }
        return full;
    }

    private static double dot(SparseVector v, double[] x) {
        double sum = 0;
        for (int k = 0; k < v.length(); k++) {
            sum += v.value(k) * x[v.index(k)];
        }
        return sum;
    }

    /** Two matrices that hang together nowhere, in one with the unknowns of both at each node. */
    @Test
    void aMatrixInTwoPartsIsSolvedAsAWhole() {
        RandomGrid grid = RandomGrid.withUnequalNodes(11);
        int n = grid.matrix.nodes();
        int[] lead = new int[n];
        int[] sizes = new int[n];
        java.util.List<int[]> pairs = new java.util.ArrayList<>();
        for (int v = 0; v < n; v++) {
            lead[v] = grid.matrix.size(v) > 1 ? 1 : 0;
            sizes[v] = grid.matrix.size(v);
            for (int b : grid.matrix.neighbours(v)) {
                pairs.add(new int[] {v, b});
            }
        }
        BlockMatrix apart = new BlockMatrix(sizes, pairs.toArray(int[][]::new));
        for (int[] pair : pairs) {
            int v = pair[0];
            int b = pair[1];
            double[] block = grid.matrix.part(v, 0, sizes[v], b, 0, sizes[b]);
            for (int k = 0; k < block.length; k++) {
                block[k] = k / sizes[b] < lead[v] == k % sizes[b] < lead[b] ? block[k] : 0;
            }
            apart.add(v, b, block);
        }
        double[] b = grid.vector();

        double[] whole = Cholesky.factor(apart, grid.x, grid.y).solve(b);
        Cholesky parted = Cholesky.factor(apart, lead, grid.x, grid.y);

        assertThat(parted.solve(b)).containsExactly(whole, within(1e-9));
        assertThat(parted.entries())
                .isLessThan(Cholesky.factor(apart, grid.x, grid.y).entries());
        int[] keep = {3, 7, 8, 14};
        Around around = Cholesky.around(apart, lead, grid.x, grid.y, keep);
        assertThat(around.factor().solve(b)).containsExactly(whole, within(1e-9));
        BlockMatrix left = Condensation.of(apart, grid.x, grid.y, keep).matrix();
        double[] ones = new double[left.size()];
        java.util.Arrays.setAll(ones, i -> 1 + i);
        assertThat(around.kept().matrix().times(ones)).containsExactly(left.times(ones), within(1e-9));
    }
}
