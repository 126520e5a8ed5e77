package corewright.sandwich;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;

/** Nodes and the triangles and quadrilaterals between them; each cell lies in one zone. */
final class Mesh {
    /** Millimetres. */
    final double[] x;

    final double[] y;

    /** Where each node stood before it was moved onto a boundary: straight lines, which elimination orders like. */
    final double[] gridX;

    final double[] gridY;

    /** Nodes of each cell, counter-clockwise, three or four. */
    final int[][] cells;

    final int[] zone;

    /** Edges with a cell on one side only, as {from, to}, the panel on their left. */
    final List<int[]> boundary = new ArrayList<>();

    /** Edges between a bonded and a loose cell, as {from, to, zone of the loose one}. */
    final List<int[]> rims = new ArrayList<>();

    Mesh(double[][] nodes, int[][] cells, int[] zone, List<Zone> zones) {
        this.x = nodes[0];
        this.y = nodes[1];
        this.gridX = nodes[2];
        this.gridY = nodes[3];
        this.cells = cells;
        this.zone = zone;
        findEdges(zones);
    }

    int nodes() {
        return x.length;
    }

    double distance(int a, int b) {
        return Math.hypot(x[a] - x[b], y[a] - y[b]);
    }

    Envelope box(int cell) {
        Envelope box = new Envelope();
        for (int v : cells[cell]) {
            box.expandToInclude(x[v], y[v]);
        }
        return box;
    }

    /** Cells of which no corner is within a distance of an end of an outer edge or a rim. */
    boolean[] clear(double reach) {
        BitSet ends = new BitSet();
        boundary.forEach(edge -> ends.set(edge[0]));
        boundary.forEach(edge -> ends.set(edge[1]));
        rims.forEach(rim -> ends.set(rim[0]));
        rims.forEach(rim -> ends.set(rim[1]));
        int[] lines = ends.stream().toArray();
        boolean[] near = new boolean[nodes()];
        for (int v = 0; v < near.length; v++) {
            for (int end : lines) {
                double dx = x[v] - x[end];
                double dy = y[v] - y[end];
                near[v] |= dx * dx + dy * dy <= reach * reach;
            }
        }
        boolean[] clear = new boolean[cells.length];
        for (int c = 0; c < clear.length; c++) {
            clear[c] = Arrays.stream(cells[c]).noneMatch(v -> near[v]);
        }
        return clear;
    }

    CellShape shape(int cell) {
        int[] corners = cells[cell];
        double[] cx = new double[corners.length];
        double[] cy = new double[corners.length];
        for (int a = 0; a < corners.length; a++) {
            cx[a] = x[corners[a]];
            cy[a] = y[corners[a]];
        }
        return new CellShape(cx, cy);
    }

    private void findEdges(List<Zone> zones) {
        Map<Long, int[]> open = new LinkedHashMap<>();
        for (int c = 0; c < cells.length; c++) {
            int[] corners = cells[c];
            for (int a = 0; a < corners.length; a++) {
                int from = corners[a];
                int to = corners[(a + 1) % corners.length];
                int[] other = open.remove((long) to * x.length + from);
                if (other == null) {
                    open.put((long) from * x.length + to, new int[] {from, to, c});
                } else if (zones.get(zone[c]).bonded()
                        != zones.get(zone[other[2]]).bonded()) {
                    rims.add(new int[] {from, to, zones.get(zone[c]).bonded() ? zone[other[2]] : zone[c]});
                }
            }
        }
        open.values().forEach(e -> boundary.add(new int[] {e[0], e[1]}));
    }
}
