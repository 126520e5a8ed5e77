package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.Damage;
import corewright.intake.SurveyFolder;
import corewright.report.Kept;
import corewright.reuse.Memory;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {
    private static final Path DECK = Path.of("src/test/resources/corewright/cli/small-deck");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    /** A deck against itself: every file is there, the document can be kept, nothing is claimed, and the figures are the run's. */
    @Test
    void aDeckAgainstItselfHasNotChanged() throws Exception {
        Path out = folder.resolve("out");
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said, true);

        assertThat(Corewright.run(to, to, "compare", DECK.toString(), DECK.toString(), "--out", out.toString()))
                .as(said.toString())
                .isZero();

        Kept.check(out.resolve("comparison.pdf"));
        for (String plate : List.of("before", "after", "change")) {
            assertThat(out.resolve("maps/fore-deck-" + plate + ".png")).isNotEmptyFile();
        }
        List<String> rows = Files.readAllLines(out.resolve("comparison.csv"));
        assertThat(rows).noneMatch(r -> r.contains(",yes,"));
        double litres = Damage.fit(SurveyFolder.read(DECK).survey(), new Memory())
                        .map()
                        .voidMm3()
                        .p50()
                / 1e6;
        assertThat(litres).isPositive();
        String total = rows.stream()
                .filter(r -> r.matches("(\"\")?,,void_volume,.*"))
                .findFirst()
                .orElseThrow();
        for (int column : new int[] {4, 5}) {
            assertThat(Double.parseDouble(total.split(",", -1)[column]))
                    .as(total)
                    .isCloseTo(litres, within(0.0005 + 1e-9)); // the table has millilitres
        }
    }
}
