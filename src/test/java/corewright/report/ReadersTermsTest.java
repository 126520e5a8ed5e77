package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Typeface;
import corewright.intake.Intake;
import corewright.intake.Letters;
import corewright.survey.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader asked for holds in every page, map, slip and finding. */
@NullUnmarked // JUnit fills the folder
class ReadersTermsTest {
    @TempDir
    Path folder;

    /** A decimal comma on every page and in the tables that a spreadsheet of a comma country is to open. */
    @Test
    void aDecimalCommaIsKept() throws IOException {
        Assessment assessment = Printed.withoutPanels(Printed.intake(
                Printed.DECK,
                folder.resolve("in"),
                yaml -> yaml.replace("temperature: C }", "temperature: C, decimal: comma, csv: comma }")));
        Map<String, String> pages = Printed.pages(assessment, folder.resolve("out"));
        pages.forEach((page, words) -> assertThat(words).as(page).doesNotContainPattern("\\d\\.\\d"));
        assertThat(pages.get("work-cards.pdf page 1")).containsPattern("\\d,\\d mm");
        List<String> holes = Files.readAllLines(folder.resolve("out/holes.csv"));
        assertThat(holes.get(0)).startsWith("id;face;region;kind;order;x;y;");
        assertThat(holes.get(1).split(";")).contains("6,4").noneMatch(c -> c.matches("\\d+\\.\\d+"));
    }

    /** Lengths to 0.1 mm, volumes to 1 ml, grams to 0.1, probabilities to three digits; no cell has more. */
    @Test
    void tablesHaveSensibleDigits() throws IOException {
        Assessment assessment = Printed.withoutPanels(Printed.intake(Printed.DECK, folder.resolve("in"), yaml -> yaml));
        Printed.pages(assessment, folder.resolve("out"));
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                assertThat(Files.readString(file)).as(file.toString()).doesNotContainPattern("\\d\\.\\d{5,}");
            }
        }
        String[] head =
                Files.readAllLines(folder.resolve("out/holes.csv")).get(0).split(",");
        String[] first =
                Files.readAllLines(folder.resolve("out/holes.csv")).get(1).split(",");
        int served = List.of(head).indexOf("served_l");
        assertThat(first[served]).matches("0\\.\\d{1,3}");
    }

    /** What a sentence of ours becomes; by hand from 25.4 mm, 0.3048 m, 0.9464 litres, 6.895 kPa, 0.4536 kg. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            it stands 73 mm away                       | it stands 2.9 in away
            never drill past 10.2 mm: it begins        | never drill past 0.40 in: it begins
            at 1.45 m aft, 0.14 m to port              | at 4.76 ft aft, 0.46 ft to port
            from 0.1 to 4.9 kPa                        | from 0.01 to 0.71 psi
            on 100 × 100 mm                            | on 3.94 × 3.94 in
            100 g left standing can pass 200 °C        | 100 g left standing can pass 392 °F
            halve for each 10 °C more                  | halve for each 18 °F more
            0.88 of 5.9 m² is not sound                | 9.5 of 64 ft² is not sound
            hold 113 kg on a square metre              | hold 23.1 lb on a square foot
            M9 reads 31 beside cleat 2                 | M9 reads 31 beside cleat 2
            1 kN, about 100 kg                         | 225 lbf, about 220 lb
            """)
    void sentencesAreConverted(String metric, String us) {
        assertThat(Measure.US.say(metric)).isEqualTo(us);
        assertThat(Measure.METRIC.say(metric)).isEqualTo(metric);
    }

    /** Letters that pages cannot show are a finding, and the pages are written all the same. */
    @Test
    void lettersThatTheTypefaceLacksAreNamed() throws IOException {
        Intake in = Printed.intake(
                Printed.DECK, folder.resolve("in"), yaml -> yaml.replace("\"Alma\"", "\"Жемчуг and 珍珠 Åse\""));
        assertThat(in.findings())
                .extracting(Finding::message)
                .anyMatch(m ->
                        m.startsWith("Names hold letters") && m.contains("Ж") && m.contains("珍") && !m.contains("Å"));
        assertThat(Printed.pages(Printed.withoutPanels(in), folder.resolve("out")))
                .isNotEmpty();
        for (int c = 0x20; c < 0x3000; c++) {
            if (Letters.shown(c) && !Character.isWhitespace(c)) {
                for (Typeface face : Typeface.values()) {
                    assertThat(face.font(1).canDisplay(c))
                            .as(Integer.toHexString(c))
                            .isTrue();
                }
            }
        }
    }
}
