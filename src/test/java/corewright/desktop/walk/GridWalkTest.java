package corewright.desktop.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.SurveyFolders;
import corewright.desktop.state.MemoryLog;
import corewright.desktop.state.Units;
import corewright.drawing.kit.PlaceNames;
import corewright.intake.SurveyFolder;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A walk on the test deck of 900 x 600 mm with a metal cleat in its middle; the meter's dry is 10, its wet 25. */
class GridWalkTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 5, 19, 10, 46, 7);

    private final List<String> deeds = new ArrayList<>();

    @SuppressWarnings("NullAway.Init") // before each test
    private MemoryLog log;

    @BeforeEach
    void startWithoutReadings(@TempDir Path folder) throws IOException {
        Survey read = SurveyFolder.read(SurveyFolders.minimal(folder).path()).survey();
        log = new MemoryLog(empty(read), List.of());
        deeds.clear();
    }

    private static Survey empty(Survey survey) {
        return Part.TAPS.with(Part.MOISTURE.with(survey, List.of()), List.of());
    }

    private GridWalk walk(double spacingMm) {
        return new GridWalk(
                log.survey(),
                "foredeck",
                "A",
                spacingMm,
                Units.METRIC,
                (deed, change) -> {
                    Edit edit = change.apply(log.survey());
                    if (edit != null) {
                        log.append(edit);
                        deeds.add(deed);
                    }
                },
                () -> NOW);
    }

    @Test
    void placesAndDistancesAreSaidInTheScreensUnits() {
        GridWalk walk = new GridWalk(log.survey(), "foredeck", "A", 304.8, Units.US, (deed, change) -> {});

        assertThat(walk.measured()).isEqualTo("1.00 ft aft, 1.00 ft to starboard");
        assertThat(walk.progress()).startsWith("foredeck, 12.0 in. 0 of ");
        assertThatThrownBy(() -> new GridWalk(log.survey(), "foredeck", "A", 2, Units.US, (deed, change) -> {}))
                .hasMessage("a spacing of 0.4 in to 196.9 in, not 0.1 in");
    }

    private static void type(GridWalk walk, String value) {
        value.chars().forEach(c -> walk.digit(c - '0'));
    }

    private List<Moisture> moisture() {
        return log.survey().readings().moisture();
    }

    private List<Tap> taps() {
        return log.survey().readings().taps();
    }

    @Test
    void goesThereAndBackFromTheBow() {
        List<Spot> points = walk(300).points();

        assertThat(points).extracting(Spot::xMm).isSorted();
        assertThat(points.subList(0, 2))
                .containsExactly(new Spot("foredeck", 300, 300), new Spot("foredeck", 600, 300));
        List<Double> first = walk(150).points().stream()
                .filter(p -> p.xMm() == 150)
                .map(Spot::yMm)
                .toList();
        List<Double> second = walk(150).points().stream()
                .filter(p -> p.xMm() == 300)
                .map(Spot::yMm)
                .toList();
        assertThat(first).containsExactly(450.0, 300.0, 150.0);
        assertThat(second).containsExactly(150.0, 300.0, 450.0);
    }

    @Test
    void leavesOutWhatAMeterCannotStandOn() {
        assertThat(walk(150).points())
                .as("the cleat")
                .doesNotContain(new Spot("foredeck", 450, 300))
                .as("the deck's edge")
                .noneMatch(p -> p.yMm() == 0 || p.xMm() == 0);
    }

    @Test
    void oneKeyForTheTapAndANumberMakeAPoint() {
        GridWalk walk = walk(150);
        type(walk, "68");
        walk.tap(Sound.HOLLOW);
        walk.next();

        assertThat(moisture()).hasSize(1);
        Moisture m = moisture().get(0);
        assertThat(m.value()).isEqualTo(68);
        assertThat(m.spot()).isEqualTo(new Spot("foredeck", 150, 450));
        assertThat(m.id()).isEqualTo("W1");
        assertThat(taps()).singleElement().satisfies(t -> {
            assertThat(t.sound()).isEqualTo(Sound.HOLLOW);
            assertThat(t.spot()).isEqualTo(m.spot());
        });
        assertThat(deeds).containsExactly("reading at A, starboard 1 (0.15, 0.45)");
        assertThat(walk.spot()).isEqualTo(new Spot("foredeck", 150, 300));
    }

    @Test
    void tenPointsAreTenEditsEachOfWhichCanBeTakenBack() {
        GridWalk walk = walk(150);
        for (int i = 0; i < 10; i++) {
            type(walk, "" + (10 + i));
            walk.next();
        }

        assertThat(moisture())
                .extracting(Moisture::value)
                .containsExactly(10., 11., 12., 13., 14., 15., 16., 17., 18., 19.);
        for (int i = 0; i < 10; i++) {
            log.undo();
        }
        assertThat(moisture()).isEmpty();
    }

    @Test
    void goingBackShowsWhatWasKeptAndTypingExchangesIt() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.tap(Sound.DULL);
        walk.next();
        walk.back();

        assertThat(walk.entry()).isEqualTo(new Noted("12", false, Sound.DULL, ""));
        type(walk, "14");
        walk.next();

        assertThat(moisture()).singleElement().satisfies(m -> {
            assertThat(m.value()).isEqualTo(14);
            assertThat(m.id()).isEqualTo("W1");
        });
        assertThat(taps()).as("the tap stays").hasSize(1);
    }

    @Test
    void passingAPointAgainWithoutTypingChangesNothing() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.next();
        walk.back();
        walk.next();

        assertThat(deeds).hasSize(1);
    }

    @Test
    void aRepeatIsOneMoreReadingAtTheSamePlace() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.repeat();
        type(walk, "13");
        walk.next();

        assertThat(moisture()).extracting(Moisture::value).containsExactly(12.0, 13.0);
        assertThat(moisture()).extracting(Moisture::spot).containsOnly(new Spot("foredeck", 150, 450));
    }

    @Test
    void aPointLeftOutSaysWhyInTheSurveysNotes() {
        GridWalk walk = walk(150);
        walk.skip("standing water");

        assertThat(log.survey().heading().notes())
                .isEqualTo("Not read: foredeck, A, starboard 1 (0.15, 0.45): standing water.");
        assertThat(walk.last()).isEqualTo("last, one step outboard: left out");
        assertThat(walk.progress()).startsWith("foredeck, 150 mm. 0 of ").contains(" read, 1 left out.");
    }

    @Test
    void theQuestionNamesTheTwoNearestAndNeverStopsAnybody() {
        GridWalk walk = walk(100);
        for (String v : List.of("19", "20", "18", "17", "19", "20", "18", "19")) {
            type(walk, v);
            walk.next();
        }
        type(walk, "68");
        String question = walk.question();
        walk.next();

        assertThat(question)
                .matches(
                        "68 is far above its neighbours \\([0-9]+ and [0-9]+\\)\\. Wipe the spot and read it again, or press Next to keep it\\.");
        assertThat(moisture()).extracting(Moisture::value).contains(68.0);
    }

    @Test
    void anOrdinaryValueIsNotQuestioned() {
        GridWalk walk = walk(100);
        for (String v : List.of("19", "20", "18", "17", "19")) {
            type(walk, v);
            walk.next();
        }
        type(walk, "24");

        assertThat(walk.question()).isEmpty();
    }

    @Test
    void overTheScaleIsKeptAsABound() {
        GridWalk walk = walk(150);
        walk.over();
        assertThat(walk.entry().shown()).isEqualTo(">100");
        walk.next();

        assertThat(moisture()).singleElement().satisfies(m -> {
            assertThat(m.offScale()).isTrue();
            assertThat(m.value()).isEqualTo(100);
        });
    }

    @Test
    void decimalsAreTyped() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.point();
        walk.digit(5);
        walk.next();

        assertThat(moisture()).extracting(Moisture::value).containsExactly(12.5);
    }

    @Test
    void aWalkTakenUpAgainBeginsAtTheFirstOpenPoint() {
        GridWalk first = walk(150);
        type(first, "12");
        first.next();

        assertThat(walk(150).spot()).isEqualTo(new Spot("foredeck", 150, 300));
        assertThat(Objects.requireNonNull(walk(150).noted(0)).value()).isEqualTo("12");
    }

    @Test
    void backspaceTakesAFigureBeforeItGoesBack() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.next();
        type(walk, "68");
        walk.backspace();
        assertThat(walk.entry().value()).isEqualTo("6");
        assertThat(walk.at()).isEqualTo(1);
        walk.backspace();
        assertThat(walk.entry().value()).isEmpty();
        walk.backspace();

        assertThat(walk.at()).isZero();
        assertThat(walk.entry().value()).isEqualTo("12");
        assertThat(moisture()).as("nothing half typed is kept").hasSize(1);
    }

    @Test
    void aValueThatReplacesOneSaysSoAndUndoShowsTheOldOneAgain() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.next();
        walk.back();
        type(walk, "68");
        walk.next();
        assertThat(walk.question()).startsWith("A, starboard 1 (0.15, 0.45): 68 replaces 12. Ctrl Z takes it back.");

        log.undo();
        walk.follow(log.survey(), "Taken back: reading at A, starboard 1.");

        assertThat(walk.noted(0).value()).isEqualTo("12");
        assertThat(walk.question()).isEqualTo("Taken back: reading at A, starboard 1.");
    }

    @Test
    void whatWasSkippedOpensAgainWhenThatIsTakenBack() {
        GridWalk walk = walk(150);
        walk.skip("standing water");
        log.undo();
        walk.follow(log.survey(), "Taken back.");

        assertThat(walk.noted(0).open()).isTrue();
    }

    @Test
    void everyReadingKeepsItsTime() {
        GridWalk walk = walk(150);
        type(walk, "12");
        walk.next();

        assertThat(moisture()).extracting(Moisture::taken).containsExactly(NOW);
    }

    @Test
    void noTwoPointsHaveOneNameAtAnySpacing() {
        for (double spacing : new double[] {10, 37, 150, 300}) {
            GridWalk walk = walk(spacing);
            List<String> names = new ArrayList<>();
            for (Spot p : walk.points()) {
                walk.goNear(p.xMm(), p.yMm());
                names.add(walk.place());
            }
            assertThat(names).doesNotHaveDuplicates();
        }
    }

    @Test
    void theCentrelineIsNeitherStarboardNorPort() {
        PlaceNames names = PlaceNames.of(log.survey().face("foredeck"));

        assertThat(WalkNames.of(
                        names, List.of(new Spot("foredeck", 300, 0), new Spot("foredeck", 300, 150)), Units.METRIC))
                .containsExactly("A, centreline", "A, starboard 1");
    }

    /** By hand: 150 and 300 mm are 0.49 and 0.98 ft. */
    @Test
    void placesInOneSquareAreToldInTheUnitsShown() {
        PlaceNames names = PlaceNames.of(log.survey().face("foredeck"));

        assertThat(WalkNames.of(
                        names, List.of(new Spot("foredeck", 150, 150), new Spot("foredeck", 300, 150)), Units.US))
                .containsExactly("A, starboard 1 (0.49, 0.49 ft)", "A, starboard 1 (0.98, 0.49 ft)");
    }

    @Test
    void aSpacingWithoutAPointIsRefusedInASentence() {
        assertThatThrownBy(() -> walk(5000))
                .hasMessage("no point of a grid of 5 000 mm lies on foredeck; choose a smaller spacing"
                        .replace("5 000", "5\u2009000"));
    }
}
