package corewright.repair.work;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.RepairPlanner;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import corewright.repair.plan.SecondShot;
import corewright.reuse.Memory;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;

/**
 * A square void of 150 x 150 mm and 6 mm, tapped after cure on a grid of 3 x 3 every 50 mm, which cuts it into nine squares
 * of 2500 mm2: every figure here was worked out by hand.
 */
class CuredFillTest {
    /** Volumes and grams follow from areas whose corners stand on a grid of a thousandth of a millimetre. */
    private static final double ROUNDING = 1e-6;

    private final Deck deck =
            deck(rectangle(0, -500, 2500, 900)).region(Condition.VOID, rectangle(1000, 0, 1150, 150), 6, 0.1);
    private final List<InjectionPlan> plans =
            RepairPlanner.plan(deck.survey(), deck.damage(), new Memory()).injections();

    private static Tap tap(String id, double x, double y, Sound sound) {
        return new Tap(new Origin("cured.csv", 2), id, new Spot(Deck.FACE, x, y), sound, null, Side.OUTER);
    }

    /** Nine calls, row by row from the port side forward; ids C1 to C9. s sound, d dull, h hollow. */
    private static List<Tap> grid(String calls) {
        List<Tap> taps = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            Sound sound = calls.charAt(i) == 's' ? Sound.SOUND : calls.charAt(i) == 'd' ? Sound.DULL : Sound.HOLLOW;
            taps.add(tap("C" + (i + 1), 1025 + 50 * (i % 3), 25 + 50 * (i / 3), sound));
        }
        return taps;
    }

    private Survey with(List<Tap> taps) {
        return Part.CURED_TAPS.with(deck.survey(), taps);
    }

    private CuredFill fill(String calls) {
        return fill(with(grid(calls)));
    }

    private CuredFill fill(Survey survey) {
        List<CuredFill> fills = WorkDone.of(survey, deck.damage(), plans).cured();
        assertThat(fills).hasSize(1);
        return fills.get(0);
    }

    private List<Finding> findings(List<Tap> taps) {
        return WorkDone.of(with(taps), deck.damage(), plans).findings();
    }

    @Test
    void nothingIsSaidWithoutTapsAfterCure() {
        assertThat(WorkDone.of(deck.survey(), deck.damage(), plans).cured()).isEmpty();
        assertThat(WorkDone.of(deck.survey(), deck.damage(), plans).findings()).isEmpty();
    }

    @Test
    void aFillThatSoundsAllOverIsProvenAsFarAsItWasTapped() {
        CuredFill fill = fill("sssssssss");

        assertThat(fill.tappedShare()).isCloseTo(1, within(ROUNDING));
        assertThat(fill.shots()).isEmpty();
        assertThat(fill.hollowMm2()).isZero();
        assertThat(findings(grid("sssssssss"))).isEmpty();
    }

    /** 2500 mm2 x 0.3 mm = 0.75 ml, x 1.1 g/ml / 0.85 = 0.971 g; x 6 mm = 15 ml, 19.41 g. */
    @Test
    void aHollowMiddleIsOneSpacingSquare() {
        CuredFill fill = fill("sssshssss");

        assertThat(fill.shots()).hasSize(1);
        SecondShot shot = fill.shots().get(0);
        assertThat(shot.area().equalsTopo(rectangle(1050, 50, 1100, 100))).isTrue();
        assertThat(shot.id()).isEqualTo("S1");
        assertThat(shot.region()).isEqualTo("R1");
        assertThat(shot.taps()).containsExactly("C5");
        assertThat(shot.lowMm3()).isCloseTo(750, within(ROUNDING));
        assertThat(shot.highMm3()).isCloseTo(15_000, within(ROUNDING));
        assertThat(shot.resin()).isEqualTo("epoxy-thin");
        assertThat(shot.lowG()).isCloseTo(0.75 * 1.1 / 0.85, within(ROUNDING));
        assertThat(shot.highG()).isCloseTo(15 * 1.1 / 0.85, within(ROUNDING));
        assertThat(fill.hollowMm2()).isCloseTo(2500, within(ROUNDING));
    }

    /** The hollow square is (1050 50, 1100 100), its middle (1075 75). */
    @Test
    void thePlannedHoleNearestToTheMiddleIsOpenedAgain() {
        Hole far = hole("R1-1", Hole.Kind.INJECTION, 1010, 10);
        Hole inside = hole("R1-2", Hole.Kind.INJECTION, 1090, 60);
        Hole beside = hole("R1-V1", Hole.Kind.VENT, 1070, 124); // 24 mm above the square
        Hole beyond = hole("R1-V2", Hole.Kind.VENT, 1070, 126);

        SecondShot shot = middle(List.of(far, beyond, beside, inside));

        assertThat(shot.hole()).isEqualTo("R1-2");
        assertThat(shot.spot()).isEqualTo(inside.spot());
        assertThat(shot.depthStopMm()).isEqualTo(7.5);
        assertThat(shot.advice())
                .isEqualTo(
                        "Drill R1-2 open again, never past 7.5 mm, and fill with epoxy-thin: 1.0 g if only the skin is"
                                + " loose, 19 g if nothing arrived. If the bit drops into empty space, mix epoxy-foam-240 as"
                                + " planned for R1 instead.");
        assertThat(middle(List.of(far, beyond, beside)).hole()).isEqualTo("R1-V1");
        assertThat(middle(List.of(far, beyond)).hole()).isEmpty();
    }

    private static Hole hole(String id, Hole.Kind kind, double x, double y) {
        return new Hole(id, "R1", kind, 1, new Spot(Deck.FACE, x, y), 6.4, 7.5, 0, 0, null, Hole.Range.NONE, 0);
    }

    /** The second shot of a hollow middle by a plan with these holes. */
    private SecondShot middle(List<Hole> holes) {
        List<InjectionPlan> plan = List.of(with(plans.get(0), plans.get(0).parts(), holes));
        return WorkDone.of(with(grid("sssshssss")), deck.damage(), plan)
                .cured()
                .get(0)
                .shots()
                .get(0);
    }

    /** Of the cells inside the middle square those nearest to its centre, whole millimetres. */
    @Test
    void withoutAHoleNearByANewOneIsDrilledWellInside() {
        SecondShot shot = middle(List.of());

        assertThat(shot.hole()).isEmpty();
        Spot spot = Objects.requireNonNull(shot.spot());
        assertThat(Math.hypot(spot.xMm() - 1075, spot.yMm() - 75))
                .isLessThan(Cavity.cellFor(rectangle(0, 0, 150, 150), 1e9));
        assertThat(shot.depthStopMm()).isEqualTo(3 + 6 - 1.5);
    }

    @Test
    void whereNoHoleMayBeDrilledItSaysSo() {
        deck.with(fitting("cleat", 1075, 75, false, 80));
        SecondShot shot = middle(List.of());

        assertThat(shot.spot()).isNull();
        assertThat(shot.advice()).startsWith("No hole may be drilled here");
    }

    /**
     * The space ends at y = 150: a tap at 175 is past its edge. Its ground is a square of 50 x 50 mm, one place with that of C8 below it;
     * half of them goes on at the depth beside the edge, 6 mm. Sound taps stand round it.
     */
    @Test
    void whatIsHollowJustPastTheEdgeIsFilledToo() {
        List<Tap> taps = grid("sssssssh" + "s");
        List<Tap> past = List.of(
                tap("P1", 1025, 175, Sound.SOUND),
                tap("P2", 1075, 175, Sound.HOLLOW),
                tap("P3", 1125, 175, Sound.SOUND),
                tap("P4", 1075, 225, Sound.SOUND),
                tap("P5", 1075, 240, Sound.HOLLOW)); // too far to tell of this space
        taps.addAll(past);
        CuredFill fill = fill(with(taps));

        assertThat(fill.shots()).hasSize(1);
        SecondShot shot = fill.shots().get(0);
        assertThat(shot.taps()).containsExactly("C8", "P2");
        assertThat(shot.areaMm2()).isCloseTo(5000, within(60.0)); // the disc of a tap cuts corners
        assertThat(shot.highMm3()).isCloseTo(6 * shot.areaMm2(), within(ROUNDING));
        assertThat(fill.tappedShare()).isCloseTo(1, within(ROUNDING)); // of the space alone
        assertThat(findings(taps))
                .extracting(Finding::message)
                .contains("Tapped after cure over nothing that the plan fills: P5.");
        assertThat(findings(List.of(past.get(1))))
                .extracting(Finding::message)
                .anyMatch(m -> m.contains("beyond the mapped edge of R1"));
    }

    @Test
    void hollowNeighboursAreOnePlaceAndCornersAreTwo() {
        List<SecondShot> neighbours = fill("sssshhsss").shots();
        List<SecondShot> corners = fill("ssssh" + "sssh").shots();

        assertThat(neighbours).hasSize(1);
        assertThat(neighbours.get(0).area().equalsTopo(rectangle(1050, 50, 1150, 100)))
                .isTrue();
        assertThat(neighbours.get(0).taps()).containsExactly("C5", "C6");
        assertThat(corners).extracting(SecondShot::id).containsExactly("S1", "S2");
        assertThat(corners).allSatisfy(s -> assertThat(s.areaMm2()).isCloseTo(2500, within(ROUNDING)));
    }

    /** The edge between two grounds is cut off by two discs, at places that rounding moves apart. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.4, 0.5, 0.7, 0.8, 1.0, 1.1, 1.3, 1.4, 1.6, 1.7, 1.9, 2.0, 2.2, 2.4, 2.7, 3.0})
    void neighboursAreOnePlaceWhateverTheirDirection(double radians) {
        double x = 23 * Math.cos(radians);
        double y = 23 * Math.sin(radians);
        Tap other = tap("C2", 1075 + x, 75 + y, Sound.HOLLOW);

        assertThat(fill(with(List.of(tap("C1", 1075 - x, 75 - y, Sound.HOLLOW), other)))
                        .shots())
                .hasSize(1);
        CuredFill dull = fill(with(List.of(tap("C1", 1075 - x, 75 - y, Sound.DULL), other)));
        assertThat(dull.shots()).extracting(SecondShot::taps).containsExactly(List.of("C1", "C2"));
    }

    @Test
    void aDullPlaceCountsOnlyBesideAHollowOne() {
        CuredFill beside = fill("sssshdsss");
        CuredFill alone = fill("dssssssss");
        CuredFill cornerwise = fill("dssshssss");

        assertThat(beside.shots().get(0).taps()).containsExactly("C5", "C6");
        assertThat(beside.hollowMm2()).isCloseTo(5000, within(ROUNDING));
        assertThat(alone.shots()).isEmpty();
        assertThat(alone.places().get(0).doubtful()).isTrue();
        assertThat(cornerwise.shots().get(0).taps()).containsExactly("C5");
        assertThat(findings(grid("dssssssss")))
                .extracting(f -> f.about().id() + " " + f.message())
                .containsExactly("C1 Dull after cure, with nothing hollow beside it.");
    }

    /** Stiffness goes with 1/time squared: 300 us is sound, 300 sqrt 2 half of it and dull, 600 a quarter and hollow. */
    @Test
    void contactTimesAreJudgedAsInTheDamageStage() {
        List<Tap> taps = new ArrayList<>();
        for (Tap t : grid("sssssssss")) {
            double us = t.id().equals("C5") ? 600 : t.id().equals("C6") ? 300 * Math.sqrt(2) : 300;
            taps.add(new Tap(t.origin(), t.id(), t.spot(), null, us, t.side()));
        }

        CuredFill fill = fill(with(taps));

        assertThat(fill.places().get(4).call()).isEqualTo(Sound.HOLLOW);
        assertThat(fill.places().get(5).call()).isEqualTo(Sound.DULL);
        assertThat(fill.shots().get(0).taps()).containsExactly("C5", "C6");
    }

    /** Four discs of 50 mm of 96 corners lie within the four corner quarters: a tap alone reaches 50 mm. */
    @Test
    void aTapSpeaksNoFartherThanTheTapsStandApart() {
        CuredFill fill = fill(with(List.of(tap("C1", 1075, 75, Sound.HOLLOW))));

        double disc = 0.5 * 96 * Math.sin(2 * Math.PI / 96) * 50 * 50;
        assertThat(fill.hollowMm2()).isCloseTo(disc, within(0.5)); // 96 corners rounded to a thousandth
        assertThat(fill.tappedShare()).isCloseTo(disc / 22_500, within(1e-4));
        assertThat(findings(List.of(tap("C1", 1075, 75, Sound.HOLLOW))))
                .extracting(Finding::message)
                .containsExactly(
                        "S1: still hollow after cure over 0.008 m2 of R1 (C1).",
                        "The fill of R1 was tapped after cure over 35 % of its area.");
    }

    @Test
    void ofSeveralTapsAtAPlaceTheLastCounts() {
        List<Tap> taps = grid("sssshssss");
        taps.add(tap("again", 1076, 74, Sound.SOUND));

        assertThat(fill(with(taps)).shots()).isEmpty();
    }

    @Test
    void tapsThatSayNothingOfAFillAreNamedTogether() {
        List<Tap> taps = grid("sssssssss");
        taps.add(tap("far", 200, 200, Sound.HOLLOW));
        taps.add(tap("further", 300, 200, Sound.DULL));
        taps.add(new Tap(
                new Origin("cured.csv", 9), "below", new Spot(Deck.FACE, 1076, 76), Sound.HOLLOW, null, Side.INNER));

        assertThat(findings(taps))
                .extracting(Finding::message)
                .containsExactly(
                        "Tapped after cure over nothing that the plan fills: far, further.",
                        "Tapped after cure on the inner skin: below.");
    }

    @Test
    void aTapThatAPersonSetAsideSaysNothing() {
        Tap hollow = grid("sssshssss").get(4);
        Survey survey = Part.DOUBTS.with(
                with(grid("sssshssss")), List.of(ReadingOverride.of(hollow, Trust.SET_ASIDE, "hammer slipped")));

        assertThat(fill(survey).shots()).isEmpty();
        assertThat(fill(survey).places()).hasSize(8);
    }

    /** A void and its rim filled as one: the border between the regions cuts no cell. */
    @Test
    void aSpaceOfSeveralRegionsIsTappedAsOne() {
        Polygon whole = rectangle(1000, 0, 1150, 150);
        Deck two = deck(rectangle(0, -500, 2500, 900))
                .region(Condition.VOID, rectangle(1000, 0, 1075, 150), 6, 0.1)
                .region(Condition.DELAMINATED, rectangle(1075, 0, 1150, 150), 0, 0.1);
        InjectionPlan lead = Assessments.alone(two.survey(), two.damage(), new Memory())
                .injections()
                .get(0);
        List<InjectionPlan.Part> parts =
                List.of(new InjectionPlan.Part("R1", 1, 11_250, 100), new InjectionPlan.Part("R2", 1, 0, 100));
        InjectionPlan joint = with(lead, parts, lead.holes());

        CuredFill fill = WorkDone.of(
                        Part.CURED_TAPS.with(two.survey(), grid("sssshssss")), two.damage(), List.of(joint))
                .cured()
                .get(0);

        assertThat(fill.space().equalsTopo(whole)).isTrue();
        assertThat(fill.shots().get(0).area().equalsTopo(rectangle(1050, 50, 1100, 100)))
                .isTrue();
    }

    private static InjectionPlan with(InjectionPlan p, List<InjectionPlan.Part> parts, List<Hole> holes) {
        return new InjectionPlan(
                p.region(),
                parts,
                p.resin(),
                p.cavityMm3(),
                p.reachMm(),
                p.reachGovernedBy(),
                holes,
                p.coveredFraction(),
                p.batches(),
                p.resinG(),
                p.hardenerG(),
                p.buyG(),
                p.arithmetic(),
                p.cautions(),
                p.fill(),
                Outlook.NONE);
    }

    @Test
    void theSameTapsGiveTheSameAnswerInAnyOrder() {
        List<Tap> reversed = new ArrayList<>(grid("hsshhsshh"));
        Collections.reverse(reversed);
        List<SecondShot> there = fill("hsshhsshh").shots();
        List<SecondShot> back = fill(with(reversed)).shots();

        assertThat(there).hasSameSizeAs(back);
        for (int i = 0; i < there.size(); i++) {
            assertThat(back.get(i).area().equalsTopo(there.get(i).area()))
                    .as("place %d", i)
                    .isTrue();
            assertThat(back.get(i).hole()).isEqualTo(there.get(i).hole());
        }
        assertThat(fill("hsshhsshh").shots().toString()).isEqualTo(there.toString());
    }
}
