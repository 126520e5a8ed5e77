package corewright.desktop.resurvey;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResurveyTest {
    /** The same readings a year later prove no difference; a survey that is opened beside is the earlier by its date. */
    @Test
    void theEarlierSurveyStandsFirstAndLikeReadingsProveNothing(@TempDir Path folder, @TempDir Path later)
            throws IOException {
        Path earlier = SurveyFolders.minimal(folder).path();
        Survey open = SurveyFolder.read(SurveyFolders.minimal(later)
                        .with("survey.yaml", SurveyFolders.YAML.replace("2026-04-02", "2027-04-02"))
                        .path())
                .survey();

        Resurvey shown = Resurvey.of(open, earlier);

        assertThat(shown.title()).isEqualTo("2 April 2026 beside 2 April 2027");
        assertThat(shown.faces()).extracting(Resurvey.FacePictures::face).containsExactly("foredeck");
        assertThat(shown.words()).anyMatch(w -> w.contains("A difference is not proven"));
        assertThat(shown.words()).noneMatch(w -> w.contains("The difference is proven"));
        try (var left = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertThat(left.map(p -> String.valueOf(p.getFileName())))
                    .noneMatch(n -> n.startsWith("corewright-compare"));
        }
    }
}
