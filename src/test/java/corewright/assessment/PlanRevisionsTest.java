package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.stiffness.State;
import corewright.store.RepairPlanText;
import corewright.survey.FrozenPlan;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan that lives through the work. The long run of sequences is {@link PlanSequencesBench}. */
@NullUnmarked // JUnit fills the folders
class PlanRevisionsTest {
    /**
     * One space that the plan fills as one would come apart here. Of the long run, 1031 (a number without its region is that of one
     * hole only, until another would get it) and 1087 (two regions that were filled apart would be joined by a run in which nothing
     * changed) once failed too.
     */
    private static final int[] SEEDS = {1091};

    @TempDir
    private Path place;

    /** What the assessment before left, which changes nothing (ReuseTest). */
    private static Earlier earlier = Earlier.NONE;

    /** Loose over dry core along the starboard side, few draws. */
    static Survey survey(Path place) throws IOException {
        return survey(place, "core_mm: 12.5");
    }

    private static Survey survey(Path place, String core) throws IOException {
        SurveyFolders folder = SurveyFolders.minimal(place)
                .replacing("survey.yaml", "core_mm: 12.5", core)
                .adding("survey.yaml", "numerics: { realisations: 50 }\n")
                .replacing("plan.csv", "POINT(450 300),yes,yes,60", "POINT(450 60),yes,yes,40")
                .replacing("probes.csv", "P2,480,540,4.5,rotted", "P2,480,540,4.5,dry")
                .adding("probes.csv", "P4,150,540,4,dry\nP5,760,540,5,dry\n");
        String dry = folder.text("moisture.csv").replaceAll(",4[0-9],A", ",9,A");
        return SurveyFolder.read(folder.with("moisture.csv", dry).path()).survey();
    }

    @Test
    void namesStayAndGramsCountOnce() throws IOException {
        Survey survey = survey(place);
        PlanSequences.Sums sums = new PlanSequences.Sums();
        for (int seed : SEEDS) {
            new PlanSequences(survey, seed, true).run(sums);
        }
        assertThat(sums.revisions).isGreaterThan(SEEDS.length); // something did change
        assertThat(sums.drilled).isPositive();
        assertThat(sums.dropped).isPositive();
    }

    @AfterAll
    static void forget() {
        earlier = Earlier.NONE;
    }

    /** The same with a thick core, whose panel takes few elements. */
    private Survey thick() throws IOException {
        return survey(place, "core_mm: 40");
    }

    /** A vent at which mix showed is no hole without a plan; grams through it are told. */
    @Test
    void aVentInTheLogIsNoStranger() throws IOException {
        Survey survey = thick();
        Survey planned = survey.with(issued(assess(survey)).plan());
        String vent = planned.repairPlan().holes().stream()
                .filter(h -> !h.fills())
                .findFirst()
                .orElseThrow()
                .name();

        assertThat(said(planned, vent, 0)).noneMatch(m -> m.startsWith(vent));
        assertThat(said(planned, vent, 12)).contains(vent + " took 12 g, and is a vent.");
    }

    private List<String> said(Survey planned, String hole, double grams) {
        WorkEntry entry = new WorkEntry(new Origin("log.csv", 2), hole, 120, grams, null);
        return assess(Part.LOG.with(planned, List.of(entry))).findings().stream()
                .map(f -> f.message())
                .toList();
    }

    @Test
    void aRunWithItsOwnPlanGivesTheSameBytes() throws IOException {
        Survey survey = thick();
        Assessment first = assess(survey);
        FrozenPlan plan = issued(first).plan();
        assertThat(plan.holes()).hasSizeGreaterThan(3);
        Assessment again = assess(survey.with(plan));
        assertThat(RepairPlanText.of(issued(again).plan())).isEqualTo(RepairPlanText.of(plan));
        assertThat(issued(again).findings()).isEmpty();
        assertThat(again.decision().injections()).isEqualTo(first.decision().injections());

        String hole = plan.holes().get(0).name();
        Survey begun =
                Part.LOG.with(survey.with(plan), List.of(new WorkEntry(new Origin("log.csv", 2), hole, 120, 20, null)));
        Assessment worked = assess(begun);
        assertThat(RepairPlanText.of(issued(worked).plan())).isEqualTo(RepairPlanText.of(plan));
        // what went in tells of the cavity, and so of the stiffness when it is filled; not of the deck as it was found
        assertThat(worked.stiffness().worst().orElseThrow().in(State.AS_FOUND))
                .isEqualTo(again.stiffness().worst().orElseThrow().in(State.AS_FOUND));
        assertThat(worked.gains().advised())
                .isPresent()
                .isNotEqualTo(again.gains().advised());
    }

    private Assessment assess(Survey survey) {
        Assessed assessed = Assessor.assess(survey, List.of(), earlier, Progress.NONE);
        earlier = assessed.earlier();
        return assessed.assessment();
    }

    private static Issued issued(Assessment assessment) {
        return Issued.of(assessment.survey(), assessment.damage(), assessment.decision());
    }
}
