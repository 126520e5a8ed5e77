package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.assessment.Assessment;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipWords;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Measure;
import corewright.intake.Intake;
import corewright.report.page.Numbers;
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

/** Every page of the demo, as it is and as a reader in another country asks for it; what is calculated is calculated once for both. */
@NullUnmarked // JUnit fills the folder
class DemoPagesTest {
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

    @Test
    void everyPageIsWholeLegibleAndOfTheRunsNumbers() throws IOException {
        Map<String, String> pages = Printed.pages(
                Printed.withoutPanels(Printed.intake(Printed.DEMO, folder.resolve("in"), t -> t)),
                folder.resolve("out"));
        NothingShortenedTest.whole(pages);
        NothingShortenedTest.nothingBelowTheBody(folder.resolve("out/owner-report.pdf"));
        try (var files = Files.list(folder.resolve("out"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".pdf")).toList()) {
                Kept.legible(file);
            }
        }
        assertThat(PrintedNumbers.unknown(folder.resolve("out")))
                .as("numbers that are in no table of the run")
                .isEmpty();
    }

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
}
