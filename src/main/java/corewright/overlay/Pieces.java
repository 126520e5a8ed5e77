package corewright.overlay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Areas parted, and taken out of what overlays leave. */
public final class Pieces {
    private Pieces() {}

    /** The polygons of a geometry, without empty ones and without lines and points that touching areas leave. */
    public static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> all = new ArrayList<>();
        for (Object p : PolygonExtracter.getPolygons(geometry)) {
            if (!((Polygon) p).isEmpty()) {
                all.add((Polygon) p);
            }
        }
        return all;
    }

    /** The same as one geometry: a polygon where there is one. */
    public static Geometry areal(Geometry geometry) {
        List<Polygon> parts = polygons(geometry);
        return parts.size() == 1
                ? parts.get(0)
                : geometry.getFactory().createMultiPolygon(parts.toArray(Polygon[]::new));
    }

    /**
     * An area cut along lines, by x, then y of the pieces' centroids; every ring starts at its least vertex.
     *
     * @param smallest smaller pieces are left out, in the square of the unit of length
     */
    public static List<Polygon> cut(Geometry area, Collection<? extends Geometry> lines, double smallest) {
        List<Geometry> all = new ArrayList<>(lines);
        all.add(area.getBoundary());
        Geometry edges = Overlay.union(all);
        AreaIndex<Geometry> inside = new AreaIndex<>(List.of(area), a -> a);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(edges);
        List<Polygon> pieces = new ArrayList<>();
        for (Object found : polygonizer.getPolygons()) {
            Polygon piece = (Polygon) found;
            if (piece.getArea() > smallest
                    && inside.lastAt(piece.getInteriorPoint().getCoordinate(), false)
                            .isPresent()) {
                piece.normalize();
                pieces.add(piece);
            }
        }
        pieces.sort(Comparator.comparingDouble((Polygon p) -> p.getCentroid().getX())
                .thenComparingDouble(p -> p.getCentroid().getY()));
        return pieces;
    }
}
