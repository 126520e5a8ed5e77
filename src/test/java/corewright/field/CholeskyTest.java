package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.RandomMatrices_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CholeskyTest {
    /** Sizes on both sides of the panel width and of the unrolling by four. Judge: the EJML library. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 31, 32, 33, 64, 97, 130})
    void solvesAsTheLibraryDoes(int n) {
        DMatrixRMaj a = RandomMatrices_DDRM.symmetricPosDef(n, new Random(n));
        DMatrixRMaj b = RandomMatrices_DDRM.rectangle(n, 1, new Random(1));
        DMatrixRMaj expected = new DMatrixRMaj(n, 1);
        assertThat(CommonOps_DDRM.solve(a, b, expected)).isTrue();

        double[] x = b.data.clone();
        Cholesky.of(n, a.data).solve(x);

        assertThat(x).containsExactly(expected.data, within(1e-8 * CommonOps_DDRM.elementMaxAbs(expected)));
    }

    /** Rank 2 of 3: the third value is the sum of the first two, so its own part of the factor vanishes. */
    @Test
    void aCertainNodeGetsAZeroColumn() {
        double[] a = {1, 0.5, 1.5, 0.5, 2, 2.5, 1.5, 2.5, 4};

        Cholesky factor = Cholesky.ofSemiDefinite(3, a);

        for (int i = 0; i < 3; i++) {
            double[] row = factor.times(new double[] {1, 10, 100});
            assertThat(row[2]).isCloseTo(row[0] + row[1], within(1e-12));
            double[] t = {7, 7, 7};
            factor.subtractProduct(t, new double[] {1, 10, 100}, 1);
            assertThat(t[i]).isCloseTo(7 - row[i], within(1e-12));
        }
    }

    /** EJML's LU accepts such a matrix and returns numbers of no meaning; here the diagonal gives way a little. */
    @Test
    void twoEqualRowsAreRaisedUntilTheyFactor() {
        double[] x = {2, 2, 1};

        Cholesky.of(3, new double[] {1, 1, 0.5, 1, 1, 0.5, 0.5, 0.5, 1}).solve(x);

        assertThat(x[0] + x[1]).isCloseTo(2, within(1e-9)); // u + w/2 = 2, u/2 + w = 1, u shared by the equal rows
        assertThat(x[2]).isCloseTo(0, within(1e-9));
    }

    @Test
    void anIndefiniteMatrixIsRefused() {
        assertThatThrownBy(() -> Cholesky.of(2, new double[] {1, 2, 2, 1}))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("covariance of 2 samples is not positive definite");
    }
}
