package corewright.survey;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * A repair plan as it was issued with its cards. A name in it means one place for good: what is left out of a later revision
 * keeps its name and place, so that the name is not given again.
 *
 * @param issue which revision it is and on what it rests; nothing where no plan was issued, else exactly one
 * @param regions that have a name
 * @param holes by name, those left out too
 * @param cuts as issued
 * @param cups as issued
 * @param buying list as issued
 */
public record FrozenPlan(
        List<Issue> issue,
        List<PlannedRegion> regions,
        List<PlannedHole> holes,
        List<PlannedCut> cuts,
        List<PlannedCup> cups,
        List<Purchase> buying) {
    /** No plan was issued. */
    public static final FrozenPlan NONE =
            new FrozenPlan(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public FrozenPlan {
        issue = List.copyOf(issue);
        regions = List.copyOf(regions);
        holes = List.copyOf(holes);
        cuts = List.copyOf(cuts);
        cups = List.copyOf(cups);
        buying = List.copyOf(buying);
    }

    /**
     * What a revision rests on.
     *
     * @param revision from 1
     * @param surveyed day of the survey; no other day is known
     * @param mark of the readings, see {@link ReadingsMark}
     */
    public record Issue(
            int revision,
            LocalDate surveyed,
            String mark,
            int moisture,
            int taps,
            int probes,
            int feelers,
            int plugs) {}

    /** Whether something is part of the plan. */
    public enum Standing {
        PLANNED,
        /** Planned, and held where it was when this revision was made. */
        HELD,
        /** Held so, and mix had gone in by the log: its grams are those of the revision by which it was filled. */
        FILLED,
        /** Left out since; the name is not given again. */
        DROPPED
    }

    /** What a hole is for. */
    public enum Kind {
        INJECTION,
        VENT,
        NOZZLE
    }

    /**
     * A region by its name.
     *
     * @param label a point well inside it
     * @param method advised for it
     */
    public record PlannedRegion(String name, Spot label, String method, Standing standing) {}

    /**
     * A hole, or a place of the long nozzle.
     *
     * @param region in which it lies
     * @param stopMm from the outer surface to the drill's tip; 0 where nothing is drilled
     * @param grams into it, without waste; 0 for a vent
     * @param access through which the nozzle goes in, else empty
     * @param pushMm of the nozzle from there, else 0
     */
    public record PlannedHole(
            String name,
            String region,
            Spot spot,
            Kind kind,
            double diameterMm,
            double stopMm,
            double grams,
            Standing standing,
            String access,
            double pushMm) {
        public boolean dropped() {
            return standing == Standing.DROPPED;
        }

        /** Whether it stood where it is when this revision was made. */
        public boolean held() {
            return standing == Standing.HELD || standing == Standing.FILLED;
        }

        /** Whether mix goes in. */
        public boolean fills() {
            return kind != Kind.VENT;
        }
    }

    /** @param area through the outer skin */
    public record PlannedCut(String region, String face, Geometry area) {}

    /** @param holes names parted by spaces */
    public record PlannedCup(int cup, String region, String holes, double partAG, double partBG) {}

    /** A line of the buying list. */
    public record Purchase(String item, double plan, double buy, String unit) {}

    /** Whether no plan was issued. */
    public boolean isNone() {
        return issue.isEmpty();
    }

    /** 0 where no plan was issued. */
    public int revision() {
        return issue.isEmpty() ? 0 : issue.get(0).revision();
    }

    /** The hole of a name, in any case of its letters. */
    public Optional<PlannedHole> hole(String name) {
        String folded = name.toUpperCase(Locale.ROOT);
        return holes.stream()
                .filter(h -> h.name().toUpperCase(Locale.ROOT).equals(folded))
                .findFirst();
    }

    /** Whether another plan is the same but for its revision and the readings it rests on. */
    public boolean sameWork(FrozenPlan other) {
        return other.withIssue(issue).equals(this);
    }

    /** The same under another revision. */
    public FrozenPlan withIssue(List<Issue> other) {
        return new FrozenPlan(other, regions, holes, cuts, cups, buying);
    }
}
