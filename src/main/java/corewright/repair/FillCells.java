package corewright.repair;

import java.util.Arrays;
import java.util.Deque;

/** What stands in the cells of a cavity while it fills: mix, air, and which faces let mix on. By flat index. */
class FillCells {
    private static final double GRAVITY = 9.81;

    final Cavity cavity;
    final PressureField field;
    private final double weightPaPerMm;
    private final double[] heightMm;

    /** Of the gap, cubic millimetres. */
    final double[] volume;

    /** Liquid in each cell, before any rise, cubic millimetres. */
    final double[] liquid;

    final boolean[] full;
    final int[] owner;
    final boolean[] outlet;
    final GasPockets gas;
    private final double[] air;
    private double pocketLimitPa = Double.POSITIVE_INFINITY;
    double expansion = 1;

    /**
     * @param heightMm by flat index, above any level
     * @param densityKgM3 of the liquid
     */
    FillCells(Cavity cavity, double[] heightMm, double densityKgM3) {
        this.cavity = cavity;
        this.heightMm = heightMm;
        weightPaPerMm = densityKgM3 * GRAVITY / 1000;
        field = field(cavity);
        int size = cavity.size();
        volume = new double[size];
        for (int c : cavity.cells) {
            volume[c] = cavity.gapMm[c] * cavity.cell * cavity.cell;
        }
        liquid = new double[size];
        full = new boolean[size];
        owner = new int[size];
        Arrays.fill(owner, -1);
        outlet = new boolean[size];
        gas = new GasPockets(cavity, volume);
        air = new double[size];
    }

    static PressureField field(Cavity cavity) {
        PressureField field = PressureField.closed(cavity.rows, cavity.columns);
        for (int c : cavity.cells) {
            boolean right = (cavity.open[c] & 1) == 1 && cavity.open[c + 1] != 0; // a wall's cells have no open step
            boolean up = (cavity.open[c] >> 1 & 1) == 1 && cavity.open[c + cavity.columns] != 0;
            field.east[c] = right ? PressureField.conductance(cavity.gapMm[c], cavity.gapMm[c + 1]) : 0;
            field.north[c] = up ? PressureField.conductance(cavity.gapMm[c], cavity.gapMm[c + cavity.columns]) : 0;
        }
        return field;
    }

    /** Enclosed air at this gauge pressure takes no more mix. */
    void limitPockets(double pa) {
        pocketLimitPa = pa;
    }

    double filled(int cell) {
        return Math.min(1, liquid[cell] * expansion / volume[cell]);
    }

    void air() {
        for (int c : cavity.cells) {
            air[c] = full[c] ? 0 : volume[c] - Math.min(volume[c], liquid[c] * expansion);
        }
        gas.label(air, full, outlet);
    }

    void fill(int cell) {
        full[cell] = true;
        gas.leave(cell, full);
    }

    /** Conductance of the face in direction k (east, north, west, south). */
    double between(int cell, int k) {
        return switch (k) {
            case 0 -> field.east[cell];
            case 1 -> field.north[cell];
            case 2 -> field.east[cell - 1];
            default -> field.north[cell - cavity.columns];
        };
    }

    boolean takes(int cell) {
        return !full[cell] && (gas.pocket[cell] < 0 || gas.pressurePa[cell] < pocketLimitPa);
    }

    double toFront(int cell, int k, int next) {
        return between(cell, k) / (0.5 + Math.min(1, liquid[next] * expansion / volume[next]));
    }

    double lift(int from, int to) {
        return weightPaPerMm / expansion * (heightMm[to] - heightMm[from]);
    }

    /** What is too much for a cell goes on to its neighbours with room. */
    void passOn(Deque<Integer> over) {
        while (!over.isEmpty()) {
            int c = over.poll();
            double surplus = liquid[c] - volume[c] / expansion;
            double ways = 0;
            int room = 0;
            for (int k = 0; k < 4; k++) {
                if (between(c, k) > 0 && takes(c + cavity.stepOffset(k))) {
                    ways += between(c, k);
                    room |= 1 << k;
                }
            }
            if (surplus <= 0 || room == 0) {
                continue;
            }
            liquid[c] -= surplus;
            for (int k = 0; k < 4; k++) {
                if ((room >> k & 1) == 1) {
                    receive(c + cavity.stepOffset(k), surplus * between(c, k) / ways, c, over);
                }
            }
        }
    }

    private void receive(int cell, double mm3, int from, Deque<Integer> over) {
        liquid[cell] += mm3;
        owner[cell] = owner[cell] < 0 ? owner[from] : owner[cell];
        if (!full[cell] && liquid[cell] * expansion >= volume[cell]) {
            fill(cell);
            over.add(cell);
        }
    }
}
