package corewright.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SheetCellTest {
    @Test
    void whatASpreadsheetWouldRunIsMadeHarmless() {
        assertThat(List.of("=1+1", "+cmd", "-x", "@SUM", "\tx", "-12.5", "+3", "plain", "two; -3", "two;=A1", "'=A1"))
                .extracting(SheetCell::harmless)
                .containsExactly(
                        "'=1+1",
                        "'+cmd",
                        "'-x",
                        "'@SUM",
                        "'\tx",
                        "-12.5",
                        "+3",
                        "plain",
                        "two; -3",
                        "two;'=A1",
                        "''=A1");
    }

    /** Texts of the letters that matter, in every order. */
    @Test
    void nothingIsLostAndNothingRuns() {
        Random random = new Random(11);
        String letters = "=+-@'\t;\n1a,";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(8); n >= 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            String cell = SheetCell.harmless(text.toString());

            assertThat(SheetCell.original(cell)).isEqualTo(text.toString());
            for (String part : cell.split("[;\n\t]", -1)) {
                assertThat(part.matches("[=+@-].*") && !part.equals(text.toString()))
                        .as(cell)
                        .isFalse();
            }
        }
    }
}
