package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Stiffness;
import corewright.stiffness.StiffnessMap;
import corewright.survey.CoreState;
import corewright.survey.settings.Settings;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Options side by side, and the least work that reaches a goal. */
class OptionsTest {
    private static final Polygon DECK = rectangle(0, 0, 1600, 900);

    private static Deck deckOf() {
        return deck(DECK)
                .region(Condition.VOID, rectangle(200, 300, 600, 600), 4, 0.1)
                .region(Condition.WET_DELAMINATED, rectangle(900, 200, 1200, 500), 0, 0.9)
                .region(Condition.WET, rectangle(1300, 600, 1500, 800), 0, 0.9)
                .probe(300, 450, 4, CoreState.DRY)
                .probe(500, 450, 4, CoreState.DRY);
    }

    @Test
    void everyRegionHasEveryMethodThenComesTheDeck() {
        List<Option> options = decide(deckOf()).weighing().options();
        assertThat(options.stream().map(o -> o.region() + " " + o.method()).toList())
                .containsExactly(
                        "R1 monitor",
                        "R1 dry-out",
                        "R1 inject",
                        "R1 recore",
                        "R2 monitor",
                        "R2 dry-out",
                        "R2 inject",
                        "R2 recore",
                        "R3 monitor",
                        "R3 dry-out",
                        "R3 inject",
                        "R3 recore",
                        "deck leave",
                        "deck dry",
                        "deck advised",
                        "deck renew");
        for (Option option : options) {
            assertThat(option.why()).as(option.region() + option.method()).endsWith(".");
            assertThat(option.work().isPresent()).isEqualTo(option.offered());
        }
        assertThat(options.stream()
                        .filter(o -> o.standing() == Option.Standing.ADVISED)
                        .map(o -> o.region() + " " + o.method()))
                .containsExactly("R1 inject", "R2 recore", "R3 dry-out", "deck advised");
        assertThat(options.stream().filter(o -> !o.offered()).map(o -> o.region() + " " + o.method()))
                .contains("R1 dry-out", "R2 dry-out", "R2 inject", "R3 inject");
    }

    /** Regions and one or two visits add up to the deck's row; it is the owner's own row. */
    @Test
    void rowsAddUpToTheOwnersTable() {
        Decision d = decide(deckOf());
        List<Option> options = d.weighing().options();
        double low = 4 * 75;
        double high = 8 * 75;
        double kg = 0;
        for (Option o : options) {
            if (!o.region().equals("deck") && o.standing() == Option.Standing.ADVISED) {
                low += o.work().orElseThrow().costLow();
                high += o.work().orElseThrow().costHigh();
                kg += o.weight().netKg();
            }
        }
        Option deck = find(options, "deck", "advised");
        Choice choice = d.choices().stream().filter(Choice::advised).findFirst().orElseThrow();
        assertThat(deck.work().orElseThrow().costLow())
                .isCloseTo(low, within(1e-9))
                .isEqualTo(choice.costLow());
        assertThat(deck.work().orElseThrow().costHigh())
                .isCloseTo(high, within(1e-9))
                .isEqualTo(choice.costHigh());
        assertThat(deck.work().orElseThrow().daysHigh()).isEqualTo(choice.daysHigh());
        assertThat(deck.weight().netKg()).isCloseTo(kg, within(1e-9));
    }

    /** Days: drying of R3 through holes, then cure of the new core; by hand from its row of drying.csv. */
    @Test
    void daysHoldDryingAndCure() {
        Decision d = decide(deckOf());
        var drying = d.weighing().drying().stream()
                .filter(t -> t.region().equals("R3"))
                .findFirst()
                .orElseThrow();
        Option.Work dry = find(d.weighing().options(), "R3", "dry-out").work().orElseThrow();
        double p90 = java.util.Objects.requireNonNull(drying.days()).p90();
        assertThat(dry.daysHigh()).isCloseTo(dry.hoursHigh() / 7 + p90, within(1e-9));
        Option.Work deck =
                find(d.weighing().options(), "deck", "advised").work().orElseThrow();
        assertThat(deck.daysHigh()).isCloseTo(deck.hoursHigh() / 7 + p90 + 2 * Math.sqrt(2), within(1e-9));
    }

