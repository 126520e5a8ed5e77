package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.RandomMatrices_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CholeskyTest {
    /** A normal vector with this covariance. */
    static double[] drawn(double[][] covariance, Random random) {
        double[][] e = new double[covariance.length][1];
        Arrays.setAll(e, i -> new double[] {-random.nextGaussian()}); // minus, because the product is subtracted
        double[][] field = new double[covariance.length][1];
        Cholesky.ofSemiDefinite(covariance).subtractProduct(field, e);
        return Arrays.stream(field).mapToDouble(row -> row[0]).toArray();
    }

    private static double[][] rows(DMatrixRMaj a) {
        double[][] rows = new double[a.numRows][];
        Arrays.setAll(rows, i -> Arrays.copyOfRange(a.data, i * a.numCols, (i + 1) * a.numCols));
        return rows;
    }

    /** Sizes on both sides of the panel width and of the unrolling by four. Judge: the EJML library. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 31, 32, 33, 64, 97, 130})
    void solvesAsTheLibraryDoes(int n) {
        DMatrixRMaj a = RandomMatrices_DDRM.symmetricPosDef(n, new Random(n));
        DMatrixRMaj b = RandomMatrices_DDRM.rectangle(n, 1, new Random(1));
        DMatrixRMaj expected = new DMatrixRMaj(n, 1);
        assertThat(CommonOps_DDRM.solve(a, b, expected)).isTrue();

        double[] x = b.data.clone();
        Cholesky.of(rows(a)).solve(x);

        assertThat(x).containsExactly(expected.data, within(1e-8 * CommonOps_DDRM.elementMaxAbs(expected)));
    }

    /** {@code A⁻¹ = R' R} with R the inverse of L, and {@code y = R b}. Judge and tolerance as above. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 4, 5, 31, 32, 33, 97})
    void invertsAsTheLibraryDoes(int n) {
        DMatrixRMaj a = RandomMatrices_DDRM.symmetricPosDef(n, new Random(n));
        DMatrixRMaj expected = new DMatrixRMaj(n, n);
        assertThat(CommonOps_DDRM.invert(a, expected)).isTrue();
        double[][] b = rows(RandomMatrices_DDRM.rectangle(n, 5, new Random(2)));
        Cholesky factor = Cholesky.of(rows(a));

        double[][] inverse = factor.inverse();
        double[][] y = Arrays.stream(b).map(double[]::clone).toArray(double[][]::new);
        factor.forward(y);

        DMatrixRMaj r = new DMatrixRMaj(inverse);
        DMatrixRMaj product = new DMatrixRMaj(n, n);
        CommonOps_DDRM.multTransA(r, r, product);
        double largest = CommonOps_DDRM.elementMaxAbs(expected);
        assertThat(product.data).containsExactly(expected.data, within(1e-8 * largest));
        DMatrixRMaj forward = new DMatrixRMaj(n, 5);
        CommonOps_DDRM.mult(r, new DMatrixRMaj(b), forward);
        assertThat(new DMatrixRMaj(y).data)
                .containsExactly(forward.data, within(1e-8 * CommonOps_DDRM.elementMaxAbs(forward)));
    }

    /** Rank 2 of 3: the third value is the sum of the first two, so its own part of the factor vanishes. */
    @Test
    void aCertainNodeGetsAZeroColumn() {
        double[][] a = {{1, 0.5, 1.5}, {0.5, 2, 2.5}, {1.5, 2.5, 4}};
        double[][] t = {{7}, {7}, {7}};

        Cholesky.ofSemiDefinite(a).subtractProduct(t, new double[][] {{1}, {10}, {100}});

        assertThat(7 - t[0][0]).isCloseTo(1, within(1e-12));
        assertThat(7 - t[2][0]).isCloseTo(14 - t[0][0] - t[1][0], within(1e-12));
    }

    /** EJML's LU accepts such a matrix and returns numbers of no meaning; here the diagonal gives way a little. */
    @Test
    void twoEqualRowsAreRaisedUntilTheyFactor() {
        double[] x = {2, 2, 1};

        Cholesky.of(new double[][] {{1, 1, 0.5}, {1, 1, 0.5}, {0.5, 0.5, 1}}).solve(x);

        assertThat(x[0] + x[1]).isCloseTo(2, within(1e-9)); // u + w/2 = 2, u/2 + w = 1, u shared by the equal rows
        assertThat(x[2]).isCloseTo(0, within(1e-9));
    }

    @Test
    void anIndefiniteMatrixIsRefused() {
        assertThatThrownBy(() -> Cholesky.of(new double[][] {{1, 2}, {2, 1}}))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("covariance of 2 samples is not positive definite");
    }
}
