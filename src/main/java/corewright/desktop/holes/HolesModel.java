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
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The holes of the region selected under a hand. What is held is tried in the background, the newest place only. */
public final class HolesModel {
    /** A hole that was placed by hand stands where the plan drills it. */
    private static final double SAME_MM = 2;

    private final Workbench bench;
    private final Runnable tell;
    private @Nullable InjectionPlan of;
    private @Nullable HoleTrial trial;
    private HoleTrial.@Nullable Result before;
    private HoleTrial.@Nullable Result now;
    private int held = -1;
    private @Nullable Spot heldAt;
    private boolean adding;
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
        held = -1;
        heldAt = null;
        adding = false;
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

    /** Takes the drilled hole nearest to a place; false where none is within reach. */
    public boolean grasp(double xMm, double yMm, double reachMm) {
        InjectionPlan plan = of;
        if (plan == null || trial == null || adding) {
            return false;
        }
        List<Hole> holes = plan.filling();
        int best = -1;
        double least = reachMm;
        for (int i = 0; i < holes.size(); i++) {
            Spot at = i == held ? Objects.requireNonNull(heldAt) : holes.get(i).spot();
            double d = Math.hypot(at.xMm() - xMm, at.yMm() - yMm);
            if (holes.get(i).drilled() && d <= least) {
                best = i;
                least = d;
            }
        }
        if (best >= 0 && best != held) {
            held = best;
            heldAt = holes.get(best).spot();
            now = before;
        }
        return best >= 0;
    }

    /** Moves what is held. */
    public void move(double xMm, double yMm) {
        InjectionPlan plan = of;
        if (plan != null && (held >= 0 || adding)) {
            heldAt = new Spot(plan.filling().get(0).spot().face(), Math.rint(xMm), Math.rint(yMm));
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

    /** Sets one more hole at a place, held until it is kept. */
    public void add(double xMm, double yMm) {
        held = -1;
        adding = true;
        move(xMm, yMm);
    }

    /** Lets go; nothing was changed. */
    public void putBack() {
        held = -1;
        heldAt = null;
        adding = false;
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

    private List<HoleTrial.Place> tried(InjectionPlan plan) {
        List<HoleTrial.Place> tried = new ArrayList<>(places(plan));
        Spot at = heldAt;
        if (at != null && held >= 0) {
            tried.set(held, new HoleTrial.Place(at, 0));
        } else if (at != null && adding) {
            tried.add(new HoleTrial.Place(at, 0));
        }
        return tried;
    }

    // --- edits -------------------------------------------------------------------------------------------------------

    /** Keeps the held hole where it is; what the plan then is follows from the whole chain. */
    public void keep() {
        Spot to = heldAt;
        InjectionPlan plan = of;
        if (to == null || plan == null) {
            return;
        }
        Spot from = held >= 0 ? plan.filling().get(held).spot() : to;
        String name = held >= 0 ? plan.filling().get(held).id() : "a hole added";
        putBack();
        bench.edit(name.equals("a hole added") ? "adding a hole" : "moving hole " + name, s -> placed(s, from, to));
    }

    /** Has the held hole stay where it is, whatever the next plan would do. */
    public void lock() {
        held().ifPresent(h -> {
            putBack();
            bench.edit("holding hole " + h.id() + " in place", s -> placed(s, h.spot(), h.spot()));
        });
    }

    /** Lets a hole that was placed by hand go where the plan wants it, or away. */
    public void release() {
        held().ifPresent(h -> {
            putBack();
            bench.edit("leaving hole " + h.id() + " to the plan", s -> standing(s, h.spot())
                    .map(m -> Edit.remove(s, Part.HOLES, m))
                    .orElse(null));
        });
    }

    /** Leaves every hole of the face to the plan: the fewest that reach all of it. */
    public void fewest() {
        String face = bench.face();
        putBack();
        bench.edit("the fewest holes", s -> {
            List<Edit> edits = new ArrayList<>();
            Survey left = s;
            for (MovedHole m : s.judgements().holes()) {
                if (m.spot().face().equals(face) && here(m)) {
                    Edit gone = Edit.remove(left, Part.HOLES, m);
                    edits.add(gone);
                    left = gone.apply(left);
                }
            }
            return edits.isEmpty() ? null : new Edit.Together(edits);
        });
    }

    private boolean here(MovedHole m) {
        InjectionPlan plan = of;
        return plan != null
                && found().stream()
                        .flatMap(a -> a.damage().regions().stream())
                        .filter(r -> plan.part(r.id()).isPresent())
                        .anyMatch(r -> inside(r, m.spot()) || inside(r, m.planned()));
    }

    private static boolean inside(Region region, Spot spot) {
        return region.likely().covers(region.likely().getFactory().createPoint(spot.coordinate()));
    }

    private static Edit placed(Survey survey, Spot from, Spot to) {
        return standing(survey, from)
                .map(m -> Edit.replace(survey, Part.HOLES, m, new MovedHole(m.planned(), to)))
                .orElseGet(() -> Edit.add(survey, Part.HOLES, new MovedHole(from, to)));
    }

    /** What a person has placed there. */
    private static Optional<MovedHole> standing(Survey survey, Spot spot) {
        return survey.judgements().holes().stream()
                .filter(m -> m.spot().face().equals(spot.face())
                        && Math.hypot(m.spot().xMm() - spot.xMm(), m.spot().yMm() - spot.yMm()) <= SAME_MM)
                .findFirst();
    }

    // --- what there is -----------------------------------------------------------------------------------------------

    /** The hole of the plan that is held. */
    public Optional<Hole> held() {
        InjectionPlan plan = of;
        return plan == null || held < 0
                ? Optional.empty()
                : Optional.of(plan.filling().get(held));
    }

    public boolean adding() {
        return adding;
    }

    /** Where the hand has it; empty where nothing is held. */
    public Optional<Spot> heldAt() {
        return Optional.ofNullable(heldAt);
    }

    /** It was moved from where the plan has it. */
    public boolean moved() {
        Spot at = heldAt;
        return at != null && (adding || held().filter(h -> !h.spot().equals(at)).isPresent());
    }

    /** Whether a hole was placed by hand. */
    public boolean locked(Hole hole) {
        return bench.survey().flatMap(s -> standing(s, hole.spot())).isPresent();
    }

    /** Whether any hole of this space was placed by hand. */
    public boolean anyLocked() {
        return bench.survey()
                .filter(s -> s.judgements().holes().stream().anyMatch(this::here))
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

    /** Cavity that falls to what is held, cubic millimetres; 0 where nothing is. */
    public double heldMm3() {
        HoleTrial.Result result = now;
        InjectionPlan plan = of;
        if (result == null || plan == null || heldAt == null) {
            return 0;
        }
        int at = adding ? plan.filling().size() : held;
        return at >= 0 && at < result.servedMm3().size() ? result.servedMm3().get(at) : 0;
    }

    /** Whether a hole may be drilled where the held one is. */
    public boolean allowed() {
        HoleTrial.Result result = now;
        InjectionPlan plan = of;
        if (result == null || plan == null || heldAt == null) {
            return true;
        }
        int at = adding ? plan.filling().size() : held;
        return at < 0 || at >= result.allowed().size() || result.allowed().get(at);
    }

    /** How long the last trial took, milliseconds of the clock. */
    public double triedMs() {
        return triedMs;
    }
}
