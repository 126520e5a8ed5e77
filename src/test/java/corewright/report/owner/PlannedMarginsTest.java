package corewright.report.owner;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Quantiles;
import corewright.report.SampleAssessment;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.stiffness.DeckPanel;
import corewright.stiffness.LoadCase;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.stiffness.StateStiffness;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Spot;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlannedMarginsTest {
    private static final Face FACE = SampleAssessment.survey().faces().get(0);

    private static final Map<State, StateStiffness> STATES = Map.of(
            State.AS_BUILT, new StateStiffness(1, 1, new Quantiles(1, 1, 1), new FootLoadMap(100, 1000, List.of())));

    private static PanelStiffness panel(LoadCase... cases) {
        int sides = FACE.outline().getExteriorRing().getNumPoints() - 1;
        DeckPanel panel = new DeckPanel(
                "foredeck-P1",
                FACE.name(),
                FACE.outline(),
                Collections.nCopies(sides, EdgeSupport.SIMPLE),
                EdgeSupport.FREE,
                SampleAssessment.survey().laminate("deck"),
                Optional.empty());
        Spot spot = new Spot(FACE.name(), 1000, 0);
        return new PanelStiffness(panel, spot, true, STATES, List.of(), Optional.empty(), List.of(cases), List.of());
    }

    private static Margin margin(String what, double demand, double x, double y) {
        return new Margin(what, demand, 2, x, y, "", "");
    }

    private static LoadCase planned(String name, Margin... margins) {
        Spot spot = new Spot(FACE.name(), 1000, 0);
        return new LoadCase(name, Map.of(State.AFTER_PLAN, new LoadCase.Answer(1, 1, spot, List.of(margins))));
    }

    @Test
    void saysTheMostOfAllAndOfTheBondWithTheirPlaces() {
        String words = PlannedMargins.words(
                FACE,
                panel(
                        planned(
                                "crew",
                                margin("core shear", 0.3, 1200, 250),
                                margin("repair bond, peel, foam", 0.1, 900, 0)),
                        planned(
                                "raft",
                                margin("core shear, foam", 0.68, 1500, -400),
                                margin("repair bond, shear, foam", 0.24, 2250, 600),
                                margin(Margins.LOOSE_SKIN_BUCKLING, 3, 100, 0))));

        assertThat(words.replace('\u00a0', ' ').replace('\u202f', ' ')) // units do not part from their figures
                .isEqualTo(
                        "After what is advised, the load “raft” takes the most of what the panel holds: 34 of 100 (core"
                                + " shear, foam), at 1.50 m aft and 0.40 m to port. Of the repair’s bond the loads take at most 12"
                                + " of 100, at 2.25 m aft and 0.60 m to starboard. No safety factor is in these. ");
    }

    @Test
    void isSilentWithoutLoads() {
        assertThat(PlannedMargins.words(FACE, panel())).isEmpty();
    }
}
