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
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class WorkProgressTest {
    private final Deck deck =
            deck(rectangle(0, -500, 2500, 900)).region(Condition.VOID, rectangle(1000, 0, 1500, 300), 6, 0.1);
    private final List<InjectionPlan> plans =
            RepairPlanner.plan(deck.survey(), deck.damage(), new Memory()).injections();
    private final InjectionPlan plan = plans.get(0);
    private final List<Hole> holes =
            plan.holes().stream().filter(h -> h.kind() == Hole.Kind.INJECTION).toList();

    private static Origin line(int n) {
        return new Origin("log.csv", n);
    }

    @Test
    void nothingIsSaidBeforeAnyWork() {
        assertThat(WorkProgress.of(deck.survey(), deck.damage(), plans)).isEmpty();
        assertThat(WorkDone.of(deck.survey(), deck.damage(), plans).findings()).isEmpty();
    }

    /** Each hole but the last took a tenth more: what is left grows towards that, never beyond. */
    @Test
    void whatIsLeftFollowsTheLog() {
        double waste = deck.survey().settings().drilling().wasteFraction();
        List<WorkEntry> log = new ArrayList<>();
        double left = 0;
        for (int i = 0; i < holes.size(); i++) {
            double planned =
                    WorkLog.planned(plan, waste).getOrDefault(holes.get(i).id(), 0.0);
            if (i < holes.size() - 1) {
                log.add(new WorkEntry(line(i + 2), holes.get(i).id(), 120 + 60 * i, 1.1 * planned, null));
            } else {
                left = planned;
            }
        }
        WorkProgress progress = progress(Part.LOG.with(deck.survey(), log));
        assertThat(progress.log().leftG()).isBetween(left * 1.02, left * 1.1);
        assertThat(progress.nextCupG())
                .isCloseTo(progress.log().leftG() / (1 - waste), Percentage.withPercentage(1e-9));
    }

    @Test
    void aGreedyHoleAndAnUnknownOneAreFindings() {
        List<WorkEntry> log = List.of(
                new WorkEntry(line(2), holes.get(0).id(), 120, 900, null), new WorkEntry(line(3), "Z9", 130, 20, null));
        List<Finding> findings = WorkDone.of(Part.LOG.with(deck.survey(), log), deck.damage(), plans)
                .findings();
        assertThat(findings)
                .extracting(f -> f.about().id())
                .containsExactly(holes.get(0).id(), "Z9");
        assertThat(findings.get(0).effect()).contains("larger than mapped");
        assertThat(findings.get(0).origin()).isEqualTo(line(2));
    }

    /**
     * Read when the place's mix is 20 minutes old, sound skin 24 °C: warm over the region is as expected, cold is not, warm
     * far beside it is a surprise. Sound places are measured beside the region.
     */
    @Test
    void warmthIsJudgedAgainstSoundPlacesOfTheSameTime() {
        Spot within = holes.get(0).spot();
        double atS = 20 * 60;
        List<SurfaceTemperature> felt = List.of(
                temperature("S1", 200, 700, atS, 24.0),
                temperature("S2", 300, 700, atS + 100, 24.2),
                temperature("S3", 300, 800, atS + 100, 23.8),
                temperature("S4", 300, 800, atS + 7200, 50), // another time
                temperature("T1", within.xMm(), within.yMm(), atS, 29),
                temperature("T2", within.xMm(), within.yMm(), atS, 24.1),
                temperature("T3", 1250, 340, atS, 28.5));
        Survey survey = Part.TEMPERATURES.with(deck.survey(), felt);
        List<FillCheck.Place> warmth = progress(survey).warmth();
        assertThat(warmth)
                .extracting(p -> p.reading().id())
                .contains("T1", "T2", "T3")
                .doesNotContain("S1", "S2", "S3");
        assertThat(place(warmth, "T1").verdict()).isEqualTo(FillCheck.Verdict.ARRIVED);
        assertThat(place(warmth, "T1").surprise()).isFalse();
        assertThat(place(warmth, "T2").verdict()).isEqualTo(FillCheck.Verdict.NOT_ARRIVED);
        assertThat(place(warmth, "T3").surprise()).isTrue();
        assertThat(WorkDone.of(survey, deck.damage(), plans).findings())
                .extracting(f -> f.about().id())
                .contains("T2", "T3")
                .doesNotContain("T1");
    }

    /** Filled again on the second day, read 20 minutes after that: cold is no mix. Two hours after the first day's mix it said nothing. */
    @Test
    void aPlaceIsAsOldAsTheLastMixOfItsHole() {
        Hole hole = holes.get(0);
        double dayS = 24 * 3600;
        double coldC = deck.survey().settings().climate().temperatureC();
        List<WorkEntry> log = List.of(
                new WorkEntry(line(2), hole.id(), 120, 5, null), new WorkEntry(line(3), hole.id(), dayS, 20, null));
        Survey worked = Part.LOG.with(deck.survey(), log);
        List<SurfaceTemperature> felt = List.of(
                temperature("T1", hole.spot().xMm(), hole.spot().yMm(), 120 + 7200, coldC),
                temperature("T2", hole.spot().xMm(), hole.spot().yMm(), dayS + 1200, coldC));
        List<FillCheck.Place> warmth =
                progress(Part.TEMPERATURES.with(worked, felt)).warmth();
        assertThat(place(warmth, "T1").verdict()).isEqualTo(FillCheck.Verdict.OUT_OF_TIME);
        assertThat(place(warmth, "T2").verdict()).isEqualTo(FillCheck.Verdict.NOT_ARRIVED);
        assertThat(place(warmth, "T2").reading()).isEqualTo(felt.get(1));
    }

    private WorkProgress progress(Survey survey) {
        return WorkProgress.of(survey, deck.damage(), plans).get(0);
    }

    private static FillCheck.Place place(List<FillCheck.Place> places, String id) {
        return places.stream()
                .filter(p -> p.reading().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private SurfaceTemperature temperature(String id, double x, double y, double atS, double celsius) {
        String face = deck.survey().faces().get(0).name();
        return new SurfaceTemperature(line(0), id, new Spot(face, x, y), atS, celsius, null);
    }
}
