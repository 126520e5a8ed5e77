package corewright.cli;

import corewright.assessment.Progress;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Times the stages of a run and says how far it is: on a terminal in one line that is written over, elsewhere in a line every few seconds,
 * so that a log shows a run that goes on; to nobody where quiet was asked for.
 */
final class StageClock implements Progress, AutoCloseable {
    private static final double MS_PER_NS = 1e-6;

    /** Seconds between two lines where nobody watches a terminal; a run shorter than this says nothing. */
    static final int BETWEEN_LINES_S = 5;

    private final PrintWriter told;
    private final Manner manner;
    private final @Nullable ScheduledExecutorService ticks;
    private final long beganNs = System.nanoTime();
    private final Map<String, Long> timingsMs = new LinkedHashMap<>();
    private volatile @Nullable Stage stage;
    private long sinceNs = System.nanoTime();

    /** How progress is told. */
    enum Manner {
        TERMINAL,
        LINES,
        QUIET;

        static Manner of(boolean quiet) {
            return quiet ? QUIET : System.console() == null ? LINES : TERMINAL;
        }
    }

    /** @param fraction of the whole that is done where it begins */
    private record Stage(String name, double fraction) {}

    StageClock(PrintWriter told, Manner manner) {
        this.told = told;
        this.manner = manner;
        this.ticks = manner == Manner.LINES ? everyFewSeconds() : null;
    }

    private ScheduledExecutorService everyFewSeconds() {
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "progress");
            thread.setDaemon(true);
            return thread;
        });
        var unused = clock.scheduleAtFixedRate(this::sayLine, BETWEEN_LINES_S, BETWEEN_LINES_S, TimeUnit.SECONDS);
        return clock;
    }

    @Override
    public void begin(String next, double fraction) {
        stop();
        stage = new Stage(next, fraction);
        if (manner == Manner.TERMINAL) {
            told.printf(Locale.ROOT, "\r%3.0f of 100  %-24s", 100 * fraction, next);
            told.flush();
        }
    }

    /** The same clock for a part of a longer run: its stages are named after the part and its fractions lie within it. */
    Progress part(String name, DoubleUnaryOperator fraction) {
        return (next, done) -> begin(name + ": " + next, fraction.applyAsDouble(done));
    }

    /** What a log gets every few seconds. */
    void sayLine() {
        Stage now = stage;
        if (now != null) {
            told.printf(
                    Locale.ROOT,
                    "%3.0f of 100  %s, %d s since the start%n",
                    100 * now.fraction,
                    now.name,
                    TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - beganNs));
            told.flush();
        }
    }

    /** The last stage is over, or given up. */
    @Override
    public void close() {
        stop();
        stage = null;
        if (ticks != null) {
            ticks.shutdownNow();
        }
        if (manner == Manner.TERMINAL) {
            told.printf(Locale.ROOT, "\r%40s\r", "");
            told.flush();
        }
    }

    /** Stage → milliseconds, the running one up to now. */
    Map<String, Long> timingsMs() {
        stop();
        return new LinkedHashMap<>(timingsMs);
    }

    private void stop() {
        long now = System.nanoTime();
        Stage running = stage;
        if (running != null) {
            timingsMs.merge(running.name, Math.round((now - sinceNs) * MS_PER_NS), Long::sum);
        }
        sinceNs = now;
    }
}
