package corewright.repair.fill;

import java.util.Arrays;

/**
 * What a tool gets in through a hole, and the pressures that go with it: those with nothing pushed, and what a unit of rate adds. Each
 * begins from what it was in the step before.
 */
final class Pushing {
    /** A rate, cubic millimetres a second; any would do. */
    private static final double UNIT = 1000;

    private final PressureField field;
    private final double tolerance;

    /** By flat index. */
    private final double[] still;

    private final double[] unit;

    /** What the tool pushes at a unit of rate. */
    private final double[] pushed;

    private int hole = -1;

    /**
     * What a tool can do, and when its mix was mixed.
     *
     * @param holeRadiusMm of the hole
     * @param nozzle what stands before the hole: pressure over viscosity and flow, 1/mm3
     */
    record Tool(double pressurePa, double rateMm3S, double holeRadiusMm, double nozzle, double mixedAtS) {}

    Pushing(PressureField field, double tolerance) {
        this.field = field;
        this.tolerance = tolerance;
        still = new double[field.east.length];
        unit = new double[field.east.length];
        pushed = new double[field.east.length];
    }

    /**
     * The rate at which a tool pushes: its own, or less where its pressure is too little for that.
     *
     * @param well pressure over rate from the tool to the hole's cell
     * @param source by flat index, of all that flows without the tool
     * @param pressure by flat index, on the way out that at this rate
     */
    double rate(int at, int[] patch, Tool tool, double well, double[] extra, double[] source, double[] pressure) {
        if (at != hole) {
            if (hole >= 0) {
                pushed[hole] = 0;
            }
            hole = at;
            pushed[at] = UNIT;
            Arrays.fill(unit, 0);
        }
        field.solve(patch, extra, source, still, tolerance);
        field.solve(patch, extra, pushed, unit, tolerance);
        double perRate = unit[at] / UNIT + well;
        double rate = Math.min(tool.rateMm3S(), Math.max(0, (tool.pressurePa() - still[at]) / perRate));
        for (int c : patch) {
            pressure[c] = still[c] + rate / UNIT * unit[c];
        }
        return rate;
    }
}
