package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.state.Appearance;
import corewright.desktop.state.Step;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long the window's thread is busy at a stretch while the demo is worked on: a beat is handed to it every few
 * milliseconds, and what the thread computes between two beats is one stretch. Processor time counts, so that the figure does
 * not depend on who else uses the machine. Run with {@code -Dwindow.pulse=true -Dtest=WindowPulseTest}, and
 * {@code -Dwindow.pulse.survey=FOLDER} for another survey than the demo; prints a table.
 */
@EnabledIfSystemProperty(named = "window.pulse", matches = "true")
class WindowPulseTest {
    private static final double WANTED_MS = 50;
    private static final Path SURVEY = Path.of(System.getProperty("window.pulse.survey", "demo-data/quillwort"));

    private final Map<String, Double> longest = new LinkedHashMap<>();
    private volatile String doing = "start";
    private volatile boolean over;

    @Test
    void theWindowsThreadIsNeverBusyForLong(@TempDir Path folder) throws Exception {
        try (Stream<Path> files = Files.list(SURVEY)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        WarmUp.begin(null); // as the program does
        try (OpenWindow window = new OpenWindow(Assessor::assess, Optional.empty())) {
            Thread beats = beats();
            work(window, folder, "first time: ");
            work(window, folder, "");
            over = true;
            beats.join();
        }
        longest.forEach((what, ms) -> System.out.printf("%s | %.0f ms%n", what, ms));
        assertThat(longest).allSatisfy((what, ms) -> assertThat(ms).as(what).isLessThan(2 * WANTED_MS));
        assertThat(longest.entrySet())
                .filteredOn(
                        e -> !e.getKey().startsWith("first time") && !e.getKey().equals("start"))
                .allSatisfy(e -> assertThat(e.getValue()).as(e.getKey()).isLessThan(WANTED_MS));
    }

    private Thread beats() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long id = OpenWindow.onFx(() -> Thread.currentThread().getId());
        Thread beats = new Thread(() -> {
            while (!over) {
                String during = doing;
                long before = threads.getThreadCpuTime(id);
                CountDownLatch heard = new CountDownLatch(1);
                Platform.runLater(heard::countDown);
                try {
                    heard.await();
                    Thread.sleep(3);
                } catch (InterruptedException e) {
                    return;
                }
                longest.merge(during, (threads.getThreadCpuTime(id) - before) / 1e6, Math::max);
            }
        });
        beats.start();
        return beats;
    }

    private void work(OpenWindow window, Path folder, String when) throws InterruptedException {
        Desk desk = window.desk;
        deed(when + "open", 0, () -> desk.open(folder));
        window.waitUntilCalculated();
        for (int i = 0; i < 5; i++) {
            int at = 20 + i;
            deed(when + "change a reading", 900, () -> desk.bench().edit("reading", s -> wetter(s, at)));
        }
        window.waitUntilCalculated();
        for (int i = 0; i < 15; i++) {
            deed(when + "move the plan", 30, () -> desk.view().plan().move(7, 3));
            deed(when + "zoom", 30, () -> desk.view().plan().zoomMiddle(1.02));
        }
        window.waitUntilCalculated();
        for (Step step : Step.values()) {
            deed(when + "step " + step.word(), 1500, () -> desk.bench().sight().go(step));
        }
        decide(desk, when);
        for (Appearance a : List.of(Appearance.NIGHT, Appearance.SUNLIGHT, Appearance.DAY)) {
            deed(when + "another appearance", 400, () -> desk.bench().sight().appear(a));
        }
        for (int i = 0; i < 6; i++) {
            deed(when + "another region", 200, () -> desk.bench().selectNext(1));
        }
        deed(when + "how good the map is", 0, desk::showInsight);
        window.waitFor("the pictures", () -> desk.view().inTask());
        deed(when + "how good the map is", 500, () -> desk.view().task(null));
        deed(when + "walk", 600, desk::walk);
        deed(when + "walk", 300, () -> {
            desk.view().task(null);
            desk.bench().hold(false);
            desk.bench().stop();
        });
    }

    private void decide(Desk desk, String when) throws InterruptedException {
        deed(when + "step Repair", 500, () -> desk.bench().sight().go(Step.REPAIR));
        deed(when + "decide", 800, () -> desk.bench().select("R1"));
        deed(when + "holes", 2500, () -> desk.half().holes().open());
        deed(when + "work", 1500, () -> desk.half().work());
        deed(when + "back to the plan", 500, () -> desk.view().task(null));
        deed(when + "owner's page", 3000, () -> desk.half().showOwner());
        deed(when + "back to the plan", 500, () -> desk.view().task(null));
    }

    private void deed(String what, long thenMs, Runnable deed) throws InterruptedException {
        doing = what;
        OpenWindow.doFx(deed);
        Thread.sleep(thenMs);
    }

    private static Edit wetter(Survey s, int at) {
        Moisture m = s.readings().moisture().get(at);
        Moisture wet = new Moisture(
                m.origin(), m.id(), m.spot(), m.value() + 20, false, m.meter(), null, null, false, m.side(), m.note());
        return Edit.replace(s, Part.MOISTURE, m, wet);
    }
}
