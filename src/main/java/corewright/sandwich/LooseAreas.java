package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where skins are loose: the cells whose skins are on their own, and the nodes inside them at which a skin can meet what is
 * below. At such a node the skins may near each other by the gap and no more; beyond it a stiff bed pushes them apart.
 */
final class LooseAreas {
    /** MPa per mm of a bed under a bare skin; 30 to 3000 give the same deflections within 0.1 %. */
    private static final double BED = 300;

    /** Cells without a bond, ascending. */
    final int[] cells;

    /** Nodes of these cells, ascending. */
    final int[] corners;

    /** Nodes all of whose cells are loose, ascending; gap and springs (N/mm) of each. */
    final int[] nodes;

    final double[] gap;
    final double[] spring;

    private final Mesh mesh;

    LooseAreas(PanelSpec panel, Mesh mesh, List<Zone> zones) {
        this.mesh = mesh;
        double[] gaps = new double[mesh.nodes()];
        BitSet touched = new BitSet();
        double[] springs = new double[mesh.nodes()];
        boolean[] bonded = new boolean[mesh.nodes()];
        Arrays.fill(gaps, Double.POSITIVE_INFINITY);
        List<Integer> loose = new ArrayList<>();
        for (int c = 0; c < mesh.cells.length; c++) {
            Zone zone = zones.get(mesh.zone[c]);
            double remaining = panel.core().thicknessMm() - zone.depthMm();
            double bed = remaining > 0 ? Math.min(BED, zone.material().ezMPa() / remaining) : BED;
            if (!zone.bonded()) {
                loose.add(c);
            }
            for (int v : mesh.cells[c]) {
                bonded[v] |= zone.bonded();
                if (!zone.bonded()) {
                    touched.set(v);
                    gaps[v] = Math.min(gaps[v], zone.depthMm());
                    springs[v] += bed * mesh.shape(c).area() / mesh.cells[c].length;
                }
            }
        }
        cells = loose.stream().mapToInt(c -> c).toArray();
        corners = touched.stream().toArray();
        nodes = touched.stream().filter(v -> !bonded[v]).toArray();
        gap = Arrays.stream(nodes).mapToDouble(v -> gaps[v]).toArray();
        spring = Arrays.stream(nodes).mapToDouble(v -> springs[v]).toArray();
    }

    boolean none() {
        return cells.length == 0;
    }

    /** The loose cells in areas: those that share a node belong together. */
    List<int[]> areas() {
        Map<Integer, Integer> areaOfNode = new HashMap<>();
        List<List<Integer>> areas = new ArrayList<>();
        for (int c : cells) {
            List<Integer> met = Arrays.stream(mesh.cells[c])
                    .filter(areaOfNode::containsKey)
                    .map(areaOfNode::get)
                    .boxed()
                    .distinct()
                    .sorted()
                    .toList();
            int into = met.isEmpty() ? areas.size() : met.get(0);
            if (met.isEmpty()) {
                areas.add(new ArrayList<>());
            }
            areas.get(into).add(c);
            for (int other : met.subList(Math.min(1, met.size()), met.size())) {
                areas.get(into).addAll(areas.get(other));
                areas.get(other).clear();
                areaOfNode.replaceAll((v, a) -> a == other ? into : a);
            }
            Arrays.stream(mesh.cells[c]).forEach(v -> areaOfNode.put(v, into));
        }
        return areas.stream()
                .filter(a -> !a.isEmpty())
                .map(a -> a.stream().mapToInt(c -> c).sorted().toArray())
                .toList();
    }
}
