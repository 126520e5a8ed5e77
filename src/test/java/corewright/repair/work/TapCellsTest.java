package corewright.repair.work;

import static corewright.DamageFixtures.ragged;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures;
import corewright.survey.Origin;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The ground each tap speaks for. */
class TapCellsTest {
    /** Corners stand on a grid of a thousandth of a millimetre: half of it along a few metres of edges. */
    private static final double ROUNDING_MM2 = 5;

    private static Tap tap(double x, double y) {
        return new Tap(new Origin("c.csv", 2), "C", new Spot("deck", x, y), Sound.SOUND, null, Side.OUTER);
    }

    /** Three in a row 60 mm apart in a strip 40 mm wide: the middle one has 60 x 40 mm, each end 30 + 60 mm but for the disc. */
    @Test
    void tapsInARowShareAStripSquarely() {
        Polygon strip = rectangle(0, 0, 500, 40);
        List<TapCells.Cell> cells = TapCells.of(List.of(tap(190, 20), tap(250, 20), tap(310, 20)), strip);

        assertThat(cells.get(1).area().equalsTopo(rectangle(220, 0, 280, 40))).isTrue();
        assertThat(cells.get(0).area().getEnvelopeInternal().getMinX())
                .isCloseTo(130, within(0.2)); // a disc of 96 corners
        assertThat(cells.get(0).area().getArea()).isCloseTo(cells.get(2).area().getArea(), within(0.1));
    }

    @Test
    void twoTapsFarApartStillSpeakForNoMoreThanAHandCanHear() {
        Polygon deck = rectangle(0, 0, 2000, 1000);
        List<TapCells.Cell> cells = TapCells.of(List.of(tap(500, 500), tap(1500, 500)), deck);

        double disc = 0.5 * 96 * Math.sin(2 * Math.PI / 96) * TapCells.MOST_MM * TapCells.MOST_MM;
        assertThat(cells).allSatisfy(c -> assertThat(c.area().getArea()).isCloseTo(disc, within(1.0)));
    }

    /** A notch from above parts the two legs of a U: a tap in one says nothing of the other. */
    @Test
    void aTapDoesNotSpeakAcrossANotch() {
        Polygon u = (Polygon) DamageFixtures.wkt("POLYGON((0 0,100 0,100 200,60 200,60 20,40 20,40 200,0 200,0 0))");
        List<TapCells.Cell> cells = TapCells.of(List.of(tap(20, 150), tap(20, 50)), u);

        assertThat(cells.get(0).area().getEnvelopeInternal().getMaxX()).isEqualTo(40);
    }

    /** Cells lie in the space, hold their taps, share no ground, and together are all that is near enough to a tap. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void cellsPartWhatWasTapped(long seed) {
        Polygon space = ragged(seed, 700);
        SplittableRandom random = new SplittableRandom(seed);
        Envelope box = space.getEnvelopeInternal();
        List<Tap> taps = new ArrayList<>();
        while (taps.size() < 60) {
            double x = Math.rint(box.getMinX() + box.getWidth() * random.nextDouble());
            double y = Math.rint(box.getMinY() + box.getHeight() * random.nextDouble());
            boolean apart = taps.stream()
                    .noneMatch(t -> Math.hypot(t.spot().xMm() - x, t.spot().yMm() - y) < 10);
            if (apart && space.contains(DamageFixtures.GEOMETRY.createPoint(new Coordinate(x, y)))) {
                taps.add(tap(x, y));
            }
        }

        List<TapCells.Cell> cells = TapCells.of(taps, space);
        List<Point> sites = taps.stream()
                .map(t -> DamageFixtures.GEOMETRY.createPoint(t.spot().coordinate()))
                .toList();
        double reachMm = TapCells.spacingMm(sites);
        Geometry union = OverlayNGRobust.union(
                cells.stream().<Geometry>map(TapCells.Cell::area).toList());
        double sum = cells.stream().mapToDouble(c -> c.area().getArea()).sum();
        Geometry discs = OverlayNGRobust.union(
                sites.stream().map(s -> s.buffer(reachMm, 24)).toList());
        Geometry near = OverlayNGRobust.overlay(discs, space, OverlayNG.INTERSECTION);
        Geometry beyond = OverlayNGRobust.overlay(union, near, OverlayNG.DIFFERENCE);

        assertThat(union.getArea()).isCloseTo(sum, within(ROUNDING_MM2));
        assertThat(beyond.getArea()).isLessThan(ROUNDING_MM2);
        assertThat(sum)
                .isLessThan(near.getArea() + ROUNDING_MM2)
                .isGreaterThan(0.97 * near.getArea()); // but for notches
        for (int i = 0; i < cells.size(); i++) {
            assertThat(cells.get(i).area().distance(sites.get(i)))
                    .as("tap %d", i)
                    .isLessThan(0.001);
            Point inside = cells.get(i).area().getInteriorPoint();
            double own = inside.distance(sites.get(i));
            assertThat(sites).allSatisfy(s -> assertThat(inside.distance(s)).isGreaterThan(own - 0.001));
        }
    }
}
