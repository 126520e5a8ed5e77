package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import java.util.Arrays;
import java.util.List;

/**
 * The stiffness of one cell. Its displacements are ordered by corner, then by surface (outer skin, inner skin, and where
 * there are three the surface inside the core), then as in {@link CellRows}.
 */
final class CellStiffness {
    static final int OUTER = 0;
    static final int INNER = 1;
    static final int MIDDLE = 2;

    private final PanelSpec panel;
    private final CellShape cell;
    private final CellRows rows;
    private final int surfaces;
    private final int size;

    /** Lower triangle by rows. */
    private final double[][] k;

    /** Where stretching and bending are integrated, with the strains of a surface there. */
    private final List<Point> few;

    private CellStiffness(PanelSpec panel, CellShape cell, int surfaces) {
        this.panel = panel;
        this.cell = cell;
        this.rows = new CellRows(cell);
        this.surfaces = surfaces;
        this.size = cell.n * surfaces * CellRows.PER_SURFACE;
        this.k = new double[size][size];
        this.few = Arrays.stream(cell.fewPoints())
                .map(p -> new Point(dA(p), rows.membrane(p[0], p[1]), rows.curvature(p[0], p[1])))
                .toList();
    }

    @SuppressWarnings("ArrayRecordComponent") // three handles kept together, never compared
    private record Point(double areaMm2, double[][] membrane, double[][] curvature) {}

    /**
     * Row-major square matrix.
     *
     * @param surfaces 2, or 3 to split a bonded core into two layers
     */
    static double[] of(PanelSpec panel, CellShape cell, Zone zone, int surfaces) {
        CellStiffness stiffness = new CellStiffness(panel, cell, surfaces);
        stiffness.addSkin(OUTER, panel.outer());
        stiffness.addSkin(INNER, panel.inner());
        if (zone.bonded()) {
            for (Layer layer : Layer.of(panel, surfaces)) {
                stiffness.addShear(layer, zone.material());
                stiffness.addNormal(layer, zone.material());
            }
            stiffness.addBondedInPlane(zone.material().elastic());
        } else {
            stiffness.addRidingCore(zone);
        }
        return stiffness.whole();
    }

    /** Membrane and bending of a thin skin. */
    private void addSkin(int surface, Skin skin) {
        double t = skin.thicknessMm();
        Elastic stretch = skin.elastic().times(t);
        Elastic bend = skin.elastic().times(t * t * t / 12);
        for (Point p : few) {
            addForm(spread(p.membrane, surface), stretch.times(p.areaMm2));
            addForm(spread(p.curvature, surface), bend.times(p.areaMm2));
        }
    }

    /** Transverse shear {@code G c γ²/2} of a core layer, γ = slip / c. */
    private void addShear(Layer layer, CoreMaterial material) {
        double c = layer.thicknessMm();
        for (double[] p : cell.points(cell.n == 4 ? 3 : 4)) {
            double dA = dA(p);
            double[][] slip = slip(layer, p);
            addForm(slip[0], material.gxzMPa() / c * dA);
            addForm(slip[1], material.gyzMPa() / c * dA);
        }
    }

    /** The layer's slip: displacements of its inner face less those of its outer one, and both faces' slopes times their arms. */
    private double[][] slip(Layer layer, double[] p) {
        double[][] one = rows.slip(p[0], p[1], 1, 1);
        double[][] slip = new double[2][size];
        int per = CellRows.PER_SURFACE;
        for (int direction = 0; direction < 2; direction++) {
            for (int i = 0; i < one[direction].length; i++) {
                double value = one[direction][i];
                boolean plane = i % per < 2;
                int at = i / per * surfaces * per + i % per;
                slip[direction][at + layer.inner() * per] += plane ? value : layer.armInnerMm() * value;
                slip[direction][at + layer.outer() * per] += plane ? -value : layer.armOuterMm() * value;
            }
        }
        return slip;
    }

    /** Squeezing {@code Ez/c (w_A - w_B)²/2} of a core layer. */
    private void addNormal(Layer layer, CoreMaterial material) {
        for (double[] p : cell.points(4)) {
            double[] w = rows.deflection(p[0], p[1]);
            double[] squeeze = sum(spread(w, layer.outer()), 1, spread(w, layer.inner()), -1);
            addForm(squeeze, material.ezMPa() / layer.thicknessMm() * dA(p));
        }
    }

    /** In-plane stiffness of a bonded core, its strain linear between the skins. */
    private void addBondedInPlane(Elastic core) {
        if (core.equals(Elastic.NONE)) {
            return;
        }
        double to = panel.outer().thicknessMm();
        double ti = panel.inner().thicknessMm();
        for (Point p : few) {
            double[][] top = level(p, OUTER, to / 2);
            double[][] bottom = level(p, INNER, -ti / 2);
            for (double[] depth : CellShape.gauss(2)) {
                double f = (1 + depth[0]) / 2;
                double[][] strain = new double[3][];
                Arrays.setAll(strain, q -> sum(top[q], 1 - f, bottom[q], f));
                addForm(strain, core.times(depth[1] / 2 * panel.core().thicknessMm() * p.areaMm2));
            }
        }
    }

