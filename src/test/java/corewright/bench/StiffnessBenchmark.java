package corewright.bench;

import com.sun.management.OperatingSystemMXBean;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.sandwich.FootLoadMap.Place;
import corewright.stiffness.PanelStiffness;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Times the stages of an assessment, clock and processor (all threads of the program, its compiler's too), and prints each
 * panel's figures. Run on survey folders: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.bench.StiffnessBenchmark -Dexec.args=demo-data/quillwort}.
 */
public final class StiffnessBenchmark {
    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private StiffnessBenchmark() {}

    /** Prints a stage's times when the next one begins. */
    private static final class Clock implements Progress {
        private final PrintWriter out;
        private String stage = "";
        private long sinceNs;
        private long processorNs;

        Clock(PrintWriter out) {
            this.out = out;
        }

        @Override
        public void begin(String next, double fraction) {
            if (!stage.isEmpty()) {
                out.printf(
                        Locale.ROOT,
                        "%-14s %7.2f s, processor %7.2f s%n",
                        stage,
                        1e-9 * (System.nanoTime() - sinceNs),
                        1e-9 * (PROCESS.getProcessCpuTime() - processorNs));
            }
            stage = next;
            sinceNs = System.nanoTime();
            processorNs = PROCESS.getProcessCpuTime();
        }
    }

    public static void main(String[] folders) throws Exception {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        for (String folder : folders) {
            Intake intake = SurveyFolder.read(Path.of(folder));
            Clock clock = new Clock(out);
            Assessment found = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, clock)
                    .assessment();
            clock.begin("", 1);
            found.stiffness().panels().forEach(panel -> print(out, panel));
        }
    }

    private static void print(PrintWriter out, PanelStiffness panel) {
        out.printf(Locale.ROOT, "%s, %s%n", panel.panel().name(), panel.softest());
        panel.states().forEach((name, state) -> {
            Place worst = state.feet().softest();
            out.printf(
                    Locale.ROOT,
                    "  %-16s %8.4f mm, linear %8.4f, of as built %s; softest %.4f mm at %.0f, %.0f; feet %d, sum %.3f%n",
                    name,
                    state.deflectionMm(),
                    state.linearMm(),
                    state.ofAsBuilt(),
                    worst.deflectionMm(),
                    worst.x(),
                    worst.y(),
                    state.feet().places().size(),
                    state.feet().places().stream()
                            .mapToDouble(Place::deflectionMm)
                            .sum());
        });
        if (Boolean.getBoolean("loads")) {
            panel.cases().forEach(load -> out.printf(Locale.ROOT, "  %s%n", load));
        }
    }
}
