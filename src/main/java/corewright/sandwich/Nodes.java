package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.UnsupportedPanelException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The unknowns of each node and how its fifteen displacements (outer skin, inner skin, middle of the core; five each) follow
 * from them: {@code q = T x}. T holds supports, oblique edges, and the middle surface where it is not free.
 */
final class Nodes {
    static final int PER_NODE = 15;

    /** Number of unknowns of each node. */
    final int[] size;

    /** How many of these come first and are stretching that hangs together with nothing else in bonded cells. */
    final int[] stretch;

    /** T of each node, fifteen rows by size columns, row-major. */
    private final double[][] transform;

    /** The same without zeros, row by row. */
    private final Entries[] entries;

    /** Nodes at which the core's middle is free. */
    final boolean[] middle;

    private final boolean[] plain;

    /** A matrix's entries that are not zero. */
    @SuppressWarnings("ArrayRecordComponent") // three handles kept together, never compared
    private record Entries(int[] row, int[] column, double[] value) {}

    private Nodes(Mesh mesh, RimLayers layers) {
        size = new int[mesh.nodes()];
        stretch = new int[mesh.nodes()];
        transform = new double[mesh.nodes()][];
        entries = new Entries[mesh.nodes()];
        middle = layers.free;
        plain = new boolean[mesh.nodes()];
    }

    /**
     * @param together nodes at which both skins deflect and turn alike
     * @param neutral in which the panel stretches without bending; null where both hang together
     */
    static Nodes of(
            PanelSpec panel,
            Mesh mesh,
            List<Zone> zones,
            RimLayers layers,
            BitSet together,
            @Nullable NeutralPlane neutral) {
        Nodes nodes = new Nodes(mesh, layers);
        Edges edges = new Edges(panel, mesh);
        requireHeld(mesh, edges);
        List<List<double[]>> outer = stopDrift(mesh, edges.plane);
        boolean joined = Arrays.stream(mesh.zone).anyMatch(z -> zones.get(z).bonded());
        List<List<double[]>> inner = joined ? edges.plane : outer;
        BitSet bonded = bonded(mesh, zones);
        for (int v = 0; v < mesh.nodes(); v++) {
            List<double[]> columns = new ArrayList<>();
            boolean apart = neutral != null && bonded.get(v);
            if (neutral != null && apart) {
                addStretch(columns, outer.get(v));
                nodes.stretch[v] = columns.size();
                addSlip(columns, neutral, inner.get(v));
            }
            if (together.get(v)) {
                if (!apart) {
                    addPair(columns, 0, outer.get(v));
                    addPair(columns, CellRows.PER_SURFACE, inner.get(v));
                }
                addTogether(columns, edges.deflection[v], edges.plane.get(v));
                columns.forEach(c -> tieMiddle(panel, c));
                nodes.set(v, columns, false);
                continue;
            }
            if (!apart) {
                addPair(columns, 0, outer.get(v));
            }
            addBending(columns, 0, edges.deflection[v], edges.plane.get(v));
            if (!apart) {
                addPair(columns, CellRows.PER_SURFACE, inner.get(v));
            }
            addBending(columns, 1, edges.deflection[v], edges.plane.get(v));
            if (nodes.middle[v]) {
                columns.subList(0, nodes.stretch[v])
                        .forEach(c -> System.arraycopy(c, 0, c, 2 * CellRows.PER_SURFACE, 2));
                addPair(columns, 2 * CellRows.PER_SURFACE, edges.plane.get(v));
                addBending(columns, 2, edges.deflection[v], edges.plane.get(v));
            } else {
                columns.forEach(c -> tieMiddle(panel, c));
            }
            nodes.set(v, columns, !apart && edges.plane.get(v).isEmpty() && columns.size() == 10);
        }
        return nodes;
    }

    private void set(int v, List<double[]> columns, boolean isPlain) {
        size[v] = columns.size();
        plain[v] = isPlain && !middle[v];
        transform[v] = new double[PER_NODE * size[v]];
        for (int c = 0; c < size[v]; c++) {
            for (int row = 0; row < PER_NODE; row++) {
                transform[v][row * size[v] + c] = columns.get(c)[row];
            }
        }
        entries[v] = entries(transform[v], size[v]);
    }

    /** T of a node, to be compared with another's. */
    List<Double> tie(int v) {
        Entries t = entries[v];
        List<Double> all = new ArrayList<>(List.of((double) size[v]));
        for (int e = 0; e < t.value.length; e++) {
            all.add((double) (t.row[e] * PER_NODE + t.column[e]));
            all.add(t.value[e]);
        }
        return all;
    }

