package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.survey.CoreState;
import corewright.survey.Finding.Severity;
import corewright.survey.Part;
import corewright.survey.RuleOverride;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Rules set aside in survey.yaml take effect, and no stop sign comes down in silence. */
class RulesByHandTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    private static final Polygon PATCH = rectangle(1000, 100, 1600, 500);

    private static Deck patch(Condition condition, double pWet) {
        return deck(DECK).region(condition, PATCH, condition == Condition.VOID ? 4 : 0, pWet);
    }

    private static Decision without(Deck deck, String... rules) {
        List<RuleOverride> off = Stream.of(rules)
                .map(r -> new RuleOverride(r, "E. Castellane", "the owner has seen it."))
                .toList();
        Survey survey = Part.RULES.with(deck.survey(), off);
        return Assessments.decide(survey, deck.damage());
    }

    /** All rules of the book may be named but two, which tell what cannot be done. */
    @Test
    void theNamesThatMayBeWrittenAreThoseOfTheBook() {
        List<String> book = RuleBook.RULES.stream().map(Rule::name).toList();
        assertThat(book).containsAll(RuleOverride.RULES).doesNotHaveDuplicates();
        assertThat(book.stream().filter(r -> !RuleOverride.RULES.contains(r)))
                .containsExactly("no empty space", "cannot be planned");
    }

    @Test
    void aRuleSetAsideLeavesTheDecisionToTheNext() {
        Deck deck = patch(Condition.WET, 0.8).indexInside(105);
        assertThat(without(deck).on("R1").method()).isEqualTo(Method.MONITOR);

        Decision d = without(deck, "wet but little");

        assertThat(d.on("R1").method()).isEqualTo(Method.DRY_OUT);
        assertThat(d.on("R1").reasons())
                .anyMatch(r ->
                        r.startsWith("Rule set aside by E. Castellane: the owner has seen it. The skin is bonded."));
        assertThat(d.on("R1").rules())
                .anyMatch(r -> r.name().equals("wet but little") && r.effect().equals("set aside"));
        assertThat(d.findings())
                .anyMatch(
                        f -> f.subject() == Subject.RULE_BY_HAND
                                && f.message()
                                        .equals(
                                                "Rule \"wet but little\" is set aside, by E. Castellane: the owner has seen it."))
                .noneMatch(f -> f.subject() == Subject.RULE_BY_HAND && f.severity() == Severity.HAZARD);
        assertThat(d.weighing().flips()).noneMatch(f -> f.condition().contains("mean"));
    }

    @Test
    void aLimitOfNobodysIsToldToo() {
        Deck deck = patch(Condition.WET, 0.8);
        Survey survey = deck.survey();
        Settings settings = survey.settings();
        Survey other = survey.with(settings.with(settings.thresholds().withDryPlug(12)));

        assertThat(Assessments.decide(other, deck.damage()).findings())
                .filteredOn(f -> f.subject() == Subject.RULE_BY_HAND)
                .singleElement()
                .satisfies(
                        f -> assertThat(f.message())
                                .isEqualTo(
                                        "Limit dry_plug_percent is 12, by default 15; the survey does not say who set it, nor why."));
    }

    /** Whatever rule is set aside of whatever case: a refusal that goes is told in four places. */
    @Test
    void noStopSignComesDownInSilence() {
        List<Deck> decks = List.of(
                patch(Condition.VOID, 0.1),
                patch(Condition.VOID, 0.1).probe(1200, 300, 4, CoreState.DRY).probe(1450, 300, 4, CoreState.DRY),
                patch(Condition.DELAMINATED, 0.1).probe(1200, 300, 0, CoreState.WET),
                patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.ROTTED),
                patch(Condition.WET, 0.9).indexInside(180),
                patch(Condition.WET_DELAMINATED, 0.9));
        int signs = 0;
        for (Deck deck : decks) {
            RegionDecision before = without(deck).on("R1");
            for (FiredRule rule : before.rules()) {
                if (!RuleOverride.RULES.contains(rule.name())) {
                    continue;
                }
                Decision d = without(deck, rule.name());
                RegionDecision after = d.on("R1");
                assertThat(after.reasons())
                        .anyMatch(r -> r.contains("set aside by E. Castellane: the owner has seen it."));
                assertThat(after.method() == Method.INJECT && before.method() != Method.INJECT)
                        .as("nothing is advised to be injected for a rule set aside")
                        .isFalse();
                for (Method method : before.notOffered().keySet()) {
                    if (after.notOffered().containsKey(method) || after.method() == method) {
                        continue;
                    }
                    signs++;
                    String told = after.setAside().get(method);
                    assertThat(told).as(rule.name()).startsWith("Stop sign set aside by E. Castellane: the owner");
                    assertThat(d.findings())
                            .anyMatch(f -> f.severity() == Severity.HAZARD
                                    && f.subject() == Subject.RULE_BY_HAND
                                    && f.message().contains(told));
                    assertThat(d.weighing().options().stream()
                                    .filter(o -> o.region().equals("R1")
                                            && o.method().equals(method.word())))
                            .allMatch(o -> !o.offered() || o.why().contains(told));
                }
            }
        }
        assertThat(signs).isGreaterThanOrEqualTo(8);
    }

    @Test
    void withNoOtherRuleToAdviseItIsKeptToOrOpened() {
        RegionDecision unproven =
                without(patch(Condition.VOID, 0.1), "not proven dry").on("R1");
        assertThat(unproven.method()).isEqualTo(Method.MONITOR);
        assertThat(unproven.firstStep()).startsWith("Drill a pilot hole");
        assertThat(unproven.reasons().get(0))
                .isEqualTo("Rule \"not proven dry\" is set aside, and no other advises here: it is kept to.");
        assertThat(unproven.setAside()).containsOnlyKeys(Method.INJECT);

        Deck proven =
                patch(Condition.VOID, 0.1).probe(1200, 300, 4, CoreState.DRY).probe(1450, 300, 4, CoreState.DRY);
        assertThat(without(proven).on("R1").method()).isEqualTo(Method.INJECT);
        assertThat(without(proven, "proven dry").on("R1").method()).isEqualTo(Method.RECORE);
    }

    /** Wet core beside rot that is not cut out by hand's rule is not cut out for it. */
    @Test
    void whatIsNotCutOutPullsNothingAfterIt() {
        Deck deck = patch(Condition.WET, 0.9)
                .region(Condition.WET, rectangle(1600, 100, 2000, 500), 0, 0.9)
                .indexInside(180)
                .probe(1200, 300, 0, CoreState.WET);
        assertThat(without(deck).on("R2").method()).isEqualTo(Method.RECORE);
        assertThat(without(deck, "wet beside a cut").on("R2").method()).isEqualTo(Method.DRY_OUT);
        assertThat(without(deck, "wet beside a cut").on("R2").setAside()).containsKey(Method.MONITOR);
    }

    @Test
    void aLimitSetByHandIsToldWithItsDefault() {
        Deck deck = patch(Condition.WET, 0.8);
        assertThat(without(deck, "monitor_index").findings()).anyMatch(f -> f.message()
                .equals("Limit monitor_index is 120, by default 120, by E. Castellane: the owner has seen it."));
    }
}
