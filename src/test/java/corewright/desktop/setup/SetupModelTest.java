package corewright.desktop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.desktop.state.MemoryEdits;
import corewright.desktop.state.Units;
import corewright.intake.SurveyFolder;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetupModelTest {
    private MemoryEdits log;
    private SetupModel model;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        log = new MemoryEdits(
                SurveyFolder.read(SurveyFolders.minimal(folder).path()).survey());
        model = new SetupModel(log::survey, Units.METRIC, log::edit);
    }

    private Survey survey() {
        return log.survey();
    }

    private Meter meter() {
        return survey().meters().get(0);
    }

    private Laminate laminate() {
        return survey().laminates().get(0);
    }

    @Test
    void aDryReadingIsChangedAndTakenBack() {
        Meter before = meter();

        assertThat(model.meter(before.name(), SetupField.DRY, "9,5")).isTrue();
        assertThat(meter()).isEqualTo(new Meter(before.name(), before.kind(), before.fullScale(), 9.5, before.wet()));
        assertThat(log.deeds()).containsExactly("dry reading of meter " + before.name());

        log.undo();
        assertThat(meter()).isEqualTo(before);
    }

    @Test
    void whatIsNotKnownIsLeftEmpty() {
        model.meter(meter().name(), SetupField.DRY, " ");

        assertThat(meter().dry()).isNull();
        assertThat(model.meters().get(0).values().get(3).text()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "DRY, 1o, 'Dry reads \"1o\"; expected is a number from 0 to 100, or nothing where it is not known.'",
        "DRY, 101, 'Dry reads \"101\"; expected is a number from 0 to 100, or nothing where it is not known.'",
        "DRY, 60, 'Dry is below wet: 60 is not below 25, from which this meter reads wet.'",
        "WET, 5, 'Wet is above dry: 5 is not above 10, which this deck reads dry.'",
        "FULL_SCALE, NaN, 'The end of the scale reads \"NaN\"; expected is a number above 0, such as 100.'",
        "FULL_SCALE, 1, 'The scale of meter A cannot end at 1: '",
        "NAME, ' ', 'A meter needs a name of 1 to 60 letters.'"
    })
    void whatAMeterCannotBeIsSaidAndChangesNothing(SetupField field, String text, String sentence) {
        Survey before = survey();

        assertThat(model.meter("A", field, text)).isFalse();
        assertThat(model.problem()).startsWith(sentence);
        assertThat(survey()).isSameAs(before);
        assertThat(log.deeds()).isEmpty();
    }

    @Test
    void theSentenceGoesWithTheNextGoodValue() {
        model.meter("A", SetupField.DRY, "x");
        model.meter("A", SetupField.DRY, "11");

        assertThat(model.problem()).isEmpty();
    }

    @Test
    void readingsGoByANewNameOfTheirMeter() {
        int all = survey().readings().moisture().size();

        assertThat(model.meter("A", SetupField.NAME, "capacitance 2")).isTrue();
        assertThat(survey().readings().moisture())
                .hasSize(all)
                .extracting(Moisture::meter)
                .containsOnly("capacitance 2");
        assertThat(log.deeds()).hasSize(1);
    }

    @Test
    void aMeterThatWasReadWithStaysAndOneThatWasNotGoes() {
        assertThat(model.removeMeter("A")).isFalse();
        assertThat(model.problem()).startsWith("Meter A stays: ").endsWith(" readings were taken with it.");

        assertThat(model.addMeter()).isTrue();
        assertThat(survey().meters()).extracting(Meter::name).containsExactly("A", "meter 2");
        assertThat(model.meter("meter 2", SetupField.NAME, "A")).isFalse();
        assertThat(model.problem()).isEqualTo("Another meter is called A; choose a name of its own.");
        assertThat(model.removeMeter("meter 2")).isTrue();
        assertThat(survey().meters()).hasSize(1);
    }

    @Test
    void theKindOfAMeterIsChosen() {
        model.meter("A", SetupField.KIND, "pin");

        assertThat(meter().kind()).isEqualTo(Meter.Kind.PIN);
    }

    @Test
    void facesGoByANewNameOfTheirLaminate() {
        String before = laminate().name();

        assertThat(model.laminate(before, SetupField.NAME, "foredeck laminate")).isTrue();
        assertThat(survey().faces()).allMatch(f -> f.laminate().equals("foredeck laminate"));
        assertThat(model.removeLaminate("foredeck laminate")).isFalse();
        assertThat(model.problem()).isEqualTo("Laminate foredeck laminate stays: foredeck is made of it.");
    }

    @Test
    void aThicknessIsTypedInInchesAndKeptInMillimetres() {
        SetupModel inches = new SetupModel(log::survey, Units.US, log::edit);
        Laminate before = laminate();

        assertThat(inches.head(SetupField.CORE_MM)).isEqualTo("core, in");
        assertThat(inches.laminate(before.name(), SetupField.CORE_MM, "0.75")).isTrue();
        assertThat(laminate().coreMm()).isEqualTo(19.05); // 0.75 times 25.4
        assertThat(laminate().outerSkinMm()).isEqualTo(before.outerSkinMm());
    }

    @Test
    void whatStandsThereTypedAgainChangesNothing() {
        SetupModel inches = new SetupModel(log::survey, Units.US, log::edit);
        inches.laminates()
                .get(0)
                .values()
                .forEach(v -> inches.laminate(laminate().name(), v.field(), v.text()));
        model.meters().get(0).values().forEach(v -> model.meter("A", v.field(), v.text()));

        assertThat(log.deeds()).as("no thickness creeps by rounding").isEmpty();
    }

    @Test
    void aThicknessThatCannotBeIsSaid() {
        assertThat(model.laminate(laminate().name(), SetupField.CORE_MM, "0")).isFalse();
        assertThat(model.problem())
                .isEqualTo("The core reads \"0\"; expected is a thickness above 0 and up to 300 mm, such as 12.7.");
    }

    @Test
    void coreAndSourceOfALaminateAreChosen() {
        String name = laminate().name();
        model.laminate(name, SetupField.CORE, "pvc-80");
        model.laminate(name, SetupField.MEASURED, "measured here");

        assertThat(laminate().core()).isEqualTo("pvc-80");
        assertThat(laminate().measured()).isTrue();
        assertThat(model.addLaminate()).isTrue();
        assertThat(survey().laminates().get(1).measured())
                .as("not measured yet")
                .isFalse();
    }

    @Test
    void notesAreKeptWithTheSurvey() {
        model.notes("Meter A has a new battery. ");

        assertThat(survey().heading().notes()).isEqualTo("Meter A has a new battery.");
        assertThat(model.notes()).isEqualTo("Meter A has a new battery.");
    }

    @Test
    void theHeadOfEveryPageIsFilledIn() {
        assertThat(model.heading(SetupField.VESSEL, "Sandpiper")).isTrue();
        assertThat(model.heading(SetupField.SURVEYED, "2026-05-09")).isTrue();
        assertThat(model.heading(SetupField.ASHORE, "21")).isTrue();
        assertThat(survey().heading().vessel()).isEqualTo("Sandpiper");
        assertThat(survey().heading().surveyed()).isEqualTo(java.time.LocalDate.of(2026, 5, 9));
        assertThat(survey().heading().daysAshore()).isEqualTo(21);

        assertThat(model.heading(SetupField.SURVEYED, "9 May")).isFalse();
        assertThat(model.problem()).startsWith("The date reads \"9 May\"; expected is year-month-day");
    }

    @Test
    void aFaceIsTiltedAndAnotherAddedNamedAndTakenAway() {
        assertThat(model.face("foredeck", SetupField.TILT, "12,5")).isTrue();
        assertThat(survey().face("foredeck").tiltDeg()).isEqualTo(12.5);
        assertThat(model.face("foredeck", SetupField.NAME, "bow")).isFalse();
        assertThat(model.problem()).isEqualTo("Face foredeck keeps its name: readings or decisions belong to it.");

        model.addFace();
        assertThat(model.face("face 2", SetupField.NAME, "cabin side")).isTrue();
        assertThat(model.face("cabin side", SetupField.TILT, "90")).isTrue();
        assertThat(survey().face("cabin side").wall()).isFalse(); // uphill is still along the deck
        assertThat(model.face("cabin side", SetupField.UPHILL, "90")).isTrue();
        assertThat(survey().face("cabin side").wall()).isTrue();
        assertThat(model.removeFace("foredeck")).isFalse();
        assertThat(model.removeFace("cabin side")).isTrue();
        assertThat(survey().faces()).hasSize(1);
    }
}
