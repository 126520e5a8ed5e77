package corewright.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.report.SampleAssessment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How an independent reader sees the drawings stands in docs/verification.md. */
class ExchangeTest {
    private static final Assessment DAMAGED = SampleAssessment.damaged();

    @Test
    void everyRingAndHoleIsAnEntityOnTheLayerOfItsKind(@TempDir Path dir) throws IOException {
        Exchange.write(DAMAGED, dir);

        String regions = Files.readString(dir.resolve("regions.dxf"));
        for (Region region : DAMAGED.damage().regions()) {
            String layer = region.condition().word().toUpperCase(java.util.Locale.ROOT);
            assertThat(regions).contains("0\nPOLYLINE\n8\n" + layer + "\n", "0\nPOLYLINE\n8\n" + layer + "-POSSIBLE\n");
            assertThat(regions).contains("\n1\n" + region.id() + "\n");
        }
        long holes = DAMAGED.decision().injections().stream()
                .mapToLong(plan -> plan.holes().size())
                .sum();
        List<String> lines = Files.readAllLines(dir.resolve("holes.dxf"));
        assertThat(holes).isPositive();
        assertThat(lines.stream().filter("CIRCLE"::equals).count()).isEqualTo(holes);
    }

    @Test
    void groupsArePairsAndLayersAreDeclared(@TempDir Path dir) throws IOException {
        Exchange.write(DAMAGED, dir);

        for (String file : List.of("regions.dxf", "holes.dxf")) {
            List<String> lines = Files.readAllLines(dir.resolve(file));
            assertThat(lines.size() % 2).isZero();
            for (int i = 0; i < lines.size(); i += 2) {
                assertThat(lines.get(i)).as("%s:%d", file, i + 1).matches("[0-9]{1,3}");
                if (lines.get(i).equals("8")) {
                    assertThat(lines).containsSequence("LAYER", "2", lines.get(i + 1), "70");
                }
            }
        }
    }

    @Test
    void textsAndLayersAreWhatReleaseTwelveCanHold() {
        DxfFile dxf = new DxfFile();

        dxf.text("achteres d\u00E4ck, lang und noch viel l\u00E4nger", 1, 2, 3, "R\u00E4\n0\nLINE");

        assertThat(dxf.text()).contains("8\nACHTERES-D-CK--LANG-UND-NOCH-VI\n", "1\nR\\U+00E4\\U+000A0\\U+000ALINE\n");
    }

    @Test
    void regionsCsvHoldsAreaAndOutline(@TempDir Path dir) throws IOException {
        Exchange.write(DAMAGED, dir);

        List<String> lines = Files.readAllLines(dir.resolve("regions.csv"));
        assertThat(lines).hasSize(1 + DAMAGED.damage().regions().size());
        assertThat(lines.get(1)).startsWith("R1,foredeck,").endsWith("))\"");
    }
}
