package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.contour.Raster;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Surfaces;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Whole squares of 25 mm, so that areas are exact. */
class DoubtfulTest {
    private static final Polygon DECK = rectangle(0, 0, 2000, 1000);

    private static Geometry beside(Deck deck, DoubleBinaryOperator pWet) {
        FaceDamage face = deck.damage().faces().get(0);
        Surfaces s = face.surfaces();
        Raster wet = s.pWet();
        double[] values = new double[wet.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = pWet.applyAsDouble(wet.centreX(i % wet.columns()), wet.centreY(i / wet.columns()));
        }
        Surfaces other = new Surfaces(
                s.moistureIndex(),
                s.moistureIndexSd(),
                wet.with(values),
                s.pLoose(),
                s.pVoid(),
                s.voidDepthMm(),
                s.voidDepthSdMm());
        FaceDamage changed = new FaceDamage(
                face.face(),
                face.bays(),
                other,
                face.regions(),
                face.sound(),
                face.undecided(),
                face.damagedMm2(),
                face.voidMm3(),
                face.next(),
                face.findings(),
                face.notes());
        return Doubtful.beside(changed, changed.regions().get(0), 0.2);
    }

    private static Deck wet() {
        return deck(DECK).region(Condition.WET, rectangle(500, 200, 1000, 700), 0, 0.9);
    }

    @Test
    void whatMayBeWetBesideComesOutWithIt() {
        Geometry tongue = beside(wet(), (x, y) -> x > 1000 && x < 1050 && y > 300 && y < 400 ? 0.25 : 0.1);
        assertThat(tongue.getArea()).isCloseTo(50 * 100, within(1e-6));
    }

    @Test
    void butNotWhatIsApartOrFarOffOrLikelyDry() {
        assertThat(beside(wet(), (x, y) -> x > 1050 && x < 1100 ? 0.4 : 0.1).isEmpty())
                .isTrue();
        assertThat(beside(wet(), (x, y) -> 0.19).isEmpty()).isTrue();
        double all = beside(wet(), (x, y) -> 0.3).getArea();
        assertThat(all).as("100 mm all round, less the corners").isBetween(4 * 500 * 90.0, 700 * 700 - 500 * 500.0);
    }

    @Test
    void norAnotherRegion() {
        Deck two = wet().region(Condition.DELAMINATED, rectangle(1000, 200, 1200, 700), 0, 0.3);
        assertThat(beside(two, (x, y) -> x > 1000 && y > 200 && y < 700 ? 0.3 : 0)
                        .getArea())
                .isZero();
    }

    @Test
    void besideADryRegionNothing() {
        Deck dry = deck(DECK).region(Condition.DELAMINATED, rectangle(500, 200, 1000, 700), 0, 0.1);
        assertThat(beside(dry, (x, y) -> 0.45).isEmpty()).isTrue();
    }
}
