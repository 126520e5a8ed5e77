package corewright.desktop.holes;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Jobs;
import corewright.desktop.state.Workbench;
import corewright.repair.pattern.HoleTrial;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Edit;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The holes of the region selected under a hand. What is held is tried in the background, the newest place only. */
public final class HolesModel {
    private final Workbench bench;
    private final Runnable tell;
    private @Nullable InjectionPlan of;
    private @Nullable HoleTrial trial;
    private HoleTrial.@Nullable Result before;
    private HoleTrial.@Nullable Result now;
    private @Nullable Hole held;
    private @Nullable Spot heldAt;
    private MovedHole.@Nullable Kind adding;
    private boolean trying;
    private boolean again;
    private Jobs.Job making = () -> {};
    private double triedMs;
    private final FillPlay fill;
    private final QuickPlan quick;
    private @Nullable Assessment base; // of which the plan last shown came
    private @Nullable InjectionPlan lastOf;

    public HolesModel(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
        this.fill = new FillPlay(bench, tell);
        this.quick = new QuickPlan(bench, tell);
    }

    /** The fill as it is played. */
    public FillPlay fill() {
        return fill;
    }

    /** The plan of the region selected; empty where it has none, or advice is of before. */
    public Optional<InjectionPlan> plan() {
        return found().isPresent()
                ? found().flatMap(a -> bench.region().flatMap(r -> a.plans().injection(r.id())))
                : quick.plan().filter(p -> bench.region()
                        .filter(r -> p.part(r.id()).isPresent())
                        .isPresent());
    }

    private Optional<Assessment> found() {
        return bench.found().filter(a -> a.ages().freshRest());
    }

    /** Makes ready for the plan as it is; lets go of what was held of another. */
    public void follow() {
        found().ifPresent(a -> base = a);
        Assessment last = base;
        InjectionPlan known = lastOf;
        if (found().isEmpty() && last != null && known != null) {
            quick.follow(last, known);
        }
        InjectionPlan plan = plan().orElse(null);
        InjectionPlan shown = of;
        if (plan == shown) {
            return;
        }
        of = plan;
        if (plan != null) {
            lastOf = plan;
        }
        if (plan != null && shown != null && plan.holes().equals(shown.holes())) {
            return; // the chain came to what was shown at once
        }
        held = null;
        heldAt = null;
        adding = null;
        trial = null;
        before = null;
        now = null;
        making.cancel();
        fill.follow(last, plan);
        if (plan != null && last != null) {
            ready(last, plan);
        }
    }

    private void ready(Assessment found, InjectionPlan plan) {
        Survey survey = bench.survey().orElseThrow();
        making = bench.jobs()
                .run(
                        () -> {
                            EmptySpace space = EmptySpace.of(found.damage(), plan);
                            SpaceTask task = SpaceTask.of(survey, found.damage().face(space.face()), space);
                            HoleTrial made = HoleTrial.of(task, plan);
                            return new Ready(plan, made, made.at(places(plan)));
                        },
                        this::ready,
                        e -> bench.say("The holes cannot be tried: " + Complaints.sentence(e)));
    }

    private record Ready(InjectionPlan plan, HoleTrial trial, HoleTrial.Result result) {}

    private void ready(Ready made) {
        if (made.plan == of) {
            trial = made.trial;
            before = made.result;
            now = made.result;
            tell.run();
        }
    }

    private static List<HoleTrial.Place> places(InjectionPlan plan) {
        return plan.filling().stream().map(HoleTrial.Place::of).toList();
    }

    // --- the hand ----------------------------------------------------------------------------------------------------

    /** Takes the drilled hole or vent nearest to a place; false where none is within reach. */
    public boolean grasp(double xMm, double yMm, double reachMm) {
        InjectionPlan plan = of;
        if (plan == null || trial == null || adding != null) {
            return false;
        }
        Hole best = null;
        double least = reachMm;
        for (Hole hole : plan.holes()) {
            Spot at = hole == held ? Objects.requireNonNull(heldAt) : hole.spot();
            double d = Math.hypot(at.xMm() - xMm, at.yMm() - yMm);
            if (hole.drilled() && d <= least) {
                best = hole;
                least = d;
            }
        }
        if (best != null && best != held) {
            hold(best);
        }
        return best != null;
    }