    private static Entries entries(double[] transform, int columns) {
        int n = 0;
        for (double value : transform) {
            n += value != 0 ? 1 : 0;
        }
        Entries found = new Entries(new int[n], new int[n], new double[n]);
        int next = 0;
        for (int e = 0; e < transform.length; e++) {
            if (transform[e] != 0) {
                found.row[next] = e / columns;
                found.column[next] = e % columns;
                found.value[next++] = transform[e];
            }
        }
        return found;
    }

    private static void requireHeld(Mesh mesh, Edges edges) {
        RigidBody body = new RigidBody();
        for (int v = 0; v < mesh.nodes(); v++) {
            if (edges.deflection[v]) {
                body.hold(1, mesh.x[v] - mesh.x[0], mesh.y[v] - mesh.y[0]);
                for (double[] d : edges.plane.get(v)) {
                    body.hold(0, d[0], d[1]);
                }
            }
        }
        if (!body.complete()) {
            throw new UnsupportedPanelException("its supports leave the panel free to move or to tilt");
        }
    }

    /** Adds what holds the panel in its plane where the supports do not: at node A, then at the node farthest from it. */
    private static List<List<double[]>> stopDrift(Mesh mesh, List<List<double[]>> held) {
        RigidBody body = new RigidBody();
        for (int v = 0; v < mesh.nodes(); v++) {
            for (double[] d : held.get(v)) {
                holdInPlane(body, mesh, v, d);
            }
        }
        if (body.complete()) {
            return held;
        }
        List<List<double[]>> more = new ArrayList<>(held);
        int far = 0;
        for (int v = 1; v < mesh.nodes(); v++) {
            if (distance(mesh, v) > distance(mesh, far)) {
                far = v;
            }
        }
        double ux = -(mesh.y[far] - mesh.y[0]) / distance(mesh, far);
        double uy = (mesh.x[far] - mesh.x[0]) / distance(mesh, far);
        offer(body, mesh, more, 0, new double[] {-uy, ux});
        offer(body, mesh, more, 0, new double[] {ux, uy});
        offer(body, mesh, more, far, new double[] {ux, uy});
        return more;
    }

    private static double distance(Mesh mesh, int v) {
        return Math.hypot(mesh.x[v] - mesh.x[0], mesh.y[v] - mesh.y[0]);
    }

    private static void offer(RigidBody body, Mesh mesh, List<List<double[]>> held, int v, double[] d) {
        if (held.get(v).isEmpty() || held.get(v).size() == 1 && v == 0) {
            if (holdInPlane(body, mesh, v, d)) {
                List<double[]> list = new ArrayList<>(held.get(v));
                list.add(d);
                held.set(v, list);
            }
        }
    }

    private static boolean holdInPlane(RigidBody body, Mesh mesh, int v, double[] d) {
        double scale = Math.max(1, distance(mesh, v));
        return body.hold(
                d[0] / scale, d[1] / scale, (-d[0] * (mesh.y[v] - mesh.y[0]) + d[1] * (mesh.x[v] - mesh.x[0])) / scale);
    }

    private static BitSet bonded(Mesh mesh, List<Zone> zones) {
        BitSet bonded = new BitSet();
        for (int c = 0; c < mesh.cells.length; c++) {
            if (zones.get(mesh.zone[c]).bonded()) {
                Arrays.stream(mesh.cells[c]).forEach(bonded::set);
            }
        }
        return bonded;
    }

    /** Both skins displaced alike in their plane. */
    private static void addStretch(List<double[]> columns, List<double[]> held) {
        addPair(columns, 0, held);
        columns.forEach(c -> System.arraycopy(c, 0, c, CellRows.PER_SURFACE, 2));
    }

    /** The inner skin displaced in its plane against the outer one, what stretches as a whole left in its place. */
    private static void addSlip(List<double[]> columns, NeutralPlane neutral, List<double[]> held) {
        int shared = columns.size();
        addPair(columns, 0, held);
        for (double[] column : columns.subList(shared, columns.size())) {
            for (int k = 0; k < 2; k++) {
                column[CellRows.PER_SURFACE + k] = neutral.outer() * column[k];
                column[k] *= -neutral.inner();
            }
        }
    }

    private static void addBending(List<double[]> columns, int surface, boolean deflection, List<double[]> rotation) {
        int at = surface * CellRows.PER_SURFACE;
        if (!deflection) {
            double[] column = new double[PER_NODE];
            column[at + 2] = 1;
            columns.add(column);
        }
        addPair(columns, at + 3, rotation);
    }

    /** One deflection and one rotation for both skins. */
    private static void addTogether(List<double[]> columns, boolean deflection, List<double[]> rotation) {
        int shared = columns.size();
        addBending(columns, 0, deflection, rotation);
        for (double[] column : columns.subList(shared, columns.size())) {
            System.arraycopy(column, 2, column, CellRows.PER_SURFACE + 2, 3);
        }
    }

