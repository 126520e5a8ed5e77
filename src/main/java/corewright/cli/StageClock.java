package corewright.cli;

import corewright.assessment.Progress;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Times the stages of a run and, where somebody watches, names each as it begins. */
final class StageClock implements Progress {
    private static final double MS_PER_NS = 1e-6;

    private final @Nullable PrintWriter watched;
    private final Map<String, Long> timingsMs = new LinkedHashMap<>();
    private @Nullable String stage;
    private long sinceNs = System.nanoTime();

    /** @param watched where to name the stages; null where nobody looks */
    StageClock(@Nullable PrintWriter watched) {
        this.watched = watched;
    }

    @Override
    public void begin(String next, double fraction) {
        stop();
        stage = next;
        if (watched != null) {
            watched.printf(Locale.ROOT, "\r%3.0f of 100  %-24s", 100 * fraction, next);
            watched.flush();
        }
    }

    /** The last stage is over. */
    void end() {
        stop();
        if (watched != null) {
            watched.printf(Locale.ROOT, "\r%40s\r", "");
            watched.flush();
        }
    }

    /** Stage → milliseconds, the running one up to now. */
    Map<String, Long> timingsMs() {
        stop();
        return new LinkedHashMap<>(timingsMs);
    }

    private void stop() {
        long now = System.nanoTime();
        if (stage != null) {
            timingsMs.merge(stage, Math.round((now - sinceNs) * MS_PER_NS), Long::sum);
        }
        sinceNs = now;
    }
}