    /** What remains of the core under a loose outer skin bends and stretches with the inner skin. */
    private void addRidingCore(Zone zone) {
        double remaining = panel.core().thicknessMm() - zone.depthMm();
        Elastic core = zone.material().elastic();
        if (core.equals(Elastic.NONE) || remaining <= 0) {
            return;
        }
        for (Point p : few) {
            for (double[] depth : CellShape.gauss(2)) {
                double z = -panel.inner().thicknessMm() / 2 - remaining * (1 + depth[0]) / 2;
                addForm(level(p, INNER, z), core.times(depth[1] / 2 * remaining * p.areaMm2));
            }
        }
    }

    /** Strains at a height z' above or below a surface's middle. */
    private double[][] level(Point p, int surface, double z) {
        double[][] strain = new double[3][];
        Arrays.setAll(strain, q -> spread(sum(p.membrane[q], 1, p.curvature[q], z), surface));
        return strain;
    }

    private double dA(double[] p) {
        return p[2] * CellShape.determinant(cell.jacobian(p[0], p[1]));
    }

    private double[][] spread(double[][] list, int surface) {
        return Arrays.stream(list).map(row -> spread(row, surface)).toArray(double[][]::new);
    }

    private double[] spread(double[] row, int surface) {
        return spread(row, surface, surfaces);
    }

    /** Puts one surface's row among those of all surfaces. */
    static double[] spread(double[] row, int surface, int surfaces) {
        int per = CellRows.PER_SURFACE;
        double[] wide = new double[row.length * surfaces];
        for (int a = 0; a < row.length / per; a++) {
            System.arraycopy(row, a * per, wide, (a * surfaces + surface) * per, per);
        }
        return wide;
    }

    static double[] sum(double[] a, double fa, double[] b, double fb) {
        double[] c = new double[a.length];
        for (int i = 0; i < c.length; i++) {
            c[i] = fa * a[i] + fb * b[i];
        }
        return c;
    }

    /** Adds {@code factor · row row'}, lower triangle. */
    private void addForm(double[] row, double factor) {
        int[] at = new int[size];
        int n = 0;
        for (int i = 0; i < size; i++) {
            if (row[i] != 0) {
                at[n++] = i;
            }
        }
        for (int i = 0; i < n; i++) {
            double[] to = k[at[i]];
            double left = factor * row[at[i]];
            for (int j = 0; j <= i; j++) {
                to[at[j]] += left * row[at[j]];
            }
        }
    }

    /** Adds {@code e' D e}, lower triangle. */
    private void addForm(double[][] e, Elastic d) {
        int[] at = new int[size];
        int n = 0;
        for (int i = 0; i < size; i++) {
            if (e[0][i] != 0 || e[1][i] != 0 || e[2][i] != 0) {
                at[n++] = i;
            }
        }
        double[] e0 = e[0];
        double[] e1 = e[1];
        double[] e2 = e[2];
        for (int i = 0; i < n; i++) {
            int p = at[i];
            double left0 = d.d11() * e0[p] + d.d12() * e1[p];
            double left1 = d.d12() * e0[p] + d.d22() * e1[p];
            double left2 = d.d33() * e2[p];
            if (n == size) {
                addRow(k[p], e, new double[] {left0, left1, left2}, p + 1);
            } else {
                for (int j = 0; j <= i; j++) {
                    int q = at[j];
                    k[p][q] += left0 * e0[q] + left1 * e1[q] + left2 * e2[q];
                }
            }
        }
    }

    /** Three rows times a number each: a loop over whole rows, which becomes vector code. */
    private static void addRow(double[] to, double[][] rows, double[] factor, int end) {
        double[] e0 = rows[0];
        double[] e1 = rows[1];
        double[] e2 = rows[2];
        double f0 = factor[0];
        double f1 = factor[1];
        double f2 = factor[2];
        for (int q = 0; q < end; q++) {
            to[q] += f0 * e0[q] + f1 * e1[q] + f2 * e2[q];
        }
    }

    private double[] whole() {
        double[] whole = new double[size * size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                whole[i * size + j] = k[i][j];
                whole[j * size + i] = k[i][j];
            }
        }
        return whole;
    }

    /**
     * One layer of core between two surfaces.
     *
     * @param outer the surface on its outer side
     * @param armOuterMm from that surface's middle to the layer's middle, likewise for the inner one
     */
    record Layer(int outer, int inner, double thicknessMm, double armOuterMm, double armInnerMm) {
        /** The whole core with two surfaces; two halves about the surface in its middle with three. */
        static List<Layer> of(PanelSpec panel, int surfaces) {
            double c = panel.core().thicknessMm();
            double to = panel.outer().thicknessMm();
            double ti = panel.inner().thicknessMm();
            if (surfaces == 2) {
                return List.of(new Layer(OUTER, INNER, c, (to + c) / 2, (ti + c) / 2));
            }
            double half = c / 2;
            return List.of(
                    new Layer(OUTER, MIDDLE, half, (to + half) / 2, half / 2),
                    new Layer(MIDDLE, INNER, half, half / 2, (ti + half) / 2));
        }
    }
}
