package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feature.Access;
import corewright.survey.Feature.Coaming;
import corewright.survey.Feature.Disturbance;
import corewright.survey.Feature.Divider;
import corewright.survey.Feature.Fitting;
import corewright.survey.Feature.LaminateArea;
import corewright.survey.Feature.Opening;
import corewright.survey.Feature.Solid;
import corewright.survey.Feature.Support;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Orientation;

class PlanReaderTest {
    private static final String OUTLINE = "foredeck,outline,,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",,,,,deck\n";
    private static final String HEADER = "face,kind,name,wkt,metal,load_bearing,keepout,edge,laminate\n";

    private static final String COAMING_HEADER =
            "face,kind,wkt,edge,laminate,coaming_height_mm,coaming_thickness_mm,coaming_skin\n";

    private static SurveyFolders plan(Path dir, String rows) {
        return SurveyFolders.minimal(dir).with("plan.csv", HEADER + rows);
    }

    @Test
    void readsEveryKind(@TempDir Path dir) {
        SurveyFolders folder = plan(dir, OUTLINE.replace(",,deck", ",clamped,deck") + """
                        foredeck,opening,hatch,"POLYGON((100 100,200 100,200 200,100 200,100 100))",,,,,
                        foredeck,opening,port,"POLYGON((300 100,400 100,400 200,300 200,300 100))",,,,simple-hard,
                        foredeck,divider,strip,"LINESTRING(450 0,450 600)",,,,,
                        foredeck,support,beam,"MULTILINESTRING((0 300,450 300),(450 300,900 300))",,,,,
                        foredeck,fitting,cleat,POINT(700 500),yes,TRUE,25,,
                        foredeck,fitting,rail,"MULTIPOINT((10 10),(890 10))",,,,,
                        foredeck,solid,pad,"MULTIPOLYGON(((600 0,650 0,650 50,600 50,600 0)),((0 500,50 500,50 550,0 550,0 500)))",,,,,
                        foredeck,laminate,repair,"POLYGON((700 100,800 100,800 200,700 100))",,,,,deck
                        foredeck,disturbance,tank,"POLYGON((500 400,600 400,600 500,500 400))",,,,,
                        foredeck,access,cut,"POINT(50 50)",,,,,
                        """);

        Face face = Reads.read(folder).survey().face("foredeck");

        assertThat(face.edge()).isEqualTo(EdgeSupport.CLAMPED);
        assertThat(face.all(Opening.class))
                .extracting(Opening::edge)
                .containsExactly(EdgeSupport.FREE, EdgeSupport.SIMPLE_HARD);
        assertThat(face.all(Divider.class)).hasSize(1);
        assertThat(face.all(Support.class)).extracting(Feature::name).containsExactly("beam", "beam");
        assertThat(face.all(Solid.class)).hasSize(2);
        assertThat(face.all(LaminateArea.class))
                .extracting(LaminateArea::laminate)
                .containsExactly("deck");
        assertThat(face.all(Disturbance.class)).hasSize(1);
        assertThat(face.all(Access.class)).hasSize(1);
        Fitting cleat = face.all(Fitting.class).get(0);
        assertThat(cleat.metal() && cleat.loadBearing()).isTrue();
        assertThat(cleat.keepoutMm()).isEqualTo(25);
        Fitting rail = face.all(Fitting.class).get(1);
        assertThat(rail.metal() || rail.loadBearing()).isFalse();
        assertThat(rail.keepoutMm()).isEqualTo(60);
    }

    @Test
    void readsCoamingsOfOpenings(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with(
                        "plan.csv",
                        COAMING_HEADER
                                + "foredeck,outline,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",,deck,,,\n"
                                + hatch(100, "coaming,,60,8,")
                                + hatch(300, "Coaming,,2 1/2 in,0.6 cm,carbon-epoxy")
                                + hatch(500, ",,,,"));

        List<Opening> openings = Reads.read(folder).survey().face("foredeck").all(Opening.class);

        assertThat(openings).extracting(Opening::edge).containsOnly(EdgeSupport.FREE);
        assertThat(openings)
                .extracting(Opening::coaming)
                .containsExactly(
                        Optional.of(new Coaming(60, 8, Optional.empty())),
                        Optional.of(new Coaming(63.5, 6, Optional.of("carbon-epoxy"))),
                        Optional.empty());
    }

