package corewright.bench;

import corewright.DamageFixtures;
import corewright.DamageFixtures.Deck;
import corewright.assessment.Assessed;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.damage.Condition;
import corewright.damage.Damage;
import corewright.damage.Fitted;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.report.Outputs;
import corewright.reuse.Memory;
import corewright.store.Pictures;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Polygon;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a person waits for: a plan, the outputs, the whole job, the map after an edit. Run: see docs/performance.md. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = {"-Xmx2g", "-Djava.awt.headless=true"})
public class JobSpeed {

    /** One void of 2 to 6 mm on a deck that slopes by 3 degrees. */
    @State(Scope.Benchmark)
    public static class OneVoid {
        @Param({"0.3", "3"})
        double squareMetres;

        private Deck deck = DamageFixtures.deck(DamageFixtures.rectangle(0, -2500, 6000, 2500));

        @Setup
        public void draw() {
            double half = Math.sqrt(squareMetres / 3) * 1000;
            Polygon area = DamageFixtures.rectangle(2000 - half, -0.75 * half, 2000 + half, 0.75 * half);
            deck = deck.slope(3, 90)
                    .region(
                            Condition.VOID,
                            area,
                            (x, y) -> 4 + 2 * Math.sin(x / 170) * Math.cos(y / 130),
                            0.1);
        }
    }

    /** Holes, grams, cups, the fills that judge them: of what is now half as long, ten times the area. */
    @Benchmark
    public RepairOptions holesAndFill(OneVoid in) {
        return RepairPlanner.plan(in.deck.survey(), in.deck.damage(), new Memory());
    }

    /** The demo, assessed. */
    @State(Scope.Benchmark)
    public static class Demo {
        private Intake intake = read();
        private Assessed assessed = assess(intake);
        private Path out = Path.of("");

        @Setup
        public void folder() throws IOException {
            out = Files.createTempDirectory("speed");
            intake = read();
            assessed = assess(intake);
        }

        private static Intake read() {
            try {
                return SurveyFolder.read(Path.of("demo-data", "quillwort"));
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }

        private static Assessed assess(Intake intake) {
            return Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, Progress.NONE);
        }
    }

    /** Tables, maps, documents of the demo. */
    @Benchmark
    public String documents(Demo in) throws IOException {
        return Outputs.write(in.assessed, Pictures.NONE, in.out, Progress.NONE, Map::of);
    }

    /** From files to conclusions; with {@link #documents} the whole job. */
    @Benchmark
    public Assessed assessDemo(Demo in) {
        return Demo.assess(Demo.read());
    }

    /** A deck of 12 x 4 m read so densely. */
    @State(Scope.Benchmark)
    public static class Edited {
        @Param({"600", "6000"})
        int readings;

        private Survey survey = ManyReadingsBenchmark.survey(600);
        private Fitted fitted = Damage.fit(survey, new Memory());
        private int turn;

        @Setup
        public void fit() {
            survey = ManyReadingsBenchmark.survey(readings);
            fitted = Damage.fit(survey, new Memory());
        }
    }

    /** One reading made wet or dry: until the map shows it, volumes left for later. */
    @Benchmark
    public Fitted editToMap(Edited in) {
        List<Moisture> all = in.survey.readings().moisture();
        Moisture old = all.get(in.turn++ * 37 % all.size());
        Moisture other = new Moisture(
                old.origin(),
                old.id(),
                old.spot(),
                Math.max(0, 60 - old.value()),
                false,
                old.meter(),
                null,
                null,
                false,
                old.side(),
                "");
        in.survey = Edit.replace(in.survey, Part.MOISTURE, old, other).apply(in.survey);
        in.fitted = Damage.follow(in.survey, in.fitted.parameters());
        return in.fitted;
    }
}
