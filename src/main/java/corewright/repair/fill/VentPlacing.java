package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** Where vents go, by the air that a fill leaves: at the largest pockets, clear of other openings. */
final class VentPlacing {
    /** A smaller pocket is not worth a hole, nor one of a smaller share of the cavity. Practice. */
    private static final double POCKET_MM3 = 2000;

    private static final double POCKET_SHARE = 0.0015;

    /** Vents over places that are filled, at most. */
    private static final double VENTS_A_PLACE = 0.7;

    private static final int FEWEST_VENTS = 2;

    /** No vent nearer to another opening, but for a pocket of such a share of the cavity. Practice. */
    static final double APART_MM = Cautions.VENT_APART_MM;

    private static final double NEAR_MM = 20;

    private static final double PAYS_SHARE = 0.0025;

    /** In a thin cavity a small pocket is a large area: this share is worth a hole whatever its volume. Practice. */
    private static final double THIN_SHARE = 0.01;

    /** A dose through one place is counted on to fill what is empty so near to it, and in so many places. Practice. */
    private static final double SERVED_MM = 75;

    private static final int MOST_HOLLOWS = 20;

    private final Cavity fine;
    private final DrillPlaces places;

    /** @param fine the pattern's raster, with the places for holes */
    VentPlacing(Cavity fine, DrillPlaces places) {
        this.fine = fine;
        this.places = places;
    }

    /**
     * Vents moved to the pockets that they stand beside, the largest pockets first.
     *
     * @param most of them
     */
    FillState.Vents beside(FillState state, FillTrial.Run run, int most) {
        FillState.Vents vents = new FillState.Vents(new ArrayList<>(state.vents()), new LinkedHashMap<>(state.near()));
        int moved = 0;
        for (EnclosedAir.Pocket pocket : pockets(run)) {
            Coordinate at = run.setting().cavity().centre(pocket.cell());
            moved += moved < most && movedTo(at, state, vents) ? 1 : 0;
        }
        return vents;
    }

    /** The nearest vent that was not moved yet, nearer to a place; whether there was one that could be. */
    private boolean movedTo(Coordinate at, FillState state, FillState.Vents vents) {
        Optional<Integer> nearest = vents.cells().stream()
                .filter(v -> state.vents().contains(v) && fine.centre(v).distance(at) < APART_MM)
                .min(Comparator.comparingDouble(v -> fine.centre(v).distance(at)));
        if (nearest.isEmpty()) {
            return false;
        }
        int vent = nearest.get();
        List<Integer> others = new ArrayList<>(vents.cells());
        others.remove(Integer.valueOf(vent));
        double apartMm = state.crowded(vent) || vents.near().containsKey(vent) ? NEAR_MM : APART_MM;
        int cell = place(at, fine.centre(vent).distance(at), apartMm, state, others);
        if (cell >= 0) {
            vents.cells().set(vents.cells().indexOf(vent), cell);
            vents.near().remove(vent); // what that one was to empty
        }
        return cell >= 0;
    }

    /** So many vents are not too many, whether all are needed or not. */
    static int enough(FillState state) {
        return Math.max(
                FEWEST_VENTS, (int) (VENTS_A_PLACE * state.pouring().holes().size()));
    }

    static List<EnclosedAir.Pocket> pockets(FillTrial.Run run) {
        return EnclosedAir.of(run.setting(), run.result());
    }

    /** What stays empty, enclosed or not, in parts that one place can serve; the largest first. */
    static List<EnclosedAir.Pocket> hollows(FillTrial.Run run) {
        Cavity cavity = run.setting().cavity();
        double[] empty = new double[cavity.size()];
        for (int c : cavity.cells) {
            empty[c] = cavity.open[c] == 0
                    ? 0
                    : cavity.gapMm[c]
                            * cavity.cell
                            * cavity.cell
                            * (1 - run.result().filled()[c]);
        }
        List<EnclosedAir.Pocket> hollows = new ArrayList<>();
        int window = (int) Math.ceil(SERVED_MM / cavity.cell);
        while (hollows.size() < MOST_HOLLOWS) {
            int best = -1;
            double most = 0;
            for (int c : cavity.cells) {
                if (empty[c] > 0) {
                    double sum = around(cavity, empty, c, window, false);
                    best = sum > most ? c : best;
                    most = Math.max(most, sum);
                }
            }
            if (best < 0) {
                break;
            }
            hollows.add(new EnclosedAir.Pocket(best, most));
            around(cavity, empty, best, window, true);
        }
        return hollows;
    }

