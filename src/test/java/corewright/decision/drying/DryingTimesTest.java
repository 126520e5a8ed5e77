package corewright.decision.drying;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Drying;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Climate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class DryingTimesTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    private static final Polygon PATCH = rectangle(1000, 100, 1600, 500);

    private static Deck wet() {
        return deck(DECK).region(Condition.WET, PATCH, 0, 0.9);
    }

    @Test
    void offWithTheSkinIsDaysHolesAreWeeksEdgesAreYears() {
        List<DryingTime> times = of(wet());
        assertThat(times.stream().map(DryingTime::way).toList()).containsExactly(Way.values());
        assertThat(days(times, Way.SKIN_OFF).p50()).isBetween(2.0, 14.0);
        assertThat(days(times, Way.THROUGH_HOLES).p50()).isBetween(30.0, 150.0);
        assertThat(days(times, Way.CUT_EDGES).p50()).isGreaterThan(700);
        for (DryingTime time : times) {
            Quantiles days = Objects.requireNonNull(time.days());
            assertThat(days.p10()).isLessThan(days.p50());
            assertThat(days.p50()).isLessThan(days.p90());
            assertThat(time.gatePercent()).isEqualTo(15);
            assertThat(time.fromPercent()).as("middle of 25 and 100").isCloseTo(50, within(1e-9));
        }
    }

    /** One draw by hand: no scatter, no resistance to speak of: days = T l2 / D with T of Crank's sheet. */
    @Test
    void withoutScatterItIsCranksSheet() {
        Drying sure = new Drying(50, 15, 15, 100, 100, 10_000, 10_000, 40, 40, 180);
        DryingTime off = of(wet().with(with(sure, new Climate(20, 50)))).get(2);
        double air = EquilibriumMoisture.percent(20, 50) + 1.25; // middle of what wood that dries stays above it
        double time = new Sheet(Double.POSITIVE_INFINITY).timeTo((15 - air) / (40 - air));
        Quantiles days = Objects.requireNonNull(off.days());
        assertThat(days.p50()).isCloseTo(time * 12.5 * 12.5 / 100, within(0.02));
    }

    @Test
    void warmAirIsFasterAndMoistAirNeverGetsThere() {
        double cool = days(of(wet().with(with(Drying.DEFAULT, new Climate(10, 50)))), Way.THROUGH_HOLES)
                .p50();
        double warm = days(of(wet().with(with(Drying.DEFAULT, new Climate(35, 50)))), Way.THROUGH_HOLES)
                .p50();
        assertThat(cool / warm)
                .as("35 kJ/mol over 25 degrees is 3.3, equilibrium less")
                .isBetween(2.0, 4.0);

        DryingTime never =
                of(wet().with(with(Drying.DEFAULT, new Climate(20, 85)))).get(0);
        assertThat(Objects.requireNonNull(never.days()).p10()).isInfinite();
        assertThat(never.within(1e9)).isFalse();
        assertThat(never.note()).contains("20 °C and 85 % humidity", "about 18 %");
    }

    @Test
    void aSampleSaysWhereItStarts() {
        DryingTime time = of(wet().plug(1200, 300, 24)).get(2);
        assertThat(time.fromPercent()).isEqualTo(24);
        assertThat(Objects.requireNonNull(time.days()).p50())
                .isLessThan(days(of(wet()), Way.SKIN_OFF).p50());
        DryingTime dry = of(wet().plug(1200, 300, 11)).get(2);
        assertThat(Objects.requireNonNull(dry.days()).p50()).isZero();
    }

    @Test
    void foamAndHoneycombAreSaidNotToFollow() {
        for (String core : List.of("pvc-80", "honeycomb-aramid-48")) {
            List<DryingTime> times =
                    of(wet().with(new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", core, true)));
            assertThat(times).hasSize(3).allSatisfy(t -> {
                assertThat(t.days()).isNull();
                assertThat(t.note()).startsWith("Foam and honeycomb do not dry by diffusion");
            });
        }
    }

    @Test
    void dryCoreHasNoRow() {
        assertThat(of(deck(DECK).region(Condition.DELAMINATED, PATCH, 0, 0.1))).isEmpty();
        assertThat(of(deck(DECK))).isEmpty();
    }

    @Test
    void readingsTakenMeanwhileMoveTheCurve() {
        Survey survey = wet().survey();
        DryingTime told = DryingTimes.of(survey, wet().damage()).get(0);
        DryingTime quick =
                DryingTimes.of(read(survey, 60, 38, 24), wet().damage()).get(0);
        DryingTime slow =
                DryingTimes.of(read(survey, 60, 58, 55), wet().damage()).get(0);
        double days = Objects.requireNonNull(told.days()).p50();
        assertThat(Objects.requireNonNull(quick.days()).p50()).isLessThan(days - 20);
        assertThat(Objects.requireNonNull(slow.days()).p50()).isGreaterThan(days - 20);
        assertThat(quick.note()).contains("Read until day 20, 28 in 100");
        assertThat(quick.note()).doesNotContain("stalled");
    }

    @Test
    void whatNoLongerFallsHasStalled() {
        DryingTime time =
                DryingTimes.of(read(wet().survey(), 60, 40, 40), wet().damage()).get(0);
        assertThat(time.note()).contains("It has stalled: nothing has fallen for 10 days.");
    }

    @Test
    void aMeterWhoseDryIsNotKnownMovesNothing() {
        Survey survey = read(wet().survey(), 60, 40, 40);
        Survey without = new Survey(
                survey.heading(),
                survey.faces(),
                List.of(new Meter("A", Meter.Kind.RELATIVE, 100, null, null)),
                survey.laminates(),
                survey.materials(),
                survey.readings(),
                survey.settings(),
                survey.log(),
                survey.photos(),
                survey.judgements(),
                survey.loads(),
                survey.repairPlan());
        assertThat(DryingTimes.of(without, wet().damage()).get(0).note()).doesNotContain("Read until");
    }

    /** What is drawn crosses the gate on the days of drying.csv: each of its three lines on one of the three days. */
    @Test
    void theCurveCrossesTheGateOnItsDays() {
        Survey survey = wet().survey();
        Region region = wet().damage().regions().get(0);
        Quantiles days = days(DryingTimes.of(survey, region), Way.THROUGH_HOLES);
        DryingCurve curve = DryingTimes.curve(survey, region).orElseThrow();
        List<DryingCurve.Day> drawn = curve.days();

        assertThat(curve.readings()).isEmpty();
        assertThat(curve.from()).isEmpty();
        assertThat(drawn.get(0).p50()).as("as wet as it was").isGreaterThan(25);
        double step = drawn.get(1).day();
        assertThat(crossing(drawn, DryingCurve.Day::p10, curve.gatePercent())).isCloseTo(days.p10(), within(step));
        assertThat(crossing(drawn, DryingCurve.Day::p50, curve.gatePercent())).isCloseTo(days.p50(), within(step));
        assertThat(crossing(drawn, DryingCurve.Day::p90, curve.gatePercent())).isCloseTo(days.p90(), within(step));
    }

    /** 60, 38 and 24 over a dry of 10: 1, 28/50 and 14/50 of what stood above it, on days 0, 10 and 20; the days left begin there. */
    @Test
    void readingsStandOnTheCurve() {
        Survey survey = read(wet().survey(), 60, 38, 24);
        Region region = wet().damage().regions().get(0);
        DryingCurve curve = DryingTimes.curve(survey, region).orElseThrow();

        assertThat(curve.from()).contains(LocalDate.of(2026, 5, 1));
        assertThat(curve.readings()).extracting(DryingCurve.Read::day).containsExactly(0.0, 10.0, 20.0);
        assertThat(curve.readings()).extracting(DryingCurve.Read::left).containsExactly(1.0, 0.56, 0.28);
        double left = days(DryingTimes.of(survey, region), Way.THROUGH_HOLES).p50();
        assertThat(crossing(curve.days(), DryingCurve.Day::p50, curve.gatePercent()))
                .isCloseTo(20 + left, within(curve.days().get(1).day()));
    }

    @Test
    void foamHasNoCurve() {
        Deck foam = wet().with(new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "pvc-80", true));
        assertThat(DryingTimes.curve(foam.survey(), foam.damage().regions().get(0)))
                .isEmpty();
    }

    private static double crossing(List<DryingCurve.Day> days, ToDoubleFunction<DryingCurve.Day> percent, double gate) {
        return days.stream()
                .filter(d -> percent.applyAsDouble(d) <= gate)
                .findFirst()
                .orElseThrow()
                .day();
    }

    private static Survey read(Survey survey, double first, double second, double third) {
        List<Moisture> moisture = new ArrayList<>();
        double[] values = {first, second, third};
        for (int day = 0; day < 3; day++) {
            for (double x = 1100; x < 1600; x += 200) {
                moisture.add(new Moisture(
                        new Origin("moisture.csv", moisture.size()),
                        "M" + moisture.size(),
                        new Spot(Deck.FACE, x, 300),
                        values[day],
                        false,
                        "A",
                        null,
                        LocalDate.of(2026, 5, 1).plusDays(10L * day).atTime(9, 0),
                        false,
                        Side.OUTER,
                        ""));
            }
        }
        return new Survey(
                survey.heading(),
                survey.faces(),
                List.of(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 25.0)),
                survey.laminates(),
                survey.materials(),
                new Readings(moisture, List.of(), List.of(), List.of(), List.of(), List.of()),
                survey.settings(),
                survey.log(),
                survey.photos(),
                survey.judgements(),
                survey.loads(),
                survey.repairPlan());
    }

    private static Settings with(Drying drying, Climate climate) {
        Settings s = Settings.defaults();
        return new Settings(
                s.thresholds(),
                s.drilling(),
                s.resins(),
                s.costs(),
                s.crew(),
                climate,
                s.numerics(),
                s.terms(),
                drying,
                s.goal(),
                s.letterhead());
    }

    private static List<DryingTime> of(Deck deck) {
        return DryingTimes.of(deck.survey(), deck.damage());
    }

    private static Quantiles days(List<DryingTime> times, Way way) {
        return Objects.requireNonNull(times.stream()
                .filter(t -> t.way() == way)
                .findFirst()
                .orElseThrow()
                .days());
    }
}
