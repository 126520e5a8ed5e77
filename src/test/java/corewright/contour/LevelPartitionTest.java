package corewright.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
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
import org.locationtech.jts.geom.Polygon;

/** An area parted along several rasters' level lines: exact, and every piece on the side it says. */
class LevelPartitionTest {
    /** An L with a hole, off the rasters' grid. */
    private static final Geometry AREA = Fields.wkt(
            "POLYGON((-100.3 60.1,770.7 60.1,770.7 333.33,401.1 333.33,401.1 640.9,-100.3 640.9,-100.3 60.1),"
                    + "(120.2 180.7,260.4 190.1,251.9 290.3,120.2 180.7))");

    static Stream<List<Cut>> cuts() {
        return IntStream.range(0, 20)
                .mapToObj(seed -> List.of(
                        new Cut(Fields.smooth(seed, 30, 40, 25, 0.02 * (seed % 3)), 0.5),
                        new Cut(Fields.smooth(1000 + seed, 60, 80, 12.5, 0), 0.6),
                        // the same field again a hair higher: lines that nearly coincide
                        new Cut(
                                Fields.smooth(seed, 30, 40, 25, 0.02 * (seed % 3)),
                                0.5 + Math.pow(10, -4 - seed % 12))));
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void piecesFillTheAreaWithoutOverlapOrGap(List<Cut> cuts) {
        List<Piece> pieces = LevelPartition.of(AREA, cuts);
        isExact(pieces.stream().map(Piece::polygon).toList());
        assertThat(pieces)
                .allMatch(p -> p.polygon().getFactory() != null && p.above().size() == 3);
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void everyPieceSaysOnWhichSideOfEachLevelItLies(List<Cut> cuts) {
        for (Piece piece : LevelPartition.of(AREA, cuts)) {
            for (int i = 0; i < 3; i++) {
                Raster raster = cuts.get(i).raster();
                for (Coordinate centre : centresWellInside(raster, piece.polygon())) {
                    assertThat(raster.cellAt(centre.x, centre.y) >= cuts.get(i).level())
                            .isEqualTo(piece.above(i));
                }
            }
        }
    }

    private static List<Coordinate> centresWellInside(Raster raster, Geometry polygon) {
        PointOnGeometryLocator inside = new IndexedPointInAreaLocator(polygon.buffer(-0.01));
        List<Coordinate> centres = new ArrayList<>();
        for (int row = 0; row < raster.rows(); row++) {
            for (int column = 0; column < raster.columns(); column++) {
                Coordinate centre = new Coordinate(raster.centreX(column), raster.centreY(row));
                if (inside.locate(centre) == Location.INTERIOR) {
                    centres.add(centre);
                }
            }
        }
        return centres;
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void dissolvedPiecesStayExactAndLeaveNoSmallOneWithANeighbour(List<Cut> cuts) {
        List<Labelled<List<Boolean>>> pieces = LevelPartition.of(AREA, cuts).stream()
                .map(p -> new Labelled<>(p.polygon(), p.above()))
                .toList();
        List<Labelled<List<Boolean>>> regions = Coverage.dissolve(pieces, 1500);
        isExact(regions.stream().map(Labelled::polygon).toList());
        assertThat(regions).allMatch(r -> r.polygon().getArea() >= 1500);
        for (int i = 0; i < regions.size(); i++) {
            for (int j = 0; j < i; j++) {
                boolean equal = regions.get(i).label().equals(regions.get(j).label());
                assertThat(equal
                                && regions.get(i)
                                                .polygon()
                                                .intersection(regions.get(j).polygon())
                                                .getLength()
                                        > 0)
                        .as("equal neighbours are joined")
                        .isFalse();
            }
        }
    }

    private static void isExact(List<? extends Geometry> polygons) {
        assertThat(polygons).allMatch(Geometry::isValid);
        assertThat(CoverageValidator.isValid(polygons.toArray(new Geometry[0]))).isTrue();
        double sum = polygons.stream().mapToDouble(Geometry::getArea).sum();
        assertThat(sum).isCloseTo(AREA.getArea(), within(1e-9 * AREA.getArea()));
    }

    @Test
    void withoutCutsTheAreaStaysWhole() {
        assertThat(LevelPartition.of(AREA, List.of())).singleElement().satisfies(p -> assertThat(
                        p.polygon().getArea())
                .isCloseTo(AREA.getArea(), within(1e-9 * AREA.getArea())));
    }

    @Test
    void dividersPartTheAreaToo() {
        Geometry divider = Fields.wkt("LINESTRING(300 -1000,300 1000)");
        List<Piece> pieces = LevelPartition.of(AREA, List.of(), List.of(divider));
        isExact(pieces.stream().map(Piece::polygon).toList());
        assertThat(pieces).hasSize(2).allMatch(p -> !p.polygon().crosses(divider));
    }

    @Test
    void sameInputGivesTheSamePiecesInTheSameOrder() {
        List<Cut> cuts = cuts().findFirst().orElseThrow();
        assertThat(LevelPartition.of(AREA, cuts)).isEqualTo(LevelPartition.of(AREA, cuts));
    }

    /** 0.3 s is what a map of some 13 000 cells may cost while somebody waits; processor time, the best of five. */
    @Test
    void aDeckOfThirteenThousandCellsAndThreeCutsTakesUnderAThirdOfASecond() {
        Geometry deck = Fields.wkt("POLYGON((-130 50,2700 50,2700 2900,-130 2900,-130 50))");
        List<Cut> cuts = IntStream.range(0, 3)
                .mapToObj(seed -> new Cut(Fields.smooth(seed, 115, 115, 25, 0.02), 0.5))
                .toList();
        long best = IntStream.range(0, 5)
                .mapToLong(run -> processorTime(() -> LevelPartition.of(deck, cuts)))
                .min()
                .orElseThrow();
        assertThat(best * 1e-9).isLessThan(0.3);
    }

    private static long processorTime(Runnable work) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        work.run();
        return threads.getCurrentThreadCpuTime() - start;
    }

    @Test
    void noDataIsNotAbove() {
        Raster half = Fields.of(10, new double[] {1, Double.NaN});
        List<Piece> pieces =
                LevelPartition.of(Fields.wkt("POLYGON((0 0,20 0,20 10,0 10,0 0))"), List.of(new Cut(half, 0.5)));
        assertThat(pieces).extracting(p -> p.above(0)).containsExactly(true, false);
        assertThat(pieces).extracting(p -> p.polygon().getArea()).containsExactly(100.0, 100.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 50, 150, 1e9})
    void aSmallPieceJoinsTheNeighbourWithTheLongestCommonEdge(double minimum) {
        // a 10 x 10 square with 10 mm towards A, 30 mm (three sides) towards B
        Geometry small = Fields.wkt("POLYGON((0 0,10 0,10 10,0 10,0 0))");
        Geometry a = Fields.wkt("POLYGON((-50 -20,-50 30,0 30,0 10,0 0,0 -20,-50 -20))");
        Geometry b = Fields.wkt("POLYGON((0 -20,0 0,10 0,10 10,0 10,0 30,60 30,60 -20,0 -20))");
        List<Labelled<String>> regions =
                Coverage.dissolve(List.of(labelled(small, "s"), labelled(a, "A"), labelled(b, "B")), minimum);
        assertThat(regions)
                .extracting(Labelled::label)
                .containsExactly(
                        minimum < 100
                                ? new String[] {"s", "A", "B"}
                                : minimum < 1000 ? new String[] {"B", "A"} : new String[] {"B"});
    }

    /** A little damage beside more of it is not lost to the sound ground round both. */
    @Test
    void aSmallPieceJoinsTheNeighbourThatIsWantedHoweverShortTheirEdge() {
        Geometry small = Fields.wkt("POLYGON((0 0,10 0,10 10,0 10,0 0))");
        Geometry wet = Fields.wkt("POLYGON((-50 -20,-50 30,0 30,0 10,0 0,0 -20,-50 -20))");
        Geometry sound = Fields.wkt("POLYGON((0 -20,0 0,10 0,10 10,0 10,0 30,60 30,60 -20,0 -20))");
        assertThat(Coverage.dissolve(
                        List.of(labelled(small, "loose"), labelled(wet, "wet"), labelled(sound, "sound")),
                        150,
                        label -> !label.equals("sound")))
                .extracting(Labelled::label)
                .containsExactly("wet", "sound");
    }

    @Test
    void aSmallPieceWithoutANeighbourStays() {
        Geometry alone = Fields.wkt("POLYGON((0 0,1 0,1 1,0 1,0 0))");
        Geometry corner = Fields.wkt("POLYGON((1 1,2 1,2 2,1 2,1 1))");
        assertThat(Coverage.dissolve(List.of(labelled(alone, "x"), labelled(corner, "y")), 1000))
                .extracting(Labelled::label)
                .containsExactly("x", "y");
    }

    private static Labelled<String> labelled(Geometry polygon, String label) {
        return new Labelled<>((Polygon) polygon, label);
    }
}
