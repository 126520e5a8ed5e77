package corewright.desktop.work;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Earlier;
import corewright.assessment.Partial;
import corewright.desktop.state.AtOnce;
import corewright.desktop.state.Chain;
import corewright.desktop.state.MemoryLog;
import corewright.desktop.state.Workbench;
import corewright.report.SampleAssessment;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkModelTest {
    private static final String STOP = "R1-1 took 90 g. Stop and look below.";

    /** Whoever holds the cup must not see the stop go while figures are worked out anew. */
    @Test
    void aStopStandsWhileACalculationHasItsMapAlone() {
        Assessment found = SampleAssessment.damaged();
        String hole = found.decision().injections().get(0).holes().get(0).id();
        Finding stop = new Finding(
                Finding.Severity.HAZARD,
                new Origin("log", 1),
                new About.OfHole(hole),
                Subject.WORK_LOG,
                "R1-1 took 90 g.",
                "Stop and look below.");
        List<Runnable> atTheMap = new ArrayList<>();
        Chain chain = (survey, findings, earlier, progress) -> {
            progress.mapped(new Assessed(Partial.mapped(survey, List.of(), found.damage()), Earlier.NONE));
            atTheMap.forEach(Runnable::run);
            return new Assessed(with(found, atTheMap.size() < 2 ? List.of(stop) : List.of()), Earlier.NONE);
        };
        Workbench bench = new Workbench(new AtOnce(), chain);
        bench.open("survey", () -> new MemoryLog(found.survey(), List.of()));
        WorkModel model =
                new WorkModel(bench, found.decision().injections().get(0).region(), () -> 0);
        assertThat(model.says()).isEqualTo(STOP);

        List<String> meanwhile = new ArrayList<>();
        atTheMap.add(() -> meanwhile.add(model.says()));
        bench.calculate();
        assertThat(meanwhile).containsExactly(STOP);

        atTheMap.add(() -> {});
        bench.calculate();
        assertThat(model.says()).as("taken back").isEmpty();
    }

    private static Assessment with(Assessment a, List<Finding> findings) {
        return Assessments.of(a.survey(), a.damage(), a.stiffness(), a.plans(), a.decision(), findings, a.next());
    }
}
