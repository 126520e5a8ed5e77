package corewright.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

class AreaIndexTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Against asking each rectangle in turn; whole numbers, so that edges are met often. */
    @Test
    void saysWhatAskingEachInTurnSays() {
        Random random = new Random(5);
        List<Geometry> areas = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double x = random.nextInt(40);
            double y = random.nextInt(40);
            areas.add(FACTORY.toGeometry(new Envelope(x, x + 1 + random.nextInt(8), y, y + 1 + random.nextInt(8))));
        }
        AreaIndex<Geometry> index = new AreaIndex<>(areas, a -> a);
        for (int i = 0; i < 3000; i++) {
            Point place = FACTORY.createPoint(new Coordinate(random.nextInt(120) / 2.0, random.nextInt(120) / 2.0));

            assertThat(index.firstAt(place.getCoordinate()))
                    .isEqualTo(areas.stream().filter(a -> a.covers(place)).findFirst());
            assertThat(index.lastAt(place.getCoordinate(), false))
                    .isEqualTo(areas.stream().filter(a -> a.contains(place)).reduce((a, b) -> b));
            assertThat(index.nearest(place.getCoordinate(), 3)).isEqualTo(nearest(areas, place));
        }
    }

    private static Optional<Geometry> nearest(List<Geometry> areas, Point place) {
        return areas.stream()
                .filter(a -> a.distance(place) <= 3)
                .reduce((a, b) -> b.distance(place) < a.distance(place) ? b : a);
    }
}
