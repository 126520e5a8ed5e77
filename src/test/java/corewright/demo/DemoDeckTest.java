package corewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.cli.Corewright;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The demo under {@code demo-data} is what its generator makes; {@code -Ddemo.update=true} rewrites it. */
class DemoDeckTest {
    private static final Path FOLDER = Path.of("demo-data");

    @Test
    void checkedInFilesAreWhatTheGeneratorMakes() throws IOException {
        Map<String, String> files = DemoFiles.all();
        if (Boolean.getBoolean("demo.update")) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = FOLDER.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertThat(Files.readString(FOLDER.resolve(file.getKey())))
                    .as(file.getKey())
                    .isEqualTo(file.getValue());
        }
    }

    @Test
    void theSurveyIsReadWithoutComplaint() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Corewright.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "check",
                FOLDER.resolve(DemoFiles.BOAT).toString());
        assertThat(status).as(out + "\n" + err).isZero();
    }

    /** What the readings must show so that every method and every doubt has something to work on. */
    @Test
    void theReadingsHoldWhatTheReadmeSays() {
        Map<String, String> files = DemoFiles.all();
        assertThat(rows(files, "moisture.csv"))
                .hasSizeBetween(240, 270)
                .filteredOn(r -> r.contains("needle at its stop"))
                .hasSize(2);
        assertThat(rows(files, "taps.csv"))
                .hasSizeBetween(290, 320)
                .filteredOn(r -> r.contains("foredeck,2320,640,"))
                .singleElement()
                .asString()
                .endsWith("hollow");
        assertThat(rows(files, "probes.csv")).hasSize(20);
        assertThat(Truth.isLoose(Plan.DECK, 2320, 640)).isFalse();
        assertThat(Truth.isWet(Plan.DECK, 630, 180)).isFalse();
        assertThat(rows(files, "moisture.csv"))
                .filteredOn(r -> r.contains("foredeck,630,180,"))
                .singleElement()
                .satisfies(r -> assertThat(Integer.parseInt(r.split(",")[4]))
                        .as("falsely high beside the cleat")
                        .isGreaterThan(25));
    }

    private static List<String> rows(Map<String, String> files, String name) {
        return files.getOrDefault(DemoFiles.BOAT + "/" + name, "")
                .lines()
                .skip(1)
                .toList();
    }
}
