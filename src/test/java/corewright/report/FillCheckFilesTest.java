package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.assessment.Progress;
import corewright.report.data.JsonFile;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Tap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run writes once filled places were tapped after cure. The deck's R1 is (2200 450, 2750 760) and filled. */
class FillCheckFilesTest {
    /** Squares of 50 mm from (2225, 475) on; the one at (2275, 525), beside the planned hole at (2290, 530), is hollow. */
    private static Assessment tapped() {
        List<Tap> taps = new ArrayList<>();
        for (int x = 2225; x < 2750; x += 50) {
            for (int y = 475; y < 760; y += 50) {
                Sound call = x == 2275 && y == 525 ? Sound.HOLLOW : Sound.SOUND;
                Spot spot = new Spot(SampleAssessment.FACE, x, y);
                taps.add(new Tap(
                        new Origin("c.csv", taps.size() + 2), "C" + (taps.size() + 1), spot, call, null, Side.OUTER));
            }
        }
        Assessment a = SampleAssessment.damaged();
        return Assessments.of(
                Part.CURED_TAPS.with(a.survey(), taps),
                a.damage(),
                a.stiffness(),
                a.plans(),
                a.decision(),
                a.findings(),
                a.next());
    }

    /**
     * 2500 mm2 x 0.3 mm x 1.1 / 0.85 = 0.97 g; the sample's depth map says how much more a place that nothing reached takes.
     * Tapped are 11 x 6 squares, the last row 10 mm wider: all of 550 x 310 mm.
     */
    @Test
    void secondShotsComeAsATableASummaryAndAMap(@TempDir Path dir) throws IOException {
        Path out = dir.resolve("out");
        Outputs.write(tapped(), out, Progress.NONE, Map::of);

        List<String> rows = Files.readAllLines(out.resolve("second-shots.csv"));
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0))
                .isEqualTo("id,face,region,x,y,hole,area_m2,low_l,high_l,resin,low_g,high_g,depth_stop_mm,taps,advice");
        assertThat(rows.get(1))
                .startsWith("S1,foredeck,R1,2290,530,R1-1,0.0025,0.0008,")
                .contains(",epoxy-thin,1,", ",6.5,C8,\"Drill R1-1 open again, never past 6.5 mm");
        JsonNode check = JsonFile.MAPPER
                .readTree(out.resolve("summary.json").toFile())
                .path("fill_check")
                .path(0);
        assertThat(check.path("region").asText()).isEqualTo("R1");
        assertThat(check.path("tapped_fraction").asDouble()).isBetween(0.999, 1.0 + 1e-9);
        assertThat(check.path("hollow_m2").asDouble()).isBetween(0.0025 - 1e-12, 0.0025 + 1e-12);
        assertThat(check.path("second_shots").path(0).asText()).isEqualTo("S1");
        assertThat(out.resolve("maps/foredeck-fill-check.png")).isNotEmptyFile();
        assertThat(Files.readString(out.resolve("maps/foredeck-fill-check.svg")))
                .contains("still hollow");

        Outputs.write(SampleAssessment.damaged(), out, Progress.NONE, Map::of);
        assertThat(out.resolve("second-shots.csv")).doesNotExist();
        assertThat(out.resolve("maps/foredeck-fill-check.png")).doesNotExist();
        assertThat(Files.readString(out.resolve("summary.json"))).doesNotContain("fill_check");
    }
}
