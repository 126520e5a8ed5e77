package corewright.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is left of a bordered matrix against solutions of the whole. */
class SchurTest {
    /** Some hundred unknowns, entries of order one. */
    private static final double ROUNDING = 1e-9;

    @Test
    void leavesWhatTheWholeAnswers() {
        RandomGrid grid = RandomGrid.withUnequalNodes(4);
        int n = grid.matrix.size();
        int[] keep = IntStream.range(0, n).filter(i -> i % 5 == 2).toArray();
        SparseVector column = SparseVector.of(Map.of(0, 2.0, n - (n % 5 == 3 ? 2 : 1), -1.0));
        Cholesky whole = Cholesky.factor(grid.matrix, grid.x, grid.y);

        double[][] left =
                Schur.of(grid.matrix, grid.x, grid.y, keep, List.of(column)).matrix();

        // forces b on what is kept and t on the column: the whole's displacements there satisfy what is left
        double[] b = new double[n];
        for (int k = 0; k < keep.length; k++) {
            b[keep[k]] = Math.sin(k + 1);
        }
        column.addTo(b);
        double[] x = whole.solve(b);
        for (int k = 0; k < keep.length; k++) {
            double sum = 0;
            for (int j = 0; j < keep.length; j++) {
                sum += left[k][j] * x[keep[j]];
            }
            assertThat(sum).isCloseTo(Math.sin(k + 1) + left[k][keep.length], within(ROUNDING));
        }
        double asked = 0;
        for (int j = 0; j < keep.length; j++) {
            asked -= left[keep.length][j] * x[keep[j]];
        }
        assertThat(column.dot(x)).isCloseTo(-asked - left[keep.length][keep.length], within(ROUNDING));
    }
}
