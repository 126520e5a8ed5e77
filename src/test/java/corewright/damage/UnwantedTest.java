package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnwantedTest {
    @Test
    void aMapThatNobodyWaitsForIsNotMade(@TempDir Path dir) throws IOException {
        Survey survey = SurveyFolder.read(SurveyFolders.minimal(dir).path()).survey();
        Thread.currentThread().interrupt();
        try {
            assertThat(catchThrowable(() -> Damage.fit(survey, new Memory())))
                    .isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }
}
