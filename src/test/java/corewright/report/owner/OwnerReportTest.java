package corewright.report.owner;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.damage.DamageMap;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;
import corewright.report.SampleAssessment;
import corewright.stiffness.StiffnessMap;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The owner's page reads as text, carries its fonts and comes out the same every time. */
class OwnerReportTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void pageOneHoldsTheWholeAnswer() throws IOException {
        String page = text(SampleAssessment.damaged(), 1).replace("print again at 100 %", "");

        assertThat(page)
                .contains("of the foredeck’s core is damaged.")
                .contains("What is wrong", "What to do now", "What it costs", "Who decides")
                .contains("which is advised: € 3 900 to 5 600")
                .contains("Keep load off the mooring bollard", "page 1 of 3")
                .contains("1 : ", "this rule is 100 mm long")
                .contains("uphill", "seen from above, bow to the left") // the map
                .doesNotContain("%", "P50", "sigma");
        assertThat(text(SampleAssessment.damaged(), 2))
                .contains("What is wrong", "How sure we are", "If it is left", "What can be done", "What we recommend")
                .contains("Recommended.", "3 900 to 5 600", "Hours", "Yard days", "kg aboard")
                .doesNotContain("%", "P50", "sigma");
    }

    @Test
    void aSoundDeckIsSaidToBeSound() throws IOException {
        assertThat(text(SampleAssessment.sound(), 1))
                .contains("No damage was found in the foredeck’s core.", "Nothing is pressing.");
    }

    /** No page may take back what the title withholds: no all-clear, no damage, no method and no price. */
    @Test
    void nothingIsSaidOfADeckWhoseSurveyCannotBeSo() throws IOException {
        for (Assessment given : List.of(SampleAssessment.sound(), SampleAssessment.damaged())) {
            assertThat(text(doubted(given), 1))
                    .contains("No verdict yet. The readings span 1.5 x 0.9 mm", "nothing is said yet, good or bad.")
                    .contains("Decide nothing on the deck before that.", "before a verdict is given")
                    .doesNotContain("No damage", "Nothing is pressing", "damaged than not", "advised", "Keep load off");
            assertThat(text(doubted(given), 2))
                    .contains("None yet")
                    .doesNotContain("No damage", "damaged than not", "Recommended.", "If it is left", "recommend");
        }
        for (Assessment given : List.of(SampleAssessment.sound(), SampleAssessment.damaged())) {
            assertThat(text(doubted(given), 2))
                    .as("how sure")
                    .contains("Nothing is sure while the question at the head of this page is open.")
                    .doesNotContain("in 8 cases of 10", "Solid edge");
        }
        assertThat(text(doubted(SampleAssessment.sound()), 3))
                .contains("No verdict is given: the first page says why.")
                .doesNotContain("No damage");
    }

    @Test
    void whatIsDecidedPastAStopSignIsNotRecommended() throws IOException {
        Assessment given = SampleAssessment.damaged();
        Decision decision = given.decision();
        List<RegionDecision> regions = decision.regions().stream()
                .map(d -> d.region().equals("R1") ? pastAStop(d) : d)
                .toList();
        Assessment a = Assessments.of(
                given.survey(),
                given.damage(),
                given.stiffness(),
                given.plans(),
                new Decision(
                        regions,
                        decision.injections(),
                        decision.recores(),
                        decision.choices(),
                        decision.buying(),
                        decision.findings(),
                        decision.weighing()),
                given.findings(),
                given.next());

        assertThat(text(a, 1))
                .contains("R1 goes past a stop sign, as decided by O. Varnholt; this report advises against it.")
                .contains("The core is rotted.", "as decided by hand: € 3 900 to 5 600")
                .doesNotContain("which is advised");
        assertThat(text(a, 2))
                .contains("By hand.", "Not what is decided for R1: page 1 says why.")
                .doesNotContain("Recommended.");
        assertThat(text(a, 3)).contains("Past a stop sign: The core is rotted.");
    }

    private static RegionDecision pastAStop(RegionDecision d) {
        return new RegionDecision(
                d.region(),
                d.method(),
                d.reasons(),
                d.firstStep(),
                d.pilot(),
                d.notOffered(),
                d.architect(),
                d.rules(),
                d.setAside(),
                new Overruled(Method.RECORE, "O. Varnholt", "no time", "The core is rotted."));
    }

    private static Assessment doubted(Assessment a) {
        Origin origin = new Origin("moisture.csv", 0);
        Finding doubt = new Finding(
                Finding.Severity.HAZARD,
                origin,
                new About.OfFile(origin),
                Subject.PLAUSIBILITY,
                "The readings span 1.5 x 0.9 mm of an outline of 3100 x 2420 mm: are they in metres?",
                "Until then no verdict is given.");
        DamageMap open = a.damage().withheld("No verdict yet. " + doubt.message());
        return Assessments.of(a.survey(), open, a.stiffness(), a.plans(), a.decision(), List.of(doubt), a.next());
    }

    @Test
    void aPanelThatIsLeftOutIsSaidWithItsReason() throws IOException {
        Assessment a = SampleAssessment.damaged();
        String why = "The stiffness of the panel foredeck-P2 cannot be calculated: no foot fits on the panel.";
        Origin origin = new Origin("survey.yaml", 0);
        About about = new About.OfPanel("foredeck-P2", new Spot("foredeck", 2800, 0));
        Finding left = new Finding(
                Finding.Severity.DOUBT,
                origin,
                about,
                Subject.PANEL_LEFT_OUT,
                why,
                "Nothing is said of how far it gives.");
        Assessment without = Assessments.of(
                a.survey(),
                a.damage(),
                new StiffnessMap(List.of(), List.of(left), List.of()),
                a.plans(),
                a.decision(),
                a.findings(),
                a.next());

        assertThat(text(without, 3)).contains(why);
        assertThat(text(a, 3)).doesNotContain("cannot be calculated");
    }

    @Test
    void nothingReadGivesNoVerdict() throws IOException {
        assertThat(text(SampleAssessment.unread(), 1))
                .contains("No verdict is given. Too little of the foredeck was read to say anything of it.")
                .doesNotContain("No damage was found", "more probably sound", "litres");
    }

    @Test
    void manyRegionsAllStandInTheTable() throws IOException {
        Assessment assessment = SampleAssessment.crowded(12);
        Path file = write(assessment, "crowded.pdf");

        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String all = new PDFTextStripper().getText(pdf);
            assertThat(assessment.damage().regions())
                    .allSatisfy(r -> assertThat(all).contains("settled " + r.id() + "."));
            assertThat(all).contains("page " + pdf.getNumberOfPages() + " of " + pdf.getNumberOfPages());
        }
    }

    @Test
    void theSameAssessmentGivesTheSameBytes() throws IOException {
        assertThat(write(SampleAssessment.damaged(), "a.pdf"))
                .hasSameBinaryContentAs(write(SampleAssessment.damaged(), "b.pdf"));
    }

    @Test
    void fontsAreEmbeddedAndTheDocumentHasTitleAndLanguage() throws IOException {
        try (PDDocument pdf =
                Loader.loadPDF(write(SampleAssessment.damaged(), "a.pdf").toFile())) {
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Alma, report to the owner");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getResources().getFontNames()).isNotEmpty();
                for (var font : page.getResources().getFontNames()) {
                    PDFont embedded = page.getResources().getFont(font);
                    assertThat(embedded.isEmbedded()).isTrue();
                    assertThat(embedded.getName()).matches("[A-Z]{6}\\+Asap.*");
                }
            }
        }
    }

    private String text(Assessment assessment, int page) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(write(assessment, "report.pdf").toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private Path write(Assessment assessment, String name) throws IOException {
        Path file = folder.resolve(name);
        OwnerReport.write(assessment, file);
        return file;
    }
}
