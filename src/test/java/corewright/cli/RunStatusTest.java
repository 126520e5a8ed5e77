package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.drawing.kit.Measure;
import corewright.report.SampleAssessment;
import corewright.stiffness.StiffnessMap;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Spot;
import corewright.survey.settings.Settings.Terms;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A run from which something is missing by a defect does not end as if all were well. */
class RunStatusTest {
    @Test
    void theSummaryHasTheReadersUnitsAndDecimalSign() {
        String line = "  empty space: 1.31 litres, in 8 cases of 10 between 0.93 and 1.87";

        assertThat(RunSummary.said(line, Measure.METRIC, Terms.Sign.POINT)).isEqualTo(line);
        assertThat(RunSummary.said(line, Measure.METRIC, Terms.Sign.COMMA))
                .isEqualTo("  empty space: 1,31 litres, in 8 cases of 10 between 0,93 and 1,87");
        assertThat(RunSummary.said("sound 1.00 m2, rest", Measure.US, Terms.Sign.COMMA))
                .isEqualTo("sound 10,8 ft², rest");
    }

    @Test
    void aDefectSpoilsTheStatusAndIsSaid() {
        Assessment sound = SampleAssessment.damaged();
        Defect defect = Defect.of(
                "the stiffness",
                new About.OfPanel("foredeck-P1", new Spot("foredeck", 0, 0)),
                new IllegalStateException("on purpose"));
        Assessment one = Assessments.of(
                sound.survey(),
                sound.damage(),
                new StiffnessMap(List.of(), List.of(), List.of(defect)),
                sound.plans(),
                sound.decision(),
                sound.findings(),
                sound.next());
        StringWriter said = new StringWriter();

        assertThat(RunCommand.status(sound, new PrintWriter(said))).isZero();
        assertThat(said.toString()).isEmpty();
        assertThat(RunCommand.status(one, new PrintWriter(said))).isEqualTo(1);
        assertThat(said.toString())
                .contains("By a defect of this program the stiffness of foredeck-P1 could not be calculated.")
                .contains("on purpose");
    }
}
