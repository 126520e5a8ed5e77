package corewright.contour;

import corewright.overlay.Overlay;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The exact overlay of an area with the level lines of one or several rasters. */
public final class LevelPartition {
    /**
     * Crossing lines are noded on a grid of 2^-34 of the smallest cell (2e-9 mm for cells of 25 mm). So fine that rounding
     * stays below 1e-10 of the area even of a single cell; a power of two, so that no rounding of its own is added.
     */
    private static final int GRID_BITS = 34;

    /** Grid coordinates stay below 2^50: doubles hold whole numbers to 2^53, and noding needs a few bits more. */
    private static final int LARGEST_BITS = 49;

    /** Without a raster, an area counts as this many cells across. */
    private static final int CELLS_OF_AN_AREA = 128;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private LevelPartition() {}

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
        List<Tiles> meshes = cuts.stream().map(cut -> new Tiles(cut.raster())).toList();
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
    private static List<Polygon> faces(Collection<Geometry> lines, double scale) {
        Geometry noded = Overlay.unionOnGrid(List.of(ofOneKind(lines)), new PrecisionModel(scale));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Polygon> faces = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            faces.add((Polygon) ((Polygon) face).norm());
        }
        faces.sort(Comparator.comparingDouble(
                        (Polygon p) -> p.getEnvelopeInternal().getMinX())
                .thenComparingDouble(p -> p.getEnvelopeInternal().getMinY())
                .thenComparing(Comparator.naturalOrder()));
        return faces;
    }

    /** A mixed collection is asked for its dimension again at every node, which takes time with the square of its size. */
    private static Geometry ofOneKind(Collection<Geometry> lines) {
        List<LineString> parts = new ArrayList<>(lines.size());
        for (Object line : LinearComponentExtracter.getLines(FACTORY.buildGeometry(lines))) {
            parts.add(FACTORY.createLineString(((LineString) line).getCoordinateSequence()));
        }
        return FACTORY.createMultiLineString(parts.toArray(LineString[]::new));
    }

    private static LineString segment(Coordinate p, Coordinate q) {
        return FACTORY.createLineString(new Coordinate[] {p, q});
    }

    /** The grid on which the crossings of one raster's levels lie. */
    static PrecisionModel grid(Raster raster) {
        return new PrecisionModel(gridScale(raster.extent(), raster.cell()));
    }

    private static double gridScale(Geometry area, List<Cut> cuts) {
        Envelope extent = area.getEnvelopeInternal();
        double cell = cuts.stream()
                .mapToDouble(cut -> cut.raster().cell())
                .min()
                .orElse(Math.max(extent.getWidth(), extent.getHeight()) / CELLS_OF_AN_AREA);
        return gridScale(extent, cell);
    }

    private static double gridScale(Envelope extent, double cell) {
        double farthest = Math.max(
                Math.max(Math.abs(extent.getMinX()), Math.abs(extent.getMaxX())),
                Math.max(Math.abs(extent.getMinY()), Math.abs(extent.getMaxY())));
        int wanted = GRID_BITS - Math.getExponent(cell);
        int most = LARGEST_BITS - Math.getExponent(farthest);
        return Math.scalb(1.0, Math.min(wanted, most));
    }
}
