package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Progress;
import corewright.damage.Damage;
import corewright.damage.Fitted;
import corewright.damage.Parameters;
import corewright.damage.Region;
import corewright.intake.Intake;
import corewright.intake.RefusedException;
import corewright.intake.SurveyCheck;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What is open, what is touched, what is being calculated. Every change is told to whoever listens; nobody but the window's
 * thread may call it.
 */
public final class Workbench {
    /** Nobody has typed for this long: the chain is calculated anew. */
    private static final long IDLE_MS = 1200;

    private final Jobs jobs;
    private final Chain chain;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Consumer<Spot>> goers = new ArrayList<>();
    private final Sight sight = new Sight(this::tell);
    private final Bare.Shown shown = new Bare.Shown();
    private Deeds deeds = new Deeds();
    private @Nullable Survey assessed;
    private @Nullable EditLog log;
    private @Nullable Assessment found;
    private Freshness freshness = Freshness.NONE;
    private List<Complaints.Line> complaints = List.of();
    private String face = "";
    private String region = "";
    private String message = "";
    private Busy busy = Busy.NOT;
    private Jobs.@Nullable Job calculation;
    private Jobs.@Nullable Job pause;
    private volatile int generation;
    private boolean held;
    private Parameters parameters = Parameters.NONE;

    public Workbench(Jobs jobs, Chain chain) {
        this.jobs = jobs;
        this.chain = chain;
    }

    /** Opens what {@code source} gives; what was open stays where it is refused. */
    public void open(String what, Callable<EditLog> source) {
        busy = new Busy("Reading " + what, 0.01);
        tell();
        calculation = replace(calculation, jobs.run(source, this::opened, e -> refused(what, e)));
    }

    private static Jobs.Job replace(Jobs.@Nullable Job before, Jobs.Job now) {
        if (before != null) {
            before.cancel();
        }
        return now;
    }

    private void opened(EditLog opened) {
        if (log != null) {
            log.close();
        }
        log = opened;
        deeds = new Deeds();
        found = null;
        parameters = Parameters.NONE;
        complaints = List.of();
        region = "";
        face = opened.survey().faces().get(0).name();
        message = opened.whyReadOnly();
        busy = Busy.NOT;
        sight.go(Steps.count(opened.survey().readings()) == 0 ? Step.PLAN : Step.DAMAGE);
        calculate();
    }

    private void refused(String what, Exception e) {
        busy = Busy.NOT;
        if (e instanceof RefusedException refused) {
            complaints = Complaints.of(refused);
            message = what + " cannot be used as it is: " + Steps.counted(complaints.size(), "complaint") + ".";
        } else {
            complaints = List.of();
            message = what + ": " + Complaints.sentence(e);
        }
        tell();
    }

    /** Closes what is open. */
    public void close() {
        stop();
        if (log != null) {
            log.close();
        }
        log = null;
        found = null;
        freshness = Freshness.NONE;
        tell();
    }

    /** Has everything calculated from the survey as it is. */
    public void calculate() {
        EditLog open = log;
        if (open == null) {
            return;
        }
        Survey survey = open.survey();
        int mine = ++generation;
        if (found == null) {
            freshness = Freshness.WORKING;
        }
        if (Steps.count(survey.readings()) == 0) {
            freshness = Freshness.NONE;
            found = null;
            busy = Busy.NOT;
            tell();
            return;
        }
        busy = new Busy("Calculating", 0.01);
        tell();
        calculation = replace(
                calculation,
                jobs.run(
                        () -> {
                            Intake intake = SurveyCheck.check(survey, open.importNotes());
                            Progress progress = new Telling(mine, survey, intake);
                            return chain.assess(intake.survey(), intake.findings(), progress);
                        },
                        a -> calculated(mine, survey, a),
                        e -> notCalculated(mine, e)));
    }

    /** Tells the window how far the chain is, and stops it when nobody waits for it any more. */
    private final class Telling implements Progress {
        private final int mine;
        private final Survey survey;
        private final Intake intake;

        Telling(int mine, Survey survey, Intake intake) {
            this.mine = mine;
            this.survey = survey;
            this.intake = intake;
        }

