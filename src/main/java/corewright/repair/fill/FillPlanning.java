package corewright.repair.fill;

import corewright.repair.mix.Batches;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Runs a plan through the flow, in the most likely cavity and in one as large as one in ten, and changes what does not
 * work: (1) air that stays enclosed gets a vent, the largest first, until little enough stays empty; (2) a hole gets the
 * grams that it takes; (3) what is held back for the large cavity is shared out to the places where nothing shows in it, and
 * air enclosed even so gets a vent too.
 *
 * <p>The raster is 25 mm above 1 m2, 12.5 mm below, finer in small regions.
 */
public final class FillPlanning {
    /** Fills of the most likely cavity at most, for vents and then for grams. */
    private static final int ROUNDS = 4;

    private static final int GRAM_ROUNDS = 8;

    /** From this round on a hole gets just what it took. */
    private static final int EXACT_FROM = 2;

    /** Steps down to a more even density at most. */
    private static final int LESS_ROUNDS = 4;

    /** Cells of all fills in which another place for a vent is tried: some 25 fills of a square metre. */
    private static final int TRIED_CELLS = 40_000;

    /** Rounds for the large cavity. */
    private static final int LARGE_ROUNDS = 3;

    /** Wanted of the most likely and of the large cavity, a little under what is promised: 2 and 4 per cent. Practice. */
    private static final double EMPTY = 0.017;

    private static final double EMPTY_LARGE = 0.033;

    /** A smaller pocket is not worth a hole, nor one of a smaller share of the cavity. Practice. */
    private static final double POCKET_MM3 = 2000;

    private static final double POCKET_SHARE = 0.0015;

    /** Vents over places that are filled, at most. */
    private static final double VENTS_A_PLACE = 0.7;

    private static final int FEWEST_VENTS = 2;

    /** No vent nearer to another opening, but for a pocket of such a share of the cavity. Practice. */
    static final double APART_MM = 60;

    private static final double NEAR_MM = 20;
    private static final double PAYS_SHARE = 0.0025;

    /** In a thin cavity a small pocket is a large area: this share is worth a hole whatever its volume. Practice. */
    private static final double THIN_SHARE = 0.01;

    /** Of the filled volume, as dense as the mean within 15 per cent. */
    private static final double EVEN_SHARE = 0.9;

    /** A dose through one place is counted on to fill what is empty so near to it, and in so many places. Practice. */
    private static final double SERVED_MM = 75;

    private static final int MOST_HOLLOWS = 20;

    private static final double COARSE_FROM_MM2 = 1e6;

    private final FillTrial middle;
    private final FillTrial large;
    private final Cavity fine;
    private final DrillPlaces places;

    /**
     * @param middle the most likely cavity
     * @param large one as large as one in ten
     * @param fine the pattern's raster, with the places for holes
     */
    public FillPlanning(FillTrial middle, FillTrial large, Cavity fine, DrillPlaces places) {
        this.middle = middle;
        this.large = large;
        this.fine = fine;
        this.places = places;
    }

    public static double cellMm(double areaMm2) {
        return areaMm2 > COARSE_FROM_MM2 ? 25 : Math.min(12.5, Math.sqrt(areaMm2) / 16);
    }

    /**
     * What the flow made of a plan.
     *
     * @param state the plan and its fill of the most likely cavity
     * @param fill the same, to be kept
     * @param held for each place of the state
     * @param unshown numbers of the places at which nothing shows in the large cavity before anything held back is poured
     * @param emptyLarge share of the large cavity that stays empty, what is held back poured
     */
    public record Outcome(
            FillState state,
            Fill fill,
            FillTrial.Held held,
            List<Integer> unshown,
            double emptyLarge,
            double emptyLargeWithout) {
        public Outcome {
            unshown = List.copyOf(unshown);
        }
    }

    /** A plan and its fill of the large cavity. */
    private record Judged(Outcome outcome, FillTrial.Run large) {
        /** How far from what is wanted; 1 is just enough. */
        double score() {
            return Math.max(outcome.state.emptyShare() / EMPTY, outcome.emptyLarge / EMPTY_LARGE);
        }
    }

    /**
     * The first vents and those that pockets asked for; grams as the holes take them; what is held back.
     *
     * @param start with the grams and cups to begin with
     * @param largeNetG into a cavity as large as one in ten, in all
     */
    public Outcome of(Pouring start, double largeNetG, List<Integer> firstVents) {
        if (!middle.passable() || !large.passable()) {
            FillState state = new FillState(start, firstVents, Map.of(), fine, null);
            List<FillTrial.Dose> none = state.places().stream()
                    .map(p -> new FillTrial.Dose(p, 0, Double.NaN, List.of()))
                    .toList();
            return new Outcome(state, Fill.NONE, new FillTrial.Held(none, 0, 1), List.of(), 0, 0);
        }
        FillState state = FillState.of(start, firstVents, Map.of(), fine, middle);
        state = poured(vented(state));
        if (state.emptyShare() > EMPTY) {
            state = poured(vented(state));
        }
        if (state.emptyShare() > EMPTY) {
            FillState moved = poured(moved(state));
            state = moved.emptyShare() < state.emptyShare() ? moved : state;
        }
        state = topped(state);
        Judged best = judged(state, largeNetG);
        Judged last = best;
        for (int round = 0; round < LARGE_ROUNDS && best.outcome.emptyLarge > EMPTY_LARGE; round++) {
            FillState before = last.outcome.state;
            FillState.Vents vents = more(before, last.large, hollows(last.large), EMPTY_LARGE);
            if (vents.cells().equals(before.vents())) {
                break;
            }
            last = judged(poured(before.with(vents.cells(), vents.near(), middle)), largeNetG);
            best = last.score() < best.score() ? last : best; // a vent can also lead mix astray
        }
        return fewer(best, largeNetG).outcome;
    }

