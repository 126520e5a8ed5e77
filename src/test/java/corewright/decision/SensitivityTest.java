package corewright.decision;

import static corewright.Assessments.decide;
import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.decision.Sensitivity.Bar;
import corewright.decision.Sensitivity.Input;
import corewright.decision.Sensitivity.Swing;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.Closing;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.stiffness.Doubt;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Stiffness;
import corewright.stiffness.StiffnessMap;
import corewright.survey.CoreState;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What each input alone does to the advised plan's cost and days, by hand from the rates of docs/settings.md. */
class SensitivityTest {
    private static final double RATE = 75;
    private static final double RESIN_PER_KG = 28;

    /** R1, 0.12 m2, is filled; R2, 0.04 m2, is dried. The deck's damaged area goes from 0.9 to 1.1 of its middle, volumes from 0.75 to 1.3. */
    private static Deck deckOf() {
        return deck(rectangle(0, 0, 1600, 900))
                .region(Condition.VOID, rectangle(200, 300, 600, 600), 4, 0.1)
                .region(Condition.WET, rectangle(1300, 600, 1500, 800), 0, 0.9)
                .probe(300, 450, 4, CoreState.DRY)
                .probe(500, 450, 4, CoreState.DRY);
    }

    @Test
    void theMiddleIsTheOwnersRowAndHoursGoFromEndToEnd() {
        Decision decision = decide(deckOf().survey(), deckOf().damage());
        Sensitivity s = decision.weighing().sensitivity();
        InjectionPlan plan = decision.injections().get(0);
        double material = RESIN_PER_KG * (plan.resinG() + plan.hardenerG() + plan.buyG()) / 1000 / 2;
        Closing closing = Closing.of(plan.holes());
        double quick =
                4 + (0.5 + 2 * 0.12) + closing.hoursLow() + (0.5 + 1 * 0.04); // a visit, filling, closing, drying
        double slow = 8 + (2 + 4 * 0.12) + closing.hoursHigh() + (2 + 3 * 0.04);
        Choice row =
                decision.choices().stream().filter(Choice::advised).findFirst().orElseThrow();

        assertThat(s.advised().cost())
                .isCloseTo((row.costLow() + row.costHigh()) / 2, within(1e-6))
                .isCloseTo(RATE * (quick + slow) / 2 + material, within(1e-6));
        Swing hours = swing(s, Input.RATES);
        assertThat(List.of(hours.low(), hours.high())).containsExactly(quick, slow);
        assertThat(hours.atLow().cost()).isCloseTo(RATE * quick + material, within(1e-6));
        assertThat(hours.atHigh().cost()).isCloseTo(RATE * slow + material, within(1e-6));
        assertThat(hours.atHigh().days() - hours.atLow().days()).isCloseTo((slow - quick) / 7, within(1e-9));
    }

    @Test
    void areaDepthAndRiseMoveWhatHangsOnThem() {
        Decision decision = decide(deckOf().survey(), deckOf().damage());
        Sensitivity s = decision.weighing().sensitivity();
        InjectionPlan plan = decision.injections().get(0);
        double mix = RESIN_PER_KG * (plan.resinG() + plan.hardenerG() + plan.buyG()) / 1000 / 2;
        double perArea = RATE * ((2 + 4) / 2.0 * 0.12 + (1 + 3) / 2.0 * 0.04) + mix;

        Swing area = swing(s, Input.AREA);
        assertThat(area.low()).isCloseTo(0.9 * 0.16, within(1e-9));
        assertThat(area.atHigh().cost() - s.advised().cost()).isCloseTo(0.1 * perArea, within(1e-6));
        assertThat(area.atLow().cost() - s.advised().cost()).isCloseTo(-0.1 * perArea, within(1e-6));
        double deeper = plan.cavityMm3().p90() / plan.cavityMm3().p50();
        assertThat(deeper).isGreaterThan(1.1);
        assertThat(swing(s, Input.DEPTH).atHigh().cost() - s.advised().cost())
                .isCloseTo((deeper - 1) * mix, within(1e-6));
        assertThat(swing(s, Input.EXPANSION).atLow().cost() - s.advised().cost())
                .as("what rises a fifth less takes a quarter more")
                .isCloseTo(0.25 * mix, within(1e-6));
    }

    /** A laxer gate shortens drying by what drying.csv says of that gate; costs stay. */
    @Test
    void theGateMovesDaysAlone() {
        Deck deck = deckOf();
        Sensitivity s = decide(deck.survey(), deck.damage()).weighing().sensitivity();
        Swing gate = swing(s, Input.GATE);

        assertThat(List.of(gate.low(), gate.high())).containsExactly(15.0, 20.0);
        assertThat(gate.atLow()).isEqualTo(s.advised());
        assertThat(gate.atHigh().cost()).isEqualTo(s.advised().cost());
        assertThat(gate.atHigh().days()).isLessThan(gate.atLow().days());
        assertThat(gate.methods()).isEmpty();
    }

    /** Widest first; no bar for what moves nothing; no stiffness where no panel was calculated. */
    @Test
    void barsAreInOrder() {
        Sensitivity s = decide(deckOf().survey(), deckOf().damage()).weighing().sensitivity();

        assertThat(s.ofCost()).isSortedAccordingTo((a, b) -> Double.compare(b.width(), a.width()));
        assertThat(s.ofCost().get(0).input()).isEqualTo(Input.RATES);
        assertThat(s.ofCost()).extracting(Bar::input).doesNotContain(Input.GATE, Input.FOAM, Input.WATER);
        assertThat(s.ofStiffness()).isEmpty();
        assertThat(decide(
                                deck(rectangle(0, 0, 1600, 900)).survey(),
                                deck(rectangle(0, 0, 1600, 900)).damage())
                        .weighing()
                        .sensitivity())
                .isEqualTo(Sensitivity.NONE);
    }

    /** All that is damaged is renewed: the panel is as built whatever the damage was, and nothing moves it. */
    @Test
    void aPanelThatIsRenewedHangsOnNothing() {
        Deck deck = deck(rectangle(0, 0, 600, 400))
                .region(Condition.WET_DELAMINATED, rectangle(200, 100, 400, 300), 0, 0.95);
        Memory memory = new Memory();
        StiffnessMap map = Stiffness.of(deck.survey(), deck.damage(), memory);
        RepairOptions options = RepairPlanner.plan(deck.survey(), deck.damage(), memory);
        Methods methods = Methods.of(deck.survey(), deck.damage(), options);
        var treated =
                Treated.advised(deck.damage(), methods, options, deck.survey().settings(), Map.of());
        Gains gains = Stiffness.gains(deck.survey(), deck.damage(), map, List.of(), treated, memory);

        PanelGains panels = new PanelGains(deck.survey(), deck.damage(), gains.map(), memory);

        assertThat(panels.ends("foredeck-P1", treated)).doesNotContainKeys(Doubt.FOAM, Doubt.EXPANSION, Doubt.WATER);
    }

    private static Swing swing(Sensitivity s, Input input) {
        return s.swings().stream().filter(w -> w.input() == input).findFirst().orElseThrow();
    }
}