    /** 0.04 m2 of balsa of 150 kg/m3 and 12.5 mm is 75 g dry; from 50 to 15 per cent it loses 26 g. */
    @Test
    void dryingTakesWaterOut() {
        Option dry = find(decide(deckOf()).weighing().options(), "R3", "dry-out");
        assertThat(dry.weight().waterKg()).isCloseTo(-0.02625, within(1e-9));
        assertThat(dry.weight().netKg()).isZero();
    }

    @Test
    void leavingSaysWhatMustNotBeDoneMeanwhile() {
        List<Option> options = decide(deckOf().with(fitting("cleat", 1000, 350, true, 60)))
                .weighing()
                .options();
        assertThat(find(options, "R1", "monitor").why()).contains("nobody jumps on it");
        assertThat(find(options, "R2", "monitor").why())
                .contains("out of use", "nobody jumps on it", "rain and frost are kept off it");
    }

    @Test
    void stiffnessIsThePanelsOwnAndTheGoalIsReached() {
        Settings s = Settings.defaults();
        Deck deck = deckOf().with(with(s, new Settings.Goal(0.7, 900)));
        var survey = deck.survey();
        var damage = deck.damage();
        Memory memory = new Memory();
        StiffnessMap map = Stiffness.of(survey, damage, memory);
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);
        Methods methods = Methods.of(survey, damage, options);
        RepairOptions plans = RepairPlanner.together(survey, damage, options, methods.of(Method.INJECT), memory);
        Gains gains = Stiffness.gains(
                survey,
                damage,
                map,
                Treated.dried(damage, methods),
                Treated.advised(damage, methods, plans, survey.settings(), Map.of()),
                memory);
        List<Option> rows = Decider.decide(
                        survey,
                        damage,
                        methods,
                        plans,
                        gains,
                        new PanelGains(survey, damage, gains.map(), memory),
                        Map.of())
                .weighing()
                .options();
        double found = share(find(rows, "R1", "monitor"));
        assertThat(share(find(rows, "R1", "inject"))).isGreaterThanOrEqualTo(found);
        assertThat(share(find(rows, "R2", "recore"))).isGreaterThan(found);
        assertThat(share(find(rows, "deck", "renew"))).isGreaterThan(0.95);
        List<Option> least =
                rows.stream().filter(o -> o.method().equals("least-cost")).toList();
        assertThat(least).hasSize(2);
        assertThat(share(least.get(0))).as("by the panel's own model").isGreaterThanOrEqualTo(0.695);
        double cost =
                least.get(1).work().map(w -> (w.costLow() + w.costHigh()) / 2).orElseThrow();
        assertThat(cost).isLessThanOrEqualTo(900 + 1e-6);
        assertThat(least.get(0).work().orElseThrow().costLow())
                .isLessThanOrEqualTo(
                        find(rows, "deck", "renew").work().orElseThrow().costLow());
        var panels = new PanelGains(survey, damage, gains.map(), memory);
        for (double goal : new double[] {0.5, 0.8, 0.9, 0.95}) {
            var asked = deckOf().with(with(s, new Settings.Goal(goal, 0))).survey();
            Option row = find(
                    Decider.decide(asked, damage, methods, plans, gains, panels, Map.of())
                            .weighing()
                            .options(),
                    "deck",
                    "least-cost");
            assertThat(row.offered()).isTrue();
            assertThat(share(row)).as("asked for " + goal).isGreaterThanOrEqualTo(goal - 0.005);
        }
    }

    private static Settings with(Settings s, Settings.Goal goal) {
        return new Settings(
                s.thresholds(),
                s.drilling(),
                s.resins(),
                s.costs(),
                s.crew(),
                s.climate(),
                s.numerics(),
                s.terms(),
                s.drying(),
                goal,
                Settings.Letterhead.NONE);
    }

    @Test
    void noDamageHasOneRow() {
        assertThat(decide(deck(DECK)).weighing().options()).singleElement().satisfies(o -> assertThat(o.method())
                .isEqualTo("leave"));
    }

    private static double share(Option option) {
        return option.stiffness().orElseThrow().p50();
    }

    private static Option find(List<Option> options, String region, String method) {
        return options.stream()
                .filter(o -> o.region().equals(region) && o.method().equals(method))
                .findFirst()
                .orElseThrow();
    }

    private static Decision decide(Deck deck) {
        return Assessments.decide(deck.survey(), deck.damage());
    }
}
