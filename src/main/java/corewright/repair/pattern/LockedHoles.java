package corewright.repair.pattern;

import corewright.repair.plan.EmptySpace;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Injection holes that a person has placed: the pattern is made round them.
 *
 * @param spots by cell of the pattern's raster, in the survey's order
 * @param refused a sentence for each that may not be drilled
 */
public record LockedHoles(Map<Integer, Spot> spots, List<String> refused) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Those of a space: placed in it, or moved from a place in it. */
    static LockedHoles of(List<MovedHole> moved, EmptySpace space, Cavity cavity, DrillPlaces places) {
        Map<Integer, Spot> spots = new LinkedHashMap<>();
        List<String> refused = new ArrayList<>();
        for (MovedHole hole : moved) {
            boolean here = in(space, hole.spot());
            int cell = here ? cell(cavity, hole.spot()) : -1;
            if (cell >= 0 && places.allowed[cell]) {
                spots.put(cell, hole.spot());
            } else if (here || in(space, hole.planned())) {
                refused.add(String.format(
                        Locale.ROOT,
                        "The hole moved to %.0f mm aft, %.0f mm to starboard is left out: no hole may be drilled there, too"
                                + " near a fitting, a support or the region's edge.",
                        hole.spot().xMm(),
                        hole.spot().yMm()));
            }
        }
        return new LockedHoles(spots, refused);
    }

    private static boolean in(EmptySpace space, Spot spot) {
        return space.face().equals(spot.face()) && space.area().covers(FACTORY.createPoint(spot.coordinate()));
    }

    private static int cell(Cavity cavity, Spot spot) {
        int column = (int) Math.floor((spot.xMm() - cavity.x0) / cavity.cell);
        int row = (int) Math.floor((spot.yMm() - cavity.y0) / cavity.cell);
        boolean on = column >= 0 && row >= 0 && column < cavity.columns && row < cavity.rows;
        return on && cavity.inside(row * cavity.columns + column) ? row * cavity.columns + column : -1;
    }

    int[] cells() {
        return spots.keySet().stream().mapToInt(c -> c).toArray();
    }
}