        @Override
        public void begin(String stage, double fraction) {
            if (mine != generation || Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            jobs.onWindow(() -> progress(mine, stage, fraction));
        }

        @Override
        public void mapped(Fitted fitted) {
            Assessment early = Assessor.mapped(intake.survey(), intake.findings(), fitted.map());
            jobs.onWindow(() -> {
                if (mine == generation) {
                    parameters = fitted.parameters();
                }
                calculated(mine, survey, early, Freshness.MAP_ONLY);
            });
        }
    }

    private void progress(int of, String stage, double fraction) {
        if (of == generation && !busy.what().isEmpty()) {
            busy = new Busy("Calculating " + stage, fraction);
            tell();
        }
    }

    private void calculated(int of, Survey survey, Assessment assessment) {
        if (of == generation) {
            busy = Busy.NOT;
            calculated(of, survey, assessment, Freshness.FRESH);
        }
    }

    private void calculated(int of, Survey survey, Assessment assessment, Freshness how) {
        if (of != generation || log == null) {
            return;
        }
        found = assessment;
        assessed = survey;
        complaints = List.of();
        freshness = survey == log.survey() ? how : Freshness.STALE;
        if (region().isEmpty()) {
            region = "";
        }
        tell();
    }

    private void notCalculated(int of, Exception e) {
        if (of != generation) {
            return;
        }
        busy = Busy.NOT;
        freshness = found == null ? Freshness.NONE : Freshness.STALE;
        if (e instanceof RefusedException refused) {
            complaints = Complaints.of(refused);
            message = "Nothing can be calculated until this is mended.";
        } else if (!(e instanceof CancellationException)) {
            message = Complaints.sentence(e);
        }
        tell();
    }

    /** Stops what is being calculated; what was found before stays. */
    public void stop() {
        generation++;
        if (calculation != null) {
            calculation.cancel();
        }
        if (pause != null) {
            pause.cancel();
        }
        calculation = null;
        busy = Busy.NOT;
        freshness = found == null ? Freshness.NONE : Freshness.STALE;
        tell();
    }

    /**
     * Makes a change: written down first, then the map follows.
     *
     * @param deed as undo will name it
     * @param change made from the survey as it is when its turn comes; null makes none
     */
    public void edit(String deed, Function<Survey, @Nullable Edit> change) {
        EditLog open = log;
        if (open == null) {
            return;
        }
        if (!open.whyReadOnly().isEmpty()) {
            message = open.whyReadOnly();
            tell();
            return;
        }
        jobs.inOrder(
                () -> {
                    Edit edit = change.apply(open.survey());
                    if (edit != null) {
                        open.append(edit);
                    }
                    return edit != null;
                },
                made -> {
                    if (made) {
                        deeds.done(deed);
                        changed("");
                    }
                },
                e -> say("Not written: " + Complaints.sentence(e)));
    }

    /** Takes the last change back, and says which. */
    public void undo() {
        step(EditLog::canUndo, EditLog::undo, () -> {
            String name = deeds.last();
            deeds.undone();
            return "Taken back: " + name + ".";
        });
    }

    /** Makes the change again that was taken back last. */
    public void redo() {
        step(EditLog::canRedo, EditLog::redo, () -> {
            String name = deeds.next();
            deeds.redone();
            return "Made again: " + name + ".";
        });
    }

    private interface Move {
        void go(EditLog log) throws IOException;
    }

    private void step(Function<EditLog, Boolean> may, Move move, Supplier<String> words) {
        EditLog open = log;
        if (open == null) {
            return;
        }
        jobs.inOrder(
                () -> {
                    boolean can = may.apply(open);
                    if (can) {
                        move.go(open);
                    }
                    return can;
                },
                made -> {
                    if (made) {
                        changed(words.get());
                    } else {
                        say("There is nothing to take back or make again.");
                    }
                },
                e -> say("Not written: " + Complaints.sentence(e)));
    }

    /** While somebody reads point after point nothing is calculated; when that is over, everything is. */
    public void hold(boolean on) {
        held = on;
        if (!on && freshness != Freshness.FRESH) {
            calculate();
        }
    }

