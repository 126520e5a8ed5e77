package corewright.desktop.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.desktop.state.MemoryLog;
import corewright.desktop.state.Units;
import corewright.intake.SurveyFolder;
import corewright.survey.Edit;
import corewright.survey.Feature;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;

/** Drawing on the test deck of 900 x 600 mm. */
class SketchTest {
    private static final double REACH = 25;

    @SuppressWarnings("NullAway.Init") // before each test
    private MemoryLog log;

    @SuppressWarnings("NullAway.Init")
    private Sketch sketch;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        log = new MemoryLog(
                SurveyFolder.read(SurveyFolders.minimal(folder).path()).survey(), List.of());
        sketch = new Sketch("foredeck", (deed, change) -> {
            Edit edit = change.apply(log.survey());
            if (edit != null) {
                log.append(edit);
            }
        });
    }

    private Survey survey() {
        return log.survey();
    }

    private void touch(double x, double y) {
        sketch.touch(survey(), x, y, REACH);
    }

    @Test
    void touchingTheFirstCornerAgainClosesAnOpening() {
        sketch.take(Sketch.Tool.OPENING);
        sketch.name("hatch");
        touch(303, 98);
        touch(501, 102);
        touch(498, 301);
        touch(300, 99);

        assertThat(survey().face("foredeck").all(Feature.Opening.class))
                .singleElement()
                .satisfies(o -> {
                    assertThat(o.name()).isEqualTo("hatch");
                    assertThat(o.geometry().getCoordinates())
                            .as("on whole centimetres")
                            .containsExactly(
                                    new Coordinate(300, 100),
                                    new Coordinate(500, 100),
                                    new Coordinate(500, 300),
                                    new Coordinate(300, 100));
                });
    }

    @Test
    void pointsSnapToWhatIsThere() {
        assertThat(sketch.snapped(survey(), 892, 612, REACH))
                .as("the deck's corner")
                .isEqualTo(new Coordinate(900, 600));
        assertThat(sketch.snapped(survey(), 303, 9, REACH)).as("the centreline").isEqualTo(new Coordinate(300, 0));
        assertThat(sketch.snapped(survey(), 304, 206, REACH)).isEqualTo(new Coordinate(300, 210));
    }

    @Test
    void aPointIsTypedInMillimetresOrInches() {
        sketch.take(Sketch.Tool.SUPPORT);
        sketch.type("100, 200", Units.METRIC);
        sketch.type("10 20", Units.US);
        sketch.finish();

        assertThat(survey().face("foredeck").all(Feature.Support.class))
                .singleElement()
                .satisfies(s -> assertThat(s.geometry().getCoordinates())
                        .containsExactly(new Coordinate(100, 200), new Coordinate(254, 508)));
    }

    @Test
    void whatIsNoPlaceIsSaidInASentence() {
        sketch.take(Sketch.Tool.SUPPORT);
        sketch.type("here", Units.METRIC);

        assertThat(sketch.message())
                .isEqualTo("The place reads \"here\"; two numbers are expected, such as 1200, -655.");
    }

    @Test
    void aCornerOfTheOutlineIsDraggedAndTakenBack() {
        sketch.take(Sketch.Tool.MOVE);
        touch(895, 595);
        assertThat(sketch.grasp(895, 595, REACH)).isTrue();
        sketch.drag(survey(), 1003, 598, REACH);
        sketch.release();

        // 900 x 600 and a triangle of 100 x 600
        assertThat(survey().face("foredeck").outline().getArea()).isCloseTo(570_000, within(1e-6));
        log.undo();
        assertThat(survey().face("foredeck").outline().getArea()).isCloseTo(540_000, within(1e-6));
    }

    /** A drag that begins on a point by chance is one of the plan. */
    @Test
    void onlyAPointPickedBeforeMovesWithTheHand() {
        sketch.take(Sketch.Tool.MOVE);
        assertThat(sketch.grasp(900, 600, REACH)).isFalse();
        touch(895, 595);
        assertThat(sketch.grasp(0, 0, REACH)).as("another point").isFalse();
        assertThat(sketch.message()).startsWith("This point is picked");
        sketch.release();

        assertThat(survey().face("foredeck").outline().getArea()).isCloseTo(540_000, within(1e-6));
    }

    @Test
    void tooFewPointsAreSaidInGoodWords() {
        sketch.take(Sketch.Tool.DIVIDER);
        touch(100, 100);
        sketch.finish();

        assertThat(sketch.message()).isEqualTo("The divider needs at least 2 points.");
    }

    @Test
    void anEdgeThatCrossesItselfIsNotDrawn() {
        sketch.take(Sketch.Tool.OUTLINE);
        touch(0, 0);
        touch(500, 500);
        touch(500, 100);
        touch(100, 400);
        sketch.finish();

        assertThat(sketch.message()).isEqualTo("The edge crosses itself; take points back until it does not.");
        assertThat(log.canUndo()).isFalse();
    }

    @Test
    void aLoadBearingFittingIsMetalAndKeepsHolesAway() {
        sketch.take(Sketch.Tool.LOADED_FITTING);
        touch(200, 200);

        assertThat(survey().face("foredeck").all(Feature.Fitting.class)).last().satisfies(f -> {
            assertThat(f.metal()).isTrue();
            assertThat(f.loadBearing()).isTrue();
            assertThat(f.keepoutMm()).isEqualTo(60);
        });
    }

    /** By hand: 200 pixels are 1000 mm, upright on the picture and aft on the deck. */
    @Test
    void twoPointsScaleAndTurnAPicture() {
        Underlay under =
                Underlay.of(new Coordinate(50, 300), new Coordinate(50, 100), new Coordinate(400, 0), 1000, 0, false);

        assertThat(under.place(50, 300).distance(new Coordinate(400, 0))).isCloseTo(0, within(1e-9));
        assertThat(under.place(50, 100).distance(new Coordinate(1400, 0))).isCloseTo(0, within(1e-9));
        assertThat(under.place(90, 300).distance(new Coordinate(400, -200)))
                .as("right of the first point is to port when the picture's top is aft")
                .isCloseTo(0, within(1e-9));
    }

    /** The same picture under a face overhead, as it was taken from below: right of the first point is to starboard. */
    @Test
    void aPictureOfAFaceOverheadIsSeenFromBelow() {
        Underlay under =
                Underlay.of(new Coordinate(50, 300), new Coordinate(50, 100), new Coordinate(400, 0), 1000, 0, true);

        assertThat(under.place(50, 300).distance(new Coordinate(400, 0))).isCloseTo(0, within(1e-9));
        assertThat(under.place(50, 100).distance(new Coordinate(1400, 0))).isCloseTo(0, within(1e-9));
        assertThat(under.place(90, 300).distance(new Coordinate(400, 200))).isCloseTo(0, within(1e-9));
    }

    /** A half disc of 200 mm about (400, 300): its area is half of pi r squared, less what chords 1 mm inside take off. */
    @Test
    void theLastThreePointsBecomeTheArcOfACircle() {
        sketch.take(Sketch.Tool.OPENING);
        touch(400, 100);
        touch(600, 300);
        touch(400, 500);
        sketch.curve();
        List<Coordinate> arc = sketch.points();
        assertThat(arc).allSatisfy(c -> assertThat(c.distance(new Coordinate(400, 300)))
                .isCloseTo(200, within(1e-9)));
        assertThat(arc).contains(new Coordinate(600, 300)).allMatch(c -> c.x >= 400 - 1e-9);
        for (int i = 1; i < arc.size(); i++) {
            Coordinate middle =
                    new Coordinate((arc.get(i - 1).x + arc.get(i).x) / 2, (arc.get(i - 1).y + arc.get(i).y) / 2);
            assertThat(200 - middle.distance(new Coordinate(400, 300))).isBetween(0.0, Arc.SAGITTA_MM);
        }
        sketch.backOne();
        assertThat(sketch.points()).as("the curve is taken back as one").hasSize(3);

        sketch.curve();
        sketch.finish();
        assertThat(survey().face("foredeck")
                        .all(Feature.Opening.class)
                        .get(0)
                        .geometry()
                        .getArea())
                .isBetween(Math.PI * 200 * 200 / 2 * 0.99, Math.PI * 200 * 200 / 2);
    }

    @Test
    void threePointsInALineAreNoCurve() {
        sketch.take(Sketch.Tool.DIVIDER);
        touch(100, 100);
        touch(200, 100);
        sketch.curve();
        assertThat(sketch.message()).startsWith("A curve is drawn through the last three points");
        touch(300, 100);
        sketch.curve();
        assertThat(sketch.points()).hasSize(3);
        assertThat(sketch.message()).contains("in a line");
        // more than half a circle, the other way round
        assertThat(Arc.through(new Coordinate(100, 0), new Coordinate(-100, 0), new Coordinate(0, 100))
                        .orElseThrow())
                .hasSizeGreaterThan(15)
                .contains(new Coordinate(-100, 0))
                .noneMatch(c -> c.x > 1 && c.y > 1);
    }
}