    private void hold(Hole hole) {
        held = hole;
        heldAt = hole.spot();
        now = before;
    }

    /** Takes the next hole or vent in the plan's order, or the one before. */
    public void next(int by) {
        List<Hole> all = of == null || trial == null
                ? List.of()
                : of.holes().stream().filter(Hole::drilled).toList();
        if (!all.isEmpty()) {
            int at = held == null ? (by > 0 ? -1 : 0) : all.indexOf(held);
            adding = null;
            hold(all.get(Math.floorMod(at + by, all.size())));
        }
    }

    /** Moves what is held. */
    public void move(double xMm, double yMm) {
        InjectionPlan plan = of;
        if (plan != null && (held != null || adding != null)) {
            heldAt = new Spot(plan.holes().get(0).spot().face(), Math.rint(xMm), Math.rint(yMm));
            tryIt();
        }
    }

    /** Moves it by so much. */
    public void nudge(double dxMm, double dyMm) {
        Spot at = heldAt;
        if (at != null) {
            move(at.xMm() + dxMm, at.yMm() + dyMm);
        }
    }

    /** Sets one more hole or vent at a place, held until it is kept. */
    public void add(MovedHole.Kind kind, double xMm, double yMm) {
        held = null;
        adding = kind;
        move(xMm, yMm);
    }

    /** Lets go; nothing was changed. */
    public void putBack() {
        held = null;
        heldAt = null;
        adding = null;
        now = before;
    }

    private void tryIt() {
        HoleTrial with = trial;
        InjectionPlan plan = of;
        if (with == null || plan == null) {
            return;
        }
        if (trying) {
            again = true;
            return;
        }
        trying = true;
        List<HoleTrial.Place> tried = tried(plan);
        bench.jobs()
                .run(
                        () -> {
                            long from = System.nanoTime();
                            HoleTrial.Result result = with.at(tried);
                            return new Timed(result, (System.nanoTime() - from) / 1e6);
                        },
                        timed -> {
                            trying = false;
                            triedMs = timed.ms;
                            if (with == trial && heldAt != null) {
                                now = timed.result;
                            }
                            if (again) {
                                again = false;
                                tryIt();
                            }
                            tell.run();
                        },
                        e -> trying = false);
    }

    private record Timed(HoleTrial.Result result, double ms) {}

    /** Injection holes where they are tried: in the plan's order, then one more. */
    private List<HoleTrial.Place> tried(InjectionPlan plan) {
        List<HoleTrial.Place> tried = new ArrayList<>(places(plan));
        Spot at = heldAt;
        if (at != null && !ofVents()) {
            HoleTrial.Place place = new HoleTrial.Place(at, 0);
            if (held == null) {
                tried.add(place);
            } else {
                tried.set(plan.filling().indexOf(held), place);
            }
        }
        return tried;
    }

    /** What is held is a vent, or will be one. */
    public boolean ofVents() {
        return adding == MovedHole.Kind.VENT || held().filter(h -> !h.fills()).isPresent();
    }

    // --- edits -------------------------------------------------------------------------------------------------------

    private interface Change {
        @Nullable
        Edit of(HoleEdits edits);
    }

    private void edit(String deed, Change change) {
        InjectionPlan plan = of;
        List<Region> regions = bench.found().map(a -> a.damage().regions()).orElse(List.of());
        putBack();
        if (plan != null) {
            bench.edit(deed, s -> change.of(new HoleEdits(s, plan, regions)));
        }
    }

