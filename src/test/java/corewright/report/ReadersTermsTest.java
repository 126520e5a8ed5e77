package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.assessment.Assessment;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipWords;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Typeface;
import corewright.intake.Intake;
import corewright.intake.Letters;
import corewright.report.page.Numbers;
import corewright.survey.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader asked for holds in every page, map, slip and finding. */
@NullUnmarked // JUnit fills the folder
class ReadersTermsTest {
    /**
     * A metric unit as a word of its own, behind a figure or alone. Grams stay in either display: they are read on the scale
     * that weighs the mix. The 24-hour h and minutes are no metric units.
     */
    private static final Pattern METRIC = Pattern.compile(
            "(?<![\\p{L}’'-])(mm²?|cm²?|millimet\\w+|met(?:re|er)s|square metres?|m²|m2|litres?|ml|kPa|MPa|kN|N/mm|N per mm|kg|°C)"
                    + "(?![\\p{L}\\d])|(?<=\\d )m(?![\\p{L}\\d²])|(?<=\\d )L(?!\\p{L})|(?<=\\d )N(?![\\p{L}\\d])");

    private static final double MM_PER_POINT = 25.4 / 72;

    /** Height of a box to be written in. */
    private static final double PENCIL_MM = 8;

    @TempDir
    Path folder;

    /** The demo as the reader of another country asks for it; names that hold a length are the surveyor's own. */
    private Intake demo(String units, String currency) throws IOException {
        return Printed.intake(Printed.DEMO, folder.resolve("in"), yaml -> yaml.replace(
                        "temperature: C }", "temperature: C, " + units + " }")
                .replaceAll("vessel: .*", "vessel: \"Motor boat (invented)\"")
                .replaceAll("currency: \"[^\"]*\"", "currency: \"" + currency + "\""));
    }

    @Test
    void usUnitsAndAForeignCurrencyHoldEverywhere() throws IOException {
        Assessment assessment = Printed.withoutPanels(demo("display: us", "CHF"));
        Map<String, String> pages = Printed.pages(assessment, folder.resolve("out"));
        assertThat(pages).hasSizeGreaterThan(8);
        pages.forEach((page, words) -> nothingMetric(page, words));
        pages.forEach(
                (page, words) -> assertThat(words).as(page).doesNotContain("€").doesNotContain("$"));
        assertThat(pages.get("owner-report.pdf page 1")).contains("CHF").contains("ft²");
        assertThat(pages.get("owner-report.pdf page 2")).contains("quarts", "lb aboard");
        assertThat(pages.get("work-cards.pdf page 1"))
                .contains("inches from the datum")
                .contains("4 in long");

        onLetter(folder.resolve("out"));

        for (String line : Files.readAllLines(folder.resolve("out/findings.csv"))) {
            nothingMetric("findings.csv", line.replaceAll("^([^,]*,){8}", ""));
        }
        var placed = assessment.findings().stream()
                .filter(f ->
                        f.about().spot() != null && Math.abs(f.about().spot().xMm()) > 100)
                .findFirst()
                .orElseThrow();
        assertThat(Files.readString(folder.resolve("out/findings.csv")))
                .as("data columns stay millimetres")
                .contains("," + placed.about().face() + ","
                        + Numbers.rounded(placed.about().spot().xMm(), 1) + ",");

        Units units = Units.of(assessment.survey());
        assertThat(units).isEqualTo(Units.US);
        SlipWords words = SlipWords.of(assessment, units, assessment.ages());
        List<Slip> slips = new ArrayList<>();
        assessment.survey().faces().forEach(f -> slips.add(words.face(f.name())));
        assessment.damage().regions().forEach(r -> slips.add(words.region(r)));
        for (Slip slip : slips) {
            nothingMetric(slip.title(), slip.said(Measure.US::say).toString());
        }
    }

    /** Every page of every document and every map is Letter, upright or lying, and nothing stands where common printers cannot reach. */
    private static void onLetter(Path out) throws IOException {
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".svg")) {
                    assertThat(Files.readString(file)).as(name).contains("width=\"279.4mm\"", "height=\"215.9mm\"");
                } else if (name.endsWith(".pdf") && !name.equals("drill-template-sheet.pdf")) {
                    onLetter(file, name);
                }
            }
        }
    }

    private static void onLetter(Path file, String name) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (PDPage page : pdf.getPages()) {
                double width = page.getMediaBox().getWidth() * MM_PER_POINT;
                double height = page.getMediaBox().getHeight() * MM_PER_POINT;
                assertThat(Math.min(width, height)).as(name).isCloseTo(215.9, within(0.01));
                assertThat(Math.max(width, height)).as(name).isCloseTo(279.4, within(0.01));
                assertThat(Overlaps.beyond(page, 3.9)).as(name + ", its words").isEmpty();
                Drawn.of(page).rectangles.stream()
                        .filter(b ->
                                Math.abs(b.getHeight() - PENCIL_MM) < 0.01) // others may be cut off at a plan's edge
                        .forEach(b -> {
                            assertThat(b.getMinX()).as(name + ", a box").isGreaterThan(3.9);
                            assertThat(b.getMaxX()).as(name + ", a box").isLessThan(width - 3.9);
                            assertThat(b.getMaxY()).as(name + ", a box").isLessThan(height - 3.9);
                        });
            }
        }
    }

    private static void nothingMetric(String where, String words) {
        Matcher m = METRIC.matcher(words);
        if (m.find()) {
            String round = words.substring(Math.max(0, m.start() - 60), Math.min(words.length(), m.end() + 30));
            assertThat(m.group()).as(where + ": " + round).isEmpty();
        }
    }

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
