package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.RandomMatrices_DDRM;
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
}
