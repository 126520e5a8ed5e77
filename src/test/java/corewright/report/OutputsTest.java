package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole folder of outputs. */
class OutputsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path place;

    @Test
    void everyPromisedFileIsThereAndTheSameEveryTime() throws IOException {
        Path first = place.resolve("first");
        Path second = place.resolve("second");

        String summary = Outputs.write(SampleAssessment.damaged(), first, Progress.NONE, Map::of);
        Outputs.write(SampleAssessment.damaged(), second, Progress.NONE, Map::of);

        assertThat(files(first))
                .containsExactly(
                        "batches.csv",
                        "buying-list.csv",
                        "cups.csv",
                        "drill-template-sheet.pdf",
                        "drill-template.pdf",
                        "drying.csv",
                        "exchange/holes.dxf",
                        "exchange/regions.csv",
                        "exchange/regions.dxf",
                        "exchange/repair.gpkg",
                        "findings.csv",
                        "foot-load.csv",
                        "holes.csv",
                        "maps/foredeck-condition.png",
                        "maps/foredeck-condition.svg",
                        "maps/foredeck-repair.png",
                        "maps/foredeck-repair.svg",
                        "next-readings.csv",
                        "options.csv",
                        "outputs.sha256",
                        "owner-report.pdf",
                        "regions.geojson",
                        "repair-plan.yaml",
                        "schedule.csv",
                        "summary.json",
                        "surfaces/foredeck-moisture.asc",
                        "surfaces/foredeck-p_delaminated.asc",
                        "surfaces/foredeck-p_wet.asc",
                        "surfaces/foredeck-void_depth_mm.asc",
                        "surfaces/foredeck-void_depth_sd_mm.asc",
                        "survey-record.pdf",
                        "what-would-change.csv",
                        "work-cards.pdf");
        for (String file : files(first)) {
            assertThat(first.resolve(file)).as(file).isNotEmptyFile().hasSameBinaryContentAs(second.resolve(file));
        }
        assertThat(first.resolve("summary.json")).hasContent(summary);
    }

    @Test
    void platesHaveTheirTrueSizeAndRealWords() throws IOException {
        Path out = place.resolve("out");

        Outputs.write(SampleAssessment.damaged(), out, Progress.NONE, Map::of);

        // 297 x 210 mm at 200 dots per inch
        assertThat(ImageIO.read(out.resolve("maps/foredeck-condition.png").toFile())
                        .getWidth())
                .isEqualTo(2339);
        assertThat(Files.readString(out.resolve("maps/foredeck-condition.svg")))
                .contains(
                        "width=\"297mm\"",
                        "height=\"210mm\"",
                        "viewBox=\"0 0 297 210\"",
                        "<text",
                        "after port stanchion");
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
