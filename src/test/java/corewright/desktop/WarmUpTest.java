package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.SurveyFolders;
import corewright.desktop.state.EditLog;
import corewright.intake.text.RefusedException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarmUpTest {
    @Test
    void theSurveyReadMeanwhileIsTheOneOpened(@TempDir Path folder, @TempDir Path other) throws Exception {
        Path survey = SurveyFolders.minimal(folder).path();
        Path second = SurveyFolders.minimal(other).path();
        WarmUp.begin(survey);

        EditLog first = WarmUp.opening(survey).call();
        assertThat(first.place()).isEqualTo(survey);
        EditLog again = WarmUp.opening(survey).call();
        assertThat(again).as("what was handed out once is read anew").isNotSameAs(first);
        assertThat(WarmUp.opening(second).call().place()).isEqualTo(second);
    }

    @Test
    void whatIsWrongWithTheSurveyIsSaidWhenItIsOpened(@TempDir Path folder) {
        Path survey = SurveyFolders.minimal(folder)
                .with("taps.csv", "id,x,y,sound\nT1,1,1,holow\n")
                .path();
        WarmUp.begin(survey);

        assertThatThrownBy(() -> WarmUp.opening(survey).call()).isInstanceOf(RefusedException.class);
    }
}
