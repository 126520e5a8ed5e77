package corewright.report.cards;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.drying.DryingPattern;
import corewright.decision.drying.DryingTimes;
import corewright.drawing.Recorder;
import corewright.drawing.kit.Paper;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.Schedule;
import corewright.report.CardSamples;
import corewright.report.Printed;
import corewright.report.SampleAssessment;
import corewright.report.data.BatchesCsv;
import corewright.report.data.CsvTable;
import corewright.report.data.CupsCsv;
import corewright.report.data.ScheduleCsv;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The technician's cards carry the plan's own figures, and nothing on them touches anything else. */
class WorkCardsTest {

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void everyCardHasAFrontAndABack() throws IOException {
        List<String> pages = text(SampleAssessment.damaged());

        assertThat(pages).hasSize(6);
        assertThat(pages.get(0)).contains("R1 inject", "card 1 of 3, front", "revision 1");
        assertThat(pages.get(1)).contains("R1 mix", "card 1 of 3, back");
        assertThat(pages.get(2)).contains(" dry", "card 2 of 3, front", "Nothing is filled or closed");
        assertThat(pages.get(3)).contains(" readings", "card 2 of 3, back");
        assertThat(pages.get(4)).contains("prove first", "card 3 of 3, front", "Nothing is filled and nothing is cut");
    }

    @Test
    void theFrontHasEveryHoleWithItsPlaceAndStop() throws IOException {
        Assessment assessment = SampleAssessment.damaged();
        String front = text(assessment).get(0);

        assertThat(tables(assessment).get(0).lines().toList())
                // 2 holes serve the same cavity: each gets half of (192.5 + 67.375) g less 15 % waste, 110.4 g
                .contains("1 2 290 530 6.5 1, 2 110", "2 2 650 680 6.5 2 110", "together, g 220")
                .contains("V1 2 290 700 6.5 seen, min");
        assertThat(front).contains("never drill past 6.5 mm.", "Lower skin at 15.5 mm", "1 : 5 on A4");
    }

    @Test
    void theBackHasEveryCupAsTheScaleShowsIt() throws IOException {
        String back = text(SampleAssessment.damaged()).get(1);

        // 100.1 + 35.0 and 92.4 + 32.3, as batches.csv has them
        assertThat(back).contains("135.1 g", "100.1 g", "35.0 g hardener", "124.7 g", "92.4 g", "32.3 g hardener");
        assertThat(back).contains("All cups 259.8 g: 220 g into holes");
        assertThat(back).contains("resin 100 to hardener 35");
    }

    /** 360 s at 25 °C, twice as long for 10 °C less: 8.49 min at 20, 12 at 15, 6 at 25. */
    @Test
    void workTimeIsToldForThreeTemperatures() throws IOException {
        assertThat(text(SampleAssessment.damaged()).get(1))
                .contains("15 °C", "20 °C", "25 °C", "12 min", "8 min", "6 min");
    }

    @Test
    void thePlansOwnFirstStepStandsOnTheFront() throws IOException {
        assertThat(text(SampleAssessment.damaged()).get(0).replaceAll("\\s+", " "))
                .contains("First: Prove that the core is dry: a probe or a plug in R1.");
    }

    @Test
    void theGramsHaveTheirSumAndTheReachItsReason() throws IOException {
        String back = text(CardSamples.injecting(5, 2, 3)).get(1).replaceAll("\\s+", " ");
        assertThat(back)
                .contains("12.88 litres × 1.15 / 4.83 × 1160 g per litre = 3557 g; with 15 % waste 4185 g")
                .contains("To have at hand: 21.09 litres")
                .contains("Reach of a hole in the middle gap: 120 mm, set by the work time; relied on is 50 %");
    }

    @Test
    void aPlaceOfTheNozzleHasItsDepthInsteadOfAStop() throws IOException {
        Assessment assessment = CardSamples.injecting(5, 2, 3);
        Hole first = assessment.decision().injections().get(0).holes().get(0);
        String front = text(assessment).get(0);
        assertThat(front)
                .contains(String.format(
                        Locale.ROOT,
                        "nozzle %.0f mm in",
                        Objects.requireNonNull(first.nozzle()).pushMm()))
                .contains("Arrowhead: nozzle through an opening");
    }

