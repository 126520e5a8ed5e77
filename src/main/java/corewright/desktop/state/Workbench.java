package corewright.desktop.state;

import corewright.assessment.Ages;
import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Partial;
import corewright.damage.Parameters;
import corewright.damage.Region;
import corewright.intake.text.RefusedException;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is open, touched, being calculated. Every change is told to whoever listens; only the window's thread may call it. */
public final class Workbench {
    private final Jobs jobs;
    private final Conclusions conclusions;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Consumer<Spot>> goers = new ArrayList<>();
    private final List<Consumer<String>> movers = new ArrayList<>();
    private final Sight sight = new Sight(this::tell);
    private @Nullable Assessment shown;
    private @Nullable Assessment shownOf;
    private Deeds deeds = new Deeds();
    private @Nullable EditLog log;
    private List<Complaints.Line> complaints = List.of();
    private String face = "";
    private String region = "";
    private String message = "";
    private final Waiting waiting;
    private Jobs.Job reading = () -> {};

    public Workbench(Jobs jobs, Chain chain) {
        this.jobs = jobs;
        this.conclusions = new Conclusions(jobs, chain, new Told());
        this.waiting = new Waiting(jobs, this::tell);
    }

    /** Hears what is concluded. */
    private final class Told implements Conclusions.Told {
        @Override
        public void changed() {
            if (region().isEmpty()) {
                region = "";
            }
            tell();
        }

        @Override
        public void complain(List<Complaints.Line> lines) {
            complaints = lines;
        }

        @Override
        public void say(String sentence) {
            message = sentence;
        }
    }

    /** Opens what {@code source} gives; what was open stays where it is refused. */
    public void open(String what, Callable<EditLog> source) {
        reading.cancel();
        reading = waiting.on("Reading " + what, p -> source.call(), this::opened, e -> refused(what, e));
    }

    private void opened(EditLog opened) {
        if (log != null) {
            log.close();
        }
        log = opened;
        deeds = new Deeds();
        complaints = List.of();
        region = "";
        face = opened.survey().faces().get(0).name();
        message = opened.whyReadOnly().isEmpty() ? Kept.sentence(opened) : opened.whyReadOnly();
        sight.begin(Units.of(opened.survey()), Steps.count(opened.survey().readings()) == 0 ? Step.PLAN : Step.DAMAGE);
        conclusions.startOver(opened); // tells of all this, once
    }

    private void refused(String what, Exception e) {
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
        waiting.leave();
        conclusions.stop();
        if (log != null) {
            log.close();
        }
        log = null;
        conclusions.startOver(null);
    }

    /** Has everything calculated from the survey as it is. */
    public void calculate() {
        conclusions.calculate();
    }

    /** Stops what the window says is under way; what was found before stays. */
    public void stop() {
        if (!waiting.stop()) {
            conclusions.stop();
        }
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
            say(open.whyReadOnly());
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
                        changed("Done: " + deed + ". Ctrl Z takes it back.");
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
                        String said = words.get();
                        changed(said);
                        movers.forEach(m -> m.accept(said));
                    } else {
                        say("There is nothing to take back or make again.");
                    }
                },
                e -> say("Not written: " + Complaints.sentence(e)));
    }

    /** While somebody reads point after point nothing is calculated; when that is over, everything is. */
    public void hold(boolean on) {
        conclusions.hold(on);
    }

    /** The survey is another one: the map follows, the rest when nobody has typed for a while. */
    private void changed(String words) {
        message = words;
        sight.unmark();
        if (log == null) {
            return; // closed while it was being written
        }
        Survey now = log.survey();
        if (now.faces().stream().noneMatch(f -> f.name().equals(face))) {
            face = now.faces().get(0).name();
            region = "";
        }
        conclusions.changed();
    }

    public void select(String id) {
        region = id;
        sight.unmark();
        region().ifPresent(r -> face = r.face());
        tell();
    }

    /** The next region in order, or the one before. */
    public void selectNext(int by) {
        Assessment a = found().orElse(null);
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

    /** Told what was taken back or made again. */
    public void listenToUndo(Consumer<String> mover) {
        movers.add(mover);
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
        return conclusions.found();
    }

    /**
     * What the plan shows: what is found with the readings as they are, or the bare plan. The same again while nothing else
     * came, so that nothing is painted twice.
     */
    public Optional<Assessment> shown() {
        EditLog open = log;
        if (open == null) {
            return Optional.empty();
        }
        Assessment newest = found().orElse(null);
        Assessment same = shown;
        if (same == null || shownOf != newest || same.survey() != open.survey()) {
            same = newest == null
                    ? Partial.bare(open.survey(), open.importNotes())
                    : newest.beside(open.survey(), open.importNotes());
        }
        shown = same;
        shownOf = newest;
        return Optional.of(same);
    }

    /** The region selected, where there is one of that name. */
    public Optional<Region> region() {
        return found().flatMap(a ->
                a.damage().regions().stream().filter(r -> r.id().equals(region)).findFirst());
    }

    public List<Finding> findings() {
        return found().map(Assessment::findings).orElse(List.of());
    }

    /** What was fitted last. */
    public Parameters parameters() {
        return conclusions.parameters();
    }

    /** The whole, with what it leaves; empty unless it belongs to the survey as it is. */
    public Optional<Assessed> assessed() {
        return conclusions.assessed();
    }

    /** For long work besides the calculation. */
    public Waiting waiting() {
        return waiting;
    }

    /** Who works away from the window's thread. */
    public Jobs jobs() {
        return jobs;
    }

    /** Everything is found, and belongs to the survey as it is. */
    public boolean fresh() {
        return conclusions.fresh();
    }

    /** Nothing is found yet, but will be. */
    public boolean working() {
        return conclusions.working();
    }

    /** It was stopped, or failed, before everything was found: it goes on only when asked for. */
    public boolean stopped() {
        return conclusions.stopped();
    }

    /** How old what is found is; fresh where nothing is, so that nothing is marked. */
    public Ages ages() {
        return found().map(Assessment::ages).orElse(Ages.FRESH);
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
        return waiting.busy().equals(Busy.NOT) ? conclusions.busy() : waiting.busy();
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
