package corewright.desktop.work;

import corewright.desktop.state.Units;
import corewright.drawing.kit.Measure;
import java.util.List;

/**
 * A rule on a plan.
 *
 * @param mm its length on deck
 * @param words the same as it is read
 */
record WorkRule(double mm, String words) {
    private static final List<Integer> MM = List.of(5000, 2000, 1000, 500, 200, 100, 50, 20, 10);
    private static final List<Integer> INCHES = List.of(240, 120, 48, 24, 12, 6, 4, 2, 1);

    /**
     * The longest round one.
     *
     * @param scale survey millimetres to a pixel
     * @param px it may be long
     */
    static WorkRule fitting(double scale, double px, Units units) {
        boolean metric = units == Units.METRIC;
        double mmEach = metric ? 1 : Measure.MM_PER_INCH;
        List<Integer> lengths = metric ? MM : INCHES;
        int length = lengths.stream()
                .filter(l -> l * mmEach / scale <= px)
                .findFirst()
                .orElse(lengths.get(lengths.size() - 1));
        return new WorkRule(length * mmEach, length + (metric ? " mm" : " in"));
    }
}
