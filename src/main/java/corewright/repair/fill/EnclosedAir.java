package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is left of the air at the end of a fill. */
final class EnclosedAir {
    private static final double FULL = 0.98;

    private EnclosedAir() {}

    /** Air enclosed at the end, largest first, each where it is farthest from the mix: there the last of it would leave. */
    static List<Pocket> of(FillSimulation.Setting setting, FillSimulation.Result result) {
        Cavity cavity = setting.cavity();
        int[] depth = depth(cavity, result.filled());
        double[] volume = new double[cavity.size()];
        int[] deepest = new int[cavity.size()];
        Arrays.fill(deepest, -1);
        int last = -1;
        for (int c : cavity.cells) {
            int p = result.pocket()[c];
            double air = cavity.gapMm[c] * cavity.cell * cavity.cell * (1 - result.filled()[c]);
            if (p < 0 || air <= 0 || cavity.open[c] == 0) {
                continue;
            }
            last = Math.max(last, p);
            volume[p] += air;
            if (deepest[p] < 0 || deeper(c, deepest[p], depth, result.filled())) {
                deepest[p] = c;
            }
        }
        List<Pocket> pockets = new ArrayList<>();
        for (int p = 0; p <= last; p++) {
            if (volume[p] > 0) {
                pockets.add(new Pocket(deepest[p], volume[p]));
            }
        }
        pockets.sort((a, b) -> Double.compare(b.mm3, a.mm3));
        return pockets;
    }

    private static boolean deeper(int cell, int than, int[] depth, double[] filled) {
        return depth[cell] > depth[than] || depth[cell] == depth[than] && filled[cell] < filled[than];
    }

    /** Steps from the nearest full cell. */
    private static int[] depth(Cavity cavity, double[] filled) {
        int[] depth = new int[cavity.size()];
        int[] queue = new int[cavity.cells.length];
        int n = 0;
        for (int c : cavity.cells) {
            depth[c] = filled[c] >= FULL ? 0 : -1;
            if (depth[c] == 0) {
                queue[n++] = c;
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < 8; k++) {
                int next = queue[i] + cavity.stepOffset(k);
                if ((cavity.open[queue[i]] >> k & 1) == 1 && depth[next] < 0) {
                    depth[next] = depth[queue[i]] + 1;
                    queue[n++] = next;
                }
            }
        }
        return depth;
    }

    /** Enclosed air and the cell where it is farthest from the mix. */
    record Pocket(int cell, double mm3) {}
}
