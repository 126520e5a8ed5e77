package corewright.repair.fill;

import corewright.repair.mix.Curing;
import corewright.repair.pattern.Cavity;
import java.util.Arrays;

/** What stands in the cells of a cavity while it fills: mix, air, and which faces let mix on. By flat index. */
class FillCells {
    private static final double GRAVITY = 9.81;

    /** A cell in which less is free when its mix sets is full. */
    private static final double NEARLY_FULL = 0.05;

    final Cavity cavity;
    final PressureField field;

    /** From a cell to its neighbours: east, north, west, south. */
    final int[] steps;

    private final double weightPaPerMm;
    private final double[] heightMm;

    /** Of the gap, cubic millimetres, less what has set in a part of it. */
    final double[] volume;

    /** Of the gap. */
    private final double[] whole;

    /** Liquid in each cell, before any rise, cubic millimetres, but for what has set in a part of it. */
    final double[] liquid;

    /** Liquid that has set in a part of a cell; what comes later fills the rest. */
    private final double[] setLiquid;

    private final Curing curing;

    /** When the mix in a cell was mixed, the mean where cups meet, on the day's clock. */
    private final double[] bornS;

    /** Volume over that of the liquid, now. */
    final double[] grown;

    /** Whether mix ever came into the cell. */
    final boolean[] wet;

    /** As it was when the pressures were last asked for. */
    private final double[] viscosityPaS;

    private final double[] cube;

    final boolean[] full;
    final int[] owner;
    final boolean[] outlet;
    final GasPockets gas;
    private final double[] air;
    private final CellQueue stuck = new CellQueue();
    private boolean conducts;
    private double pocketLimitPa = Double.POSITIVE_INFINITY;

    /** The day's clock. */
    double nowS;

    /**
     * @param heightMm by flat index, above any level
     * @param curing of a mix
     */
    FillCells(Cavity cavity, double[] heightMm, Curing curing) {
        this.cavity = cavity;
        this.heightMm = heightMm;
        this.curing = curing;
        weightPaPerMm = curing.densityKgM3() * GRAVITY / 1000;
        field = field(cavity);
        steps = cavity.stepOffsets(4);
        int size = cavity.size();
        volume = new double[size];
        whole = new double[size];
        setLiquid = new double[size];
        cube = new double[size];
        for (int c : cavity.cells) {
            volume[c] = cavity.gapMm[c] * cavity.cell * cavity.cell;
            whole[c] = volume[c];
            cube[c] = Math.pow(cavity.gapMm[c], 3);
        }
        liquid = new double[size];
        bornS = new double[size];
        grown = new double[size];
        Arrays.fill(grown, 1);
        viscosityPaS = new double[size];
        Arrays.fill(viscosityPaS, curing.viscosityPaS());
        wet = new boolean[size];
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
        return 1 - Math.max(0, volume[cell] - liquid[cell] * grown[cell]) / whole[cell];
    }

    double wholeMm3(int cell) {
        return whole[cell];
    }

    /** All that ever came into a cell and stayed, before any rise. */
    double allLiquid(int cell) {
        return liquid[cell] + setLiquid[cell];
    }

    /** Whether a cell that is not full has become so: up to the rounding of the step that was to end with it. */
    boolean brims(int cell) {
        return liquid[cell] * grown[cell] >= volume[cell] * (1 - 1e-6);
    }

    /** Room for liquid that grows as what stands in the cell. */
    double room(int cell) {
        return volume[cell] / grown[cell] - liquid[cell];
    }

    /** The clock goes on: the mix thickens and grows. */
    void until(double atS) {
        nowS = atS;
        for (int c : cavity.cells) {
            if (liquid[c] > 0) {
                age(c);
                if (!full[c] && brims(c)) {
                    fill(c);
                }
                if (!full[c] && curing.set(nowS - bornS[c])) {
                    harden(c);
                }
            }
        }
    }

    /** What stands in a part of a cell is solid from now on. */
    private void harden(int cell) {
        double left = volume[cell] - liquid[cell] * grown[cell];
        if (left < NEARLY_FULL * whole[cell]) {
            fill(cell);
            return;
        }
        thicken(cell); // dry from now on, it keeps that
        volume[cell] = left;
        setLiquid[cell] += liquid[cell];
        liquid[cell] = 0;
        grown[cell] = 1;
    }

    private void age(int cell) {
        grown[cell] = curing.expansion(nowS - bornS[cell]);
    }

    private void thicken(int cell) {
        viscosityPaS[cell] = curing.viscosity(nowS - bornS[cell]);
    }

    /** What fills this cell has gelled and stands still for good. */
    boolean set(int cell) {
        return full[cell] && curing.set(nowS - bornS[cell]);
    }

    /** Growth of what stands in a cell until then. */
    double growth(int cell, double atS) {
        return liquid[cell] > 0 ? liquid[cell] * (curing.expansion(atS - bornS[cell]) - grown[cell]) : 0;
    }

