package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every element must do exactly: rigid motion, constant strain. Tolerances are rounding of double. */
class CellStiffnessTest {
    private static final PanelSpec UNEQUAL = new PanelSpec(
            Panels.rectangle(0, 0, 100, 100),
            List.of(Support.FREE),
            new Skin(3, 11000, 7000, 0.2, 3000),
            Skin.isotropic(2, 20000, 0.3),
            new PanelSpec.Core(12.5, Panels.BALSA),
            List.of());
    private static final Zone BONDED = new Zone(true, Panels.BALSA, 0);
    private static final Zone RIDING = new Zone(false, Panels.BALSA, 5);

    /** Distorted triangles and quadrilaterals. */
    static Stream<CellShape> cells() {
        Random random = new Random(7);
        return Stream.iterate(0, k -> k < 10, k -> k + 1).map(k -> {
            double[] x = k % 2 == 0 ? new double[] {0, 25, 27, -2} : new double[] {0, 25, 3};
            double[] y = k % 2 == 0 ? new double[] {0, 2, 21, 18} : new double[] {0, -3, 19};
            Arrays.setAll(x, i -> x[i] + 4 * random.nextDouble());
            Arrays.setAll(y, i -> y[i] + 4 * random.nextDouble());
            return new CellShape(x, y);
        });
    }

