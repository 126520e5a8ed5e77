package corewright.sandwich;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Where skins are loose: the cells whose skins are on their own, and the nodes inside them at which a skin can meet what is
 * below. At such a node the skins may near each other by the gap and no more; beyond it a stiff bed pushes them apart.
 */
final class LooseAreas {
    /** MPa per mm of a bed under a bare skin; 30 to 3000 give the same deflections within 0.1 %. */
    private static final double BED = 300;

    /** Cells without a bond, ascending. */
    final int[] cells;

    /** Nodes of those cells, rims among them. */
    final BitSet touched = new BitSet();

    /** Nodes all of whose cells are loose, ascending; gap and springs (N/mm) of each. */
    final int[] nodes;

    final double[] gap;
    final double[] spring;

    LooseAreas(PanelSpec panel, Mesh mesh, List<Zone> zones) {
        double[] gaps = new double[mesh.nodes()];
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
        nodes = touched.stream().filter(v -> !bonded[v]).toArray();
        gap = Arrays.stream(nodes).mapToDouble(v -> gaps[v]).toArray();
        spring = Arrays.stream(nodes).mapToDouble(v -> springs[v]).toArray();
    }

    boolean none() {
        return cells.length == 0;
    }
}
