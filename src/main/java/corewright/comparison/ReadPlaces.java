package corewright.comparison;

import corewright.damage.Bay;
import corewright.damage.FaceDamage;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.ItemBoundable;
import org.locationtech.jts.index.strtree.STRtree;

/** Where one survey read a face, for water and for bond. */
final class ReadPlaces {
    /** Half the diagonal of a grid of 300 mm, rounded up: on such a grid every place is as near to a reading. */
    static final double REACH_MM = 225;

    /** Read to this share, a place counts as read. As for a whole face (damage.Coverage). */
    private static final double READ = 0.8;

    private static final double STEP_MM = 25;

    private final FaceDamage face;
    private final List<Coordinate> water;
    private final List<Coordinate> bond;

    ReadPlaces(Survey survey, FaceDamage face) {
        this.face = face;
        Readings r = survey.readings().on(face.face().name());
        water = places(Stream.of(
                r.moisture().stream(), r.probes().stream().filter(p -> p.water() != null), r.plugs().stream()));
        bond = places(Stream.of(r.taps().stream(), r.probes().stream(), r.feelers().stream()));
    }

    private static List<Coordinate> places(Stream<Stream<? extends Reading>> readings) {
        return readings.flatMap(s -> s)
                .map(Reading::spot)
                .map(Spot::coordinate)
                .distinct()
                .toList();
    }

    /** Whether an area was read for all that a quantity rests on. */
    boolean read(Polygon area, Quantity quantity) {
        return (!quantity.needsWater() || read(area, water)) && (!quantity.needsBond() || read(area, bond));
    }

    private boolean read(Polygon area, List<Coordinate> readings) {
        Polygon bay = bayOf(area);
        IndexedPointInAreaLocator inBay = new IndexedPointInAreaLocator(bay);
        List<Coordinate> own = readings.stream()
                .filter(c -> inBay.locate(c) != Location.EXTERIOR)
                .toList();
        if (own.isEmpty()) {
            return false;
        }
        STRtree index = new STRtree();
        own.forEach(c -> index.insert(new Envelope(c), c));
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        Envelope box = area.getEnvelopeInternal();
        int all = 0;
        int near = 0;
        for (double x = box.getMinX() + STEP_MM / 2; x < box.getMaxX(); x += STEP_MM) {
            for (double y = box.getMinY() + STEP_MM / 2; y < box.getMaxY(); y += STEP_MM) {
                Coordinate at = new Coordinate(x, y);
                if (inside.locate(at) != Location.EXTERIOR) {
                    all++;
                    near += nearest(index, at) <= REACH_MM ? 1 : 0;
                }
            }
        }
        return all == 0 ? nearest(index, area.getInteriorPoint().getCoordinate()) <= REACH_MM : near >= READ * all;
    }

    private static double nearest(STRtree index, Coordinate at) {
        Coordinate found = (Coordinate) index.nearestNeighbour(
                new Envelope(at), at, (ItemBoundable a, ItemBoundable b) -> ((Coordinate) a.getItem())
                        .distance((Coordinate) b.getItem()));
        return found.distance(at);
    }

    /** The bay that most of an area lies in; a reading across a divider says nothing of it. */
    private Polygon bayOf(Polygon area) {
        Coordinate middle = area.getInteriorPoint().getCoordinate();
        return face.bays().stream()
                .map(Bay::area)
                .filter(b -> new IndexedPointInAreaLocator(b).locate(middle) != Location.EXTERIOR)
                .findFirst()
                .orElse(area);
    }
}
