package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.report.cards.WorkCards;
import corewright.report.owner.OwnerReport;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Every document can be kept as evidence: an independent validator finds it to be PDF/A-2b (ISO 19005-2). */
@NullUnmarked // JUnit fills the folder
class ArchivalTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void validator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @Test
    void everyDocumentIsPdfA2b() throws Exception {
        List<Assessment> all = List.of(
                SampleAssessment.damaged(),
                SampleAssessment.unread(),
                Printed.withoutPanels(Printed.intake(
                        Printed.DECK,
                        folder.resolve("deck"),
                        yaml -> yaml.replace("vessel: \"Alma\"", "vessel: \"Alma & <Søn>\""))),
                Printed.withoutPanels(Printed.intake(Printed.DEMO, folder.resolve("demo"), yaml -> yaml)));
        for (Assessment a : all) {
            Path out = Files.createDirectories(folder.resolve("out"));
            OwnerReport.write(a, out.resolve("owner-report.pdf"));
            WorkCards.write(a, out.resolve("work-cards.pdf"));
            SurveyRecord.write(a, Map.of(), out.resolve("survey-record.pdf"));
            DrillTemplate.tiles(a, out.resolve("drill-template.pdf"));
            DrillTemplate.sheets(a, out.resolve("drill-template-sheet.pdf"));
            try (var files = Files.list(out)) {
                for (Path file : files.toList()) {
                    judge(file);
                }
            }
        }
    }

    private static void judge(Path file) throws Exception {
        PDFAFlavour flavour = PDFAFlavour.PDFA_2_B;
        try (InputStream in = Files.newInputStream(file);
                PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.isCompliant())
                    .as(file.getFileName() + ": "
                            + result.getTestAssertions().stream().limit(3).toList())
                    .isTrue();
        }
    }

    /** What the judge would say of a document without its colours' profile, so that he is known to look. */
    @Test
    void theValidatorRefusesAPlainPdf() throws IOException {
        Path plain = folder.resolve("plain.pdf");
        try (var pdf = new org.apache.pdfbox.pdmodel.PDDocument()) {
            pdf.addPage(new org.apache.pdfbox.pdmodel.PDPage());
            pdf.save(plain.toFile());
        }
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> judge(plain)).isInstanceOf(AssertionError.class);
    }
}
