package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.decision.Method;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.SpaceTask;
import corewright.report.Outputs;
import corewright.reuse.Memory;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.api.Assertions;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A defect in one panel or region, put in on purpose, costs that one's figures and nothing else. */
@NullUnmarked // JUnit fills the folders
class DefectTest {
    @TempDir
    private static Path folder;

    @TempDir
    private Path place;

    private static Intake intake;
    private static Assessed whole;

    /** A memory that knows all, but for some work that fails. */
    private static final class Failing extends Memory {
        private final Memory known = whole.earlier().memory().next();
        private final Predicate<Record> which;
        private final RuntimeException failure;

        Failing(Predicate<Record> which, RuntimeException failure) {
            this.which = which;
            this.failure = failure;
        }

        @Override
        public Memory next() {
            return this;
        }

        @Override
        public <I extends Record, R> R of(I input, Function<? super I, ? extends R> work) {
            if (which.test(input)) {
                throw failure;
            }
            return known.of(input, work);
        }
    }

    /** Two panels; the outer end is hollow and, by a pilot hole and the meter, dry. */
    @BeforeAll
    static void survey() throws IOException {
        SurveyFolders files = SurveyFolders.minimal(folder)
                .adding("plan.csv", "foredeck,support,beam,\"LINESTRING(430 0,430 600)\",,,,simple,\n")
                .replacing("plan.csv", "POINT(450 300),yes,yes,60", "POINT(450 60),yes,yes,40")
                .replacing("probes.csv", "P2,480,540,4.5,rotted", "P2,480,540,4.5,dry")
                .adding("probes.csv", "P4,100,540,4.5,dry\nP5,800,540,4.5,dry\n");
        for (int value = 40; value < 45; value++) {
            files.with("moisture.csv", files.text("moisture.csv").replace("," + value + ",A", ",9,A"));
        }
        intake = SurveyFolder.read(files.path());
        whole = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, Progress.NONE);
    }

    private static Assessment assess(Memory memory) {
        Earlier earlier = new Earlier(Earlier.NONE.parameters(), memory);
        return Assessor.assess(intake.survey(), intake.findings(), earlier, Progress.NONE)
                .assessment();
    }

    private static Predicate<Record> panel(String name) {
        return input -> input.getClass().getSimpleName().equals("PanelInput")
                && input.toString().contains("name=" + name);
    }

    private String ownersPages(Path out) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(out.resolve("owner-report.pdf").toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void aPanelThatFailsCostsItsOwnStiffness() throws IOException {
        Assessment sound = whole.assessment();
        Assessment one = assess(new Failing(panel("foredeck-P1"), new IllegalStateException("on purpose")));

        assertThat(sound.defects()).isEmpty();
        assertThat(sound.stiffness().panels()).hasSize(2);
        assertThat(one.stiffness().panels())
                .singleElement()
                .satisfies(p -> assertThat(p.panel().name()).isEqualTo("foredeck-P2"));
        assertThat(one.defects()).singleElement().satisfies(d -> {
            assertThat(d.about().id()).isEqualTo("foredeck-P1");
            assertThat(d.cause()).contains("on purpose");
        });
        assertThat(one.damage()).isEqualTo(sound.damage());
        assertThat(one.plans()).isEqualTo(sound.plans());
        assertThat(one.decision().regions()).isEqualTo(sound.decision().regions());
        String sentence = "By a defect of this program the stiffness of foredeck-P1 could not be calculated.";
        assertThat(one.findings()).anySatisfy(f -> assertThat(f.message()).isEqualTo(sentence));

        Path out = place.resolve("out");
        String summary = Outputs.write(one, out, Progress.NONE, Map::of);

        assertThat(summary).contains("\"defects\"", "\"foredeck-P1\"", "\"foredeck-P2\"");
        assertThat(ownersPages(out)).contains(sentence);
        assertThat(out.resolve("work-cards.pdf")).isNotEmptyFile();
    }

    @Test
    void aPlanThatFailsIsSaidWhereItIsMissedAndMovesNoMethod() throws IOException {
        Assessment sound = whole.assessment();
        Assessment one = assess(new Failing(SpaceTask.class::isInstance, new IllegalStateException("on purpose")));

        String region = sound.decision().injections().get(0).region();
        assertThat(one.decision().injections()).isEmpty();
        assertThat(one.decision().on(region).method())
                .as("by the evidence, not by the plan that is missing")
                .isEqualTo(sound.decision().on(region).method())
                .isEqualTo(Method.INJECT);
        assertThat(one.defects()).extracting(d -> d.about().id()).contains(region);
        String sentence = "By a defect of this program the injection plan of " + region + " could not be calculated.";
        assertThat(one.decision().on(region).reasons()).contains(sentence);
        assertThat(one.plans().recores()).isEqualTo(sound.plans().recores());
        PanelStiffness without = one.stiffness().panels().get(0);
        PanelStiffness with = sound.stiffness().panels().get(0);
        for (State state : Set.of(State.AS_BUILT, State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE)) {
            assertThat(without.in(state).equals(with.in(state)))
                    .as(state.word())
                    .isTrue();
        }
        assertThat(without.in(State.AFTER_PLAN).deflectionMm())
                .as("what is not planned is not counted on")
                .isGreaterThan(with.in(State.AFTER_PLAN).deflectionMm());

        Path out = place.resolve("out");
        Outputs.write(one, out, Progress.NONE, Map::of);

        assertThat(ownersPages(out)).contains(sentence);
    }

    @Test
    void aPlanWhoseStiffnessFailsLeavesWhatIsKnownOfThePanel() throws IOException {
        Assessment sound = whole.assessment();
        Assessment one = assess(new Failing(
                input -> input.getClass().getSimpleName().equals("Planned"), new IllegalStateException("on purpose")));

        assertThat(one.stiffness().panels()).hasSameSizeAs(sound.stiffness().panels());
        PanelStiffness panel = one.stiffness().panels().get(0);
        assertThat(panel.known())
                .containsExactly(State.AS_BUILT, State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE);
        for (State state : panel.known()) {
            assertThat(panel.in(state).equals(sound.stiffness().panels().get(0).in(state)))
                    .as(state.word())
                    .isTrue();
        }
        assertThat(one.defects()).hasSameSizeAs(one.stiffness().panels());
        assertThat(one.gains().advised()).isEmpty();

        Path out = place.resolve("out");
        String summary = Outputs.write(one, out, Progress.NONE, Map::of);

        assertThat(summary).contains("\"after_recore\"").doesNotContain("\"after_plan\"");
        assertThat(ownersPages(out))
                .contains("By a defect of this program the stiffness after the advised plan of foredeck-P1")
                .contains("After cutting out and renewing")
                .doesNotContain("After what is advised");
        assertThat(out.resolve("foot-load.csv")).isNotEmptyFile();
    }

    @Test
    void workThatIsNoLongerWantedIsNoDefect() {
        Failing cancelled = new Failing(panel("foredeck-P1"), new CancellationException());

        Assertions.assertThatThrownBy(() -> assess(cancelled)).isInstanceOf(CancellationException.class);
    }
}