    @Test
    void anAccessIsAsLargeAsItsShapeOrDiameter(@TempDir Path dir) {
        String plan = "face,kind,wkt,laminate,diameter_mm\n"
                + "foredeck,outline,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",deck,\n"
                + "foredeck,access,POINT(300 200),,40\n"
                + "foredeck,access,POINT(500 200),,2 in\n"
                + "foredeck,access,POINT(700 200),,\n";
        List<Access> accesses = Reads.read(SurveyFolders.minimal(dir).with("plan.csv", plan))
                .survey()
                .face("foredeck")
                .all(Access.class);
        assertThat(accesses)
                .extracting(
                        a -> Math.rint(10 * a.geometry().getEnvelopeInternal().getWidth()) / 10)
                .containsExactly(40.0, 50.8, 0.0);
    }

    @Test
    void saysWhatIsWrongWithTheSizeOfAnAccess(@TempDir Path dir) {
        String plan = "face,kind,wkt,laminate,diameter_mm\n"
                + "foredeck,outline,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",deck,\n"
                + "foredeck,access,POINT(300 200),,-4\n"
                + "foredeck,access,\"LINESTRING(500 200,600 200)\",,40\n"
                + "foredeck,fitting,POINT(700 200),,40\n";
        assertThat(Reads.complaints(SurveyFolders.minimal(dir).with("plan.csv", plan)))
                .containsExactly(
                        "plan.csv:3: diameter_mm: found \"-4\", expected a length from 1 to 1000 mm",
                        "plan.csv:4: diameter_mm: found \"40\", expected nothing, as the drawn shape has its size",
                        "plan.csv:5: diameter_mm: found \"40\", expected nothing, as only an access has one");
    }

    @Test
    void saysWhatIsWrongWithACoaming(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with(
                        "plan.csv",
                        COAMING_HEADER
                                + "foredeck,outline,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",coaming,deck,,,\n"
                                + hatch(100, "coaming,,,8,")
                                + hatch(300, "coaming,,-60,tall,oak")
                                + hatch(500, "free,,60,,")
                                + "foredeck,support,\"LINESTRING(0 400,900 400)\",coaming,,60,,\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "plan.csv:2: edge: found \"coaming\", expected simple, simple-hard, clamped or free",
                        "plan.csv:3: coaming_height_mm: found nothing, expected a length in mm",
                        "plan.csv:4: coaming_height_mm: found \"-60\", expected a length from 0.01 to 1000 mm",
                        "plan.csv:4: coaming_thickness_mm: found \"tall\", expected a length in mm",
                        "plan.csv:4: coaming_skin: found \"oak\", expected carbon-epoxy, e-glass-epoxy or e-glass-polyester",
                        "plan.csv:5: coaming_height_mm: found \"60\", expected nothing, as only an opening whose edge is"
                                + " coaming has one",
                        "plan.csv:6: edge: found \"coaming\", expected simple, simple-hard, clamped or free",
                        "plan.csv:6: coaming_height_mm: found \"60\", expected nothing, as only an opening whose edge is"
                                + " coaming has one");
    }

    private static String hatch(int x, String rest) {
        return String.format(
                Locale.ROOT,
                "foredeck,opening,\"POLYGON((%d 100,%d 100,%d 200,%d 200,%d 100))\",%s%n",
                x,
                x + 100,
                x + 100,
                x,
                x,
                rest);
    }

