package corewright.drawing;

import corewright.assessment.Assessment;
import corewright.drawing.plates.Plates;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Odd faces for the tests of layout: from no region to fifteen, level and steep, long and small. */
public final class Faces {
    public static final String RECTANGLE = "POLYGON((0 -600,2400 -600,2400 600,0 600,0 -600))";
    static final String LARGE = "POLYGON((0 -1000,3600 -1000,3600 1000,0 1000,0 -1000))";
    static final String NARROW = "POLYGON((500 0,4700 0,4700 380,500 300,500 0))";
    static final String TALL = "POLYGON((-700 -1700,0 -1900,650 -1700,650 1700,0 1900,-700 1700,-700 -1700))";
    public static final String SMALL = "POLYGON((0 0,300 0,300 240,0 240,0 0))";

    private static final List<Arguments> ALL = make();

    private Faces() {}

    /** Name and plates of each face, laid out once for all tests. */
    static Stream<Arguments> all() {
        return ALL.stream();
    }

    private static List<Arguments> make() {
        return List.of(
                face("Ronja", DrawingFixture.foredeck()),
                face("none", DrawingFixture.plain(RECTANGLE, 0, 0, 0, 200)),
                face("one", DrawingFixture.plain(RECTANGLE, 2, 180, 1, 400)),
                face("twelve", DrawingFixture.plain(LARGE, 2, 0, 12, 400)),
                face("fifteen", DrawingFixture.plain(LARGE, 2, 45, 15, 260)),
                face("tiny", DrawingFixture.plain(LARGE, 2, 90, 6, 40)),
                face("steep", DrawingFixture.plain(NARROW, 82, 90, 5, 200)),
                face("tall", DrawingFixture.plain(TALL, 5, 270, 7, 220)),
                face("small", DrawingFixture.plain(SMALL, 170, 90, 2, 60)));
    }

    private static Arguments face(String name, Assessment assessment) {
        return Arguments.of(name, Plates.of(assessment));
    }
}
