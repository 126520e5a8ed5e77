package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.sandwich.spec.PanelSpec;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Puts a panel's stiffness together from its cells, rims and coamings. */
final class Assembly {
    private final PanelSpec panel;
    private final Mesh mesh;
    private final List<Zone> zones;
    private final Nodes nodes;

    /** A number for each node; nodes tied alike have the same. */
    private final int[] tie;

    Assembly(PanelSpec panel, Mesh mesh, List<Zone> zones, Nodes nodes) {
        this.panel = panel;
        this.mesh = mesh;
        this.zones = zones;
        this.nodes = nodes;
        tie = new int[mesh.nodes()];
        Map<List<Double>, Integer> kinds = new HashMap<>();
        for (int v = 0; v < tie.length; v++) {
            int next = kinds.size();
            tie[v] = kinds.computeIfAbsent(nodes.tie(v), t -> next);
        }
    }

    /** @param cellMatrix of each cell ({@link CellStiffness}) */
    BlockMatrix matrix(IntFunction<double[]> cellMatrix) {
        BlockMatrix k = new BlockMatrix(nodes.size, mesh.cells);
        addCells(k, cellMatrix);
        addRims(k);
        panel.openings().coaming().ifPresent(coaming -> addCoaming(k, coaming));
        return k;
    }

    /** Adds what the core under loose skins does at their rims. */
    private void addRims(BlockMatrix k) {
        RimShear shear = new RimShear(panel, mesh);
        for (int[] rim : mesh.rims) {
            Zone loose = zones.get(rim[2]);
            if (!shear.acts(loose)) {
                continue;
            }
            addEdge(k, rim[0], rim[1], shear.of(rim[0], rim[1], loose));
        }
    }

    private void addCoaming(BlockMatrix k, PanelSpec.Coaming coaming) {
        CoamingBeam beam = new CoamingBeam(panel, coaming);
        for (int[] edge : mesh.boundary) {
            if (Edges.atCoaming(panel, mesh, edge)) {
                double dx = mesh.x[edge[1]] - mesh.x[edge[0]];
                double dy = mesh.y[edge[1]] - mesh.y[edge[0]];
                addEdge(k, edge[0], edge[1], beam.of(dx, dy));
            }
        }
    }

    /** Adds stiffness on the displacements of both skins at two neighbouring nodes. */
    private void addEdge(BlockMatrix k, int from, int to, double[] edge) {
        int stride = 2 * CellRows.PER_SURFACE;
        int[] ends = {from, to};
        for (int a = 0; a < 2; a++) {
            for (int b = 0; b < 2; b++) {
                k.add(ends[a], ends[b], nodes.project(edge, 2 * stride, a, ends[a], b, ends[b], stride));
            }
        }
    }

    private void addCells(BlockMatrix k, IntFunction<double[]> cellMatrix) {
        Map<List<Object>, double[][]> blocks = new HashMap<>();
        int batch = 512; // cells at a time: enough to share among threads, few enough to keep in memory
        for (int from = 0; from < mesh.cells.length; from += batch) {
            int start = from;
            double[][] part = IntStream.range(from, Math.min(from + batch, mesh.cells.length))
                    .parallel()
                    .mapToObj(cellMatrix)
                    .toArray(double[][]::new);
            for (int c = 0; c < part.length; c++) {
                addCell(k, start + c, part[c], blocks);
            }
        }
    }

    /** @param known blocks between corners, by a cell's stiffness and the ties of its corners: most cells of a grid have them alike */
    private void addCell(BlockMatrix k, int cell, double[] stiffness, Map<List<Object>, double[][]> known) {
        int[] corners = mesh.cells[cell];
        int n = corners.length;
        List<Object> kind = new ArrayList<>(List.of(stiffness));
        for (int v : corners) {
            kind.add(tie[v]);
        }
        double[][] blocks = known.computeIfAbsent(kind, of -> new double[n * n][]);
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                if (corners[a] >= corners[b]) {
                    if (blocks[a * n + b] == null) {
                        blocks[a * n + b] = block(cell, stiffness, a, b);
                    }
                    k.add(corners[a], corners[b], blocks[a * n + b]);
                }
            }
        }
    }

    private double[] block(int cell, double[] stiffness, int a, int b) {
        int[] corners = mesh.cells[cell];
        int rows = (int) Math.round(Math.sqrt(stiffness.length));
        double[] block = nodes.project(stiffness, rows, a, corners[a], b, corners[b], rows / corners.length);
        if (zones.get(mesh.zone[cell]).bonded()) {
            nodes.part(corners[a], corners[b], block);
        }
        return block;
    }
}
