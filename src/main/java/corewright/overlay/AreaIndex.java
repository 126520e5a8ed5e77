package corewright.overlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Things with an area, asked for by very many places. */
public final class AreaIndex<T> {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final STRtree tree = new STRtree();

    private record Area<T>(int number, T thing, IndexedPointInAreaLocator inside, IndexedFacetDistance edge) {
        boolean holds(Coordinate place, boolean edgeCounts) {
            int location = inside.locate(place);
            return location == Location.INTERIOR || (edgeCounts && location == Location.BOUNDARY);
        }

        double distance(Coordinate place) {
            return holds(place, true) ? 0 : edge.distance(FACTORY.createPoint(place));
        }
    }

    /** @param area of a thing: polygons; empty ones hold no place */
    public AreaIndex(List<? extends T> things, Function<? super T, ? extends Geometry> area) {
        for (int i = 0; i < things.size(); i++) {
            Geometry own = area.apply(things.get(i));
            if (!own.isEmpty()) {
                tree.insert(
                        own.getEnvelopeInternal(),
                        new Area<T>(
                                i, things.get(i), new IndexedPointInAreaLocator(own), new IndexedFacetDistance(own)));
            }
        }
        tree.build();
    }

    /** The first of the list that holds a place; its edge counts. */
    public Optional<T> firstAt(Coordinate place) {
        return near(new Envelope(place)).stream()
                .filter(a -> a.holds(place, true))
                .min(Comparator.comparingInt(Area::number))
                .map(Area::thing);
    }

    /** The last of the list that holds a place. */
    public Optional<T> lastAt(Coordinate place, boolean edgeCounts) {
        return near(new Envelope(place)).stream()
                .filter(a -> a.holds(place, edgeCounts))
                .max(Comparator.comparingInt(Area::number))
                .map(Area::thing);
    }

    /**
     * The nearest to a place, of equally near ones the first of the list.
     *
     * @param within no farther than this, in the unit of length
     */
    public Optional<T> nearest(Coordinate place, double within) {
        Envelope round = new Envelope(place);
        round.expandBy(within);
        return near(round).stream()
                .filter(a -> a.distance(place) <= within)
                .min(Comparator.comparingDouble((Area<T> a) -> a.distance(place))
                        .thenComparingInt(Area::number))
                .map(Area::thing);
    }

    private List<Area<T>> near(Envelope where) {
        List<Area<T>> found = new ArrayList<>();
        tree.query(where, item -> {
            @SuppressWarnings("unchecked") // the constructor puts in nothing else
            Area<T> area = (Area<T>) item;
            found.add(area);
        });
        return found;
    }
}
