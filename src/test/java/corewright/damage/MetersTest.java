package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.survey.FrozenPlan;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetersTest {
    private final List<Moisture> readings = new ArrayList<>();

    private void read(String meter, double x, double value, @Nullable Double celsius, boolean reference) {
        readings.add(new Moisture(
                new Origin("moisture.csv", readings.size() + 2),
                "M" + readings.size(),
                Deck.spot(x, 1),
                value,
                false,
                meter,
                celsius,
                null,
                reference,
                Side.OUTER,
                ""));
    }

    private Survey survey(Meter... meters) {
        Survey s = Deck.plain().survey();
        return new Survey(
                s.heading(),
                s.faces(),
                List.of(meters),
                s.laminates(),
                s.materials(),
                new Readings(readings, List.of(), List.of(), List.of(), List.of(), List.of()),
                s.settings(),
                s.log(),
                s.photos(),
                s.judgements(),
                s.loads(),
                FrozenPlan.NONE);
    }

    private MeterScale scale(Meter... meters) {
        // the last meter's
        return Objects.requireNonNull(MeterScale.all(survey(meters)).get(meters[meters.length - 1].name()));
    }

    /**
     * F. Pfaff and W. Garrahan, New temperature correction factors for the portable resistance-type moisture meter, Forest Products
     * Journal 36(3) (1986), the one formula for all species (coefficients from memory), computed by hand; at 20 degrees it
     * must return the reading within the formula's own 0.01.
     */
    @ParameterizedTest
    @CsvSource({"15, 0, 17.31", "15, 10, 16.11", "15, 20, 14.99", "15, 40, 13.00", "20, 10, 21.39", "25, 10, 26.68"})
    void correctsAPinMeterForTemperature(double read, double celsius, double percent) {
        assertThat(PinMeter.percent(read, celsius)).isCloseTo(percent, within(0.005)); // half the last digit
    }

    @Test
    void leavesRelativeMetersAndUnnotedTemperaturesAlone() {
        read("A", 1, 15, 0.0, false);
        read("P", 1, 15, null, false);
        read("P", 1, 15, 0.0, false);

        assertThat(PinMeter.value(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 30.0), readings.get(0)))
                .isEqualTo(15);
        Meter pin = new Meter("P", Meter.Kind.PIN, 40, 12.0, 20.0);
        assertThat(PinMeter.value(pin, readings.get(1))).isEqualTo(15);
        assertThat(PinMeter.value(pin, readings.get(2))).isCloseTo(17.31, within(0.005));
    }

    @Test
    void takesDryFromReadingsMarkedAsReference() {
        read("A", 1, 14, null, true);
        read("A", 200, 16, null, true);
        read("A", 400, 3, null, false);

        MeterScale scale = scale(new Meter("A", Meter.Kind.RELATIVE, 100, null, 40.0));

        assertThat(scale.dry()).isEqualTo(15);
        assertThat(scale.findings()).isEmpty();
    }

    /** Meter B shows 5 + A / 4; A is dry at 10 and wet at 30, so B at 7.5 and 12.5. */
    @Test
    void matchesAMeterToAKnownOneByCommonPlaces() {
        for (int i = 0; i < 8; i++) {
            read("A", 100 * i, 10 + 5 * i, null, false);
            read("B", 100 * i + 10, 5 + (10 + 5 * i) / 4.0, null, false);
        }
        Meter a = new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 30.0);

        MeterScale b = scale(a, new Meter("B", Meter.Kind.RELATIVE, 20, null, null));

        assertThat(b.dry()).isCloseTo(7.5, within(1e-9));
        assertThat(b.wet()).isCloseTo(12.5, within(1e-9));
        assertThat(b.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .isEqualTo("what meter B leaves unsaid of its scale is taken from meter A by a straight line through 8"
                        + " places read with both"));
    }

    @Test
    void matchesNoMetersThatDisagree() {
        double[] other = {9, 5, 8, 6, 9, 5};
        for (int i = 0; i < other.length; i++) {
            read("A", 100 * i, 10 + 5 * i, null, false);
            read("B", 100 * i, other[i], null, false);
        }

        assertThat(MeterMatch.of(readings.subList(0, 1), readings)).isNull();
        assertThat(MeterMatch.of(
                        readings.stream().filter(m -> m.meter().equals("A")).toList(),
                        readings.stream().filter(m -> m.meter().equals("B")).toList()))
                .isNull();
    }
}
