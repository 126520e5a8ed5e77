package corewright.contour;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The exact overlay of an area with the level lines of one or several rasters. */
public final class Partition {
    /**
     * Grid on which crossing lines are noded, as a part of the smallest cell: fine enough that rounding an area of
     * thousands of cells stays below 1e-9 of it, and a power of two, so that cell edges are met exactly.
     */
    private static final double GRID_PER_CELL = 0x1p-28;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Partition() {}

    /** {@link #of(Geometry, List, Collection)} without dividers. */
    public static List<Piece> of(Geometry area, List<Cut> cuts) {
        return of(area, cuts, List.of());
    }

    /**
     * Parts {@code area} (Polygon or MultiPolygon) along every cut's level line and along {@code dividers}. The pieces
     * do not overlap, fill the area, share their edges vertex for vertex, and are ordered by the x, then y of their
     * envelope's lower left corner.
     */
    public static List<Piece> of(Geometry area, List<Cut> cuts, Collection<? extends Geometry> dividers) {
        List<Mesh> meshes = cuts.stream().map(cut -> new Mesh(cut.raster())).toList();
        List<Geometry> lines = new ArrayList<>();
        lines.add(area.getBoundary());
        lines.addAll(dividers);
        for (int i = 0; i < cuts.size(); i++) {
            meshes.get(i).boundaryAbove(cuts.get(i).level(), (p, q) -> lines.add(segment(p, q)));
        }
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        List<Piece> pieces = new ArrayList<>();
        for (Polygon face : faces(lines, gridScale(area, cuts))) {
            Coordinate place = face.getInteriorPoint().getCoordinate();
            if (inside.locate(place) != Location.EXTERIOR) {
                List<Boolean> above = new ArrayList<>(cuts.size());
                for (int i = 0; i < cuts.size(); i++) {
                    above.add(meshes.get(i).isAbove(cuts.get(i).level(), place));
                }
                pieces.add(new Piece(face, above));
            }
        }
        return pieces;
    }

    /** The faces that the lines enclose, noded on a grid of {@code 1 / scale}. */
    static List<Polygon> faces(Collection<Geometry> lines, double scale) {
        Geometry noded = UnaryUnionNG.union(FACTORY.buildGeometry(lines), new PrecisionModel(scale));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Polygon> faces = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            faces.add((Polygon) face);
        }
        faces.sort(Comparator.comparingDouble(
                        (Polygon p) -> p.getEnvelopeInternal().getMinX())
                .thenComparingDouble(p -> p.getEnvelopeInternal().getMinY()));
        return faces;
    }

    static LineString segment(Coordinate p, Coordinate q) {
        return FACTORY.createLineString(new Coordinate[] {p, q});
    }

    private static double gridScale(Geometry area, List<Cut> cuts) {
        double cell = cuts.stream().mapToDouble(c -> c.raster().cell()).min().orElse(1);
        double scale = 1;
        while (scale * cell * GRID_PER_CELL < 1) {
            scale *= 2;
        }
        while (scale * cell * GRID_PER_CELL > 2) {
            scale /= 2;
        }
        return scale;
    }
}
