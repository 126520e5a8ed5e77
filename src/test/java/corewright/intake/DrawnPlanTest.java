package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import corewright.SurveyFolders;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feature.Divider;
import corewright.survey.Feature.Fitting;
import corewright.survey.Feature.Opening;
import corewright.survey.Feature.Support;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Orientation;

/** The DXF files of the resources were written by ezdxf 1.4.4, a Python library, release 12 and release 2000. */
class DrawnPlanTest {
    /** A deck 3 m long and 2 m wide with a half circle of 1 m radius at its aft end. */
    private static final double STADIUM_MM2 = 6e6 + Math.PI * 1e6 / 2;

    /** Chords lie within 0.5 mm of their arc, so an area is short of it by at most that along the arc. */
    private static double chords(double arcMm) {
        return 0.5 * arcMm;
    }

    private static SurveyFolders plan(Path dir, String plan) {
        return SurveyFolders.minimal(dir)
                .with("survey.yaml", SurveyFolders.YAML.replace("plan: plan.csv", "plan: " + plan))
                .without("plan.csv");
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = DrawnPlanTest.class.getResourceAsStream("/drawing/" + name)) {
            return Objects.requireNonNull(in).readAllBytes();
        }
    }

    private static SurveyFolders svg(Path dir, String how, String body) {
        return plan(dir, "{file: deck.svg" + how + "}")
                .with("deck.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\">" + body + "</svg>");
    }

    private static Face face(SurveyFolders folder) {
        return Reads.read(folder).survey().face("foredeck");
    }

    @Test
    void aLayerMayGiveACoaming(@TempDir Path dir) throws IOException {
        String layers =
                "layers: {HATCHES: {kind: opening, edge: coaming, coaming_height_mm: 60, coaming_thickness_mm: 8},"
                        + " BEAMS: support, cleats: fitting, DIMS: none}";
        SurveyFolders folder =
                plan(dir, "{file: deck.dxf, units: m, " + layers + "}").with("deck.dxf", resource("deck-r12.dxf"));

        assertThat(face(folder).all(Opening.class))
                .extracting(Opening::coaming)
                .containsExactly(Optional.of(new Feature.Coaming(60, 8, Optional.empty())));
    }

    @Test
    void readsReleaseTwelveWithLayersOfItsOwnInMetres(@TempDir Path dir) throws IOException {
        String layers = "layers: {HATCHES: opening, BEAMS: {kind: support, edge: clamped}, cleats: {kind: fitting,"
                + " metal: yes, keepout: 80}, DIMS: none}";
        SurveyFolders folder =
                plan(dir, "{file: deck.dxf, units: m, " + layers + "}").with("deck.dxf", resource("deck-r12.dxf"));

        Face face = face(folder);

        assertThat(face.outline().getArea()).isCloseTo(STADIUM_MM2, within(chords(Math.PI * 1000)));
        assertThat(Orientation.isCCW(face.outline().getExteriorRing().getCoordinateSequence()))
                .isTrue();
        assertThat(face.all(Opening.class)).singleElement().satisfies(o -> assertThat(
                        o.geometry().getArea())
                .isCloseTo(250_000 + Math.PI * 250 * 250 / 2, within(chords(Math.PI * 250))));
        assertThat(face.all(Support.class)).singleElement().satisfies(s -> {
            assertThat(s.geometry().toText()).isEqualTo("LINESTRING (2000 -1000, 2000 0, 2000 1000)");
            assertThat(s.edge()).isEqualTo(EdgeSupport.CLAMPED);
        });
        assertThat(face.all(Fitting.class)).hasSize(2).allSatisfy(f -> {
            assertThat(f.metal()).isTrue();
            assertThat(f.keepoutMm()).isEqualTo(80);
        });
        assertThat(Reads.findings(folder))
                .filteredOn(f -> f.startsWith("deck.dxf"))
                .containsExactly(
                        "deck.dxf:1286: deck.dxf: A line of layer \"HATCHES\", entity 10 is not closed: 200 mm from end to"
                                + " end, the last at (2700, 200) mm. It is left out of the plan.",
                        "deck.dxf:1304: deck.dxf: Words name no feature: \"3000\" in layer \"BEAMS\", entity 11."
                                + " It is left out of the plan.");
        assertThat(face.all(Fitting.class)).extracting(Feature::name).containsExactly("CLEATS 1", "CLEATS 2");
    }

    /** A block with an attribute, a word in an opening, an ellipse, and a layer of which nothing is wanted. */
    @Test
    void blocksEllipsesAndWordsNameWhatStandsThere(@TempDir Path dir) {
        String layers = "layers: {deck: outline, cleats: {kind: fitting, metal: yes}, hatches: opening, notes: none}";
        String block =
                "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nCLEAT\n10\n5\n20\n5\n0\nCIRCLE\n8\n0\n10\n5\n20\n5\n40\n10\n"
                        + "0\nENDBLK\n0\nENDSEC\n";
        String deck =
                "0\nLWPOLYLINE\n8\ndeck\n70\n1\n10\n0\n20\n0\n10\n3000\n20\n0\n10\n3000\n20\n2000\n10\n0\n20\n2000\n";
        String insert = "0\nINSERT\n8\ncleats\n66\n1\n2\nCLEAT\n10\n400\n20\n300\n41\n2\n42\n2\n50\n90\n"
                + "0\nATTRIB\n1\nbow cleat\n2\nNAME\n0\nSEQEND\n"
                + "0\nINSERT\n8\ncleats\n2\nCLEAT\n10\n400\n20\n1700\n";
        String ellipse =
                "0\nELLIPSE\n8\nhatches\n10\n1500\n20\n1000\n11\n300\n21\n0\n40\n0.5\n41\n0\n42\n6.283185307\n";
        String words = "0\nTEXT\n8\nhatches\n10\n1450\n20\n1000\n1\nfore hatch\n"
                + "0\nTEXT\n8\nnotes\n10\n1450\n20\n990\n1\ndrawn by hand\n0\nHATCH\n8\nnotes\n";
        String text = block + "0\nSECTION\n2\nENTITIES\n" + deck + insert + ellipse + words + "0\nENDSEC\n0\nEOF\n";
        SurveyFolders folder = plan(dir, "{file: deck.dxf, units: mm, laminate: deck, " + layers + "}")
                .with("deck.dxf", text);

        Face face = face(folder);

        assertThat(face.all(Fitting.class)).extracting(Feature::name).containsExactly("bow cleat", "cleats 2");
        Fitting first = face.all(Fitting.class).get(0);
        assertThat(first.geometry().getCentroid().getX()).isCloseTo(400, within(1e-6));
        assertThat(first.geometry().getEnvelopeInternal().getWidth())
                .isCloseTo(40, within(2.0)); // chords 0.5 from the curve, twice as large
        assertThat(face.all(Opening.class)).singleElement().satisfies(o -> {
            assertThat(o.name()).isEqualTo("fore hatch");
            // pi a b, less the chords' share
            assertThat(o.geometry().getArea()).isCloseTo(Math.PI * 300 * 150, within(0.5 * Math.PI * 600));
        });
        assertThat(Reads.findings(folder)).noneMatch(f -> f.startsWith("deck.dxf"));
    }

    @Test
    void readsRelease2000WithBulgesAndItsOwnUnit(@TempDir Path dir) throws IOException {
        SurveyFolders folder = plan(dir, "deck.dxf").with("deck.dxf", resource("deck-r2000.dxf"));
        folder.with("survey.yaml", folder.text("survey.yaml").replace("length: mm", "length: cm"));

        Face face = face(folder);

        assertThat(face.outline().getArea()).isCloseTo(STADIUM_MM2, within(chords(Math.PI * 1000)));
        assertThat(face.all(Opening.class).get(0).geometry().getArea())
                .isCloseTo(Math.PI * 250 * 250, within(chords(Math.PI * 500)));
    }

    @Test
    void turnsTheDrawingAboutTheDatum(@TempDir Path dir) {
        // The bow lies to the right, so aft is to the left; the datum is the stem at (9, 3).
        String how = ", units: m, origin: [9, -3], aft_deg: 180";
        SurveyFolders folder = svg(
                dir,
                how,
                "<polygon id='outline' points='0,2 9,3 0,4'/><line id='support' x1='5' y1='2.6' x2='5' y2='3.4'/>");

        Face face = face(folder);

        assertThat(face.outline().getEnvelopeInternal().toString()).isEqualTo("Env[0.0 : 9000.0, -1000.0 : 1000.0]");
        // what lies above the middle line in the picture lies below it once the picture is turned half round
        assertThat(face.all(Support.class).get(0).geometry().getCoordinates()[0].y)
                .isCloseTo(-400, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<path id='opening' d='M100,100 h100 v100 H100 Z'/>|10000|0",
                "<path id='opening' d='m100 100 100 0 0 100-100 0z'/>|10000|0",
                "<path id='opening' d='M200,100 A50,50 0 1 1 100,100 A50,50 0 0 1 200,100 Z'/>|7853.98|160",
                "<path id='opening' d='M100,100 C100,155.228 144.772,200 200,200 L200,100Z'/>|7853.98|30",
                "<path id='opening' d='M100 100 Q150 200 200 100 z'/>|3333.33|30",
                "<rect id='opening' x='100' y='100' width='100' height='100' rx='20'/>|9656.64|63",
                "<circle id='opening' cx='200' cy='200' r='50'/>|7853.98|158",
                "<ellipse id='opening' cx='200' cy='200' rx='50' ry='25'/>|3926.99|120",
                "<g id='opening' transform='translate(100,100) scale(2)'><rect id='a' width='50' height='50'/></g>|10000|1e-6",
                "<g transform='rotate(30 300 300)'><g id='opening'><polygon points='300,300 400,300 400,400'/></g></g>|5000|1e-6",
                "<g transform='matrix(1 0 0.5 1 10 20)'><rect id='opening-2' x='100' y='100' width='100' height='100'/></g>|10000|1e-6",
            })
    void readsEveryShapeOfSvgUnderItsTransforms(String shape, double areaMm2, double tolerance, @TempDir Path dir) {
        SurveyFolders folder = svg(dir, "", "<rect id='outline' width='900' height='600'/>" + shape);

        List<Opening> openings = face(folder).all(Opening.class);

        assertThat(openings)
                .singleElement()
                .satisfies(o -> assertThat(o.geometry().getArea()).isCloseTo(areaMm2, within(tolerance + 1e-2)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M100,100 h100 X5|found no path of SVG from character 15 on",
                "M0,0 A5,5 0 2 1 3 3|found no path of SVG from character 13 on",
                "L10,10 20,20|expected the path to begin with M",
                "''|expected something drawn",
                "M1e12,0 5,5|expected numbers within 1e9",
            })
    void aPathThatIsNoneIsAFindingWithItsPlace(String path, String problem, @TempDir Path dir) {
        SurveyFolders folder =
                svg(dir, "", "<rect id='outline' width='900' height='600'/><path id='opening' d='" + path + "'/>");

        assertThat(Reads.findings(folder)).first().asString().contains("entity 3 stands a path, " + problem);
    }

    /** By a reader that went back and forth 100 000 commas took over a minute. */
    @Test
    void aTransformOfCommasIsSoonRefused(@TempDir Path dir) {
        String commas = "translate(1" + ",".repeat(100_000) + "2";
        SurveyFolders folder = svg(
                dir,
                "",
                "<rect id='outline' width='900' height='600'/><rect id='opening' transform='" + commas
                        + "' x='100' y='100' width='50' height='50'/>");

        assertTimeout(
                Duration.ofSeconds(10),
                () -> assertThat(Reads.findings(folder)).first().asString().contains("entity 3 stands a rect"));
    }

    @Test
    void joinsLinesEndToEndButNotWhereThreeMeet(@TempDir Path dir) {
        String outline =
                "<g id='outline'><line x1='0' y1='0' x2='900' y2='0.4'/><line x1='900' y1='600' x2='900' y2='0'/>"
                        + "<polyline points='0,0.3 0,600 900,600.5'/></g>";
        String dividers = "<g id='divider'><line x1='300' y1='0' x2='300' y2='300'/><line x1='300' y1='300' x2='300'"
                + " y2='600'/><line x1='300' y1='300' x2='500' y2='300'/></g>";

        Face face = face(svg(dir, "", outline + dividers));

        assertThat(face.outline().getArea()).isCloseTo(540_000, within(900.0)); // a millimetre along its sides
        assertThat(face.all(Divider.class)).hasSize(3);
    }

    @Test
    void aPolylineWithoutCornersIsAFinding(@TempDir Path dir) {
        SurveyFolders folder = plan(dir, "[plan.csv, deck.dxf]").with("plan.csv", SurveyFolders.PLAN);
        folder.with("deck.dxf", "0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n8\nopening\n70\n1\n0\nENDSEC\n0\nEOF\n");

        assertThat(Reads.findings(folder))
                .containsExactly(
                        "deck.dxf:6: deck.dxf: A line of layer \"opening\", entity 1 has only 0 points. It is left"
                                + " out of the plan.");
    }

    @Test
    void groupsAreLayersAndIdsAreNames(@TempDir Path dir) {
        Face face = face(svg(
                dir,
                "",
                "<rect id='outline' width='900' height='600'/><g id='opening'><rect id='fore hatch' x='9' y='9' width='50'"
                        + " height='50'/></g>"));

        assertThat(face.features()).extracting(Feature::name).containsExactly("fore hatch");
    }

    @Test
    void opensNothingOutsideTheFile(@TempDir Path dir) {
        SurveyFolders folder = svg(dir, "", "");
        folder.with(
                "deck.svg",
                "<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/hostname\"><!ENTITY a \"aaaaaaaaaa\">]><svg"
                        + " xmlns='http://www.w3.org/2000/svg'><rect id='outline' width='900' height='600'/><text"
                        + " id='opening'>&e;&a;</text></svg>");

        assertThat(Reads.complaints(folder)).allSatisfy(c -> assertThat(c).doesNotContain("aaaa"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "deck.dxf|hello|deck.dxf: found no section ENTITIES, expected an ASCII DXF drawing",
                "deck.dxf|0\\nSECTION\\nx\\n2|deck.dxf:3: found \"x\", expected a group code, a whole number",
                "deck.dxf|0\\nSECTION\\n2\\nENTITIES\\n0\\nLINE\\n10\\n1e308\\n|deck.dxf:8: found \"1e308\", expected a number within 1e9",
                "deck.dxf|0\\nSECTION\\n2\\nENTITIES\\n0\\nCIRCLE\\n10\\n1\\n20\\n1\\n40\\n-2\\n|deck.dxf:6: found a radius of -2.0, expected more than 0",
                "deck.svg|<svg><rect|deck.svg:1: this is not XML, expected an SVG drawing",
                "deck.svg|<html/>|deck.svg:1: found \"<html>\", expected an SVG drawing",
            })
    void whatIsNoDrawingIsRefusedWithItsPlace(String file, String text, String complaint, @TempDir Path dir) {
        SurveyFolders folder = plan(dir, file).with(file, text.replace("\\n", "\n"));

        assertThat(Reads.complaints(folder)).contains(complaint);
    }

    private static final String HULL =
            "0\nLWPOLYLINE\n8\nOUTLINE\n70\n1\n10\n0\n20\n0\n10\n900\n20\n0\n10\n900\n20\n600\n10\n0\n20\n600\n";

    private static SurveyFolders dxf(Path dir, String entities, String end) {
        return plan(dir, "{file: deck.dxf}").with("deck.dxf", "0\nSECTION\n2\nENTITIES\n" + HULL + entities + end);
    }

    /** A spline, an insert and words nobody asked for: one finding a layer, and one for words. */
    @Test
    void whatStandsOnLayersOfNoKnownKindIsSaid(@TempDir Path dir) {
        SurveyFolders folder = dxf(
                dir,
                "0\nSPLINE\n8\nTRIM\n70\n8\n0\nINSERT\n8\nTRIM\n2\nNONE\n10\n1\n20\n1\n0\n3DFACE\n8\nTEAK\n"
                        + "0\nTEXT\n8\nTRIM\n10\n50\n20\n50\n1\ncaulked\n",
                "0\nENDSEC\n0\nEOF\n");

        assertThat(Reads.findings(folder))
                .contains(
                        "deck.dxf:28: deck.dxf: 2 things, from layer \"TRIM\", entity 2 (SPLINE) on, are of no known kind."
                                + " They are left out of the plan.",
                        "deck.dxf:44: deck.dxf: What stands in layer \"TEAK\", entity 4 (3DFACE) is of no known kind."
                                + " It is left out of the plan.",
                        "deck.dxf:48: deck.dxf: Words name no feature: \"caulked\" in layer \"TRIM\", entity 5."
                                + " It is left out of the plan.");
    }

    @Test
    void aDrawingCutShortIsRefusedAndOneWithoutItsEndIsSaid(@TempDir Path dir, @TempDir Path second) {
        assertThat(Reads.complaints(dxf(dir, "", "")))
                .contains("deck.dxf:27: the file ends inside its section ENTITIES: it was cut short, copy it again");
        assertThat(Reads.findings(dxf(second, "", "0\nENDSEC\n")))
                .contains("deck.dxf: deck.dxf ends without the mark EOF: it may have been cut short."
                        + " What stands before the end is used.");
    }

    /** Refused before each is compared with each. */
    @Test
    void moreFeaturesThanAnyPlanHasAreRefused(@TempDir Path dir) {
        String fittings = "0\nPOINT\n8\nFITTING\n10\n500\n20\n400\n".repeat(90_000);

        assertThat(Reads.complaints(dxf(dir, fittings, "0\nENDSEC\n0\nEOF\n")))
                .contains("deck.dxf:28: expected at most 2000 features in the plan");
    }
}
