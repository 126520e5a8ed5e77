package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A loose skin comes to rest on what is below it. At each node inside a loose area the skins may near each other by the gap
 * and no more; beyond it a stiff bed of springs pushes them apart.
 *
 * <p>With d the approach without contact, C the approach at one node by a unit push at another, and λ the pushes of the
 * nodes in touch, {@code (C + 1/k) λ = d - gap}. Which nodes touch is found by trial: those that pull are let go, those
 * that overlap are taken in. C is made from the panel's one factorisation, a column the first time a node touches.
 */
final class Contact {
    /** MPa per mm of a bed under a bare skin; 30 to 3000 give the same deflections within 0.1 %. */
    private static final double BED = 300;

    /** Trials seen were 4 to 15. */
    private static final int TRIALS = 60;

    private final PanelModel model;
    private final double[] free;
    private final double[] gap;

    /** Springs under each node, N/mm. */
    final double[] stiffness;

    private final TreeMap<Integer, double[]> columns = new TreeMap<>();

    Contact(PanelModel model, double[] free) {
        this.model = model;
        this.free = free;
        int n = model.mesh.nodes();
        gap = new double[n];
        stiffness = new double[n];
        Arrays.fill(gap, Double.POSITIVE_INFINITY);
        findLooseNodes();
    }

    /** The solution with contact, from the one without. */
    static double[] settle(PanelModel model, double[] free) {
        return new Contact(model, free).settle();
    }

    /** Gap and springs of nodes all of whose cells are loose. */
    private void findLooseNodes() {
        boolean[] bonded = new boolean[gap.length];
        for (int c = 0; c < model.mesh.cells.length; c++) {
            Zone zone = model.zones.get(model.mesh.zone[c]);
            double remaining = model.panel.core().thicknessMm() - zone.depthMm();
            double bed = remaining > 0 ? Math.min(BED, zone.material().ezMPa() / remaining) : BED;
            int[] corners = model.mesh.cells[c];
            for (int v : corners) {
                bonded[v] |= zone.bonded();
                gap[v] = Math.min(gap[v], zone.depthMm());
                stiffness[v] += bed * model.mesh.shape(c).area() / corners.length;
            }
        }
        for (int v = 0; v < gap.length; v++) {
            if (bonded[v]) {
                gap[v] = Double.POSITIVE_INFINITY;
            }
        }
    }

    private double[] settle() {
        boolean[] touching = new boolean[gap.length];
        double[] x = free;
        for (int trial = 0; trial < TRIALS; trial++) {
            boolean changed = takeInOverlaps(x, touching);
            int[] nodes =
                    IntStream.range(0, gap.length).filter(v -> touching[v]).toArray();
            double[] push = pushes(nodes);
            for (int k = 0; k < nodes.length; k++) {
                if (push[k] < 0) { // it pulls
                    touching[nodes[k]] = false;
                    changed = true;
                }
            }
            if (!changed) {
                return x;
            }
            x = pushed(nodes, push);
        }
        return x;
    }

    /** Adds nodes that overlap by more than rounding; says whether there were any. */
    private boolean takeInOverlaps(double[] x, boolean[] touching) {
        boolean any = false;
        for (int v = 0; v < gap.length; v++) {
            if (!touching[v] && gap[v] < Double.POSITIVE_INFINITY && approach(v, x) - gap[v] > 1e-9) {
                touching[v] = true;
                any = true;
            }
        }
        return any;
    }

    /** By how much a loose skin passes its gap at a node; not above 0 where it does not, or where nothing is loose. */
    double overlap(int v, double[] x) {
        return gap[v] < Double.POSITIVE_INFINITY ? approach(v, x) - gap[v] : Double.NEGATIVE_INFINITY;
    }

    /** Forces of a node that drive the outer skin inward and the inner one outward. */
    static double[] pair(double forceN) {
        double[] forces = new double[Nodes.PER_NODE];
        forces[2] = forceN;
        forces[CellRows.PER_SURFACE + 2] = -forceN;
        return forces;
    }

    private double approach(int v, double[] x) {
        double[] q = model.nodes.displacements(v, x, model.matrix.first(v));
        return q[2] - q[CellRows.PER_SURFACE + 2];
    }

    private double[] pushes(int[] nodes) {
        int n = nodes.length;
        if (n == 0) {
            return new double[0];
        }
        List<Integer> missing = new ArrayList<>();
        for (int v : nodes) {
            if (!columns.containsKey(v)) {
                missing.add(v);
            }
        }
        double[][] solved = missing.stream().parallel().map(this::column).toArray(double[][]::new);
        for (int k = 0; k < solved.length; k++) {
            columns.put(missing.get(k), solved[k]);
        }
        double[] c = new double[n * n];
        double[] b = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                c[i * n + j] = approach(nodes[i], column(nodes, j)) + (i == j ? 1 / stiffness[nodes[i]] : 0);
            }
            b[i] = approach(nodes[i], free) - gap[nodes[i]];
        }
        BlockMatrix dense = new BlockMatrix(new int[] {n}, new int[][] {{0}});
        dense.add(0, 0, c);
        return Cholesky.factor(dense, new double[1], new double[1]).solve(b);
    }

    private double[] column(int[] nodes, int k) {
        return Objects.requireNonNull(columns.get(nodes[k]));
    }

    /** Solution for a unit push that drives the skins towards each other at a node. */
    private double[] column(int v) {
        double[] b = new double[model.matrix.size()];
        model.nodes.addForces(v, pair(1), b, model.matrix.first(v));
        return model.factor.solve(b);
    }

    private double[] pushed(int[] nodes, double[] push) {
        double[] x = free.clone();
        for (int k = 0; k < nodes.length; k++) {
            double[] column = column(nodes, k);
            for (int i = 0; i < x.length; i++) {
                x[i] -= push[k] * column[i];
            }
        }
        return x;
    }

    /** Where a loose skin nears what is below most: node, approach, gap. */
    record Nearest(int node, double approachMm, double gapMm) {}

    static Optional<Nearest> nearest(PanelModel model, double[] x) {
        Contact contact = new Contact(model, x);
        Nearest best = null;
        for (int v = 0; v < contact.gap.length; v++) {
            if (contact.gap[v] < Double.POSITIVE_INFINITY) {
                double approach = contact.approach(v, x);
                if (best == null || approach > best.approachMm) {
                    best = new Nearest(v, approach, contact.gap[v]);
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