    /** Mix comes to what stands in the cell; it then has the mean age. */
    void add(int cell, double liquidMm3, double mixedAtS) {
        double whole = liquid[cell] + liquidMm3;
        if (whole > 0) {
            bornS[cell] = (liquid[cell] * bornS[cell] + liquidMm3 * mixedAtS) / whole;
            liquid[cell] = whole;
            wet[cell] = true;
            age(cell);
        }
    }

    /** Fills the hole's own cell at once; what of it is then left to place. */
    double begin(int cell, double liquidMm3, int number, double mixedAtS) {
        double room = Math.max(0, room(cell));
        double taken = Math.min(room, liquidMm3);
        add(cell, taken, mixedAtS);
        owner[cell] = owner[cell] < 0 ? number : owner[cell];
        if (taken == room) {
            fill(cell);
        }
        return liquidMm3 - taken;
    }

    double bornS(int cell) {
        return bornS[cell];
    }

    /** Conductances by the viscosity of what stands in the cells, at the front by that of the full side. */
    void conduct() {
        for (int c : cavity.cells) {
            if (liquid[c] > 0) {
                thicken(c);
            }
        }
        for (int c : cavity.cells) {
            field.east[c] = conductance(field.east[c], c, c + 1);
            field.north[c] = conductance(field.north[c], c, c + cavity.columns);
        }
        conducts = true;
    }

    /** Between dry cells it stays what it was. */
    private double conductance(double before, int c, int next) {
        return before > 0 && (wet[c] || wet[next] || !conducts) ? conductance(c, next) : before;
    }

    private double conductance(int c, int next) {
        double mu = viscosityPaS[full[c] ? c : next];
        double other = viscosityPaS[full[next] ? next : c];
        double a = cube[c] / mu;
        double b = cube[next] / other;
        return a * b / (a + b) / 6;
    }

    void air() {
        for (int c : cavity.cells) {
            air[c] = full[c] ? 0 : Math.max(0, volume[c] - liquid[c] * grown[c]);
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
        return between(cell, k) / (0.5 + filled(next));
    }

    double lift(int from, int to) {
        double expansion = full[to] ? (grown[from] + grown[to]) / 2 : grown[from];
        return weightPaPerMm / expansion * (heightMm[to] - heightMm[from]);
    }

    /** What is too much for a cell goes on to its neighbours with room; where none has any, to the nearest air. */
    void passOn(CellQueue over) {
        stuck.clear();
        while (!over.isEmpty()) {
            int c = over.poll();
            double surplus = -room(c);
            double ways = 0;
            int room = 0;
            for (int k = 0; k < 4; k++) {
                if (between(c, k) > 0 && takes(c + steps[k])) {
                    ways += between(c, k);
                    room |= 1 << k;
                }
            }
            if (surplus <= 0) {
                continue;
            }
            if (room == 0) {
                stuck.add(c);
                continue;
            }
            liquid[c] -= surplus;
            for (int k = 0; k < 4; k++) {
                if ((room >> k & 1) == 1) {
                    receive(c + steps[k], surplus * between(c, k) / ways, c, over);
                }
            }
        }
        while (!stuck.isEmpty()) {
            passFar(stuck.poll());
        }
        over.clear();
    }

    /** Full cells hold no more than their volume: the surplus pushes the front on where it is nearest. */
    private void passFar(int start) {
        double surplus = -room(start);
        int[] queue = new int[cavity.cells.length];
        boolean[] seen = new boolean[cavity.size()];
        int n = 0;
        queue[n++] = start;
        seen[start] = true;
        for (int i = 0; i < n && surplus > 0; i++) {
            for (int k = 0; k < 4 && surplus > 0; k++) {
                int next = queue[i] + steps[k];
                if (between(queue[i], k) == 0 || seen[next]) {
                    continue;
                }
                seen[next] = true;
                if (full[next]) {
                    n = set(next) ? n : put(queue, n, next);
                } else if (takes(next)) {
                    double part = Math.min(surplus, Math.max(0, room(next)));
                    liquid[start] -= part;
                    surplus -= part;
                    add(next, part, bornS[start]);
                    owner[next] = owner[next] < 0 ? owner[start] : owner[next];
                    if (brims(next)) {
                        fill(next);
                        queue[n++] = next;
                    }
                }
            }
        }
    }

    private static int put(int[] queue, int n, int cell) {
        queue[n] = cell;
        return n + 1;
    }

    private void receive(int cell, double mm3, int from, CellQueue over) {
        add(cell, mm3, bornS[from]);
        owner[cell] = owner[cell] < 0 ? owner[from] : owner[cell];
        if (!full[cell] && brims(cell)) {
            fill(cell);
            over.add(cell);
        }
    }
}
