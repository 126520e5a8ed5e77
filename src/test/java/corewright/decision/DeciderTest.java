package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.rectangle;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.DamageMap;
import corewright.repair.RepairPlanner;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

class DeciderTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    /** 0.24 m2 round (1300, 300). */
    private static final Polygon PATCH = rectangle(1000, 100, 1600, 500);

    private static final Polygon BESIDE = rectangle(1600, 100, 2000, 500);

    @Test
    void rottedCoreIsCutOut() {
        RegionDecision d = first(deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.2)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1400, 300, CoreState.ROTTED, CoreMoisture.DRY));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.reasons().get(0))
                .isEqualTo(
                        "A pilot hole at 1.40 m aft, 0.30 m to starboard brought up rotted core. Nothing bonds to it, so it "
                                + "is cut out.");
        assertThat(d.notOffered()).containsOnlyKeys(Method.MONITOR, Method.DRY_OUT, Method.INJECT);
    }

    @Test
    void wetAndLooseIsCutOut() {
        RegionDecision d = first(deck(DECK).region(Condition.WET_DELAMINATED, PATCH, 0, 0.9));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.reasons())
                .containsExactly(
                        "The core is wet and the skin is off it: drying does not bond a skin again, and mix does "
                                + "not bond to wet core.");
        assertThat(d.notOffered())
                .containsEntry(Method.INJECT, "The core is wet: mix does not bond to it.")
                .containsEntry(Method.DRY_OUT, "Drying does not bond a loose skin again.");
    }

    @Test
    void aVoidOverCoreMoreProbablyWetIsCutOut() {
        RegionDecision d = first(deck(DECK).region(Condition.VOID, PATCH, 4, 0.62));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.reasons().get(0)).contains("more probably wet than dry (62 in 100)");
    }

    @Test
    void aWetSampleSettlesIt() {
        RegionDecision d =
                first(deck(DECK).region(Condition.DELAMINATED, PATCH, 0, 0.2).plug(1100, 200, 24.5));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.reasons().get(0))
                .isEqualTo(
                        "A core sample at 1.10 m aft, 0.20 m to starboard held 24.5 % water; 20 % or more counts as wet. Core "
                                + "that is wet through is cut out.");
        RegionDecision bonded =
                first(deck(DECK).region(Condition.WET, PATCH, 0, 0.9).probe(1100, 200, 0, CoreState.WET));
        assertThat(bonded.method()).isEqualTo(Method.RECORE);
    }

    @Test
    void nothingIsInjectedUnderALoad() {
        Deck deck = deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .with(fitting("mooring bollard", 1700, 300, true, 60)); // 100 mm from the patch
        RegionDecision d = first(deck);
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.architect()).isTrue();
        assertThat(d.notOffered().get(Method.INJECT))
                .isEqualTo(
                        "R1 holds or touches the place of mooring bollard, which carries load. Injection is not offered "
                                + "under a load.");
        assertThat(decide(deck).findings())
                .filteredOn(f -> f.severity() == Finding.Severity.HAZARD)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.subject()).isEqualTo(Subject.LOAD);
                    assertThat(f.about().id()).isEqualTo("R1");
                    assertThat(f.effect()).startsWith("Injection is not offered under a load.");
                });
        assertThat(decide(deck).injections()).isEmpty();
        assertThat(decide(deck).recores()).hasSize(1);
    }

    @Test
    void aLoadFartherAwayOrAFittingWithoutLoadChangesNothing() {
        Deck deck = deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY)
                .with(fitting("mooring bollard", 1760, 300, true, 60))
                .with(fitting("vent cowl", 1500, 300, false, 60));
        assertThat(first(deck).method()).isEqualTo(Method.INJECT);
        assertThat(first(deck).architect()).isFalse();
    }

    @Test
    void wetUnderALoadButBondedIsDriedAfterBeddingAgain() {
        RegionDecision d = first(deck(DECK)
                .region(Condition.WET, PATCH, 0, 0.8)
                .indexInside(105)
                .with(fitting("cleat", 1300, 300, true, 60)));
        assertThat(d.method()).isEqualTo(Method.DRY_OUT);
        assertThat(d.architect()).isTrue();
        assertThat(d.reasons().get(0)).contains("Take it off, seal the core's edge and bed it again");
    }

    @Test
    void aLittleWetAndBondedIsWatchedMoreIsDried() {
        RegionDecision low =
                first(deck(DECK).region(Condition.WET, PATCH, 0, 0.8).indexInside(110));
        assertThat(low.method()).isEqualTo(Method.MONITOR);
        assertThat(low.firstStep()).isNull();
        assertThat(low.reasons().get(0))
                .isEqualTo(
                        "The skin is bonded. The readings stand at 110 on the mean, where 0 is this deck dry and 100 "
                                + "counts as wet; below 120 it is watched.");
        assertThat(low.notOffered())
                .containsEntry(Method.INJECT, "The skin is bonded: there is no empty space to fill.");
        RegionDecision high =
                first(deck(DECK).region(Condition.WET, PATCH, 0, 0.8).indexInside(180));
        assertThat(high.method()).isEqualTo(Method.DRY_OUT);
        assertThat(high.reasons().get(0)).doesNotContain("%");
    }

    @Test
    void looseOverCoreProvenDryIsInjected() {
        RegionDecision probe = first(deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY));
        assertThat(probe.method()).isEqualTo(Method.INJECT);
        assertThat(probe.reasons().get(0))
                .isEqualTo("The core is proven dry: a pilot hole at 1.20 m aft, 0.30 m to starboard found dry core.");
        RegionDecision plug = first(deck(DECK)
                .region(Condition.DELAMINATED, PATCH, 0, 0.1)
                .plug(1200, 300, 15)
                .plug(1450, 300, 12));
        assertThat(plug.method()).isEqualTo(Method.INJECT);
        assertThat(plug.reasons().get(0)).contains("held 15 % water, 15 % or less counts as dry");
    }

    @Test
    void aRelativeMeterProvesNothing() {
        Deck deck = deck(DECK).region(Condition.VOID, PATCH, 4, 0.01);
        RegionDecision d = first(deck);
        assertThat(d.method()).isEqualTo(Method.MONITOR);
        assertThat(d.firstStep())
                .matches(
                        "Drill a pilot hole at \\d\\.\\d\\d m aft, \\d\\.\\d\\d m to starboard and look at the core: dry core opens "
                                + "the way to injection, wet core means cutting out\\.");
        assertThat(d.notOffered().get(Method.INJECT))
                .isEqualTo(
                        "The core is not proven dry: no pilot hole or core sample inside says so, and a moisture meter "
                                + "proves nothing.");
        assertThat(decide(deck).injections()).isEmpty();
        assertThat(decide(deck).findings())
                .anyMatch(f -> f.subject() == Subject.DRY_CORE && f.about().id().equals("R1"));
    }

    @Test
    void missingCoreWithoutANoteOfItsWaterProvesNothing() {
        RegionDecision d =
                first(deck(DECK).region(Condition.VOID, PATCH, 4, 0.1).probe(1200, 300, 4, CoreState.NONE));
        assertThat(d.method()).isEqualTo(Method.MONITOR);
        assertThat(d.firstStep()).isNotNull();
    }

    /** One hole, two regions: what it brought up reads alike in both. */
    @Test
    void aHoleIsToldInTheSameWordsBesideItsRegion() {
        Decision d = decide(deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .region(Condition.DELAMINATED, BESIDE, 0, 0.1)
                .probe(1400, 300, 4, CoreState.ROTTED));
        String found = "A pilot hole at 1.40 m aft, 0.30 m to starboard brought up rotted core";
        assertThat(d.on("R1").reasons().get(0)).startsWith(found + ".");
        assertThat(d.on("R2").reasons().get(0)).contains(found + ", in R1 that opens into this one.");
    }

    @Test
    void dampCoreSpeaksAgainstDryCore() {
        RegionDecision d = first(deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1500, 300, 4, CoreState.DAMP));
        assertThat(d.method()).isEqualTo(Method.MONITOR);
        assertThat(d.reasons().get(0)).contains("A pilot hole at 1.50 m aft, 0.30 m to starboard found damp core.");
    }

    @Test
    void proofReachesThroughATouchingLooseRegionAndNoFarther() {
        Deck deck = deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .region(Condition.DELAMINATED, rectangle(1600, 100, 1720, 500), 0, 0.1)
                .region(Condition.DELAMINATED, rectangle(2500, 100, 2900, 500), 0, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY);
        Decision d = decide(deck);
        assertThat(d.on("R1").method()).isEqualTo(Method.INJECT);
        assertThat(d.on("R2").method()).isEqualTo(Method.INJECT);
        assertThat(d.on("R2").reasons().get(0)).endsWith("found dry core, in R1 that opens into this one.");
        assertThat(d.on("R3").method()).isEqualTo(Method.MONITOR);
    }

    @Test
    void aProofSpeaksNoFartherThanItReaches() {
        Polygon strip = rectangle(1000, 100, 2000, 400); // 1 m long, smaller than what is injected blind
        Deck one = deck(DECK).region(Condition.VOID, strip, 4, 0.1).probe(1150, 250, 4, CoreState.DRY);
        RegionDecision d = first(one);

        assertThat(d.method()).isEqualTo(Method.MONITOR);
        assertThat(d.reasons())
                .anyMatch(r -> r.startsWith("The core is proven dry: a pilot hole at 1.15 m aft"))
                .anyMatch(r -> r.startsWith("That speaks for 300 mm around, and 0.1"));
        Spot pilot = requireNonNull(d.pilot());
        Face face = one.survey().faces().get(0);
        assertThat(pilot.coordinate().distance(new Coordinate(1150, 250))).isGreaterThan(Evidence.PROOF_REACH_MM);
        assertThat(d.firstStep()).startsWith("Drill a further pilot hole at " + Words.place(face, pilot));

        Deck three = one.probe(1500, 250, 4, CoreState.DRY).probe(1850, 250, 4, CoreState.DRY);
        assertThat(first(three).method()).isEqualTo(Method.INJECT);
    }

    @Test
    void aLargePatchIsOpenedAlthoughItIsDry() {
        RegionDecision d = first(deck(DECK)
                .region(Condition.VOID, rectangle(1000, -500, 1900, 0), 4, 0.1)
                .probe(1200, -300, 4, CoreState.DRY));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.reasons())
                .containsExactly(
                        "At 0.45 m² it is larger than the 0.40 m² that are injected blind: it is opened, so that "
                                + "the bond can be seen.");
    }

    @Test
    void whatCannotBePlannedIsOpenedWithThePlannersReason() {
        RegionDecision d = first(deck(DECK)
                .with(new Laminate("deck", 3, 2, 2, "e-glass-polyester", "pvc-80", true))
                .region(Condition.DELAMINATED, PATCH, 0, 0.1)
                .probe(1200, 300, 0, CoreState.DRY));
        assertThat(d.method()).isEqualTo(Method.RECORE);
        assertThat(d.notOffered().get(Method.INJECT)).startsWith("The core is only 2 mm thick");
    }

    @Test
    void touchingRegionsAreNotMixedWhileTheNeighbourRises() {
        Deck deck = deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .region(Condition.VOID, BESIDE, 4, 0.1)
                .region(Condition.VOID, rectangle(2500, 100, 2900, 500), 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY)
                .probe(1800, 300, 4, CoreState.DRY)
                .probe(2700, 300, 4, CoreState.DRY);
        Survey survey = deck.survey();
        List<InjectionPlan> plans = decide(deck).injections();
        assertThat(plans).hasSize(3);
        Resin foam = survey.settings().resin(plans.get(0).resin());
        double factor = foam.timeFactor(survey.settings().climate().temperatureC());
        double lastMix = last(plans.get(0)).mixAtS();
        assertThat(plans.get(1).batches().get(0).mixAtS()).isCloseTo(lastMix + factor * foam.riseEndS(), within(1e-6));
        assertThat(plans.get(2).batches().get(0).mixAtS())
                .isCloseTo(last(plans.get(1)).workUntilS(), within(1e-6));
        assertThat(plans.stream()
                        .map(p -> p.cautions().stream().anyMatch(c -> c.contains("opens into")))
                        .toList())
                .as("the neighbour's mix may be there already")
                .containsExactly(false, true, false);
        List<Integer> numbers = plans.stream()
                .flatMap(p -> p.batches().stream())
                .map(Batch::number)
                .toList();
        assertThat(numbers).isSorted().doesNotHaveDuplicates().startsWith(1);
    }

    @Test
    void noDamageLeavesOneChoice() {
        Decision d = decide(deck(DECK));
        assertThat(d.regions()).isEmpty();
        assertThat(d.buying()).isEmpty();
        assertThat(d.choices()).singleElement().satisfies(c -> {
            assertThat(c.title()).isEqualTo("Leave it, watch it");
            assertThat(c.advised()).isTrue();
            assertThat(c.toKnow())
                    .as("nothing was read of this deck")
                    .doesNotContain("No damage")
                    .contains("was read to say anything of it.");
        });
    }

    @Test
    void choicesRunFromLeastToMostWithOneAdvised() {
        Decision d = decide(several());
        assertThat(d.choices().stream().map(Choice::title).toList())
                .containsExactly(
                        "Leave it, watch it",
                        "Stop the leaks, dry, watch",
                        "Repair what needs it",
                        "Open and renew all");
        assertThat(d.choices()).filteredOn(Choice::advised).singleElement().satisfies(c -> {
            assertThat(c.title()).isEqualTo("Repair what needs it");
            assertThat(c.regions()).isEqualTo("inject R1; cut out R2; dry R3; prove the core of R4");
        });
        for (Choice c : d.choices()) {
            assertThat(c.costLow()).isPositive().isLessThanOrEqualTo(c.costHigh());
            assertThat(c.daysLow()).isPositive().isLessThanOrEqualTo(c.daysHigh());
            assertThat(c.toKnow()).endsWith(".").doesNotContain("!");
        }
    }

    /** By hand: 75 an hour, cut 0.24 m2 and its margin, 10 to 25 h a square metre, 0.5 to 2 h set-up, 180 a m2, one or two visits of 4 h. */
    @Test
    void costOfOpeningFollowsTheRates() {
        Deck deck = deck(DECK).region(Condition.WET_DELAMINATED, PATCH, 0, 0.998);
        double m2 = decide(deck).recores().get(0).cut().getArea() / 1e6;
        assertThat(m2).isBetween(0.24, 0.65 * 0.45);
        List<Choice> choices = decide(deck).choices();
        assertThat(choices.stream().map(Choice::regions).toList())
                .containsExactly("watch R1", "cut out R1"); // drying is refused, so that it is no choice
        Choice all = choices.get(choices.size() - 1);
        assertThat(all.costLow()).isCloseTo(75 * (4 + 0.5 + 10 * m2) + 180 * m2, within(1e-6));
        assertThat(all.costHigh()).isCloseTo(75 * (8 + 2 + 25 * m2) + 180 * m2, within(1e-6));
        double cure = 2 * Math.sqrt(2); // two days at 25 degrees, five degrees colder
        assertThat(all.daysHigh()).isCloseTo((8 + 2 + 25 * m2) / 7 + cure, within(1e-9));
    }

    @Test
    void buyingListAddsUpAndGivesItsBasis() {
        Decision d = decide(several());
        InjectionPlan plan = d.injections().get(0);
        double heldA = plan.outlook().heldLikelyG() / 1.35; // 100 to 35 by weight
        assertThat(item(d, "epoxy-foam-240 resin").plan()).isCloseTo(plan.resinG() + heldA, within(1e-9));
        assertThat(item(d, "epoxy-foam-240 resin").buy()
                        + item(d, "epoxy-foam-240 hardener").buy())
                .isGreaterThanOrEqualTo(plan.buyG());
        double cut = d.recores().get(0).cut().getArea() / 1e6;
        assertThat(item(d, "core balsa-150, 12.5 mm").plan()).isCloseTo(cut, within(1e-9));
        assertThat(item(d, "core balsa-150, 12.5 mm").buy()).isGreaterThanOrEqualTo(1.15 * cut);
        int held = HeldCups.of(d.injections(), Settings.defaults()).size(); // of the most likely space
        assertThat(item(d, "mixing pots").plan()).isEqualTo(plan.batches().size() + held);
        assertThat(item(d, "gloves").buy()).isEqualTo(2 * item(d, "gloves").plan());
        for (BuyingItem i : d.buying()) {
            assertThat(i.buy()).as(i.item()).isGreaterThanOrEqualTo(i.plan());
            assertThat(i.basis()).isNotBlank();
        }
    }

    @Test
    void anUnmeasuredLaminateIsFound() {
        Deck deck = deck(DECK)
                .with(new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "balsa-150", false))
                .region(Condition.VOID, PATCH, 4, 0.1);
        assertThat(decide(deck).findings()).anySatisfy(f -> assertThat(f.message())
                .isEqualTo("The thicknesses of laminate deck were not measured on this boat."));
        RepairOptions options = RepairPlanner.plan(deck.survey(), deck.damage(), Assessments.PLANS);
        assertThat(options.injections().get(0).cautions().get(0)).startsWith("Drill a pilot hole by hand first");
    }

    @Test
    void aMixThatCarriesNoLoadIsRefused() {
        Settings s = Settings.defaults();
        Resin filler =
                new Resin("filler", 0.3, 1160, 4, 1.1, 3, 360, 360, 1320, 1500, 2940, 25, false, 0, 0, 0, 0, "test");
        Deck deck = deck(DECK)
                .with(new Settings(
                        s.thresholds(), s.drilling(), List.of(filler), s.costs(), s.crew(), s.climate(), s.numerics()))
                .region(Condition.VOID, PATCH, 4, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY);
        assertThat(first(deck).method()).isEqualTo(Method.RECORE);
        assertThat(first(deck).notOffered().get(Method.INJECT))
                .isEqualTo(
                        "No structural mix is listed (filler may carry no load): a core has to carry shear, so nothing "
                                + "else is put into it.");
    }

    @Test
    void everyRegionHasAReasonAndEveryMethodAPlace() {
        Decision d = decide(several());
        for (RegionDecision r : d.regions()) {
            assertThat(r.reasons()).isNotEmpty();
            assertThat(r.notOffered()).doesNotContainKey(r.method());
            r.notOffered().values().forEach(why -> assertThat(why).endsWith("."));
        }
        assertThat(d.injections().stream().flatMap(p -> p.holes().stream()).map(Hole::region))
                .containsOnly("R1");
        assertThat(decide(several())).isEqualTo(d);
    }

    private static Deck several() {
        return deck(DECK)
                .region(Condition.VOID, PATCH, 4, 0.1)
                .region(Condition.WET_DELAMINATED, rectangle(2500, 100, 2900, 500), 0, 0.9)
                .region(Condition.WET, rectangle(2500, -900, 2900, -500), 0, 0.9)
                .region(Condition.DELAMINATED, rectangle(500, -900, 800, -500), 0, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1450, 300, 4, CoreState.DRY);
    }

    private static BuyingItem item(Decision d, String name) {
        return d.buying().stream()
                .filter(i -> i.item().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Batch last(InjectionPlan plan) {
        return plan.batches().get(plan.batches().size() - 1);
    }

    private static RegionDecision first(Deck deck) {
        return decide(deck).on("R1");
    }

    private static Decision decide(Deck deck) {
        Survey survey = deck.survey();
        DamageMap damage = deck.damage();
        return Assessments.decide(survey, damage);
    }
}