    /** Keeps what is held where it is; what the plan then is follows. */
    public void keep() {
        Spot to = heldAt;
        MovedHole.Kind more = adding;
        Hole hole = held;
        if (to != null && more != null) {
            edit(more == MovedHole.Kind.VENT ? "adding a vent" : "adding a hole", e -> e.added(more, to));
        } else if (to != null && hole != null) {
            edit("moving " + name(hole), e -> e.placed(hole, to));
        }
    }

    private static String name(Hole hole) {
        return (hole.fills() ? "hole " : "vent ") + hole.id();
    }

    /** Has the held hole stay where it is, whatever the next plan would do. */
    public void lock() {
        held().ifPresent(h -> edit("holding " + name(h) + " in place", e -> e.placed(h, h.spot())));
    }

    /** Takes the held hole away; the others stay where they are. */
    public void remove() {
        held().ifPresent(h -> edit("taking " + name(h) + " away", e -> e.removed(h)));
    }

    /** Lets a hole that was placed by hand go where the plan wants it, or away. */
    public void release() {
        held().ifPresent(h -> edit("leaving " + name(h) + " to the plan", e -> e.released(h)));
    }

    /** Leaves every hole of the space to the plan: the fewest that reach all of it. */
    public void fewest() {
        edit("the fewest holes", e -> e.leftToThePlan(false));
    }

    /** Leaves every vent of the space to the plan. */
    public void ventsAsPlanned() {
        edit("vents as planned", e -> e.leftToThePlan(true));
    }

    // --- what there is -----------------------------------------------------------------------------------------------

    /** The hole or vent of the plan that is held. */
    public Optional<Hole> held() {
        return Optional.ofNullable(held);
    }

    public boolean adding() {
        return adding != null;
    }

    /** Where the hand has it; empty where nothing is held. */
    public Optional<Spot> heldAt() {
        return Optional.ofNullable(heldAt);
    }

    /** It was moved from where the plan has it. */
    public boolean moved() {
        Spot at = heldAt;
        return at != null
                && (adding != null || held().filter(h -> !h.spot().equals(at)).isPresent());
    }

    /** Whether a hole was placed by hand. */
    public boolean locked(Hole hole) {
        return bench.survey().flatMap(s -> HoleEdits.standing(s, hole.spot())).isPresent();
    }

    /** Whether any hole, or vent, of this space was placed or taken away by hand. */
    public boolean byHand(boolean vents) {
        InjectionPlan plan = of;
        List<Region> regions = bench.found().map(a -> a.damage().regions()).orElse(List.of());
        return plan != null
                && bench.survey()
                        .filter(s -> new HoleEdits(s, plan, regions).byHand(vents))
                        .isPresent();
    }

    /** What the holes reach now; empty until the first trial is there. */
    public Optional<HoleTrial.Result> now() {
        return Optional.ofNullable(now);
    }

    /** What they reach where the plan has them. */
    public Optional<HoleTrial.Result> before() {
        return Optional.ofNullable(before);
    }

    /** Cavity that falls to what is held, cubic millimetres; 0 where nothing is, or a vent. */
    public double heldMm3() {
        HoleTrial.Result result = now;
        return result == null || heldAt == null || ofVents() ? 0 : ofHeld(result.servedMm3(), 0.0);
    }

    /** Whether a hole may be drilled where the held one is. */
    public boolean allowed() {
        HoleTrial.Result result = now;
        Spot at = heldAt;
        HoleTrial with = trial;
        if (result == null || at == null || with == null) {
            return true;
        }
        return ofVents() ? with.allowed(at) : ofHeld(result.allowed(), true);
    }

    /** Of figures in the order of what was tried the one of what is held; none where that was not tried yet. */
    private <T> T ofHeld(List<T> figures, T none) {
        List<Hole> filling = Objects.requireNonNull(of).filling();
        int at = held == null ? filling.size() : filling.indexOf(held);
        return at >= 0 && at < figures.size() ? figures.get(at) : none;
    }

    /** How long the last trial took, milliseconds of the clock. */
    public double triedMs() {
        return triedMs;
    }
}