    /** Without the vents that are not needed, where there are more than so many a place. */
    private Judged fewer(Judged start, double largeNetG) {
        Judged best = start;
        int enough = enough(start.outcome.state);
        for (int vent : start.outcome.state.vents()) {
            FillState state = best.outcome.state;
            if (state.vents().size() <= enough) {
                break;
            }
            FillState without = poured(state.without(vent, middle));
            if (without.emptyShare() <= Math.max(EMPTY, state.emptyShare())) {
                Judged next = judged(without, largeNetG);
                best = next.score() <= Math.max(1, best.score()) ? next : best;
            }
        }
        return best;
    }

    private static int enough(FillState state) {
        return Math.max(
                FEWEST_VENTS,
                (int) (VENTS_A_PLACE * state.pouring().holes().size()));
    }

    /** The same with vents that a person has placed: none is added or moved, whatever stays empty. */
    public Outcome asPlaced(Pouring start, double largeNetG, List<Integer> vents) {
        return middle.passable() && large.passable()
                ? judged(poured(FillState.of(start, vents, Map.of(), fine, middle)), largeNetG).outcome
                : of(start, largeNetG, vents);
    }

    /** With all the grams again, where vents found since let more of them in. */
    private FillState topped(FillState state) {
        if (state.emptyShare() <= EMPTY || !state.pouring().canBeMore()) {
            return state;
        }
        FillState more = poured(state.with(state.pouring().full(), middle));
        return more.asPoured() && more.emptyShare() < state.emptyShare() ? more : state;
    }

    /** Vents for the most likely cavity, the fewest that do it. */
    private FillState vented(FillState start) {
        FillState best = start;
        FillState state = start;
        for (int round = 0; round < ROUNDS && state.emptyShare() > EMPTY; round++) {
            FillState.Vents vents = more(state, state.ran(), pockets(state.ran()), EMPTY);
            if (vents.cells().equals(state.vents())) {
                break;
            }
            state = state.with(vents.cells(), vents.near(), middle);
            best = state.emptyShare() < best.emptyShare() ? state : best; // a vent can also lead mix astray
        }
        return best;
    }

    /** As many vents, but one after another given up for one at the largest pocket, where that leaves less empty. */
    private FillState moved(FillState start) {
        FillState best = start;
        int left = TRIED_CELLS / middle.cavity.cells.length;
        boolean better = true;
        while (better && left > 0 && best.emptyShare() > EMPTY) {
            better = false;
            for (int vent : best.vents()) {
                FillState next = left > 0 ? instead(best, vent) : best;
                left--;
                if (next.emptyShare() < best.emptyShare()) {
                    best = next;
                    better = true;
                    break;
                }
            }
        }
        return best;
    }

    private FillState instead(FillState state, int vent) {
        FillState.Vents others = state.but(vent);
        FillState fewer = new FillState(state.pouring(), others.cells(), others.near(), fine, state.run());
        FillState.Vents vents = more(fewer, state.ran(), pockets(state.ran()), EMPTY);
        return state.with(vents.cells(), vents.near(), middle);
    }

    /** Grams as the holes take them, and as evenly dense as that goes. */
    private FillState poured(FillState start) {
        FillState state = start;
        for (int round = 0; round < GRAM_ROUNDS && !state.asPoured(); round++) {
            state = state.with(state.pouring().after(state.takenMm3(), round >= EXACT_FROM), middle);
        }
        FillState less = state;
        for (int round = 0; round < LESS_ROUNDS && less.pouring().canBeLess() && uneven(less); round++) {
            less = less.with(less.pouring().less(), middle);
        }
        boolean better = less.asPoured() && !uneven(less) && less.emptyShare() <= Math.max(EMPTY, state.emptyShare());
        return better ? less : state;
    }

    private static boolean uneven(FillState state) {
        return new FillRecord(state.ran()).density().evenShare() < EVEN_SHARE;
    }

    private Judged judged(FillState state, double largeNetG) {
        Resin resin = state.pouring().resin();
        double netG = state.pouring().netG();
        double mostMm3 = Math.max(0, largeNetG - netG) / (resin.densityKgM3() * 1e-6);
        FillTrial.Held watching = HeldBack.watching(state, mostMm3, Math.max(1, largeNetG / netG));
        FillTrial.Run without = large.run(state.work(), watching);
        FillTrial.Held held = HeldBack.of(without, watching, resin);
        List<Integer> unshown = new ArrayList<>();
        for (int p = 0; p < state.places().size(); p++) {
            if (!without.result().shown()[p]) {
                unshown.add(p);
            }
        }
        FillTrial.Run with = unshown.isEmpty() ? without : large.run(state.work(), held);
        FillRecord record = new FillRecord(state.ran());
        String face = state.pouring().holes().get(0).spot().face();
        Outcome outcome = new Outcome(state, record.of(face), held, unshown, with.emptyShare(), without.emptyShare());
        return new Judged(outcome, with);
    }

    private static List<EnclosedAir.Pocket> pockets(FillTrial.Run run) {
        return EnclosedAir.of(run.setting(), run.result());
    }

    /** What stays empty, enclosed or not, in parts that one place can serve; the largest first. */
    private static List<EnclosedAir.Pocket> hollows(FillTrial.Run run) {
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
    private FillState.Vents more(
            FillState state, FillTrial.Run run, List<EnclosedAir.Pocket> pockets, double emptyShare) {
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
        double aPlace = state.pouring().resin().expansion() > 1 ? VENTS_A_PLACE : Batches.VENTS_A_PLACE_FLAT;
        return Math.max(
                FEWEST_VENTS, (int) Math.ceil(aPlace * state.pouring().holes().size()));
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