    @ParameterizedTest
    @MethodSource("cells")
    void rigidMotionCostsNothing(CellShape cell) {
        for (Zone zone : List.of(BONDED, RIDING)) {
            double[] k = CellStiffness.of(UNEQUAL, cell, zone, 2);
            for (double[] motion : rigidMotions(cell)) {
                double scale = largest(k) * largest(motion);
                for (double force : times(k, motion)) {
                    assertThat(force / scale).isCloseTo(0, within(1e-13));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cells")
    void hasSixMotionsWithoutEnergyAndNoMore(CellShape cell) {
        double[] k = CellStiffness.of(UNEQUAL, cell, BONDED, 2);
        int n = 10 * cell.n;
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, false, true);
        eigen.decompose(new DMatrixRMaj(n, n, true, k));
        double[] values = new double[n];
        Arrays.setAll(values, i -> eigen.getEigenvalue(i).getReal());
        Arrays.sort(values);

        double top = values[n - 1];
        assertThat(Math.abs(values[5]) / top).isLessThan(1e-13);
        assertThat(values[6] / top).isGreaterThan(1e-10);
    }

    /** Under w = x²/2, xy, y²/2 with the skins turning about one plane: only bending, energy as in a thin sandwich. */
    @ParameterizedTest
    @MethodSource("cells")
    void constantCurvatureGivesTheExactEnergy(CellShape cell) {
        double[] k = CellStiffness.of(UNEQUAL, cell, BONDED, 2);
        double[][] curvatures = {{1, 0, 0}, {0, 1, 0}, {0, 0, 2}, {0.3, -0.7, 1.1}};
        for (double[] c : curvatures) {
            double[] q = bent(cell, c);
            double expected = cell.area() * bendingEnergy(c);
            assertThat(dot(q, times(k, q)) / 2).isCloseTo(expected, within(1e-11 * expected));
        }
    }

    @ParameterizedTest
    @MethodSource("cells")
    void constantStretchGivesTheExactEnergy(CellShape cell) {
        double[] k = CellStiffness.of(UNEQUAL, cell, BONDED, 2);
        double[] e = {0.4, -0.2, 0.7};
        double[] q = new double[10 * cell.n];
        for (int a = 0; a < cell.n; a++) {
            for (int s = 0; s < 2; s++) {
                q[10 * a + 5 * s] = e[0] * cell.x[a] + e[2] / 2 * cell.y[a];
                q[10 * a + 5 * s + 1] = e[1] * cell.y[a] + e[2] / 2 * cell.x[a];
            }
        }
        Elastic all = sum(
                sum(
                        UNEQUAL.outer().elastic().times(3),
                        UNEQUAL.inner().elastic().times(2)),
                Panels.BALSA.elastic().times(12.5));
        double expected = cell.area() * energy(all, e);

        assertThat(dot(q, times(k, q)) / 2).isCloseTo(expected, within(1e-12 * expected));
    }

    /** Skins slid past each other and pressed together evenly: the core's own energy, beside what the skins take. */
    @ParameterizedTest
    @MethodSource("cells")
    void evenSlipAndSqueezeGiveTheCoresEnergy(CellShape cell) {
        double[] k = CellStiffness.of(UNEQUAL, cell, BONDED, 2);
        double[] q = new double[10 * cell.n];
        for (int a = 0; a < cell.n; a++) {
            q[10 * a] = -0.1;
            q[10 * a + 1] = 0.3;
            q[10 * a + 2] = 0.02;
        }
        double c = 12.5;
        double expected = cell.area() * (157 * (0.1 * 0.1 + 0.3 * 0.3) / c + 3900 * 0.02 * 0.02 / c) / 2;

        assertThat(dot(q, times(k, q)) / 2).isCloseTo(expected, within(1e-12 * expected));
    }

    /** Displacements of a surface at height z when the whole turns by w = (cx x² + cy y² + cxy xy)/2. */
    private static double[] bent(CellShape cell, double[] c) {
        double[] height = {-(3 + 12.5) / 2, (2 + 12.5) / 2};
        double[] q = new double[10 * cell.n];
        for (int a = 0; a < cell.n; a++) {
            double x = cell.x[a];
            double y = cell.y[a];
            double wx = c[0] * x + c[2] / 2 * y;
            double wy = c[1] * y + c[2] / 2 * x;
            for (int s = 0; s < 2; s++) {
                int at = 10 * a + 5 * s;
                q[at] = -height[s] * wx;
                q[at + 1] = -height[s] * wy;
                q[at + 2] = (c[0] * x * x + c[1] * y * y + c[2] * x * y) / 2;
                q[at + 3] = -wx;
                q[at + 4] = -wy;
            }
        }
        return q;
    }

    private static double bendingEnergy(double[] c) {
        double energy = 0;
        double[] height = {-(3 + 12.5) / 2, (2 + 12.5) / 2};
        double[] thickness = {3, 2};
        Elastic[] skins = {UNEQUAL.outer().elastic(), UNEQUAL.inner().elastic()};
        for (int s = 0; s < 2; s++) {
            double t = thickness[s];
            energy += energy(skins[s].times(t * height[s] * height[s] + t * t * t / 12), c);
        }
        // the core reaches from -6.25 to +6.25 about its middle
        return energy + energy(Panels.BALSA.elastic().times(12.5 * 12.5 * 12.5 / 12), c);
    }

    private static double energy(Elastic d, double[] e) {
        return dot(d.stress(e), e) / 2;
    }

    private static Elastic sum(Elastic a, Elastic b) {
        return new Elastic(a.d11() + b.d11(), a.d12() + b.d12(), a.d22() + b.d22(), a.d33() + b.d33());
    }

    private static List<double[]> rigidMotions(CellShape cell) {
        double[] height = {-(3 + 12.5) / 2, (2 + 12.5) / 2};
        double[][] motions = new double[6][10 * cell.n];
        for (int a = 0; a < cell.n; a++) {
            for (int s = 0; s < 2; s++) {
                int at = 10 * a + 5 * s;
                motions[0][at] = 1;
                motions[1][at + 1] = 1;
                motions[2][at + 2] = 1;
                motions[3][at] = -cell.y[a];
                motions[3][at + 1] = cell.x[a];
                motions[4][at + 2] = cell.x[a];
                motions[4][at] = -height[s];
                motions[4][at + 3] = -1;
                motions[5][at + 2] = cell.y[a];
                motions[5][at + 1] = -height[s];
                motions[5][at + 4] = -1;
            }
        }
        return List.of(motions);
    }

    private static double[] times(double[] k, double[] q) {
        double[] f = new double[q.length];
        for (int i = 0; i < f.length; i++) {
            for (int j = 0; j < q.length; j++) {
                f[i] += k[i * q.length + j] * q[j];
            }
        }
        return f;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double largest(double[] a) {
        return Arrays.stream(a).map(Math::abs).max().orElseThrow();
    }
}
