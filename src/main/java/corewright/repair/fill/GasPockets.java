package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The air in a cavity while it fills. Air that is connected with an open hole stands at the outer pressure; enclosed air
 * keeps its amount and is squeezed (Boyle, constant temperature).
 */
final class GasPockets {
    static final double ATMOSPHERE_PA = 101_325;

    private final Cavity cavity;

    /** From a cell to its neighbours; rook steps come first. */
    private final int[] steps;

    /** By flat index: absolute pressure times volume of the air in the cell. */
    private final double[] amount;

    /** By flat index of a cell with air: gauge pressure, pascal. */
    final double[] pressurePa;
    /** By flat index of a cell with air: the number of its pocket, -1 in the open. */
    final int[] pocket;
    /** Volume of each pocket, cubic millimetres. */
    double[] volumeMm3 = {};

    final AirWays ways = new AirWays();
    private final int[] queue;
    private final boolean[] seen;

    GasPockets(Cavity cavity, double[] volume) {
        this.cavity = cavity;
        steps = cavity.stepOffsets(8);
        amount = new double[cavity.size()];
        pressurePa = new double[cavity.size()];
        pocket = new int[cavity.size()];
        queue = new int[cavity.size()];
        seen = new boolean[cavity.size()];
        Arrays.fill(pocket, -1);
        for (int c : cavity.cells) {
            amount[c] = ATMOSPHERE_PA * volume[c];
        }
    }

    /**
     * Finds the areas of air and their pressures.
     *
     * @param air by flat index, volume of air in the cell
     * @param full by flat index, no air in the cell
     * @param outlet by flat index, a hole that lets air out
     */
    void label(double[] air, boolean[] full, boolean[] outlet) {
        Arrays.fill(seen, false);
        double[] volumes = new double[16];
        int pockets = 0;
        for (int start : cavity.cells) {
            if (full[start] || seen[start]) {
                continue;
            }
            int n = collect(start, full);
            BitSet openings = new BitSet();
            double held = 0;
            double volume = 0;
            for (int i = 0; i < n; i++) {
                if (outlet[queue[i]]) {
                    openings.set(queue[i]);
                }
                held += amount[queue[i]];
                volume += air[queue[i]];
            }
            boolean open = !openings.isEmpty();
            double absolute = open || volume <= 0 ? ATMOSPHERE_PA : held / volume;
            if (open) {
                ways.open(openings);
            } else {
                volumes = pockets == volumes.length ? Arrays.copyOf(volumes, 2 * pockets) : volumes;
                volumes[pockets++] = volume;
            }
            for (int i = 0; i < n; i++) {
                pressurePa[queue[i]] = absolute - ATMOSPHERE_PA;
                amount[queue[i]] = absolute * air[queue[i]];
                pocket[queue[i]] = open ? -1 : pockets - 1;
                if (!open) {
                    ways.enclosed(queue[i]);
                }
            }
        }
        volumeMm3 = Arrays.copyOf(volumes, pockets);
    }

    private int collect(int start, boolean[] full) {
        int n = 0;
        queue[n++] = start;
        seen[start] = true;
        for (int i = 0; i < n; i++) {
            int cell = queue[i];
            for (int k = 0; k < steps.length; k++) {
                int next = cell + steps[k];
                if ((cavity.open[cell] >> k & 1) == 1 && !full[next] && !seen[next]) {
                    seen[next] = true;
                    queue[n++] = next;
                }
            }
        }
        return n;
    }

    /** A cell has filled: its air moves on to a neighbour that has room, if there is one. */
    void leave(int cell, boolean[] full) {
        for (int k = 0; k < steps.length; k++) {
            int next = cell + steps[k];
            if ((cavity.open[cell] >> k & 1) == 1 && !full[next]) {
                amount[next] += amount[cell];
                break;
            }
        }
        amount[cell] = 0;
    }
}
