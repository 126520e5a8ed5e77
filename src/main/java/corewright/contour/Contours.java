package corewright.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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
        if (Arrays.stream(sorted).anyMatch(Double::isNaN)) {
            throw new IllegalArgumentException("a level that is no number");
        }
        BandSides sides = BandSides.of(raster, sorted, LevelPartition.grid(raster));
        List<List<Polygon>> polygons = IntStream.rangeClosed(0, sorted.length)
                .parallel()
                .mapToObj(band -> BandPolygons.of(sides.lines(band), sides.rims(band)))
                .toList();
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
}
