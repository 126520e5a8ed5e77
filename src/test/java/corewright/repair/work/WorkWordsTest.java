package corewright.repair.work;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a log means: a sentence and what to do next for each case, the leak before all. */
class WorkWordsTest {
    private final Deck deck =
            deck(rectangle(0, -500, 2500, 900)).region(Condition.VOID, rectangle(1000, 0, 1500, 300), 6, 0.1);
    private final List<InjectionPlan> plans =
            RepairPlanner.plan(deck.survey(), deck.damage(), new Memory()).injections();
    private final InjectionPlan plan = plans.get(0);
    private final Map<String, Double> planned =
            WorkLog.planned(plan, deck.survey().settings().drilling().wasteFraction());

    private List<Finding> findings(WorkEntry... log) {
        Survey survey = Part.LOG.with(deck.survey(), List.of(log));
        return WorkDone.of(survey, deck.damage(), plans).findings();
    }

    private WorkEntry entry(
            int i, double share, @Nullable String ooze, @Nullable Double felt, String leak, String stopped) {
        Hole hole = plan.holes().get(i);
        double grams = share * planned.getOrDefault(hole.id(), 0.0);
        return new WorkEntry(
                new Origin("log.csv", i + 2),
                hole.id(),
                120 + 60 * i,
                grams,
                ooze,
                null,
                null,
                felt,
                leak,
                stopped,
                "",
                "",
                "",
                null,
                null);
    }

    @Test
    void aHoleThatTakesHalfAsMuchAgainAsksForALookBelow() {
        assertThat(findings(entry(0, 1.49, null, null, "", ""))).isEmpty();
        assertThat(findings(entry(0, 1.51, null, null, "", "")).get(0).effect())
                .startsWith("Stop and look below before more goes in.")
                .contains("larger than mapped");
    }

    @Test
    void aHoleThatTakesNothingIsClearedNeverDeeper() {
        Finding finding = findings(entry(0, 0, null, null, "", "")).get(0);
        assertThat(finding.message()).startsWith("R1-1 takes nothing (0.0 g)");
        assertThat(finding.effect()).contains("never deeper").contains("drill beside it");
    }

    /** Tried once it is still to fill; tried again in vain it is left to the taps. */
    @Test
    void aHoleThatTookNothingIsStillToFillUntilItWasTriedAgain() {
        String hole = plan.holes().get(0).id();
        double grams = planned.getOrDefault(hole, 0.0);
        WorkEntry first = entry(0, 0, null, null, "", "");
        WorkLog once = WorkLog.of(planned, plan.cavityMm3(), List.of(first));
        assertThat(once.again()).containsExactly(hole);
        assertThat(once.leftG())
                .isCloseTo(planned.values().stream().mapToDouble(g -> g).sum(), within(1e-9));
        WorkLog twice = WorkLog.of(planned, plan.cavityMm3(), List.of(first, first));
        assertThat(twice.again()).isEmpty();
        assertThat(twice.leftG()).isCloseTo(once.leftG() - grams, within(1e-9));
    }

    @Test
    void aLeakComesFirstAndIsClosedFromBelow() {
        List<Finding> all = findings(
                entry(0, 2.5, "the locker's lid", null, "", ""), entry(1, 1, null, null, "over the berth", "full"));
        assertThat(all.get(0).message()).isEqualTo("Mix from R1-2 runs out: over the berth.");
        assertThat(all.get(0).severity()).isEqualTo(Finding.Severity.HAZARD);
        assertThat(all.get(0).effect()).startsWith("First of all close it, from below:");
        assertThat(all)
                .extracting(Finding::message)
                .contains("Mix from R1-1 showed at an unexpected place: the locker's lid.", "R1-2 was left off: full.");
    }

    @Test
    void aHoleFeltDeeperThanItsStopIsAHazard() {
        double stop = plan.holes().get(0).depthStopMm();
        assertThat(findings(entry(0, 1, null, stop + 0.4, "", ""))).isEmpty();
        assertThat(findings(entry(0, 1, null, stop + 3, "", "")).get(0).effect())
                .startsWith("Look at the inner skin from the other side");
    }

    /** Sums of what is printed, in tenths: holes, cups. The rounding of one cup is half a tenth. */
    @Test
    void whatIsLeftAgreesBetweenHolesAndCups() {
        Survey survey = Part.LOG.with(deck.survey(), List.of(entry(0, 1.2, null, null, "", "")));
        WorkLog log =
                WorkDone.of(survey, deck.damage(), plans).progress().get(0).log();
        NextPapers papers = NextPapers.of(survey, plan, log);
        assertThat(papers.holes().get(0).leftG()).isEqualByComparingTo("0");
        assertThat(papers.leftG().doubleValue())
                .isCloseTo(log.leftG(), within(0.05 * papers.holes().size()));
        double waste = survey.settings().drilling().wasteFraction();
        assertThat(papers.mixedG().doubleValue() * (1 - waste))
                .isCloseTo(
                        papers.leftG().doubleValue(),
                        within(0.05 * papers.cups().size()));
        assertThat(papers.cups()).allSatisfy(c -> assertThat(c.bothG())
                .isLessThanOrEqualTo(
                        BigDecimal.valueOf(survey.settings().drilling().largestBatchG() + 0.05)));
        assertThat(papers.cups().stream().flatMap(c -> c.holes().stream()).distinct())
                .containsExactlyElementsOf(papers.holes().stream()
                        .filter(l -> !l.logged())
                        .map(NextPapers.Line::hole)
                        .toList());
    }
}
