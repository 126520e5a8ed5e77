package corewright.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** Bands fill the cells with data exactly, and lie where the values say. */
class ContoursTest {
    private static final double NAN = Double.NaN;
    private static final double OPEN = Double.POSITIVE_INFINITY;

    static Stream<Raster> rasters() {
        return Stream.of(
                        IntStream.range(0, 15).mapToObj(i -> Fields.steps(i, 12, 17, 0)),
                        IntStream.range(0, 40)
                                .mapToObj(i -> Fields.steps(100 + i, 3 + i % 9, 3 + i % 7, 0.02 * (i % 40))),
                        IntStream.range(0, 6).mapToObj(i -> Fields.smooth(i, 30, 40, 25, 0.02 * (i % 3))),
                        Stream.of(
                                Fields.checkerboard(9, 8, 0, 1),
                                Fields.checkerboard(9, 8, 0, 2),
                                Fields.checkerboard(2, 2, 1, 3),
                                Fields.checkerboard(1, 1, 1, 1),
                                Fields.checkerboard(1, 7, 0, 3),
                                Fields.checkerboard(7, 1, 0, 3)))
                .flatMap(s -> s);
    }

    @ParameterizedTest
    @MethodSource("rasters")
    void bandsAreValidAndFillTheDataWithoutOverlapOrGap(Raster raster) {
        List<Band> bands = Contours.bands(raster, 0.5, 1, 1.3, 2);
        Geometry[] areas = bands.stream().map(Band::area).toArray(Geometry[]::new);
        assertThat(areas).allMatch(Geometry::isValid).noneMatch(Geometry::isEmpty);
        assertThat(CoverageValidator.isValid(areas)).isTrue();
        double sum = Stream.of(areas).mapToDouble(Geometry::getArea).sum();
        assertThat(sum).isCloseTo(Fields.dataArea(raster), within(1e-9 * Fields.dataArea(raster)));
    }

    @ParameterizedTest
    @MethodSource("rasters")
    void everyCentreLiesInTheBandOfItsValue(Raster raster) {
        Map<Band, PointOnGeometryLocator> bands = new LinkedHashMap<>();
        Contours.bands(raster, 0.5, 1, 1.3, 2).forEach(b -> bands.put(b, new IndexedPointInAreaLocator(b.area())));
        for (int i = 0; i < raster.size(); i++) {
            double value = raster.at(i);
            Coordinate centre =
                    new Coordinate(raster.centreX(i % raster.columns()), raster.centreY(i / raster.columns()));
            boolean onALine = value == 1 || value == 2; // there the line runs through the centre itself
            if (!Double.isNaN(value) && !onALine) {
                bands.forEach((band, locator) -> {
                    boolean inside = locator.locate(centre) == Location.INTERIOR;
                    if (inside != (band.lower() <= value && value < band.upper())) {
                        fail("%s at %s but inside [%s, %s): %s", value, centre, band.lower(), band.upper(), inside);
                    }
                });
            }
        }
    }

    @Test
    void aLevelBetweenTwoCellsCutsThemInProportion() {
        // Centres at 0.5 and 1.5 with 0 and 1: 0.25 lies at x = 0.75, and straight on over the outer half cells.
        List<Band> bands = Contours.bands(Fields.of(1, new double[] {0, 1}), 0.25);
        assertThat(bands).hasSize(2);
        assertThat(bands.get(0).area().equalsTopo(Fields.wkt("POLYGON((0 0,0.75 0,0.75 1,0 1,0 0))")))
                .isTrue();
        assertThat(bands.get(1)).extracting(Band::lower, Band::upper).containsExactly(0.25, OPEN);
        assertThat(bands.get(1).area().getArea()).isEqualTo(1.25);
    }

    @Test
    void aValueEqualToTheLevelIsAbove() {
        assertThat(Contours.bands(Fields.of(1, new double[] {2, 2}), 2))
                .singleElement()
                .extracting(Band::lower)
                .isEqualTo(2.0);
    }

    @Test
    void aLonePeakThatOnlyTouchesTheLevelMakesNoPolygon() {
        Raster peak = Fields.of(1, new double[] {0, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 0});
        assertThat(Contours.bands(peak, 1))
                .singleElement()
                .extracting(Band::upper)
                .isEqualTo(1.0);
    }

    @Test
    void aSaddleIsDecidedByTheMeanOfItsFourCorners() {
        assertThat(Contours.bands(Fields.checkerboard(2, 2, 0, 10), 4)
                        .get(1)
                        .area()
                        .getNumGeometries())
                .as("mean 5 is above 4: the high corners join")
                .isEqualTo(1);
        assertThat(Contours.bands(Fields.checkerboard(2, 2, 0, 10), 6)
                        .get(1)
                        .area()
                        .getNumGeometries())
                .as("mean 5 is below 6: they stay apart")
                .isEqualTo(2);
    }

    @Test
    void noDataEndsPolygonsAtCellEdgesAndTheValueBesideItContinues() {
        Raster hole = Fields.of(2, new double[] {5, 5, 5}, new double[] {5, NAN, 5}, new double[] {5, 5, 5});
        assertThat(Contours.bands(hole, 1))
                .singleElement()
                .extracting(band -> band.area().norm())
                .isEqualTo(Fields.wkt("POLYGON((0 0,6 0,6 6,0 6,0 0),(2 2,4 2,4 4,2 4,2 2))")
                        .norm());
    }

    @Test
    void noDataAtAllGivesNoBand() {
        assertThat(Contours.bands(Fields.of(1, new double[] {NAN, NAN}), 1)).isEmpty();
    }

    @Test
    void bandsWithoutAnyAreaAreLeftOutAndLevelsMayComeInAnyOrder() {
        Raster step = Fields.of(1, new double[] {0, 0, 3, 3});
        assertThat(Contours.bands(step, 7, 1, 1))
                .extracting(Band::lower)
                .containsExactly(Double.NEGATIVE_INFINITY, 1.0);
    }

    @Test
    void infiniteValuesAndHugeJumpsStayInTheirCells() {
        Raster odd = Fields.of(1, new double[] {OPEN, 0, -OPEN, 1e308, -1e308});
        double sum = Contours.bands(odd, -1, 0, 1).stream()
                .mapToDouble(b -> b.area().getArea())
                .sum();
        assertThat(sum).isCloseTo(5, within(1e-9));
    }

    /** Lines of several levels then run along one side of a tile, where some end: each must stop where another ends. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void cliffsBesideLevelsMakeValidBands(int seed) {
        double[] heights = {1e30, -1e30, 1e8, 0.5, 1, 1.3, 2, 0, 3, 1 - 1e-12, Double.NaN};
        double[] values = new Random(seed)
                .ints(80, 0, heights.length)
                .mapToDouble(i -> heights[i])
                .toArray();
        Raster cliffs = new Raster(-137.3, 41.9, 25.3, 8, 10, values);
        List<Band> bands = Contours.bands(cliffs, 0.5, 1, 1.3, 2);
        assertThat(bands).allMatch(band -> band.area().isValid());
        double sum = bands.stream().mapToDouble(b -> b.area().getArea()).sum();
        assertThat(sum).isCloseTo(Fields.dataArea(cliffs), within(1e-9 * sum));
    }

    @Test
    void farFromTheOriginAreasStayExact() {
        Raster near = Fields.smooth(3, 20, 20, 0.5, 0);
        Raster far = new Raster(4.5e6, 5.6e6, 0.5, 20, 20, near.values());
        assertThat(Contours.bands(far, 1).get(1).area().getArea())
                .isCloseTo(Contours.bands(near, 1).get(1).area().getArea(), within(1e-6));
    }
}