    /** The survey is another one: the map follows, the rest when nobody has typed for a while. */
    private void changed(String words) {
        message = words;
        generation++;
        if (calculation != null) {
            calculation.cancel();
        }
        busy = Busy.NOT;
        EditLog open = Objects.requireNonNull(log);
        Survey now = open.survey();
        if (now.faces().stream().noneMatch(f -> f.name().equals(face))) {
            face = now.faces().get(0).name();
            region = "";
        }
        Assessment before = found;
        if (freshness == Freshness.FRESH && Bare.onlyPhotographs(assessed, now)) {
            assessed = now;
            tell();
            return;
        }
        freshness = before == null ? Freshness.NONE : Freshness.STALE;
        if (held) {
            tell();
            return;
        }
        if (before == null) {
            calculate();
            return;
        }
        int mine = generation;
        tell();
        Parameters frozen = parameters;
        calculation = jobs.run(
                () -> Damage.follow(now, frozen),
                fitted -> {
                    if (mine == generation) {
                        parameters = fitted.parameters();
                        found = Bare.followed(before, now, fitted.map());
                        freshness = Freshness.MAP_ONLY;
                        tell();
                    }
                },
                e -> tell()); // the whole chain comes in a moment all the same
        pause = replace(pause, jobs.later(IDLE_MS, this::calculate));
    }

    public void select(String id) {
        region = id;
        region().ifPresent(r -> face = r.face());
        tell();
    }

    /** The next region in order, or the one before. */
    public void selectNext(int by) {
        Assessment a = found;
        if (a == null || a.damage().regions().isEmpty()) {
            return;
        }
        List<Region> all = a.damage().regions();
        int at = -1;
        for (int i = 0; i < all.size(); i++) {
            at = all.get(i).id().equals(region) ? i : at;
        }
        int to = at < 0 ? (by > 0 ? 0 : all.size() - 1) : Math.floorMod(at + by, all.size());
        select(all.get(to).id());
    }

    public void show(String faceName) {
        face = faceName;
        region = "";
        tell();
    }

    /** Moves the plan to a place. */
    public void goTo(Spot spot) {
        if (!spot.face().equals(face)) {
            face = spot.face();
            region = "";
            tell();
        }
        goers.forEach(g -> g.accept(spot));
    }

    /** One sentence at the foot of the window. */
    public void say(String sentence) {
        message = sentence;
        tell();
    }

    /** Told after every change. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Told when the plan is to move to a place. */
    public void listenToMoves(Consumer<Spot> goer) {
        goers.add(goer);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public @Nullable EditLog log() {
        return log;
    }

    public Optional<Survey> survey() {
        return Optional.ofNullable(log).map(EditLog::survey);
    }

    public Optional<Assessment> found() {
        return Optional.ofNullable(found);
    }

    /** What the plan shows: what is found with the readings as they are, or the bare plan. */
    public Optional<Assessment> shown() {
        return survey().map(s -> shown.of(s, found, log == null ? List.of() : log.importNotes()));
    }

    /** The region held, where there is one of that name. */
    public Optional<Region> region() {
        return found().flatMap(a ->
                a.damage().regions().stream().filter(r -> r.id().equals(region)).findFirst());
    }

    public List<Finding> findings() {
        return found().map(Assessment::findings).orElse(List.of());
    }

    /** What was fitted last. */
    Parameters parameters() {
        return parameters;
    }

    /** Who works away from the window's thread. */
    Jobs jobs() {
        return jobs;
    }

    public Freshness freshness() {
        return freshness;
    }

    public List<Complaints.Line> complaints() {
        return complaints;
    }

    public String face() {
        return face;
    }

    public String message() {
        return message;
    }

    public Busy busy() {
        return busy;
    }

    /** How it is looked at. */
    public Sight sight() {
        return sight;
    }

    /** "Undo: reading at E, starboard 2". */
    public String undoName() {
        return log != null && log.canUndo() ? "Undo: " + deeds.last() : "Nothing to undo";
    }

    public String redoName() {
        return log != null && log.canRedo() ? "Redo: " + deeds.next() : "Nothing to redo";
    }
}
