package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Dense;
import corewright.linear.DenseFactor;
import corewright.linear.Schur;
import corewright.linear.SparseVector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One loose area on its deflections alone, for many feet. What makes a panel nonlinear is a function of the deflections w of the
 * skins at the area's nodes: von Karman's added strains q(w), three a skin and cell, and contact. All else is linear and is
 * eliminated once. With S of {@link LargeDeflection} parted into w and the others p, and B the membrane forces (times area)
 * by displacements,
 *
 * <pre>
 *   K = S_ww - S_wp S_pp⁻¹ S_pw,   L = -S_wp S_pp⁻¹ B,   M = A Dt - B' S_pp⁻¹ B
 *   energy of what is added to the linear solution:  d'Kd/2 + q'(s + L'd) + q'Mq/2 + contact,   d = w - w0, s = B' x0
 * </pre>
 *
 * <p>exactly the energy of {@link LargeDeflection} at its least over p: the same equilibria, from matrices a fifth as large.
 * {@link ReducedFoot} finds them; forces on the rest of the panel are {@code K d + L q} at w and {@code -B q} at p.
 */
final class ReducedArea {
    /** Unknowns of an area up to which it pays: 4000 take 72 MB for a map and as much again while they are reduced. */
    private static final int MOST = 4000;

    final LargeDeflection large;

    private final Schur schur;

    /** K factored. */
    private final DenseFactor linear;

    /** The unknowns w of S. */
    final int[] w;

    /** K, L and M, whole, and L'. */
    final double[][] bend;

    final double[][] couple;
    final double[][] stretch;
    final double[][] across;

    /** Of each cell's outer, then inner skin, the place of its corners' deflections in w; -1 where held. */
    final int[][] corner;

    /** Of each w the skins of cells, and the corners there, that it is the deflection of: two numbers each. */
    final int[][] cornersOf;

    /** The same of the skins at nodes that may meet. */
    final int[] meetingOuter;

    final int[] meetingInner;

    ReducedArea(LargeDeflection large) {
        this.large = large;
        BlockMatrix s = large.stiffness;
        w = deflections(large);
        corner = new int[2 * large.cells.length][];
        for (int t = 0; t < corner.length; t++) {
            int skin = t % 2;
            corner[t] = Arrays.stream(large.corners[t / 2])
                    .map(node -> place(node, skin))
                    .toArray();
        }
        cornersOf = cornersOf();
        meetingOuter = Arrays.stream(large.meeting).map(node -> place(node, 0)).toArray();
        meetingInner = Arrays.stream(large.meeting).map(node -> place(node, 1)).toArray();
        Schur.Left reduced = Schur.of(s, large.on.x, large.on.y, w, membrane());
        schur = reduced.others();
        double[][] left = reduced.matrix();
        int n = w.length;
        bend = part(left, 0, n, 0, n);
        couple = part(left, 0, n, n, left.length);
        stretch = part(left, n, left.length, n, left.length);
        across = part(left, n, left.length, 0, n);
        addOwnStretch();
        linear = DenseFactor.of(bend);
    }

    static boolean pays(LargeDeflection large) {
        return large.stiffness.size() <= MOST;
    }

    private static double[][] part(double[][] a, int from, int to, int left, int right) {
        double[][] part = new double[to - from][];
        Arrays.setAll(part, i -> Arrays.copyOfRange(a[from + i], left, right));
        return part;
    }

    /** Unknowns that are a skin's deflection. */
    private static int[] deflections(LargeDeflection large) {
        int[] all = new int[large.stiffness.size()];
        int n = 0;
        for (int k = 0; k < large.nodes.length; k++) {
            double[] outer = large.model.nodes.row(large.nodes[k], 2);
            double[] inner = large.model.nodes.row(large.nodes[k], CellRows.PER_SURFACE + 2);
            for (int c = 0; c < outer.length; c++) {
                if (outer[c] != 0 || inner[c] != 0) {
                    all[n++] = large.stiffness.first(k) + c;
                }
            }
        }
        return Arrays.copyOf(all, n);
    }

    /** Place in w of a skin's deflection at a node of the area; -1 where it is held. */
    private int place(int node, int skin) {
        double[] row = large.model.nodes.row(large.nodes[node], skin * CellRows.PER_SURFACE + 2);
        for (int c = 0; c < row.length; c++) {
            if (row[c] != 0) {
                return Arrays.binarySearch(w, large.stiffness.first(node) + c);
            }
        }
        return -1;
    }

    private int[][] cornersOf() {
        List<List<Integer>> of = new ArrayList<>();
        Arrays.stream(w).forEach(i -> of.add(new ArrayList<>()));
        for (int t = 0; t < corner.length; t++) {
            for (int a = 0; a < corner[t].length; a++) {
                if (corner[t][a] >= 0) {
                    of.get(corner[t][a]).addAll(List.of(t, a));
                }
            }
        }
        return of.stream().map(all -> all.stream().mapToInt(i -> i).toArray()).toArray(int[][]::new);
    }

    /** Membrane forces of each cell's skins, times its area, by displacements. */
    private List<SparseVector> membrane() {
        List<SparseVector> columns = new ArrayList<>();
        for (int t = 0; t < corner.length; t++) {
            Karman cell = large.karman[t / 2];
            int[] nodes = large.corners[t / 2];
            List<Map<Integer, Double>> three = List.of(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
            for (int a = 0; a < nodes.length; a++) {
                add(
                        three,
                        nodes[a],
                        t % 2,
                        0,
                        cell.stretch[t % 2].stress(new double[] {cell.nx[a], 0, cell.ny[a]}),
                        cell.area);
                add(
                        three,
                        nodes[a],
                        t % 2,
                        1,
                        cell.stretch[t % 2].stress(new double[] {0, cell.ny[a], cell.nx[a]}),
                        cell.area);
            }
            three.forEach(column -> columns.add(SparseVector.of(column)));
        }
        return columns;
    }

    private void add(
            List<Map<Integer, Double>> three, int node, int skin, int direction, double[] stress, double area) {
        double[] row = large.model.nodes.row(large.nodes[node], skin * CellRows.PER_SURFACE + direction);
        for (int c = 0; c < row.length; c++) {
            if (row[c] != 0) {
                for (int k = 0; k < 3; k++) {
                    three.get(k).merge(large.stiffness.first(node) + c, area * row[c] * stress[k], Double::sum);
                }
            }
        }
    }

    private void addOwnStretch() {
        for (int t = 0; t < corner.length; t++) {
            Karman cell = large.karman[t / 2];
            for (int k = 0; k < 3; k++) {
                double[] unit = new double[3];
                unit[k] = 1;
                double[] stress = cell.stretch[t % 2].stress(unit);
                for (int l = 0; l < 3; l++) {
                    stretch[3 * t + l][3 * t + k] += cell.area * stress[l];
                }
            }
        }
    }

    /** What forces anywhere on the panel leave on the deflections, then on the membrane strains; by rows. */
    double[][] carried(List<SparseVector> forces) {
        return schur.carried(large.on.carried(forces));
    }

    /** The linear deflections by what forces leave here. */
    double[] deflections(double[] carried) {
        return linear.solve(Arrays.copyOf(carried, w.length));
    }

    /** Membrane forces of the linear solution, {@code L'w0} less what loads leave on the strains. */
    double[] membraneForces(double[] w0, double[] carried) {
        double[] s = times(couple, w0);
        Arrays.setAll(s, k -> s[k] - carried[w.length + k]);
        return s;
    }

    /** {@code a'x}, row by row: several times as fast as products of rows with x. */
    double[] times(double[][] a, double[] x) {
        double[] y = new double[a[0].length];
        Dense.subtract(y, a, x, 0, 0);
        Arrays.setAll(y, i -> -y[i]);
        return y;
    }
}
