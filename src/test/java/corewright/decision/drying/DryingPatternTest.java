package corewright.decision.drying;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.survey.Feature;
import corewright.survey.Origin;
import corewright.survey.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class DryingPatternTest {
    private static final double SPACING_MM = 50;
    private static final double KEEP_OUT_MM = 60;
    private static final Coordinate FITTING = new Coordinate(1400, 300);

    private final Deck deck = deck(rectangle(0, -500, 2500, 900))
            .with(new Feature.Fitting(
                    new Origin("test", 1),
                    "ring",
                    new GeometryFactory().createPoint(FITTING),
                    true,
                    false,
                    KEEP_OUT_MM))
            .region(Condition.WET, rectangle(1000, 0, 1800, 600), 0, 0);

    private final List<Spot> holes =
            DryingPattern.of(deck.survey(), deck.damage().regions().get(0)).holes();

    /** The curve rests on a hole for each hexagon of its spacing: 3 ^ 0.5 / 2 of the spacing's square (geometry). */
    @Test
    void everyHoleHasTheAreaThatItsCurveGivesIt() {
        double keptOut = Math.PI * KEEP_OUT_MM * KEEP_OUT_MM;
        double each = (800 * 600 - keptOut) / holes.size();
        assertThat(each).isCloseTo(Math.sqrt(3) / 2 * SPACING_MM * SPACING_MM, within(150.0));
    }

    @Test
    void theNextHoleStandsAtTheSpacing() {
        assertThat(holes).allSatisfy(h -> assertThat(holes.stream()
                        .filter(o -> o != h)
                        .mapToDouble(o -> o.coordinate().distance(h.coordinate()))
                        .min()
                        .orElseThrow())
                .isCloseTo(SPACING_MM, within(1e-6)));
    }

    @Test
    void noHoleIsDrilledIntoAFitting() {
        assertThat(holes)
                .isNotEmpty()
                .allMatch(h -> h.coordinate().distance(FITTING) >= KEEP_OUT_MM)
                .anyMatch(h -> h.coordinate().distance(FITTING) < KEEP_OUT_MM + SPACING_MM);
    }
}