    /** What is empty round a cell; taken from there if wanted. */
    private static double around(Cavity cavity, double[] empty, int cell, int window, boolean take) {
        double sum = 0;
        int row = cell / cavity.columns;
        int column = cell % cavity.columns;
        for (int r = Math.max(0, row - window); r <= Math.min(cavity.rows - 1, row + window); r++) {
            for (int c = Math.max(0, column - window); c <= Math.min(cavity.columns - 1, column + window); c++) {
                int i = r * cavity.columns + c;
                sum += empty[i];
                empty[i] = take ? 0 : empty[i];
            }
        }
        return sum;
    }

    /** Vents for the largest pockets, until what stays empty would be as little as is wanted. */
    FillState.Vents more(FillState state, FillTrial.Run run, List<EnclosedAir.Pocket> pockets, double emptyShare) {
        Cavity cavity = run.setting().cavity();
        double whole = run.whole().mm3();
        double worthMm3 = Math.max(Math.min(POCKET_MM3, THIN_SHARE * whole), POCKET_SHARE * whole);
        double over = (run.emptyShare() - emptyShare) * whole;
        FillState.Vents vents = new FillState.Vents(new ArrayList<>(state.vents()), new LinkedHashMap<>(state.near()));
        for (EnclosedAir.Pocket pocket : pockets) {
            if (over > 0 && pocket.mm3() > worthMm3 && vents.cells().size() < most(state)) {
                over -= vent(pocket, run, state, vents) ? pocket.mm3() : 0;
            }
        }
        return vents;
    }

    private static int most(FillState state) {
        return Math.max(FEWEST_VENTS, (int)
                Math.ceil(VENTS_A_PLACE * state.pouring().holes().size()));
    }

    /** At the pocket, clear of other openings; nearer to one only where that pays. */
    private boolean vent(EnclosedAir.Pocket pocket, FillTrial.Run run, FillState state, FillState.Vents vents) {
        Cavity cavity = run.setting().cavity();
        Coordinate at = cavity.centre(pocket.cell());
        double share = pocket.mm3() / run.whole().mm3();
        int cell = place(at, 2 * cavity.cell, APART_MM, state, vents.cells());
        if (cell < 0 && share >= PAYS_SHARE) {
            cell = place(at, 2 * cavity.cell, NEAR_MM, state, vents.cells());
            if (cell >= 0) {
                vents.near().put(cell, share);
            }
        }
        if (cell < 0) { // its middle may lie under a fitting
            double widthMm = Math.sqrt(pocket.mm3() / (Math.PI * cavity.gapMm[pocket.cell()]));
            cell = place(at, widthMm, APART_MM, state, vents.cells());
        }
        if (cell >= 0) {
            vents.cells().add(cell);
        }
        return cell >= 0;
    }

    /** The allowed cell nearest to a place, so far from every opening; -1 where there is none. */
    private int place(Coordinate at, double withinMm, double apartMm, FillState state, List<Integer> vents) {
        int best = -1;
        double least = withinMm;
        for (int c : fine.cells) {
            double d = places.allowed[c] ? Math.hypot(fine.x(c) - at.x, fine.y(c) - at.y) : least;
            if (d < least && apart(fine.centre(c), apartMm, state.pouring().holes(), vents)) {
                least = d;
                best = c;
            }
        }
        return best;
    }

    private boolean apart(Coordinate at, double mm, List<Hole> holes, List<Integer> vents) {
        return holes.stream().allMatch(h -> h.spot().coordinate().distance(at) >= mm)
                && vents.stream().allMatch(v -> fine.centre(v).distance(at) >= mm);
    }
}