    @Test
    void cupsAddUpToTheirBatches() throws IOException {
        Assessment assessment = CardSamples.injecting(9, 5, 2);
        List<String> cups = lines(CupsCsv.of(assessment));
        List<String> batches = lines(BatchesCsv.of(assessment));

        assertThat(cups.get(0)).isEqualTo("batch,region,resin_to_g,hardener_to_g");
        assertThat(cups).hasSameSizeAs(batches);
        for (int i = 1; i < cups.size(); i++) {
            String[] cup = cups.get(i).split(",", -1);
            String[] batch = batches.get(i).split(",", -1);
            assertThat(cup[2]).isEqualTo(batch[3]);
            assertThat(new BigDecimal(cup[3]))
                    .isEqualByComparingTo(new BigDecimal(batch[3]).add(new BigDecimal(batch[4])));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 1", "2, 1, 2", "5, 2, 3", "12, 1, 4", "14, 3, 6", "25, 5, 8", "40, 9, 10"})
    void theTotalIsTheSumOfTheGramsShown(int holes, int cups, long seed) {
        InjectionCard card = card(CardSamples.injecting(holes, cups, seed));

        HoleGrams grams = card.grams();

        assertThat(grams.ofHole()).hasSize(holes);
        assertThat(grams.ofHole().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(grams.total());
    }

    @Test
    void scheduleHasEveryBar() throws IOException {
        Assessment assessment = SampleAssessment.damaged();
        List<InjectionPlan> plans = assessment.decision().injections();
        int bars = Schedule.of(assessment.survey(), plans).bars().size()
                + Schedule.heldBack(assessment.survey(), plans).bars().size();

        assertThat(lines(ScheduleCsv.of(assessment)))
                .hasSize(bars + 1)
                .startsWith("region,batch,worker,hole,what,start_min,end_min", "R1,1,1,,mix,0,1")
                // the second cup is mixed at 8.33 min; a minute later it goes into the first of its holes
                .anyMatch(l -> l.startsWith("R1,2,1,R1-1,inject,9.33,"));
    }

    @Test
    void everyCautionStandsOnOneSide() throws IOException {
        Assessment assessment = CardSamples.injecting(4, 2, 2);
        String all = String.join(" ", text(assessment).subList(0, 2)).replaceAll("\\s+", " "); // a proof's card follows

        for (String caution : card(assessment).plan().cautions()) {
            assertThat(all.split(java.util.regex.Pattern.quote(caution), -1))
                    .as(caution)
                    .hasSize(2);
        }
    }

    @Test
    void manyHolesAndCupsGoOnToFurtherCards() throws IOException {
        Assessment assessment = CardSamples.injecting(40, 9, 10);
        InjectionPlan plan = card(assessment).plan();

        List<String> pages = text(assessment);

        assertThat(pages).hasSize(14); // five cards, that of a drying and that of a proof
        String fronts = String.join("\n", everySecond(tables(assessment), 0));
        String backs = String.join("\n", everySecond(pages, 1));
        for (Hole hole : plan.holes()) {
            String number = hole.id().substring(3);
            assertThat(fronts.lines().filter(l -> l.startsWith(number + " 2 ")))
                    .as(number)
                    .hasSize(1);
        }
        for (int cup = 1; cup <= plan.batches().size(); cup++) {
            assertThat(backs).contains("Cup " + cup);
        }
        assertThat(fronts.split("together, g", -1)).hasSize(2);
    }

    /** Cups every 184 s that rise from 509 s: the fourth is mixed at 552 s. */
    @Test
    void aCupMixedWhileAnotherRisesIsNamed() throws IOException {
        List<String> backs = everySecond(text(CardSamples.injecting(9, 5, 2)), 1);

        assertThat(backs.get(0)).contains("served areas do not touch.").doesNotContain("Check cup");
        assertThat(backs.get(1)).doesNotContain("Check cup");
        assertThat(backs.get(2)).contains("served areas do not touch. Check cups 4 and 5.");
    }

    @Test
    void whereNothingIsInjectedThePaperSaysSo() throws IOException {
        assertThat(text(SampleAssessment.sound())).singleElement().satisfies(p -> assertThat(p)
                .contains("No region of this survey is to be injected, cut out or dried."));
    }

    @Test
    void theSameAssessmentGivesTheSameBytes() throws IOException {
        assertThat(write(CardSamples.injecting(12, 3, 4), "a.pdf"))
                .hasSameBinaryContentAs(write(CardSamples.injecting(12, 3, 4), "b.pdf"));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1, 1",
        "2, 1, 2",
        "3, 3, 3",
        "4, 2, 4",
        "6, 1, 5",
        "8, 4, 6",
        "12, 1, 8",
        "14, 3, 9",
        "25, 5, 10",
        "40, 9, 12",
        "1, 4, 14",
        "2, 30, 16"
    })
    void noWordsStandOnOthersOrOutsideTheMargins(int holes, int cups, long seed) {
        for (Recorder page : pages(CardSamples.injecting(holes, cups, seed))) {
            Rectangle2D inside = new Rectangle2D.Double(9, 6, 297 - 18, 210 - 12);
            assertThat(page.clashes()).isEmpty();
            assertThat(page.words.stream().filter(w -> !inside.contains(w.box())))
                    .isEmpty();
            assertThat(page.ink.stream().filter(b -> !inside.contains(b))).isEmpty();
            assertThat(page.words.stream().filter(w -> w.size() < 6.5 * 25.4 / 72 - 1e-4))
                    .isEmpty();
        }
    }

    private static List<Recorder> pages(Assessment assessment) {
        return WorkCards.pages(assessment).stream()
                .map(p -> Recorder.of(g -> p.on(new Paper(g))))
                .toList();
    }

    /** Its holes are counted as they are drawn, its days are those of drying.csv rounded up. */
    @Test
    void whatIsDriedHasACardWithItsHolesAndALog() throws IOException {
        Assessment assessment =
                Printed.withoutPanels(SurveyFolder.read(Path.of("src/test/resources/corewright/cli/small-deck")));
        Region region = assessment.damage().regions().stream()
                .filter(r -> assessment.decision().on(r.id()).method() == Method.DRY_OUT)
                .findFirst()
                .orElseThrow();
        List<String> pages = text(assessment);
        String front = pages.get(pages.size() - 2).replaceAll("\\s+", " ");
        String back = pages.get(pages.size() - 1).replaceAll("\\s+", " ");

        int holes = DryingPattern.of(assessment.survey(), region).holes().size();
        // outer skin 3, core 12.5, less the margin of 1.5
        assertThat(front).contains(region.id() + " dry", holes + " holes of 6.4 mm through skin and core", "14.0");
        Quantiles days = Objects.requireNonNull(
                DryingTimes.of(assessment.survey(), region).get(0).days());
        assertThat(back)
                .contains(region.id() + " readings", "plug, %")
                .contains(String.format(
                        Locale.ROOT,
                        "Dry in %.0f days, in 8 cases of 10 %.0f to %.0f.",
                        Math.ceil(days.p50()),
                        Math.ceil(days.p10()),
                        Math.ceil(days.p90())));
    }

    private static List<String> everySecond(List<String> pages, int from) {
        return Stream.iterate(from, i -> i < pages.size(), i -> i + 2)
                .map(pages::get)
                .toList();
    }

    private static InjectionCard card(Assessment assessment) {
        return new InjectionCard(assessment, assessment.decision().injections().get(0));
    }

    private Path write(Assessment assessment, String name) throws IOException {
        Path file = folder.resolve(name);
        WorkCards.write(assessment, file);
        return file;
    }

    private List<String> lines(CsvTable table) throws IOException {
        Path file = folder.resolve("table.csv");
        table.write(file);
        return Files.readAllLines(file);
    }

    /** Every page as a reader copies it, thin spaces as plain ones. */
    private List<String> text(Assessment assessment) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(write(assessment, "cards.pdf").toFile())) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(plain(stripper.getText(pdf)));
            }
        }
        return pages;
    }

    /** What stands in the place of the table of holes, row by row, of every page. */
    private List<String> tables(Assessment assessment) throws IOException {
        double point = 72 / 25.4;
        List<String> pages = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(write(assessment, "cards.pdf").toFile())) {
            for (PDPage page : pdf.getPages()) {
                PDFTextStripperByArea stripper = new PDFTextStripperByArea();
                stripper.setSortByPosition(true);
                stripper.addRegion("table", new Rectangle2D.Double(163 * point, 35 * point, 125 * point, 160 * point));
                stripper.extractRegions(page);
                pages.add(plain(stripper.getTextForRegion("table")));
            }
        }
        return pages;
    }

    private static String plain(String text) {
        return text.replace('\u2009', ' ').replace("\r\n", "\n");
    }
}
