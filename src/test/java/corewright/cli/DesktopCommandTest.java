package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesktopCommandTest {
    private final StringWriter err = new StringWriter();

    private int run(Window window, String... args) {
        return Corewright.run(new PrintWriter(new StringWriter()), new PrintWriter(err), window, args);
    }

    @Test
    void opensWhatIsNamed(@TempDir Path folder) {
        List<String> opened = new ArrayList<>();

        assertThat(run(path -> opened.add(String.valueOf(path)), "desktop", folder.toString()))
                .isZero();
        assertThat(run(path -> opened.add(String.valueOf(path)), "desktop")).isZero();
        assertThat(opened).containsExactly(folder.toString(), "null");
    }

    @Test
    void whereNoWindowCanBeShownOneSentenceSaysWhyAndTheStatusIsThree() {
        int status = run(
                path -> {
                    throw new IOException("No display: install one.");
                },
                "desktop");

        assertThat(status).isEqualTo(3);
        assertThat(err.toString().strip()).isEqualTo("No display: install one.");
    }

    @Test
    void aSurveyThatIsNotThereIsNamed() {
        assertThat(run(path -> {}, "desktop", "nowhere")).isEqualTo(3);
        assertThat(err.toString().strip()).isEqualTo("nowhere: no such file");
    }
}
