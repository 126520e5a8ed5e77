package corewright.sandwich;

import corewright.linear.DenseFactor;
import corewright.linear.SparseVector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Loose skins come to rest on what is below them, the rest linear. With d the approach of the skins at each node inside a
 * loose area without contact, C the approach at one node by a unit push at another, and λ the pushes,
 *
 * <pre>
 *   λ ≥ 0,   s = (C + 1/k) λ - d + gap ≥ 0,   λ's = 0
 * </pre>
 *
 * <p>a linear complementarity problem with one solution, as C is positive semidefinite and 1/k > 0. Which nodes touch is
 * found by block pivoting: all that pull are let go, all that overlap taken in; where their number does not fall, one at a time,
 * which ends (J. J. Júdice and F. M. Pires, A block principal pivoting algorithm for large-scale strictly monotone linear
 * complementarity problems, Computers and Operations Research 21, 1994).
 */
final class Contact {
    /** Blocks that may fail to do better before single pivots set in; the source's choice. */
    private static final int CHANCES = 10;

    private final LooseAreas loose;

    /** C + 1/k by rows. */
    private final double[][] compliance;

    /** @param compliance C of the loose areas' nodes, whole rows; taken over */
    Contact(LooseAreas loose, double[][] compliance) {
        this.loose = loose;
        this.compliance = compliance;
        for (int k = 0; k < compliance.length; k++) {
            compliance[k][k] += 1 / loose.spring[k];
        }
    }

    /** Unit pushes that drive the skins towards each other at the nodes of the loose areas. */
    static List<SparseVector> pushes(PanelModel model) {
        List<SparseVector> pushes = new ArrayList<>();
        for (int v : model.loose.nodes) {
            Map<Integer, Double> push = new TreeMap<>();
            double[] outer = model.nodes.row(v, 2);
            double[] inner = model.nodes.row(v, CellRows.PER_SURFACE + 2);
            for (int c = 0; c < outer.length; c++) {
                if (outer[c] != inner[c]) {
                    push.put(model.matrix.first(v) + c, outer[c] - inner[c]);
                }
            }
            pushes.add(SparseVector.of(push));
        }
        return pushes;
    }

    /**
     * Pushes of the nodes, N.
     *
     * @param approach d
     * @param touching where to begin; then the nodes that touch
     */
    double[] settle(double[] approach, BitSet touching) {
        int n = approach.length;
        double[] over = new double[n];
        Arrays.setAll(over, k -> approach[k] - loose.gap[k]);
        double small = 1e-12 * Arrays.stream(over).map(Math::abs).max().orElse(0);
        int best = n + 1;
        int chances = CHANCES;
        while (true) {
            double[] push = pushes(over, touching);
            BitSet wrong = wrong(over, push, touching, small);
            if (wrong.isEmpty()) {
                return push;
            }
            if (wrong.cardinality() < best) {
                best = wrong.cardinality();
                chances = CHANCES;
                touching.xor(wrong);
            } else if (chances > 0) {
                chances--;
                touching.xor(wrong);
            } else {
                touching.flip(wrong.length() - 1);
            }
        }
    }

    /** Nodes that touch and pull, and nodes that do not touch and overlap. */
    private BitSet wrong(double[] over, double[] push, BitSet touching, double small) {
        BitSet wrong = new BitSet();
        for (int k = 0; k < over.length; k++) {
            if (touching.get(k)) {
                wrong.set(k, push[k] < 0);
            } else {
                double rest = over[k];
                for (int j = touching.nextSetBit(0); j >= 0; j = touching.nextSetBit(j + 1)) {
                    rest -= compliance[k][j] * push[j];
                }
                wrong.set(k, rest > small);
            }
        }
        return wrong;
    }

    private double[] pushes(double[] over, BitSet touching) {
        double[] push = new double[over.length];
        int[] nodes = touching.stream().toArray();
        int n = nodes.length;
        if (n == 0) {
            return push;
        }
        double[][] c = new double[n][n];
        double[] b = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                c[i][j] = compliance[nodes[i]][nodes[j]];
            }
            b[i] = over[nodes[i]];
        }
        double[] some = DenseFactor.over(c).solve(b);
        for (int i = 0; i < n; i++) {
            push[nodes[i]] = some[i];
        }
        return push;
    }
}
