package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Condensation;
import corewright.linear.SparseVector;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** A panel's linear stiffness on the nodes of some of its cells, all else eliminated. */
final class CondensedCells {
    private final PanelModel model;
    private final int[] cells;
    final int[] nodes;

    /** Each cell's corners, by their number among the nodes. */
    final int[][] corners;

    private final List<Condensation> steps;
    final BlockMatrix stiffness;

    /** First unknown of each node in the whole panel. */
    private final int[] firsts;

    final double[] x;
    final double[] y;

    /** Nodes that other cells share, by their number: all coupled by what is eliminated. */
    final int[] rim;

    /** @param cells ascending */
    CondensedCells(PanelModel model, int[] cells) {
        this.model = model;
        this.cells = cells;
        nodes = Arrays.stream(cells)
                .flatMap(c -> Arrays.stream(model.mesh.cells[c]))
                .sorted()
                .distinct()
                .toArray();
        corners = Arrays.stream(cells)
                .mapToObj(c ->
                        Arrays.stream(model.mesh.cells[c]).map(this::number).toArray())
                .toArray(int[][]::new);
        steps = steps();
        stiffness = steps.get(steps.size() - 1).matrix();
        rim = rim();
        firsts = Arrays.stream(nodes).map(model.matrix::first).toArray();
        x = at(nodes, model.mesh.gridX);
        y = at(nodes, model.mesh.gridY);
    }

    /** The panel condensed on the cells' nodes, by way of all loose areas where they are of these. */
    private List<Condensation> steps() {
        Condensation around = model.around == null ? null : model.around.kept();
        int[] all = model.loose.corners;
        boolean within = Arrays.stream(nodes).allMatch(v -> Arrays.binarySearch(all, v) >= 0);
        if (around == null || !within) {
            return List.of(Condensation.of(model.matrix, model.mesh.gridX, model.mesh.gridY, nodes));
        }
        if (all.length == nodes.length) {
            return List.of(around);
        }
        int[] keep = Arrays.stream(nodes).map(v -> Arrays.binarySearch(all, v)).toArray();
        Condensation alone =
                Condensation.of(around.matrix(), at(all, model.mesh.gridX), at(all, model.mesh.gridY), keep);
        return List.of(around, alone);
    }

    private static double[] at(int[] nodes, double[] place) {
        return Arrays.stream(nodes).mapToDouble(v -> place[v]).toArray();
    }

    /** What forces anywhere on the panel leave on the cells' nodes, by rows. */
    double[][] carried(List<SparseVector> forces) {
        double[][] carried = steps.get(0).carried(forces);
        for (Condensation step : steps.subList(1, steps.size())) {
            carried = step.carried(Arrays.stream(carried).map(SparseVector::of).toList());
        }
        return carried;
    }

    private int[] rim() {
        boolean[] shared = new boolean[nodes.length];
        for (int c = 0; c < model.mesh.cells.length; c++) {
            if (Arrays.binarySearch(cells, c) < 0) {
                for (int v : model.mesh.cells[c]) {
                    if (number(v) >= 0) {
                        shared[number(v)] = true;
                    }
                }
            }
        }
        return IntStream.range(0, nodes.length).filter(k -> shared[k]).toArray();
    }

    int number(int node) {
        return Arrays.binarySearch(nodes, node);
    }

    /** Of a solution of the whole panel, what belongs to the nodes of the cells. */
    double[] local(double[] whole) {
        double[] local = new double[stiffness.size()];
        for (int k = 0; k < nodes.length; k++) {
            System.arraycopy(whole, model.matrix.first(nodes[k]), local, stiffness.first(k), stiffness.size(k));
        }
        return local;
    }

    /** What is asked of displacements, if all of it is at the nodes of the cells. */
    OptionalDouble at(double[] local, SparseVector ask) {
        double sum = 0;
        for (int e = 0; e < ask.length(); e++) {
            int own = own(ask.index(e));
            if (own < 0) {
                return OptionalDouble.empty();
            }
            sum += ask.value(e) * local[own];
        }
        return OptionalDouble.of(sum);
    }

    /** Of an unknown of the panel, its number among those of the cells' nodes; negative if it is not among them. */
    private int own(int unknown) {
        int k = Arrays.binarySearch(firsts, unknown);
        k = k < 0 ? -k - 2 : k;
        int within = k < 0 ? 0 : unknown - firsts[k];
        return k < 0 || within >= stiffness.size(k) ? -1 : stiffness.first(k) + within;
    }
}
