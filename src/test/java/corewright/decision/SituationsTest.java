package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Finding;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.MethodOverride;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Climate;
import corewright.survey.settings.Thresholds;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;

/** What a careful technician chooses, situation by situation, and by which rule. Common practice throughout. */
class SituationsTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    private static final Polygon PATCH = rectangle(1000, 100, 1600, 500);
    private static final Polygon BESIDE = rectangle(1600, 100, 2000, 500);
    private static final Polygon APART = rectangle(1700, 100, 2100, 500);

    private static Deck patch(Condition condition, double pWet) {
        return deck(DECK).region(condition, PATCH, condition == Condition.VOID ? 4 : 0, pWet);
    }

    private static Deck proven(Condition condition) {
        double depth = condition == Condition.VOID ? 4 : 0;
        return patch(condition, 0.1).probe(1200, 300, depth, CoreState.DRY).probe(1450, 300, depth, CoreState.DRY);
    }

    private static Settings with(Thresholds t, Climate climate) {
        Settings s = Settings.defaults();
        return new Settings(t, s.drilling(), s.resins(), s.costs(), s.crew(), climate, s.numerics());
    }

    private static Settings air(double degrees, double humidity) {
        return with(Thresholds.DEFAULT, new Climate(degrees, humidity));
    }

    private static Settings thresholds(double dry, double wet, double largest, double monitor) {
        Thresholds t = Thresholds.DEFAULT;
        return with(
                new Thresholds(
                        t.likely(),
                        t.possible(),
                        t.undecidedLow(),
                        t.undecidedHigh(),
                        t.voidDepthMm(),
                        t.smallestRegionMm2(),
                        t.metalInfluenceMm(),
                        dry,
                        wet,
                        largest,
                        monitor,
                        t.looseGapMm(),
                        t.recoreMarginMm(),
                        t.scarfRatio(),
                        t.cutWet()),
                Settings.defaults().climate());
    }

    private static Arguments row(String name, Deck deck, String region, Method method, String rule) {
        return Arguments.of(name, deck, region, method, rule);
    }

    static Stream<Arguments> bonded() {
        Deck wet = patch(Condition.WET, 0.8);
        return Stream.of(
                row("raised, crisp", wet.indexInside(105), "R1", Method.MONITOR, "wet but little"),
                row(
                        "just under the limit",
                        patch(Condition.WET, 0.8).indexInside(119.9),
                        "R1",
                        Method.MONITOR,
                        "wet but little"),
                row("at the limit", patch(Condition.WET, 0.8).indexInside(120), "R1", Method.DRY_OUT, "wet and bonded"),
                row(
                        "well wet, crisp",
                        patch(Condition.WET, 0.9).indexInside(180),
                        "R1",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row("damp air", patch(Condition.WET, 0.9).with(air(20, 85)), "R1", Method.RECORE, "cannot dry in time"),
                row(
                        "cold and damp",
                        patch(Condition.WET, 0.9).with(air(2, 75)),
                        "R1",
                        Method.RECORE,
                        "cannot dry in time"),
                row(
                        "little, damp air",
                        patch(Condition.WET, 0.8).indexInside(105).with(air(20, 85)),
                        "R1",
                        Method.MONITOR,
                        "no time to dry"),
                row(
                        "warm, dry air",
                        patch(Condition.WET, 0.9).with(air(30, 45)),
                        "R1",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row(
                        "wet foam in damp air, no time told",
                        patch(Condition.WET, 0.9).with(foam()).with(air(20, 85)),
                        "R1",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row(
                        "wet under a cleat",
                        patch(Condition.WET, 0.8).with(fitting("cleat", 1300, 300, true, 60)),
                        "R1",
                        Method.DRY_OUT,
                        "load on bonded core"),
                row(
                        "a little wet under a cleat",
                        patch(Condition.WET, 0.8).indexInside(105).with(fitting("cleat", 1300, 300, true, 60)),
                        "R1",
                        Method.DRY_OUT,
                        "load on bonded core"),
                row(
                        "wet under a vent cowl",
                        patch(Condition.WET, 0.8).indexInside(105).with(fitting("vent cowl", 1300, 300, false, 60)),
                        "R1",
                        Method.MONITOR,
                        "wet but little"),
                row(
                        "wet core came up",
                        patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.WET),
                        "R1",
                        Method.RECORE,
                        "wet core found"),
                row(
                        "rot came up",
                        patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.ROTTED),
                        "R1",
                        Method.RECORE,
                        "rot"),
                row(
                        "sample of 22 %",
                        patch(Condition.WET, 0.8).plug(1200, 300, 22), "R1", Method.RECORE, "wet core found"),
                row(
                        "sample of 17 %",
                        patch(Condition.WET, 0.8).plug(1200, 300, 17), "R1", Method.DRY_OUT, "wet and bonded"),
                row(
                        "damp core came up",
                        patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.DAMP),
                        "R1",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row(
                        "another limit",
                        patch(Condition.WET, 0.8).indexInside(150).with(thresholds(15, 20, 400_000, 160)),
                        "R1",
                        Method.MONITOR,
                        "wet but little"),
                row(
                        "ring round rot",
                        patch(Condition.WET_DELAMINATED, 0.9)
                                .region(Condition.WET, BESIDE, 0, 0.9)
                                .probe(1300, 300, 0, CoreState.ROTTED),
                        "R2",
                        Method.RECORE,
                        "wet beside a cut"),
                row(
                        "little, round rot",
                        patch(Condition.WET_DELAMINATED, 0.9)
                                .region(Condition.WET, BESIDE, 0, 0.9)
                                .indexInside(105),
                        "R2",
                        Method.RECORE,
                        "wet beside a cut"),
                row(
                        "apart from rot",
                        patch(Condition.WET_DELAMINATED, 0.9)
                                .region(Condition.WET, APART, 0, 0.9)
                                .probe(1300, 300, 0, CoreState.ROTTED),
                        "R2",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row(
                        "touching at a corner",
                        patch(Condition.WET_DELAMINATED, 0.9)
                                .region(Condition.WET, rectangle(1600, 500, 2000, 900), 0, 0.9),
                        "R2",
                        Method.DRY_OUT,
                        "wet and bonded"),
                row(
                        "two steps from rot",
                        patch(Condition.WET_DELAMINATED, 0.9)
                                .region(Condition.WET, BESIDE, 0, 0.9)
                                .region(Condition.WET, rectangle(2000, 100, 2300, 500), 0, 0.9),
                        "R3",
                        Method.RECORE,
                        "wet beside a cut"),
                row(
                        "beside a dry void",
                        proven(Condition.VOID).region(Condition.WET, BESIDE, 0, 0.9),
                        "R2",
                        Method.DRY_OUT,
                        "wet and bonded"));
    }

    private static Laminate foam() {
        return new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "pvc-80", true);
    }

    static Stream<Arguments> loose() {
        return Stream.of(
                row("void, dry, small", proven(Condition.VOID), "R1", Method.INJECT, "proven dry"),
                row("loose, dry, small", proven(Condition.DELAMINATED), "R1", Method.INJECT, "proven dry"),
                row(
                        "dry sample",
                        patch(Condition.DELAMINATED, 0.1).plug(1200, 300, 12).plug(1450, 300, 15),
                        "R1",
                        Method.INJECT,
                        "proven dry"),
                row("meter only", patch(Condition.VOID, 0.01), "R1", Method.MONITOR, "not proven dry"),
                row(
                        "missing core, nothing noted",
                        patch(Condition.VOID, 0.1).probe(1200, 300, 12.5, CoreState.NONE),
                        "R1",
                        Method.MONITOR,
                        "not proven dry"),
                row(
                        "missing core, noted dry",
                        patch(Condition.VOID, 0.1)
                                .probe(1200, 300, CoreState.NONE, CoreMoisture.DRY)
                                .probe(1450, 300, CoreState.NONE, CoreMoisture.DRY),
                        "R1",
                        Method.INJECT,
                        "proven dry"),
                row(
                        "missing core, noted wet",
                        patch(Condition.VOID, 0.1).probe(1200, 300, CoreState.NONE, CoreMoisture.WET),
                        "R1",
                        Method.RECORE,
                        "wet core found"),
                row(
                        "damp hole beside dry ones",
                        proven(Condition.VOID).probe(1500, 400, 4, CoreState.DAMP),
                        "R1",
                        Method.MONITOR,
                        "not dry"),
                row(
                        "wet hole beside dry ones",
                        proven(Condition.VOID).probe(1500, 400, 4, CoreState.WET),
                        "R1",
                        Method.RECORE,
                        "wet core found"),
                row(
                        "rotted hole beside dry ones",
                        proven(Condition.VOID).probe(1500, 400, 4, CoreState.ROTTED),
                        "R1",
                        Method.RECORE,
                        "rot"),
                row(
                        "dry rot",
                        patch(Condition.VOID, 0.1).probe(1300, 300, CoreState.ROTTED, CoreMoisture.DRY),
                        "R1",
                        Method.RECORE,
                        "rot"),
                row("sample of 17 %", proven(Condition.VOID).plug(1300, 300, 17), "R1", Method.MONITOR, "not dry"),
                row(
                        "a stricter gate",
                        patch(Condition.DELAMINATED, 0.1)
                                .plug(1200, 300, 14)
                                .plug(1450, 300, 14)
                                .with(thresholds(12, 20, 400_000, 120)),
                        "R1",
                        Method.MONITOR,
                        "not dry"),
                row(
                        "proof in one end only",
                        deck(DECK)
                                .region(Condition.VOID, rectangle(1000, 100, 2000, 400), 4, 0.1)
                                .probe(1150, 250, 4, CoreState.DRY),
                        "R1",
                        Method.MONITOR,
                        "proven dry in a part"),
                row(
                        "large",
                        deck(DECK)
                                .region(Condition.VOID, rectangle(1000, -500, 1900, 0), 4, 0.1)
                                .probe(1200, -300, 4, CoreState.DRY),
                        "R1",
                        Method.RECORE,
                        "too large to inject blind"),
                row(
                        "large for this yard",
                        proven(Condition.VOID).with(thresholds(15, 20, 100_000, 120)),
                        "R1",
                        Method.RECORE,
                        "too large to inject blind"),
                row(
                        "large, allowed",
                        deck(DECK)
                                .region(Condition.VOID, rectangle(1000, -500, 1900, 0), 4, 0.1)
                                .probe(1150, -250, 4, CoreState.DRY)
                                .probe(1450, -250, 4, CoreState.DRY)
                                .probe(1750, -250, 4, CoreState.DRY)
                                .with(thresholds(15, 20, 500_000, 120)),
                        "R1",
                        Method.INJECT,
                        "proven dry"),
                row(
                        "under a chainplate",
                        proven(Condition.VOID).with(fitting("chainplate", 1300, 300, true, 60)),
                        "R1",
                        Method.RECORE,
                        "load on a loose skin"),
                row(
                        "near a windlass",
                        proven(Condition.VOID).with(fitting("windlass", 1740, 300, true, 60)),
                        "R1",
                        Method.RECORE,
                        "load on a loose skin"),
                row(
                        "away from a windlass",
                        proven(Condition.VOID).with(fitting("windlass", 1760, 300, true, 60)),
                        "R1",
                        Method.INJECT,
                        "proven dry"),
                row(
                        "under a vent cowl",
                        proven(Condition.VOID).with(fitting("vent cowl", 1300, 150, false, 30)),
                        "R1",
                        Method.INJECT,
                        "proven dry"),
                row("wet and loose", patch(Condition.WET_DELAMINATED, 0.9), "R1", Method.RECORE, "wet and loose"),
                row(
                        "wet and loose with a dry hole",
                        patch(Condition.WET_DELAMINATED, 0.9).probe(1300, 300, 0, CoreState.DRY),
                        "R1",
                        Method.RECORE,
                        "wet and loose"),
                row(
                        "void, more probably wet",
                        patch(Condition.VOID, 0.62),
                        "R1",
                        Method.RECORE,
                        "loose and more probably wet"),
                row(
                        "core too thin to drill",
                        proven(Condition.DELAMINATED)
                                .with(new Laminate("deck", 3, 2, 2, "e-glass-polyester", "pvc-80", true)),
                        "R1",
                        Method.RECORE,
                        "cannot be planned"),
                row(
                        "loose beside rot, itself dry",
                        proven(Condition.VOID).region(Condition.WET_DELAMINATED, BESIDE, 0, 0.9),
                        "R1",
                        Method.INJECT,
                        "proven dry"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"bonded", "loose"})
    void aCarefulTechnicianChooses(String name, Deck deck, String region, Method method, String rule) {
        RegionDecision d = Assessments.decide(deck.survey(), deck.damage()).on(region);
        assertThat(d.method()).as(name).isEqualTo(method);
        assertThat(d.rules().stream().map(FiredRule::name)).as(name).contains(rule);
        assertThat(d.reasons()).isNotEmpty().allSatisfy(r -> assertThat(r).endsWith("."));
        assertThat(d.rules()).allSatisfy(r -> {
            assertThat(r.sentence()).endsWith(".");
            assertThat(r.source()).isNotBlank();
            assertThat(r.effect()).isNotNull();
        });
        assertThat(d.notOffered()).doesNotContainKey(d.method());
        stopSigns(deck, d);
    }

    /** Whatever the situation: these are never advised nor offered. */
    private static void stopSigns(Deck deck, RegionDecision d) {
        boolean wetOrRotted = d.rules().stream()
                .anyMatch(r -> List.of("rot", "wet and loose", "loose and more probably wet", "wet core found")
                        .contains(r.name()));
        boolean notProven = d.rules().stream().noneMatch(r -> r.name().equals("proven dry"));
        if (wetOrRotted || notProven || d.architect()) {
            assertThat(d.notOffered()).containsKey(Method.INJECT);
        }
        if (wetOrRotted) {
            assertThat(d.notOffered()).containsKey(Method.DRY_OUT);
        }
    }

    @Test
    void aRegionsOptionsAndTheOwnersChoicesObeyTheSameRules() {
        for (Deck deck : List.of(
                patch(Condition.WET_DELAMINATED, 0.9),
                patch(Condition.WET, 0.9).with(air(20, 85)),
                patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.ROTTED))) {
            Decision d = Assessments.decide(deck.survey(), deck.damage());
            assertThat(d.choices()).noneMatch(c -> c.title().contains("dry"));
            assertThat(d.weighing().options().stream()
                            .filter(o -> o.region().equals("R1") && o.method().equals("dry-out")))
                    .allMatch(o -> !o.offered());
        }
    }

    private static Survey decided(Deck deck, String method, String reason, double x) {
        return decided(deck, method, "", reason, x);
    }

    private static Survey decided(Deck deck, String method, String who, String reason, double x) {
        Survey s = deck.survey();
        Heading h = s.heading();
        return new Survey(
                new Heading(
                        h.name(),
                        h.surveyed(),
                        h.vessel(),
                        h.client(),
                        "E. Castellane",
                        h.weather(),
                        h.daysAshore(),
                        h.notes()),
                s.faces(),
                s.meters(),
                s.laminates(),
                s.materials(),
                s.readings(),
                s.settings(),
                s.log(),
                s.photos(),
                new Judgements(
                        List.of(new MethodOverride(new Spot(Deck.FACE, x, 300), method, who, reason)),
                        List.of(),
                        List.of()),
                s.loads(),
                s.repairPlan());
    }

    @Test
    void whatAPersonDecidesTakesEffectWithWhoAndWhy() {
        Deck deck = proven(Condition.VOID);
        Decision d = Assessments.decide(decided(deck, "recore", "new teak goes on anyway", 1300), deck.damage());
        assertThat(d.on("R1").method()).isEqualTo(Method.RECORE);
        assertThat(d.on("R1").reasons().get(0))
                .isEqualTo(
                        "Decided by hand (E. Castellane): cut it out, for the reason \"new teak goes on anyway\"; the "
                                + "rules advise to inject it.");
        assertThat(d.recores()).hasSize(1);
        assertThat(d.injections()).isEmpty();
        assertThat(d.findings()).noneMatch(f -> f.subject() == Subject.METHOD_BY_HAND);

        Survey byOwner = decided(deck, "recore", "O. Varnholt", "new teak", 1300);
        assertThat(Assessments.decide(byOwner, deck.damage()).on("R1").reasons().get(0))
                .startsWith("Decided by hand (O. Varnholt): cut it out, for the reason \"new teak\"");
    }

    @Test
    void aStopSignIsNeverPassedSilently() {
        Map<Deck, String> cases = Map.of(
                patch(Condition.VOID, 0.1), "inject",
                patch(Condition.WET, 0.8).probe(1200, 300, 0, CoreState.ROTTED), "monitor",
                patch(Condition.WET_DELAMINATED, 0.9), "dry-out");
        cases.forEach((deck, method) -> {
            Decision d = Assessments.decide(decided(deck, method, "", 1300), deck.damage());
            RegionDecision r = d.on("R1");
            assertThat(r.method().word()).isEqualTo(method);
            assertThat(r.reasons().get(0)).contains("no reason given");
            assertThat(r.reasons().get(1)).startsWith("That goes past a stop sign: ");
            assertThat(d.findings())
                    .anyMatch(f -> f.severity() == Finding.Severity.HAZARD && f.subject() == Subject.METHOD_BY_HAND);
        });
    }

    @Test
    void aDecisionWhereNothingIsDamagedIsKeptAndSaid() {
        Deck deck = proven(Condition.VOID);
        Decision d = Assessments.decide(decided(deck, "recore", "", 3000), deck.damage());
        assertThat(d.on("R1").method()).isEqualTo(Method.INJECT);
        assertThat(d.findings()).anyMatch(f -> f.subject() == Subject.JUDGEMENT_OF_NOTHING);
    }

    @Test
    void whatCannotBeInjectedIsNotInjectedByHandEither() {
        Deck deck = patch(Condition.WET, 0.9);
        RegionDecision d = Assessments.decide(decided(deck, "inject", "quick", 1300), deck.damage())
                .on("R1");
        assertThat(d.method()).isEqualTo(Method.DRY_OUT);
        assertThat(d.reasons()).anyMatch(r -> r.endsWith("but no injection could be planned: the rules stand."));
    }
}
