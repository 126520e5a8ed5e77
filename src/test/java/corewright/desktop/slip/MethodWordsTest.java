package corewright.desktop.slip;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.Option;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.GeometryFactory;

class MethodWordsTest {
    private static String note(Slip slip, String method) {
        return slip.work().methods().stream()
                .filter(m -> m.name().equals(method))
                .findFirst()
                .orElseThrow()
                .note();
    }

    private static String stiff(Assessment found, Region region, Method method) {
        Option option = found.decision().weighing().options().stream()
                .filter(o -> o.region().equals(region.id()) && o.method().equals(method.word()))
                .findFirst()
                .orElseThrow();
        return Figures.fixed(100 * option.stiffness().orElseThrow().p50(), 0) + " of 100 stiff";
    }

    /** The steps Damage and Repair say one figure of a method, and both whose it is; left alone, it is that of the deck as found. */
    @Test
    void everyStepTellsOneFigureOfAMethod(@TempDir Path dir) throws IOException {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("plan.csv", "POINT(450 300),yes,yes,60", "POINT(450 60),yes,yes,40")
                .replacing("probes.csv", "P2,480,540,4.5,rotted", "P2,480,540,4.5,dry")
                .adding("probes.csv", "P4,100,540,4.5,dry\nP5,800,540,4.5,dry\n");
        for (int value = 40; value < 45; value++) {
            folder.with("moisture.csv", folder.text("moisture.csv").replace("," + value + ",A", ",9,A"));
        }
        Intake intake = SurveyFolder.read(folder.path());
        Assessment found = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, Progress.NONE)
                .assessment();
        PanelStiffness panel = found.stiffness().worst().orElseThrow();
        Region region = found.damage().regions().stream()
                .filter(r -> r.likely()
                        .covers(new GeometryFactory()
                                .createPoint(panel.softest().coordinate())))
                .findFirst()
                .orElseThrow();

        Slip slip = SlipWords.of(found, Units.METRIC, Ages.FRESH).region(region);

        assertThat(note(slip, "Monitor"))
                .isEqualTo(stiff(found, region, Method.MONITOR))
                .isEqualTo(
                        Figures.fixed(100 * panel.in(State.AS_FOUND).ofAsBuilt().p50(), 0) + " of 100 stiff");
        assertThat(note(slip, "Inject")).isEqualTo(stiff(found, region, Method.INJECT));
        assertThat(slip.work().advice())
                .endsWith("Stiff: " + panel.panel().name() + " at its softest when " + region.id()
                        + " alone is treated so.");
    }
}
