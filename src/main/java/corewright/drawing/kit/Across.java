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

    /** {@code 504}, {@code −1 200}. */
    public String millimetres(double yMm) {
        return signed(sign * yMm);
    }

    /** Whole millimetres with a true minus. */
    public static String signed(double mm) {
        return Figures.fixed(mm, 0).replace('-', '−');
    }
}
