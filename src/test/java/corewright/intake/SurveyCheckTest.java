package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyCheckTest {
    private static final String OFF_SCALE = "id,x,y,value,meter\nX,300,300,140,A\n";

    @Test
    void aNoteOnAReadingGoesWithItThoughATapHasItsId(@TempDir Path dir) throws Exception {
        Intake intake = Reads.read(
                SurveyFolders.minimal(dir).with("moisture.csv", OFF_SCALE).adding("taps.csv", "X,300,300,sound\n"));
        List<Finding> notes = SurveyCheck.importNotes(intake);
        Survey without = Part.MOISTURE.with(intake.survey(), List.of());

        assertThat(notes).extracting(f -> f.about().id()).containsExactly("X");
        assertThat(SurveyCheck.check(intake.survey(), notes).findings()).containsAll(notes);
        assertThat(SurveyCheck.check(without, notes).findings()).doesNotContainAnyElementsOf(notes);
    }

    /** The folder names the line of the outline, a survey file the face: the words and the line differ, the fact does not. */
    @Test
    void whatCanBeSaidAgainFromTheSurveyIsNoNoteOfTheImport(@TempDir Path dir) throws Exception {
        Intake intake = Reads.read(SurveyFolders.minimal(dir)
                .adding("plan.csv", "foredeck,fitting,cleat 2,POINT(4500 300),yes,yes,60,,\n")
                .adding("taps.csv", "T99,5000,100,sound\nT1,300,300,sound\n"));

        assertThat(intake.findings())
                .extracting(Finding::about)
                .hasAtLeastOneElementOfType(About.OfFeature.class)
                .hasAtLeastOneElementOfType(About.OfReading.class);
        assertThat(SurveyCheck.importNotes(intake)).isEmpty();
    }
}