    /** Adds what is free of a vector in the plane. */
    private static void addPair(List<double[]> columns, int at, List<double[]> held) {
        List<double[]> free =
                switch (held.size()) {
                    case 0 -> List.of(new double[] {1, 0}, new double[] {0, 1});
                    case 1 -> List.of(new double[] {-held.get(0)[1], held.get(0)[0]});
                    default -> List.of();
                };
        for (double[] direction : free) {
            double[] column = new double[PER_NODE];
            column[at] = direction[0];
            column[at + 1] = direction[1];
            columns.add(column);
        }
    }

    /** The core's middle halfway between its faces, as in a core that is straight through its depth. */
    private static void tieMiddle(PanelSpec panel, double[] column) {
        double to = panel.outer().thicknessMm();
        double ti = panel.inner().thicknessMm();
        for (int k = 0; k < CellRows.PER_SURFACE; k++) {
            column[10 + k] = (column[k] + column[5 + k]) / 2;
        }
        for (int k = 0; k < 2; k++) {
            column[10 + k] += (to / 2 * column[3 + k] - ti / 2 * column[8 + k]) / 2;
        }
    }

    /** Takes what a block between two nodes of a bonded cell has between stretching and the rest, which rounding and little else leaves. */
    void part(int a, int b, double[] block) {
        if (stretch[a] == 0 && stretch[b] == 0) {
            return;
        }
        for (int i = 0; i < size[a]; i++) {
            for (int j = 0; j < size[b]; j++) {
                if (i < stretch[a] != j < stretch[b]) {
                    block[i * size[b] + j] = 0;
                }
            }
        }
    }

    /** Displacements of a node, fifteen, from the solution. */
    double[] displacements(int v, double[] x, int first) {
        double[] q = new double[PER_NODE];
        Entries t = entries[v];
        for (int e = 0; e < t.value.length; e++) {
            q[t.row[e]] += t.value[e] * x[first + t.column[e]];
        }
        return q;
    }

    /** Adds {@code T' f} of a node's forces to a right-hand side. */
    void addForces(int v, double[] forces, double[] rightHandSide, int first) {
        Entries t = entries[v];
        for (int e = 0; e < t.value.length; e++) {
            rightHandSide[first + t.column[e]] += t.value[e] * forces[t.row[e]];
        }
    }

    /** Row of T: how one displacement of a node follows from its unknowns. */
    double[] row(int v, int displacement) {
        return Arrays.copyOfRange(transform[v], displacement * size[v], (displacement + 1) * size[v]);
    }

    /**
     * {@code T_a' K_ab T_b} of a block between two corners of a cell.
     *
     * @param k the cell's matrix
     * @param n its rows
     * @param ca corner number of a in the cell
     * @param stride displacements a corner, 10 or 15
     */
    double[] project(double[] k, int n, int ca, int a, int cb, int b, int stride) {
        if (plain[a] && plain[b] && stride == 10) {
            double[] block = new double[100];
            for (int i = 0; i < 10; i++) {
                System.arraycopy(k, (ca * 10 + i) * n + cb * 10, block, i * 10, 10);
            }
            return block;
        }
        double[] half = new double[size[a] * stride]; // T_a' K_ab
        Entries left = entries[a];
        for (int e = 0; e < left.value.length && left.row[e] < stride; e++) {
            int from = (ca * stride + left.row[e]) * n + cb * stride;
            int to = left.column[e] * stride;
            double value = left.value[e];
            for (int j = 0; j < stride; j++) {
                half[to + j] += value * k[from + j];
            }
        }
        double[] block = new double[size[a] * size[b]];
        Entries right = entries[b];
        for (int e = 0; e < right.value.length && right.row[e] < stride; e++) {
            double value = right.value[e];
            int from = right.row[e];
            int to = right.column[e];
            for (int c = 0; c < size[a]; c++) {
                block[c * size[b] + to] += value * half[c * stride + from];
            }
        }
        return block;
    }

    /** Keeps track of which rigid motions (three in the plane, three out of it) are held already. */
    private static final class RigidBody {
        /** A row less than this part independent of the others adds nothing. */
        private static final double INDEPENDENT = 1e-6;

        private final List<double[]> basis = new ArrayList<>();

        /** Takes in one constraint, given how much each of three motions violates it; says whether it was new. */
        boolean hold(double... row) {
            double[] rest = row.clone();
            double before = norm(rest);
            for (double[] b : basis) {
                double along = rest[0] * b[0] + rest[1] * b[1] + rest[2] * b[2];
                Arrays.setAll(rest, k -> rest[k] - along * b[k]);
            }
            double length = norm(rest);
            if (basis.size() == 3 || length <= INDEPENDENT * before) {
                return false;
            }
            Arrays.setAll(rest, k -> rest[k] / length);
            basis.add(rest);
            return true;
        }

        boolean complete() {
            return basis.size() == 3;
        }

        private static double norm(double[] v) {
            return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        }
    }
}
