package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only of a wall that runs fore and aft the axes leave open which way it is faced; y runs up it. */
class HandsTest {
    @ParameterizedTest
    @CsvSource({
        "3, 180, ''",
        "177, 90, ''",
        "65, 0, ''",
        "90, 90, 'faces starboard'",
        "80, 100, 'faces starboard'",
        "90, 270, 'y runs down'",
        "90, -90, 'y runs down'"
    })
    void aWallIsToldOf(double tilt, double uphill, String said, @TempDir Path folder) throws Exception {
        SurveyFolders survey = SurveyFolders.minimal(folder)
                .replacing(
                        "survey.yaml", "tilt_deg: 3, uphill_deg: 180", "tilt_deg: " + tilt + ", uphill_deg: " + uphill);
        List<String> sides = SurveyFolder.read(survey.path()).findings().stream()
                .filter(f -> f.subject() == Subject.SIDE)
                .map(Finding::message)
                .toList();
        if (said.isEmpty()) {
            assertThat(sides).isEmpty();
        } else {
            assertThat(sides).singleElement().asString().contains("wall foredeck", said);
        }
    }
}
