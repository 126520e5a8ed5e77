package corewright.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Polygons of the bands between levels of one raster. */
public final class Contours {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Contours() {}

    /**
     * The bands below, between and above the levels, from low to high; together they fill every cell with data without
     * overlap or gap. Levels need not be in order; a level named twice counts once. A band with no area is left out.
     */
    public static List<Band> bands(Raster raster, double... levels) {
        double[] sorted = Arrays.stream(levels).sorted().distinct().toArray();
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut(raster, Double.NEGATIVE_INFINITY)); // its line is the edge of the data
        Arrays.stream(sorted).forEach(level -> cuts.add(new Cut(raster, level)));
        List<Labelled<Integer>> pieces = new ArrayList<>();
        for (Piece piece : LevelPartition.of(extent(raster), cuts)) {
            int count = (int) piece.above().stream().filter(above -> above).count();
            if (count > 0) {
                pieces.add(new Labelled<>(piece.polygon(), count - 1));
            }
        }
        // Where values only touch a level its line may run out and back through one band: dissolving removes it.
        List<List<Polygon>> polygons = new ArrayList<>();
        cuts.forEach(cut -> polygons.add(new ArrayList<>()));
        Coverage.dissolve(pieces, 0)
                .forEach(piece -> polygons.get(piece.label()).add(piece.polygon()));
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i <= sorted.length; i++) {
            double lower = i == 0 ? Double.NEGATIVE_INFINITY : sorted[i - 1];
            double upper = i == sorted.length ? Double.POSITIVE_INFINITY : sorted[i];
            if (!polygons.get(i).isEmpty()) {
                bands.add(new Band(lower, upper, FACTORY.buildGeometry(polygons.get(i))));
            }
        }
        return bands;
    }

    private static Geometry extent(Raster raster) {
        double x1 = raster.x0() + raster.columns() * raster.cell();
        double y1 = raster.y0() + raster.rows() * raster.cell();
        return FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(raster.x0(), raster.y0()),
            new Coordinate(x1, raster.y0()),
            new Coordinate(x1, y1),
            new Coordinate(raster.x0(), y1),
            new Coordinate(raster.x0(), raster.y0())
        });
    }
}
