package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.sketch.Sketch;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Step;
import corewright.desktop.state.SurveyOpener;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code docs/first-half-hour.md} tells a new user to do, done by a hand from an empty window to papers on disk. With {@code
 * -Dpictures.update=true} its pictures are taken anew into {@code docs/pictures}.
 */
class FirstHalfHourTest {
    private static final Pattern AFT = Pattern.compile("([0-9.]+) m aft");
    private static final Path PAGE = Path.of("docs/first-half-hour.md");

    /** A person who keeps the survey in one place and the papers in another. */
    private record Places(Path survey, Path papers) implements Chooser {
        @Override
        public Optional<Path> folder(String title) {
            return Optional.of(papers);
        }

        @Override
        public Optional<Path> file(String title, String kind, String... endings) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> newFile(String title, String proposed) {
            return Optional.of(survey);
        }
    }

    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    @Test
    void fromAnEmptyWindowToPapers(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("Sandpiper.gpkg");
        Path papers = folder.resolve("papers");
        try (OpenWindow window = new OpenWindow(Assessor::assess, new Places(file, papers))) {
            aNewSurvey(window);
            thePlanIsDrawn(window);
            headAndMeter(window);
            theGridIsWalked(window);
            aPilotHoleIsNoted(window);
            OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.DAMAGE));
            window.waitUntilCalculated();
            theDamageIsSeen(window);
            thePapersAreWritten(window, papers);
        }
        try (EditLog kept = SurveyOpener.open(file)) {
            Readings read = kept.survey().readings();
            assertThat(read.moisture()).hasSize(15);
            assertThat(read.taps()).hasSameSizeAs(read.moisture());
            assertThat(read.probes()).hasSize(1);
            assertThat(kept.survey().heading().vessel()).isEqualTo("Sandpiper");
        }
    }

    private static void aNewSurvey(OpenWindow window) {
        picture(window, "start");
        window.click("#start-new");
        window.click("#new-name").write("Sandpiper foredeck");
        window.fill("#new-length", "900");
        window.fill("#new-width", "600");
        window.click("#new-start");
        window.waitFor("the survey", () -> window.desk.bench().survey().isPresent());
    }

    private static void thePlanIsDrawn(OpenWindow window) {
        window.click("#draw");
        draw(window, Sketch.Tool.OUTLINE, "", "0, -250", "900, -300", "900, 300", "0, 250");
        draw(window, Sketch.Tool.METAL_FITTING, "cleat", "100, 0");
        window.waitFor(
                "a cleat", () -> !survey(window).faces().get(0).features().isEmpty());
        picture(window, "plan");
        window.click("#sketch-done");
    }

    private static void draw(OpenWindow window, Sketch.Tool tool, String name, String... points) {
        window.choose("#sketch-tool", tool.ordinal());
        TextField called = window.shown("#sketch-name", TextField.class, f -> true);
        OpenWindow.doFx(() -> called.setText(name));
        for (String point : points) {
            window.overwrite("#sketch-point", point);
        }
        if (points.length > 1) {
            window.click("#sketch-finish");
        }
    }

    private static void headAndMeter(OpenWindow window) {
        window.click("#setup");
        window.overwrite("#survey-0-vessel", "Sandpiper");
        window.waitFor("the vessel", () -> survey(window).heading().vessel().equals("Sandpiper"));
        window.overwrite("#survey-0-surveyor", "M. Aaltonen");
        window.overwrite("#meter-0-dry", "10");
        window.overwrite("#meter-0-wet", "25");
        window.waitFor("the meter", () -> Double.valueOf(25)
                .equals(survey(window).meters().get(0).wet()));
        picture(window, "setup");
        window.click("#setup-leave");
    }

    /** Wet and hollow over the last 30 cm, sound elsewhere. */
    private static void theGridIsWalked(OpenWindow window) {
        OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.READINGS));
        window.click("#walk");
        window.overwrite("#spacing", "150");
        window.shown("#walk-measured", Label.class, l -> true);
        int points = Integer.parseInt(progress(window).replaceAll(".* of ([0-9]+) read.*", "$1"));
        for (int i = 0; i < points; i++) {
            boolean bad = aftM(window) > 0.55;
            window.hand.type(bad ? KeyCode.DIGIT6 : KeyCode.DIGIT1, KeyCode.DIGIT2);
            window.hand.type(bad ? KeyCode.H : KeyCode.S);
            if (i == points / 2) {
                picture(window, "walk");
            }
            window.hand.type(KeyCode.ENTER);
            int read = i + 1;
            window.waitFor(
                    "reading " + read,
                    () -> survey(window).readings().moisture().size() == read);
        }
        OpenWindow.doFx(() -> window.desk.bench().undo()); // one typed too many is taken back, and typed again
        window.waitFor("undo", () -> survey(window).readings().moisture().size() == points - 1);
        window.click("#leave-walk");
        OpenWindow.doFx(() -> window.desk.bench().redo());
        window.waitFor("redo", () -> survey(window).readings().moisture().size() == points);
    }

    private static String progress(OpenWindow window) {
        return window.shown(".walk-progress", Label.class, l -> true).getText();
    }

    private static double aftM(OpenWindow window) {
        Matcher m = AFT.matcher(
                window.shown("#walk-measured", Label.class, l -> true).getText());
        return m.find() ? Double.parseDouble(m.group(1)) : 0;
    }

    private static void aPilotHoleIsNoted(OpenWindow window) {
        window.click("#note");
        window.overwrite("#form-depth", "5");
        window.choose("#form-core", 3);
        window.overwrite("#hand-place", "750, 80");
        window.waitFor("a pilot hole", () -> survey(window).readings().probes().size() == 1);
        picture(window, "note");
        window.click("#hand-done");
    }

    private static void theDamageIsSeen(OpenWindow window) {
        assertThat(window.desk.bench().found().orElseThrow().damage().regions()).isNotEmpty();
        window.touch(780, -100);
        window.waitFor("a region", () -> window.desk.bench().region().isPresent());
        window.waitUntilCalculated();
        picture(window, "damage");
        window.click("#step-repair");
        window.waitUntilCalculated();
        picture(window, "repair");
    }

    private static void thePapersAreWritten(OpenWindow window, Path papers) {
        window.click("#step-papers");
        window.waitFor(
                "the page", () -> window.desk.half().papers().model().page().isPresent());
        picture(window, "papers");
        window.click("#papers-all");
        window.waitFor(
                "the papers", () -> window.desk.half().papers().model().last().isPresent());
        assertThat(papers.resolve("owner-report.pdf")).isNotEmptyFile();
        assertThat(papers.resolve("work-cards.pdf")).isNotEmptyFile();
        assertThat(papers.resolve("summary.json")).isNotEmptyFile();
        window.click("#paper-open");
        assertThat(window.opened).containsExactly(papers);
    }

    private static void picture(OpenWindow window, String name) {
        String file = "half-hour-" + name + ".png";
        if (Boolean.getBoolean("pictures.update")) {
            window.waitFor(
                    "the plan",
                    () -> window.desk.bench().survey().isEmpty()
                            || window.desk.view().inTask()
                            || window.desk.view().plan().settled());
            window.write(Path.of("docs/pictures").resolve(file));
        }
    }

    /** The page shows every picture that is taken, and no other. */
    @Test
    void thePageShowsWhatIsDone() throws IOException {
        String page = Files.readString(PAGE);
        List<String> shown = Pattern.compile("pictures/(half-hour-[a-z]+\\.png)")
                .matcher(page)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(shown)
                .containsExactlyInAnyOrder(
                        "half-hour-start.png",
                        "half-hour-plan.png",
                        "half-hour-setup.png",
                        "half-hour-walk.png",
                        "half-hour-note.png",
                        "half-hour-damage.png",
                        "half-hour-repair.png",
                        "half-hour-papers.png");
        for (String name : shown) {
            assertThat(Path.of("docs/pictures").resolve(name)).isNotEmptyFile();
        }
    }
}
