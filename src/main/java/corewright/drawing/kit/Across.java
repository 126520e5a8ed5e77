package corewright.drawing.kit;

import corewright.repair.plan.Hole;
import corewright.survey.Face;
import java.util.List;

/**
 * How distances from the centreline are told on a card: to port where every hole lies to port, else to starboard, the other
 * side with a minus; on a wall up or down.
 *
 * @param name heads their column
 * @param sign of what is told over the survey's y
 */
public record Across(String name, int sign) {
    public static Across of(Face face, List<Hole> holes) {
        boolean plus = holes.isEmpty() || holes.stream().anyMatch(h -> h.spot().yMm() >= 0);
        VoiceGrid grid = VoiceGrid.of(face);
        String side = plus ? "stbd" : "port";
        String height = plus == grid.highIsPlusY() ? "up" : "down";
        return new Across(grid.steep() ? height : side, plus ? 1 : -1);
    }

    /** {@code 504}, {@code −1 200}; or inches. */
    public String figure(double yMm, Measure measure, int inchDecimals) {
        return signed(sign * yMm, measure, inchDecimals);
    }

    /** Whole millimetres, or inches with so many decimals, with a true minus. */
    public static String signed(double mm, Measure measure, int inchDecimals) {
        boolean metric = measure == Measure.METRIC;
        String figure = Figures.fixed(metric ? mm : mm / Measure.MM_PER_INCH, metric ? 0 : inchDecimals);
        return figure.matches("-0(\\.0*)?") ? figure.substring(1) : figure.replace('-', '−');
    }
}