    @Test
    void turnsEveryOutlineTheSameWayRound(@TempDir Path dir) {
        SurveyFolders folder = plan(dir, OUTLINE.replace("900 0,900 600,0 600", "0 600,900 600,900 0"));

        Face face = Reads.read(folder).survey().face("foredeck");

        assertThat(Orientation.isCCW(face.outline().getExteriorRing().getCoordinateSequence()))
                .isTrue();
        assertThat(face.outline().getArea()).isEqualTo(540_000);
    }

    @Test
    void geometryAndKeepoutAreInTheSurveysUnit(@TempDir Path dir) {
        SurveyFolders folder = plan(
                        dir,
                        "foredeck,outline,,\"POLYGON Z((0 0 1,36 0 1,36 24 1,0 24 1,0 0 1))\",,,,,deck\n"
                                + "foredeck,fitting,,POINT(10 10),,,2,,\n")
                .replacing("survey.yaml", "length: mm", "length: in");

        Face face = Reads.read(folder).survey().face("foredeck");

        // 36 x 24 in; tolerance: rounding of doubles
        assertThat(face.outline().getArea()).isCloseTo(36 * 24 * 645.16, within(1e-6));
        assertThat(face.all(Fitting.class).get(0).keepoutMm()).isEqualTo(50.8);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "opening|POLYGON((0 0,9 0,9 9,0 9))|found a ring that is not closed, expected its last point to repeat its first",
                "opening|POLYGON((0 0,9 9,9 0,0 9,0 0))|found an outline that crosses or touches itself near (4.5 4.5), expected one that does not",
                "opening|POINT(1 1)|found a POINT, expected a POLYGON for kind opening",
                "divider|POLYGON((0 0,9 0,9 9,0 0))|found a POLYGON, expected a LINESTRING for kind divider",
                "support|LINESTRING(0 0)|found too few points, expected at least 2 for a line and 4 for a ring",
                "support|LINESTRING(5 5,5 5)|found too few different points near (5 5)",
                "solid|POLYGON EMPTY|found an empty geometry",
                "fitting||found nothing, expected well-known text such as POINT(1200 350)",
                "fitting|POINT(1200)|found \"POINT(1200)\", expected well-known text such as POLYGON((0 0,900 0,900 600,0 0)); Expected number but found ')' (line 1)",
                "fitting|CIRCLE(1 2 3)|found \"CIRCLE(1 2 3)\", expected well-known text such as POLYGON((0 0,900 0,900 600,0 0)); Unknown geometry type: CIRCLE (line 1)",
                "fitting|POINT(1 2,3 4)|found \"POINT(1 2,3 4)\", expected one place in a POINT",
                "fitting|POINT(1 2) POINT(3 4)|found \"POINT(3 4)\" after the geometry, expected one geometry and nothing else",
                "fitting|POINT(1 2) starboard|found \"starboard\" after the geometry, expected one geometry and nothing else",
                "fitting|POINT(NaN 1)|found a point (NaN 1.0), expected coordinates within 1 km",
                "fitting|POINT(1e308 1)|found a point (1.0E308 1.0), expected coordinates within 1 km",
                "opening|POLYGON((2000 0,2009 0,2009 9,2000 0))|found an opening that does not touch face \"foredeck\"",
                "opening|POLYGON((0 0,99 0,99 99,0 99,0 0),(9 9,19 9,19 19,9 9))|found an opening with deck inside it, expected an area without a hole",
                "opening|POLYGON((-1 -1,901 -1,901 601,-1 601,-1 -1))|the openings leave nothing of face \"foredeck\""
            })
    void saysWhatIsWrongWithAGeometry(String kind, String wkt, String problem, @TempDir Path dir) {
        String cell = wkt == null ? "" : wkt;
        SurveyFolders folder = plan(dir, OUTLINE + "foredeck," + kind + ",,\"" + cell + "\",,,,,\n");

        int line = problem.startsWith("the openings") ? 2 : 3;
        assertThat(Reads.complaints(folder)).containsExactly("plan.csv:" + line + ": wkt: " + problem);
    }

    @Test
    void saysWhatIsWrongWithAnOutline(@TempDir Path dir) {
        SurveyFolders folder = plan(
                        dir,
                        OUTLINE
                                + OUTLINE
                                + "cabin,outline,,\"POLYGON((0 0,9 0,9 9,0 0))\",,,,,deck\n"
                                + "side,outline,,\"POLYGON((0 0,900 0,900 900,0 0),(500 50,600 50,600 90,500 50))\",,,,,deck\n"
                                + "sole,outline,,\"MULTIPOLYGON(((0 0,9 0,9 9,0 0)),((20 0,29 0,29 9,20 0)))\",,,,,deck\n")
                .replacing("survey.yaml", "faces:", "faces:\n  - { name: side }\n  - { name: sole }")
                .with("moisture.csv", "x,y,value,face\n1,1,7,foredeck\n")
                .with("taps.csv", "x,y,sound,face\n")
                .with("probes.csv", "x,y,void_depth,face\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "plan.csv:3: kind: found a second outline of face \"foredeck\", the first is at plan.csv:2",
                        "plan.csv:4: face: found \"cabin\", expected side, sole or foredeck",
                        "plan.csv:5: wkt: found an outline with a hole, expected the hole in a row of kind opening",
                        "plan.csv:6: wkt: found 2 polygons, expected one outline for a face");
    }

    @Test
    void anOutlineTakesTheOnlyLaminate(@TempDir Path dir) {
        SurveyFolders folder = plan(dir, OUTLINE.replace("deck\n", "\n"));

        assertThat(Reads.read(folder).survey().face("foredeck").laminate()).isEqualTo("deck");

        folder.adding(
                "survey.yaml",
                "  - { name: side, outer_skin_mm: 3, core_mm: 9, inner_skin_mm: 2, skin: e-glass-epoxy, core: pvc-80 }\n");
        assertThat(Reads.complaints(folder))
                .containsExactly("plan.csv:2: laminate: found nothing, expected deck or side");
    }

    @Test
    void refusesTooManyPointsDeepNestingAndAFaceTooLargeToMap(@TempDir Path dir) {
        String many = IntStream.range(0, 100_001).mapToObj(i -> i + " 1").collect(Collectors.joining(","));
        SurveyFolders folder = plan(
                dir,
                OUTLINE.replace("900", "900000").replace("600", "600000")
                        + "foredeck,support,,\"LINESTRING(" + many + ")\",,,,,\n"
                        + "foredeck,fitting,,\"" + "GEOMETRYCOLLECTION(".repeat(20_000) + "\",,,,,\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "plan.csv:2: wkt: the face measures 900000 x 600000 mm, which is too large at a cell of 25 mm:"
                                + " check units.length, or set numerics.cell_mm",
                        "plan.csv:3: wkt: found more than 20000 points, expected fewer: simplify the drawing",
                        "plan.csv:4: wkt: brackets are nested more than 8 deep");
    }

    @Test
    void notesWhatLiesOutsideAndAFaceOfOddSize(@TempDir Path dir) {
        SurveyFolders folder = plan(
                        dir,
                        "foredeck,outline,,\"POLYGON((0 0,90 0,90 60,0 60,0 0))\",,,,,deck\n"
                                + "foredeck,fitting,winch,POINT(2000 0),,,,,\n"
                                + "foredeck,support,,\"LINESTRING(90.5 0,90.5 60)\",,,,,\n")
                .with("moisture.csv", "x,y,value\n");

        assertThat(Reads.findings(folder))
                .contains(
                        "survey.yaml: The outline of foredeck measures 90 x 60 mm: is the plan in centimetres or inches?"
                                + " Check units in survey.yaml. Every area and volume rests on it.",
                        "plan.csv:3: The fitting \"winch\" lies outside the outline of foredeck. It has no effect on the"
                                + " face.")
                .noneMatch(f -> f.startsWith("plan.csv:4"));
    }
}
