package corewright.desktop.state;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.SurveyFolders;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.desktop.MapChain;
import corewright.desktop.slip.StepSlips;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StepsTest {
    private static final Spot SPOT = new Spot("foredeck", 300, 300);

    private static Finding doubt(About about, Subject subject) {
        return new Finding(Finding.Severity.DOUBT, new Origin("x", 1), about, subject, "it is", "so");
    }

    private static Assessment assessed(SurveyFolders folder) {
        Workbench bench = new Workbench(new AtOnce(), MapChain::assess);
        bench.open("survey", () -> SurveyOpener.open(folder.path()));
        Assessment a = bench.found().orElseThrow();
        bench.close();
        return a;
    }

    /** One reading lies outside; the divider ends inside; the rest is what later stages say of other things. */
    @Test
    void onlyReadingsAreCountedAsDoubtedReadings(@TempDir Path dir) {
        Assessment a = assessed(SurveyFolders.minimal(dir)
                .adding("taps.csv", "T99,5000,100,sound\n")
                .adding("plan.csv", "foredeck,divider,stringer,\"LINESTRING(200 200,200 400)\",,,,,\n"));
        List<Finding> findings = new ArrayList<>(a.findings());
        assertThat(findings).extracting(Finding::subject).contains(Subject.DIVIDER);
        findings.add(doubt(new About.OfPanel("foredeck-P1", SPOT), Subject.PANEL));
        findings.add(doubt(new About.OfFeature("beam", SPOT), Subject.SUPPORT));
        findings.add(doubt(new About.OfLoad("crew", SPOT), Subject.LOAD));
        findings.add(doubt(new About.OfRegion("R1", SPOT), Subject.DRY_CORE));

        assertThat(Steps.doubted(with(a, findings))).isEqualTo(1);
    }

    @Test
    void aTapAndAMeterReadingOfOneIdAreTwo(@TempDir Path dir) {
        Assessment a = assessed(SurveyFolders.minimal(dir)
                .adding("taps.csv", "X1,5000,100,sound\n")
                .adding("moisture.csv", "X1,5000,100,12,A\n"));

        assertThat(Steps.doubted(a)).isEqualTo(2);
    }

    /** The map alone is there: nothing is known of panels and plans, which is not the same as none. */
    @Test
    void whatWasNeverCalculatedIsNoAllClear(@TempDir Path dir) {
        Assessment a = assessed(SurveyFolders.minimal(dir));

        assertThat(Steps.of(a.survey(), a, false, Ages.MAPPED, Units.METRIC))
                .containsEntry(Step.REPAIR, "not calculated yet")
                .containsEntry(Step.STIFFNESS, "not calculated yet");
        assertThat(Steps.of(a.survey(), null, false, Ages.FRESH, Units.METRIC))
                .containsEntry(Step.DAMAGE, "not calculated yet");
        assertThat(Steps.of(a.survey(), a, true, Ages.MAPPED, Units.METRIC)).containsEntry(Step.REPAIR, "to follow");
    }

    private static Assessment with(Assessment a, List<Finding> findings) {
        return Assessments.of(a.survey(), a.damage(), a.stiffness(), a.plans(), a.decision(), findings, a.next());
    }

    /** The intake of a whole run refuses it; a window is where its readings are to come from. */
    @Test
    void aFolderInWhichNothingIsReadOpensWithoutAnAllClear(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with(
                        "survey.yaml",
                        SurveyFolders.YAML.replace(", moisture: moisture.csv, taps: taps.csv, probes: probes.csv", ""));
        Workbench bench = new Workbench(new AtOnce(), MapChain::assess);
        bench.open("survey", () -> SurveyOpener.open(folder.path()));

        assertThat(bench.complaints()).isEmpty();
        assertThat(bench.found()).isEmpty();
        for (Step step : List.of(Step.DAMAGE, Step.REPAIR, Step.STIFFNESS, Step.PAPERS)) {
            assertThat(StepSlips.of(step, bench.shown().orElseThrow(), bench).sentence())
                    .startsWith("Nothing is read yet, so nothing is known of the core, good or bad.");
        }
        bench.close();
    }
}
