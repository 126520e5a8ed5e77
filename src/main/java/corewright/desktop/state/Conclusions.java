package corewright.desktop.state;

import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Partial;
import corewright.assessment.Progress;
import corewright.damage.Parameters;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.text.RefusedException;
import corewright.survey.Survey;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;

/**
 * What is concluded from the survey that is open, and how old that is: after a change the map follows with its
 * parameters held, the whole chain when nobody has changed anything for a while. Only the window's thread may call it.
 */
final class Conclusions {
    /** Nobody has typed for this long: the chain is calculated anew. */
    private static final long IDLE_MS = 1200;

    /** Where the chain ends on the scale of a run, whose rest is the writing of files. */
    private static final double WHOLE = 0.60;

    /** Who is told. */
    interface Told {
        void changed();

        /** What stands in the way of calculating; empty once something was calculated. */
        void complain(List<Complaints.Line> lines);

        void say(String sentence);
    }

    private final Jobs jobs;
    private final Chain chain;
    private final Told told;
    private @Nullable EditLog log;
    private @Nullable Survey assessed;
    private @Nullable Assessment found;
    private Earlier earlier = Earlier.NONE;
    private Busy busy = Busy.NOT;
    private Jobs.Job calculation = () -> {};
    private Jobs.Job pause = () -> {};
    private volatile int generation;
    private boolean held;
    private boolean stopped;

    Conclusions(Jobs jobs, Chain chain, Told told) {
        this.jobs = jobs;
        this.chain = chain;
        this.told = told;
    }

    /** Nothing of what was open before counts any more; null where nothing is open now. */
    void startOver(@Nullable EditLog opened) {
        cancel();
        log = opened;
        found = null;
        assessed = null;
        stopped = false;
        earlier = Earlier.NONE;
        calculate();
    }

    /** Has everything calculated from the survey as it is. */
    void calculate() {
        EditLog open = log;
        if (open == null) {
            told.changed();
            return;
        }
        Survey survey = open.survey();
        cancel();
        stopped = false;
        int mine = generation;
        if (Steps.nothingRead(survey.readings())) {
            found = null;
            told.changed();
            return;
        }
        Earlier known = earlier;
        busy = new Busy("Calculating", 0.01);
        told.changed();
        calculation = jobs.run(
                () -> {
                    Intake intake = SurveyCheck.check(survey, open.importNotes());
                    Progress progress = new Telling(mine, survey);
                    return chain.assess(intake.survey(), intake.findings(), known, progress);
                },
                a -> calculated(mine, survey, a),
                e -> notCalculated(mine, e));
    }

    /** Nobody waits any more for what is under way. */
    private void cancel() {
        generation++;
        calculation.cancel();
        pause.cancel();
        busy = Busy.NOT;
    }

    /** Tells the window how far the chain is, and stops it when nobody waits for it any more. */
    private final class Telling implements Progress {
        private final int mine;
        private final Survey survey;

        Telling(int mine, Survey survey) {
            this.mine = mine;
            this.survey = survey;
        }

        @Override
        public void begin(String stage, double fraction) {
            if (mine != generation || Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            jobs.onWindow(() -> progress(mine, stage, fraction));
        }

        /** The map goes first: what comes after it takes both cores for long, and somebody is waiting for the map. */
        @Override
        public void mapped(Assessed early) {
            CountDownLatch taken = new CountDownLatch(1);
            jobs.onWindow(() -> {
                take(mine, survey, early);
                taken.countDown();
            });
            try {
                taken.await();
                jobs.awaitPainted();
            } catch (InterruptedException e) {
                throw new CancellationException();
            }
        }
    }

    private void progress(int of, String stage, double fraction) {
        if (of == generation && !busy.what().isEmpty()) {
            busy = new Busy("Calculating " + stage, Math.min(1, fraction / WHOLE));
            told.changed();
        }
    }

    private void calculated(int of, Survey survey, Assessed assessed) {
        if (of == generation) {
            busy = Busy.NOT;
            take(of, survey, assessed);
        }
    }

    private void take(int of, Survey survey, Assessed newest) {
        if (of != generation || log == null) {
            return;
        }
        earlier = newest.earlier();
        assessed = survey;
        found = survey == log.survey()
                ? newest.assessment()
                : newest.assessment().older();
        told.complain(List.of());
        told.changed();
    }

    private void notCalculated(int of, Exception e) {
        if (of != generation) {
            return;
        }
        busy = Busy.NOT;
        stopped = true;
        if (e instanceof RefusedException refused) {
            told.complain(Complaints.of(refused));
            told.say("Nothing can be calculated until this is mended.");
        } else if (!(e instanceof CancellationException)) {
            told.say(Complaints.sentence(e));
        }
        told.changed();
    }

    /** Stops what is being calculated; what was found before stays. */
    void stop() {
        stopped = log != null && !fresh();
        cancel();
        told.changed();
    }

    /** While held nothing is calculated; let go, everything is that is old. What is under way already is not begun again. */
    void hold(boolean on) {
        boolean letGo = held && !on;
        held = on;
        if (letGo && !fresh() && !stopped && busy.what().isEmpty()) {
            calculate();
        }
    }

    /** It was stopped, or failed, before everything was found: it goes on only when asked for. */
    boolean stopped() {
        return stopped;
    }

    /** The survey is another one. */
    void changed() {
        cancel();
        stopped = false;
        EditLog open = log;
        if (open == null) {
            return;
        }
        Survey now = open.survey();
        Assessment before = found;
        if (fresh() && assessed != null && Partial.alike(assessed, now)) {
            assessed = now;
            told.changed();
            return;
        }
        found = before == null ? null : before.older();
        if (held) {
            told.changed();
        } else if (before == null) {
            calculate();
        } else {
            told.changed();
            follow(before, now);
            pause = jobs.later(IDLE_MS, this::calculate);
        }
    }

    private void follow(Assessment before, Survey now) {
        int mine = generation;
        Earlier known = earlier;
        calculation = jobs.run(
                () -> Assessor.follow(before, now, known),
                followed -> {
                    if (mine == generation) {
                        earlier = followed.earlier();
                        found = followed.assessment();
                        told.changed();
                    }
                },
                e -> told.changed()); // the whole chain comes in a moment all the same
    }

    Optional<Assessment> found() {
        return Optional.ofNullable(found);
    }

    /** Everything is found, and belongs to the survey as it is. */
    boolean fresh() {
        return found != null && found.ages().fresh();
    }

    /** Nothing is found yet, but will be. */
    boolean working() {
        return found == null && !busy.what().isEmpty();
    }

    Busy busy() {
        return busy;
    }

    /** The whole, with what it leaves; empty unless it belongs to the survey as it is. */
    Optional<Assessed> assessed() {
        return fresh() ? found().map(a -> new Assessed(a, earlier)) : Optional.empty();
    }

    /** What was fitted last. */
    Parameters parameters() {
        return earlier.parameters();
    }
}
