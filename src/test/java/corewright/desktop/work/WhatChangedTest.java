package corewright.desktop.work;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessed;
import corewright.assessment.Partial;
import corewright.desktop.MapChain;
import corewright.desktop.state.AtOnce;
import corewright.desktop.state.MemoryLog;
import corewright.desktop.state.Workbench;
import corewright.report.SampleAssessment;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.Kind;
import corewright.survey.FrozenPlan.PlannedCup;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.FrozenPlan.Standing;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WhatChangedTest {
    private static PlannedHole hole(String name, Kind kind, double stopMm, double grams, Standing standing) {
        return new PlannedHole(
                name, name.substring(0, 2), new Spot("deck", 100, 0), kind, 6, stopMm, grams, standing, "", 0);
    }

    private static FrozenPlan plan(double mixedG, PlannedHole... holes) {
        return new FrozenPlan(
                List.of(),
                List.of(),
                List.of(holes),
                List.of(),
                List.of(new PlannedCup(1, "R1", "R1-1", mixedG, 0)),
                List.of());
    }

    @Test
    void whatChangedIsToldHoleByHoleWithItsFigures() {
        Workbench bench = new Workbench(new AtOnce(), MapChain::assess);
        WhatChanged changed = new WhatChanged(bench);
        FrozenPlan before = plan(
                80,
                hole("R1-1", Kind.INJECTION, 8, 32, Standing.PLANNED),
                hole("R1-2", Kind.INJECTION, 8, 30, Standing.PLANNED),
                hole("R1-V1", Kind.VENT, 7, 0, Standing.PLANNED),
                hole("R2-1", Kind.INJECTION, 8, 5, Standing.PLANNED));
        FrozenPlan next = plan(
                70,
                hole("R1-1", Kind.INJECTION, 7.5, 20, Standing.HELD),
                hole("R1-2", Kind.INJECTION, 8, 30.2, Standing.PLANNED),
                hole("R1-V1", Kind.VENT, 7, 0, Standing.DROPPED),
                hole("R1-3", Kind.INJECTION, 8, 12, Standing.PLANNED),
                hole("R2-1", Kind.INJECTION, 8, 9, Standing.PLANNED));

        assertThat(changed.sentences(before, next, Set.of("R1")))
                .containsExactly(
                        "Hole 1 takes 20 g, was 32 g; it has its depth stop at 7.5 mm, was 8.0 mm.",
                        "Vent V1 is left out: leave the deck closed there.",
                        "Hole 3 is new: depth stop 8.0 mm, takes 12 g.",
                        "To mix for R1 in all: 70 g, was 80 g.",
                        "Other places change too: R2.");
        assertThat(changed.sentences(next, next, Set.of("R1", "R2"))).isEmpty();
        assertThat(changed.head()).isEmpty();
        bench.close();
    }

    /** 12 g went in already: that another plan would have had 20 there asks for nothing more. */
    @Test
    void aHoleThatIsDoneIsAskedForNothing() {
        Survey survey = Part.LOG.with(
                SampleAssessment.damaged().survey(),
                List.of(new WorkEntry(new Origin("log.csv", 2), "R1-1", 120, 12, null)));
        Workbench bench = new Workbench(
                new AtOnce(), (s, findings, earlier, progress) -> new Assessed(Partial.bare(s, findings), earlier));
        bench.open("survey", () -> new MemoryLog(survey, List.of()));
        FrozenPlan before = plan(80, hole("R1-1", Kind.INJECTION, 8, 32, Standing.HELD));
        FrozenPlan next = plan(80, hole("R1-1", Kind.INJECTION, 8, 20, Standing.HELD));
        FrozenPlan none = plan(80, hole("R1-1", Kind.INJECTION, 8, 0, Standing.HELD));

        WhatChanged changed = new WhatChanged(bench);
        assertThat(changed.sentences(before, next, Set.of("R1"))).isEmpty();
        assertThat(changed.sentences(before, none, Set.of("R1"))).containsExactly("Hole 1 takes no more, was 32 g.");
        bench.close();
    }
}
