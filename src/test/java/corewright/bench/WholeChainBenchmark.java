package corewright.bench;

import corewright.GeneratedSurveys;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.intake.text.RefusedException;
import corewright.report.Outputs;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The whole chain, from a survey to every output, on surveys of every kind the generators make: invented decks of each kind,
 * surveys of random figures, the demo after random edits; and on survey folders. Prints each with the time of its stages and what failed
 * or was lost to a defect, and the slowest again at the end.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.WholeChainBenchmark -Dexec.args="300 1 FOLDER..."
 * </pre>
 */
public final class WholeChainBenchmark {
    private static final int SLOWEST = 10;

    /** Readings of a kind in a survey of random figures. */
    private static final int READINGS = 40;

    private static final int EDITS = 8;

    private final PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    private final List<Run> runs = new ArrayList<>();

    private WholeChainBenchmark() {}

    /** @param said how it ended; empty where all is well */
    private record Run(String name, Map<String, Long> stagesMs, String said) {
        long ms() {
            return stagesMs.values().stream().mapToLong(ms -> ms).sum();
        }

        @Override
        public String toString() {
            String stages = stagesMs.entrySet().stream()
                    .map(s -> s.getKey() + " " + s.getValue())
                    .collect(Collectors.joining(", "));
            return String.format(Locale.ROOT, "%-24s %7d ms: %s", name, ms(), stages);
        }
    }

    /** Times stages. */
    private static final class Clock implements Progress {
        private final Map<String, Long> stagesMs = new LinkedHashMap<>();
        private String stage = "intake";
        private long sinceNs = System.nanoTime();

        @Override
        public void begin(String next, double fraction) {
            stagesMs.merge(stage, (System.nanoTime() - sinceNs) / 1_000_000, Long::sum);
            stage = next;
            sinceNs = System.nanoTime();
        }
    }

    /** @param arguments how many generated surveys; the first seed; folders of surveys, or of folders of surveys */
    public static void main(String[] arguments) throws IOException {
        WholeChainBenchmark benchmark = new WholeChainBenchmark();
        long first = Long.parseLong(arguments[1]);
        for (long seed = first; seed < first + Long.parseLong(arguments[0]); seed++) {
            benchmark.generated(seed);
        }
        for (int i = 2; i < arguments.length; i++) {
            for (Path folder : surveys(Path.of(arguments[i]))) {
                benchmark.run(String.valueOf(folder.getFileName()), () -> SurveyFolder.read(folder));
            }
        }
        benchmark.conclude();
    }

    private static List<Path> surveys(Path folder) throws IOException {
        if (Files.exists(folder.resolve("survey.yaml"))) {
            return List.of(folder);
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(f -> Files.exists(f.resolve("survey.yaml")))
                    .sorted()
                    .toList();
        }
    }

    private void generated(long seed) {
        InventedTruth.Kind[] kinds = InventedTruth.Kind.values();
        int kind = (int) Math.floorMod(seed, kinds.length + 2L);
        if (kind < kinds.length) {
            String name = "invented " + kinds[kind].name().toLowerCase(Locale.ROOT) + " " + seed;
            run(name, () -> SurveyCheck.check(new InventedDeck(kinds[kind], seed).survey(), List.of()));
        } else if (kind == kinds.length) {
            run("random " + seed, () -> SurveyCheck.check(new GeneratedSurveys(seed).survey(READINGS), List.of()));
        } else {
            run("demo edited " + seed, () -> edited(seed));
        }
    }

    /** The demo after edits that its check lets pass. */
    static Intake edited(long seed) throws IOException, RefusedException {
        GeneratedSurveys random = new GeneratedSurveys(seed);
        Intake intake = SurveyFolder.read(Path.of("demo-data", "quillwort"));
        for (int i = 0; i < EDITS; i++) {
            Survey survey = random.edit(intake.survey()).apply(intake.survey());
            try {
                intake = SurveyCheck.check(survey, List.of());
            } catch (RefusedException e) {
                // a person would mend it; here the edit is left out
            }
        }
        return intake;
    }

    private void run(String name, Callable<Intake> source) {
        Clock clock = new Clock();
        String said = "";
        try {
            Intake intake = source.call();
            Assessment assessment = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, clock)
                    .assessment();
            write(assessment, clock);
            said = assessment.defects().stream()
                    .map(d -> d.sentence() + " (" + d.cause() + ")")
                    .collect(Collectors.joining("\n  "));
        } catch (RefusedException e) {
            said = "refused: " + e.complaints().get(0).problem();
        } catch (Exception | StackOverflowError e) {
            said = "FAILED: " + e + " at " + e.getStackTrace()[0];
        }
        clock.begin("", 1);
        Run run = new Run(name, clock.stagesMs, said);
        runs.add(run);
        out.println(run);
        if (!said.isEmpty()) {
            out.println("  " + said);
        }
    }

    private static void write(Assessment assessment, Clock clock) throws IOException {
        Path folder = Files.createTempDirectory("corewright");
        try {
            Outputs.write(assessment, folder.resolve("out"), clock, Map::of);
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).forEach(WholeChainBenchmark::delete);
            }
        }
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void conclude() {
        long failed = runs.stream().filter(r -> r.said.startsWith("FAILED")).count();
        long refused = runs.stream().filter(r -> r.said.startsWith("refused")).count();
        long lost = runs.stream().filter(r -> !r.said.isEmpty()).count() - failed - refused;
        out.printf(
                Locale.ROOT,
                "%d surveys: %d failed, %d with a figure lost to a defect, %d refused by intake%n",
                runs.size(),
                failed,
                lost,
                refused);
        out.println("slowest:");
        runs.stream()
                .sorted(Comparator.comparingLong(Run::ms).reversed())
                .limit(SLOWEST)
                .forEach(out::println);
    }
}
