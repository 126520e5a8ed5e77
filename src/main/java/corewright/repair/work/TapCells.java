package corewright.repair.work;

import corewright.overlay.Overlay;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.GeometryItemDistance;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.precision.GeometryPrecisionReducer;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

/**
 * The ground that each tap over a space speaks for: what is nearer to it than to any other (Voronoi), within the space and
 * no farther from it than the taps typically stand apart.
 */
final class TapCells {
    /** A tap says nothing beyond this, however far apart they stand; also half of it for a tap alone. Practice. */
    static final double MOST_MM = 150;

    /** A tap alone speaks for a hand's width. Practice. */
    static final double LONE_MM = 50;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Four places of a grid make corners at which cells meet but for rounding: on this grid they meet exactly. */
    private static final PrecisionModel THOUSANDTHS = new PrecisionModel(1000);

    /**
     * Edges that two discs end at different places lie apart by that rounding: snapped to a grid ten times coarser they
     * are one edge again.
     */
    private static final PrecisionModel HUNDREDTHS = new PrecisionModel(100);

    private static final double LEAST_EDGE_MM = 1;

    /** Disc of 96 corners: never more than a two-thousandth inside the circle. */
    private static final int QUARTER = 24;

    private TapCells() {}

    /** A tap and its ground. */
    record Cell(Tap tap, Polygon area) {}

    /** @param taps over the ground, no two at one place */
    static List<Cell> of(List<Tap> taps, Geometry space) {
        List<Point> sites = taps.stream()
                .map(t -> FACTORY.createPoint(t.spot().coordinate()))
                .toList();
        double reachMm = spacingMm(sites);
        Map<Coordinate, Geometry> nearest = nearest(sites, space, reachMm);
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            Point site = sites.get(i);
            Geometry ground = nearest.getOrDefault(site.getCoordinate(), space.getEnvelope());
            Geometry near = Overlay.intersection(ground, site.buffer(reachMm, QUARTER));
            Geometry inside = Overlay.intersection(near, space);
            cells.add(new Cell(taps.get(i), at(site, GeometryPrecisionReducer.reduce(inside, THOUSANDTHS))));
        }
        return cells;
    }

    private static Map<Coordinate, Geometry> nearest(List<Point> sites, Geometry space, double reachMm) {
        if (sites.size() < 2) {
            return Map.of();
        }
        Envelope all = space.getEnvelopeInternal();
        all.expandBy(reachMm);
        VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
        builder.setSites(sites.stream().map(Point::getCoordinate).toList());
        builder.setClipEnvelope(all);
        Geometry diagram = builder.getDiagram(FACTORY);
        Map<Coordinate, Geometry> cells = new HashMap<>();
        for (int i = 0; i < diagram.getNumGeometries(); i++) {
            Geometry cell = diagram.getGeometryN(i);
            if (cell.getUserData() instanceof Coordinate site) {
                cells.put(site, cell);
            }
        }
        return cells;
    }

    /** The middle one of the distances to the nearest neighbour. */
    static double spacingMm(List<Point> sites) {
        if (sites.size() < 2) {
            return LONE_MM;
        }
        STRtree tree = new STRtree();
        sites.forEach(s -> tree.insert(s.getEnvelopeInternal(), s));
        double[] apart = sites.stream()
                .mapToDouble(s -> Arrays.stream(
                                tree.nearestNeighbour(s.getEnvelopeInternal(), s, new GeometryItemDistance(), 2))
                        .mapToDouble(other -> s.distance((Point) other))
                        .max()
                        .orElse(LONE_MM))
                .sorted()
                .toArray();
        return Math.min(MOST_MM, apart[(apart.length - 1) / 2]);
    }

    /** Ground of several taps as one geometry. */
    static Geometry union(List<Geometry> ground) {
        return Overlay.unionOnGrid(ground, HUNDREDTHS);
    }

    /** Whether the ground of two taps meets along more than a corner. */
    static boolean shareAnEdge(Geometry a, Geometry b) {
        return a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())
                && Overlay.intersectionOnGrid(a, b, HUNDREDTHS).getLength() > LEAST_EDGE_MM;
    }

    /** Of ground that a notch of the space cuts in two, the part under the tap. */
    private static Polygon at(Point site, Geometry ground) {
        Polygon best = FACTORY.createPolygon();
        for (int i = 0; i < ground.getNumGeometries(); i++) {
            if (ground.getGeometryN(i) instanceof Polygon part
                    && !part.isEmpty()
                    && (best.isEmpty() || part.distance(site) < best.distance(site))) {
                best = part;
            }
        }
        return best;
    }
}
