package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.assessment.Assessment;
import corewright.report.cards.WorkCards;
import corewright.report.owner.OwnerReport;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every document can be kept as evidence: an independent validator finds it to be PDF/A-2b (ISO 19005-2), it is told part by part, and no
 * words lie on others. The comparison and the field sheets are judged where their
 * commands are, whole runs by {@link corewright.bench.ArchivalBenchmark}.
 */
@NullUnmarked // JUnit fills the folder
class ArchivalTest {
    @TempDir
    Path folder;

    @Test
    void everyDocumentIsPdfA2bWithItsPartsToldAndNothingOverlaps() throws Exception {
        Assessment trial = Printed.withoutPanels(
                Printed.intake(Printed.TRIAL, folder.resolve("trial"), yaml -> yaml + "vessel: \"Alma & <Søn>\"\n"));
        assertThat(trial.survey().heading().vessel()).isEqualTo("Alma & <Søn>");
        for (Assessment a : List.of(SampleAssessment.damaged(), SampleAssessment.unread(), trial)) {
            for (Path file : documents(a)) {
                Kept.check(file);
            }
        }
    }

    private List<Path> documents(Assessment a) throws IOException {
        Path out = Files.createDirectories(folder.resolve("out"));
        OwnerReport.write(a, out.resolve("owner-report.pdf"));
        WorkCards.write(a, out.resolve("work-cards.pdf"));
        SurveyRecord.write(a, Map.of(), out.resolve("survey-record.pdf"));
        DrillTemplate.tiles(a, out.resolve("drill-template.pdf"));
        DrillTemplate.sheets(a, out.resolve("drill-template-sheet.pdf"));
        try (var files = Files.list(out)) {
            return files.toList();
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
        assertThatThrownBy(() -> Kept.archival(plain)).isInstanceOf(AssertionError.class);
    }
}
