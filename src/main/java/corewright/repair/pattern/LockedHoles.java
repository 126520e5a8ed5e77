package corewright.repair.pattern;

import corewright.repair.plan.EmptySpace;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * What a person has placed in a space: the pattern is made round the injection holes, and there are no vents but these where there are any.
 *
 * @param spots of injection holes by cell of the pattern's raster, in the survey's order
 * @param vents likewise
 * @param only a hole was taken away: no other is added to those of {@code spots}
 * @param ventsByHand a vent was placed or taken away: none is added to those of {@code vents}
 * @param refused a sentence for each that may not be drilled
 */
public record LockedHoles(
        Map<Integer, Spot> spots, Map<Integer, Spot> vents, boolean only, boolean ventsByHand, List<String> refused) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Those of a space: placed in it, or moved from a place in it. */
    static LockedHoles of(List<MovedHole> moved, EmptySpace space, Cavity cavity, DrillPlaces places) {
        Map<Integer, Spot> spots = new LinkedHashMap<>();
        Map<Integer, Spot> vents = new LinkedHashMap<>();
        List<String> refused = new ArrayList<>();
        boolean only = false;
        boolean ventsByHand = false;
        for (MovedHole hole : moved) {
            boolean here = in(space, hole.spot());
            ventsByHand |= here && hole.ofVents();
            only |= here && hole.kind() == MovedHole.Kind.NO_HOLE;
            int cell = here && hole.drilled() ? cell(cavity, hole.spot()) : -1;
            if (cell >= 0 && places.allowed[cell]) {
                (hole.ofVents() ? vents : spots).put(cell, hole.spot());
            } else if (hole.drilled() && (here || in(space, hole.planned()))) {
                refused.add(String.format(
                        Locale.ROOT,
                        "The %s moved to %.0f mm aft, %.0f mm to starboard is left out: no hole may be drilled there, too"
                                + " near a fitting, a support or the region's edge.",
                        hole.ofVents() ? "vent" : "hole",
                        hole.spot().xMm(),
                        hole.spot().yMm()));
            }
        }
        return new LockedHoles(spots, vents, only, ventsByHand, refused);
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

    /** Cells of the vents, the main one first: the highest on a slope, else the first placed. */
    public List<Integer> ventCells(Cavity cavity, Slope slope) {
        List<Integer> cells = new ArrayList<>(vents.keySet());
        if (slope.sloping()) {
            cells.sort(Comparator.comparingDouble(c -> -slope.height(cavity.centre(c))));
        }
        return cells;
    }
}
