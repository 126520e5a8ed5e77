package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.plan.Fill;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Runs a plan through the flow, in the most likely cavity and in one as large as one in ten, and changes what does not
 * work: (1) air that stays enclosed gets a vent, the largest first, until little enough stays empty; (2) a hole gets the
 * grams that it takes, less where the mix would be denser than on the mean; (3) what is held back for the large cavity is shared out to the places where nothing shows in it, and
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

    /** Steps of sharing grams by the density they give at most. */
    private static final int EVEN_ROUNDS = 5;

    private static final int EVEN_GRAMS = 3;

    /** Cells of all fills in which another place for a vent is tried: some 25 fills of a square metre. */
    private static final int TRIED_CELLS = 40_000;

    /** Fills of the large cavity with vents moved at most, each time. */
    private static final int SHIFTS = 4;

    /** Fills of the large cavity with another vent given up at most, of a mix that does not rise. */
    private static final int EXCHANGES = 8;

    /** Rounds for the large cavity. */
    private static final int LARGE_ROUNDS = 3;

    /** Wanted of the most likely and of the large cavity, a little under what is promised: 2 and 4 per cent. Practice. */
    private static final double EMPTY = 0.017;

    private static final double EMPTY_LARGE = 0.033;

    /** So much may stay empty of the most likely one for a more even density. Practice. */
    private static final double EMPTY_EVEN = 0.019;

    /** Where so many times as much stays empty as may, other grams do not bring it down to that. */
    private static final double HOPELESS = 1.5;

    /** Of the filled volume, as dense as the mean within 15 per cent. */
    private static final double EVEN_SHARE = 0.9;

    private static final double COARSE_FROM_MM2 = 1e6;

    private final FillTrial middle;
    private final FillTrial large;
    private final Cavity fine;
    private final VentPlacing placing;
    private final boolean byHand;

    /**
     * @param middle the most likely cavity
     * @param large one as large as one in ten
     * @param fine the pattern's raster, with the places for holes
     * @param byHand holes were placed by hand: none is left out for a more even density
     */
    public FillPlanning(FillTrial middle, FillTrial large, Cavity fine, DrillPlaces places, boolean byHand) {
        this.byHand = byHand;
        this.middle = middle;
        this.large = large;
        this.fine = fine;
        placing = new VentPlacing(fine, places);
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

        /** How a smaller space is filled: a mix that does not rise until it shows at the next hole. */
        public FillTrial.Held watching() {
            return state.pouring().resin().expansion() > 1 ? FillTrial.Held.NOTHING : held;
        }
    }

    /**
     * A plan and its fill of the large cavity.
     *
     * @param score how far from what is wanted; 1 is just enough
     */
    private record Judged(Outcome outcome, FillTrial.Run large, double score) {
        static Judged of(Outcome outcome, FillTrial.Run large) {
            double empty = Math.max(outcome.state.emptyShare() / EMPTY, outcome.emptyLarge / EMPTY_LARGE);
            return new Judged(
                    outcome,
                    large,
                    Math.max(empty, EVEN_SHARE / outcome.fill.density().evenShare()));
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
            FillState moved = poured(moved(filledUp(state)));
            state = moved.emptyShare() < state.emptyShare() ? moved : state;
        }
        state = topped(state);
        Judged best = judged(state, largeNetG);
        best = shifted(best, largeNetG);
        Judged last = best;
        for (int round = 0; round < LARGE_ROUNDS && best.outcome.emptyLarge > EMPTY_LARGE; round++) {
            FillState before = last.outcome.state;
            FillState.Vents vents = placing.more(before, last.large, VentPlacing.hollows(last.large), EMPTY_LARGE);
            if (vents.cells().equals(before.vents())) {
                break;
            }
            last = judged(poured(before.with(vents.cells(), vents.near(), middle)), largeNetG);
            best = last.score() < best.score() ? last : best; // a vent can also lead mix astray
        }
        return fewer(exchanged(shifted(best, largeNetG), largeNetG), largeNetG).outcome;
    }

    /** With vents at the pockets of the large cavity which they stand beside, as many as leave less empty. */
    private Judged shifted(Judged start, double largeNetG) {
        Judged best = start;
        int most = Integer.MAX_VALUE;
        for (int round = 0; round < SHIFTS && most > 0 && best.outcome.emptyLarge > EMPTY_LARGE; round++) {
            FillState state = best.outcome.state;
            FillState.Vents vents = placing.beside(state, best.large, most);
            int moved = (int) vents.cells().stream()
                    .filter(v -> !state.vents().contains(v))
                    .count();
            Judged next =
                    moved == 0 ? best : judged(poured(state.with(vents.cells(), vents.near(), middle)), largeNetG);
            most = next.score() < best.score() ? moved : moved / 2;
            best = next.score() < best.score() ? next : best;
        }
        return best;
    }

    /** Of a mix that does not rise: one vent after another given up for one in the large cavity, where that leaves less empty. */
    private Judged exchanged(Judged start, double largeNetG) {
        if (start.outcome.state.pouring().resin().expansion() > 1) {
            return start;
        }
        Judged best = start;
        List<Integer> left = new ArrayList<>(start.outcome.state.vents());
        for (int tried = 0; tried < EXCHANGES && !left.isEmpty() && best.outcome.emptyLarge > EMPTY_LARGE; tried++) {
            int vent = left.remove(0);
            FillState.Vents vents =
                    instead(best.outcome.state, vent, best.large, VentPlacing.hollows(best.large), EMPTY_LARGE);
            FillState moved = best.outcome.state.with(vents.cells(), vents.near(), middle);
            Judged next = judged(poured(moved), largeNetG);
            if (next.score() < best.score()) {
                best = next;
                left = new ArrayList<>(next.outcome.state.vents());
            }
        }
        return best;
    }

    /** Without the vents that are not needed, where there are more than so many a place. */
    private Judged fewer(Judged start, double largeNetG) {
        Judged best = start;
        int enough = VentPlacing.enough(start.outcome.state);
        for (int vent : start.outcome.state.vents()) {
            FillState state = best.outcome.state;
            if (state.vents().size() <= enough) {
                break;
            }
            FillState first = state.without(vent, middle);
            if (first.emptyShare() > HOPELESS * Math.max(EMPTY, state.emptyShare())) {
                continue;
            }
            FillState without = poured(first);
            if (without.emptyShare() <= Math.max(EMPTY, state.emptyShare())) {
                Judged next = judged(without, largeNetG);
                best = next.score() <= Math.max(1, best.score()) ? next : best;
            }
        }
        return best;
    }

    /** The same with vents that a person has placed: none is added or moved, whatever stays empty. */
    public Outcome asPlaced(Pouring start, double largeNetG, List<Integer> vents) {
        return middle.passable() && large.passable()
                ? judged(poured(FillState.of(start, vents, Map.of(), fine, middle)), largeNetG).outcome
                : of(start, largeNetG, vents);
    }

    /** A mix that does not rise with all its grams: where too few are in, no vent shows what it is worth. */
    private FillState filledUp(FillState state) {
        Pouring pouring = state.pouring();
        return pouring.resin().expansion() <= 1 && pouring.canBeMore() ? state.with(pouring.full(), middle) : state;
    }

    /** With all the grams again, where vents found since let more of them in. */
    private FillState topped(FillState state) {
        if (state.emptyShare() <= EMPTY || !state.pouring().canBeMore()) {
            return state;
        }
        Pouring full = state.pouring().full();
        FillState best = state;
        if (full.resin().expansion() <= 1) { // as much more into each: a front that is late leaves no place its share
            best = best.orBetter(exactly(state.pouring(full, middle), GRAM_ROUNDS));
        }
        return best.emptyShare() > EMPTY ? best.orBetter(poured(state.with(full, middle))) : best;
    }

    /** Vents for the most likely cavity, the fewest that do it. */
    private FillState vented(FillState start) {
        FillState best = start;
        FillState state = start;
        for (int round = 0; round < ROUNDS && state.emptyShare() > EMPTY; round++) {
            FillState.Vents vents = placing.more(state, state.ran(), VentPlacing.pockets(state.ran()), EMPTY);
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
        FillState.Vents vents = instead(state, vent, state.ran(), VentPlacing.pockets(state.ran()), EMPTY);
        return state.with(vents.cells(), vents.near(), middle);
    }

    private FillState.Vents instead(
            FillState state, int vent, FillTrial.Run run, List<EnclosedAir.Pocket> pockets, double emptyShare) {
        FillState.Vents others = state.but(vent);
        FillState fewer = new FillState(state.pouring(), others.cells(), others.near(), fine, state.run());
        return placing.more(fewer, run, pockets, emptyShare);
    }

    /** Grams as the holes take them, and as evenly dense as that goes. */
    private FillState poured(FillState start) {
        if (start.pouring().resin().expansion() <= 1) {
            return fromHoleToHole(start);
        }
        FillState state = start;
        for (int round = 0; round < GRAM_ROUNDS && !state.asPoured(); round++) {
            state = state.with(state.pouring().after(state.takenMm3(), round >= EXACT_FROM), middle);
        }
        FillState less = state;
        for (int round = 0; round < LESS_ROUNDS && less.pouring().canBeLess() && uneven(less); round++) {
            less = less.with(less.pouring().less(), middle);
        }
        boolean better = less.asPoured() && !uneven(less) && less.emptyShare() <= Math.max(EMPTY, state.emptyShare());
        return better ? less : evened(state);
    }

    /** Less into the holes round which the mix is denser than on the mean, and then less in all, as long as that makes it more even. */
    private FillState evened(FillState start) {
        FillState best = start;
        for (int round = 0; round < EVEN_ROUNDS && uneven(best); round++) {
            Pouring shared = best.pouring()
                    .times(new FillRecord(best.ran()).thinner(best.pouring().holes()));
            Pouring tried = round > 0 && shared.canBeLess() ? shared.less() : shared;
            FillState next = exactly(best.with(tried, middle), EVEN_GRAMS);
            boolean kept = !byHand
                    || next.pouring().holes().size() == best.pouring().holes().size();
            boolean better = kept
                    && next.asPoured()
                    && next.evenShare() > best.evenShare()
                    && next.emptyShare() <= Math.max(EMPTY_EVEN, best.emptyShare());
            if (!better && round > 0) {
                break;
            }
            best = better ? next : best;
        }
        return best;
    }

    /**
     * Of a mix that does not rise: what each takes until mix shows at the next, then just so much, as long as that goes in. Where by
     * the last tenth of a gram a front stops short and shuts air in, the hand that goes by what shows is believed.
     */
    private FillState fromHoleToHole(FillState start) {
        FillState state = start;
        FillState best = exactly(asTaken(state), GRAM_ROUNDS);
        for (int round = 0; round < EXACT_FROM && best.emptyShare() > EMPTY; round++) {
            if (state.asPoured()) {
                return best.orBetter(state);
            }
            state = state.with(state.pouring().after(state.takenMm3(), true), middle);
            best = best.orBetter(exactly(asTaken(state), GRAM_ROUNDS));
        }
        return best.orBetter(state);
    }

    /** Each hole with what goes in, of what it was given. */
    private FillState exactly(FillState start, int rounds) {
        FillState state = start;
        for (int round = 0; round < rounds && !state.asPoured(); round++) {
            state = asTaken(state);
        }
        return state;
    }

    private FillState asTaken(FillState state) {
        return state.pouring(state.pouring().after(state.takenMm3(), true), middle);
    }

    private static boolean uneven(FillState state) {
        return state.evenShare() < EVEN_SHARE;
    }

    private Judged judged(FillState state, double largeNetG) {
        Resin resin = state.pouring().resin();
        double netG = state.pouring().netG();
        double mostMm3 = Math.max(0, largeNetG - netG) / (resin.densityKgM3() * 1e-6);
        FillTrial.Held watching = HeldBack.watching(state, mostMm3, Math.max(1, largeNetG / netG));
        FillTrial.Watched watched = large.watched(
                state.work(),
                watching,
                without -> HeldBack.of(
                        without,
                        watching,
                        resin,
                        state.pouring().liquidMm3(),
                        state.pouring().holes()));
        FillRecord record = new FillRecord(state.ran());
        String face = state.pouring().holes().get(0).spot().face();
        Outcome outcome = new Outcome(
                state,
                record.of(face),
                watched.held(),
                watched.without().unshown(),
                watched.with().emptyShare(),
                watched.without().emptyShare());
        return Judged.of(outcome, watched.with());
    }
}
