package corewright.repair.pattern;

import java.util.ArrayList;
import java.util.List;

/**
 * Where air leaves: at the cavity's highest point, and where the way from the injection holes is longest.
 *
 * <p>A first rule, without running the flow: {@code max(2, n/8)} vents (measured on simulated cavities, see
 * docs/repair.md), each at the allowed cell farthest from the injection holes among those well apart from other vents.
 */
public final class Vents {
    private static final int HOLES_PER_VENT = 8;
    private static final int FEWEST = 2;

    /** No vent nearer to an injection hole: the hole vents that place itself. Practice. */
    private static final double FROM_HOLE_MM = 20;

    /** Vents stand one reach apart where there is room, and never nearer than this. Practice. */
    private static final double LEAST_APART_MM = 25;

    private Vents() {}

    /**
     * Cells for the vents, the main one first; fewer than wished where there is no room.
     *
     * @param slope of the face
     * @param fromHoles travel from the injection holes
     */
    public static List<Integer> cells(
            Cavity cavity,
            DrillPlaces places,
            List<Integer> holes,
            Travel.Field fromHoles,
            Slope slope,
            double reachMm) {
        int wanted = Math.max(FEWEST, (holes.size() + HOLES_PER_VENT - 1) / HOLES_PER_VENT);
        List<Integer> free = new ArrayList<>();
        for (int c : cavity.cells) {
            if (places.allowed[c]
                    && fromHoles.cost[c] < Double.POSITIVE_INFINITY
                    && apart(cavity, holes, c, FROM_HOLE_MM)) {
                free.add(c);
            }
        }
        List<Integer> vents = new ArrayList<>();
        if (slope.sloping()) {
            addBest(vents, free, cell -> slope.height(cavity.centre(cell)));
        }
        for (double apart = Math.max(60, reachMm); vents.size() < wanted && apart >= LEAST_APART_MM; ) {
            double spacing = apart;
            List<Integer> room =
                    free.stream().filter(c -> apart(cavity, vents, c, spacing)).toList();
            if (room.isEmpty()) {
                apart = apart > LEAST_APART_MM ? Math.max(LEAST_APART_MM, apart / 2) : 0;
            } else {
                addBest(vents, room, cell -> fromHoles.cost[cell]);
            }
        }
        return vents;
    }

    private interface Merit {
        double of(int cell);
    }

    private static void addBest(List<Integer> vents, List<Integer> free, Merit merit) {
        int best = -1;
        for (int c : free) {
            best = best < 0 || merit.of(c) > merit.of(best) + 1e-9 ? c : best;
        }
        if (best >= 0) {
            vents.add(best);
        }
    }

    private static boolean apart(Cavity cavity, List<Integer> others, int cell, double mm) {
        return others.stream().allMatch(o -> cavity.centre(o).distance(cavity.centre(cell)) >= mm);
    }
}
