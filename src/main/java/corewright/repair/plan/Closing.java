package corewright.repair.plan;

import java.util.List;

/**
 * What it takes to close the drilled holes for good once the mix is hard: the plug pulled or drilled out, a shallow dish sanded
 * round the hole, filler to the brim, sanded flush and touched up. All figures are common practice.
 *
 * @param holes drilled, vents too
 * @param fillerG mixed, in the holes to their depth and in the dishes
 */
public record Closing(int holes, double fillerG) {
    private static final double FILLER_G_PER_MM3 = 1.2e-3;

    /** Of the dish over that of the hole, across. */
    private static final double DISH = 3;

    private static final double DISH_DEEP_MM = 1;

    /** A hole, in two goes: dish and fill; sand, fair and touch up. */
    private static final double LEAST_MINUTES = 4;

    private static final double MOST_MINUTES = 8;

    private static final double MINUTES_PER_HOUR = 60;

    public static Closing of(List<Hole> all) {
        List<Hole> drilled = all.stream().filter(Hole::drilled).toList();
        return new Closing(
                drilled.size(), drilled.stream().mapToDouble(Closing::fillerG).sum());
    }

    /** A cylinder to its stop, and a frustum down to it from the dish. */
    private static double fillerG(Hole hole) {
        double d = hole.diameterMm();
        double cylinder = Math.PI / 4 * d * d * hole.depthStopMm();
        double dish = Math.PI / 12 * DISH_DEEP_MM * d * d * (DISH * DISH + DISH - 2);
        return FILLER_G_PER_MM3 * (cylinder + dish);
    }

    public double hoursLow() {
        return holes * LEAST_MINUTES / MINUTES_PER_HOUR;
    }

    public double hoursHigh() {
        return holes * MOST_MINUTES / MINUTES_PER_HOUR;
    }
}
