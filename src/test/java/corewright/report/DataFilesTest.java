package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.assessment.Assessment;
import corewright.report.data.AsciiGrid;
import corewright.report.data.BatchesCsv;
import corewright.report.data.BuyingListCsv;
import corewright.report.data.CsvTable;
import corewright.report.data.FindingsCsv;
import corewright.report.data.HolesCsv;
import corewright.report.data.NextReadingsCsv;
import corewright.report.data.RegionsGeoJson;
import corewright.report.data.SummaryJson;
import corewright.report.page.FileNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.impl.CoordinateArraySequence;

/** The data files say what the assessment says. */
class DataFilesTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void areasOfAFaceAddUpToItsDeck() throws IOException {
        JsonNode face = JSON.readTree(SummaryJson.text(SampleAssessment.damaged(), Map.of()))
                .get("faces")
                .get(0);

        double sum = 0;
        for (JsonNode area : face.get("area_m2")) {
            sum += area.doubleValue();
        }

        assertThat(face.get("area_m2").fieldNames())
                .toIterable()
                .containsExactly("sound", "wet", "delaminated", "wet_delaminated", "void");
        assertThat(sum).isCloseTo(face.get("deck_area_m2").doubleValue(), within(1e-9));
    }

    @Test
    void resinIsTheSumOfTheBatchesAsPrinted() throws IOException {
        Assessment assessment = SampleAssessment.damaged();

        JsonNode region = JSON.readTree(SummaryJson.text(assessment, Map.of()))
                .get("regions")
                .get(0);

        // 100.14 + 92.36 g are weighed as 100.1 + 92.4
        assertThat(region.get("resin_g").decimalValue()).isEqualByComparingTo("192.5");
        assertThat(lines(BatchesCsv.of(assessment)))
                .containsExactly(
                        "batch,region,holes,part_a_g,part_b_g,mix_at_min,work_until_min,first_rise_min,hard_at_min,kind,lift",
                        "1,R1,R1-1,100.1,35.0,0,6,7,49,planned,1",
                        "2,R1,R1-1 R1-2,92.4,32.3,8.33,14.33,15.33,57.33,planned,1");
    }

    @Test
    void aRegionThatIsNotInjectedHasNoHolesAndNothingToCover() throws IOException {
        JsonNode region = JSON.readTree(SummaryJson.text(SampleAssessment.damaged(), Map.of()))
                .get("regions")
                .get(1);

        assertThat(region.get("method").textValue()).isEqualTo("recore");
        assertThat(region.get("injection_holes").intValue()).isZero();
        assertThat(region.get("resin_g").intValue()).isZero();
        assertThat(List.of("covered_fraction", "hole_lower_bound", "hole_hex_estimate"))
                .allSatisfy(key -> assertThat(region.get(key).isNull()).as(key).isTrue());
        assertThat(region.get("architect").booleanValue()).isTrue();
        assertThat(region.get("not_offered").get("inject").textValue()).isEqualTo("It holds the mooring bollard.");
    }

    @Test
    void holesAreListedInWorkingOrder() throws IOException {
        assertThat(lines(HolesCsv.of(SampleAssessment.damaged())))
                .containsExactly(
                        "id,face,region,kind,order,x,y,diameter_mm,depth_stop_mm,reach_mm,served_l,access,push_in_mm,simulated_l,low_g,planned_g,high_g,taken_g",
                        "R1-1,foredeck,R1,injection,1,2290,530,6.4,6.5,120,0.426,,,,0.0,110.4,,",
                        "R1-2,foredeck,R1,injection,2,2650,680,6.4,6.5,120,0.426,,,,0.0,110.4,,",
                        "R1-V1,foredeck,R1,vent,3,2290,700,6.4,6.5,0,0,,,,,,,");
    }

    @Test
    void aTextThatASpreadsheetWouldRunIsMadeHarmless() throws IOException {
        assertThat(lines(FindingsCsv.of(SampleAssessment.damaged())))
                .containsExactly(
                        "severity,file,line,id,face,x,y,subject,message,effect",
                        "doubt,moisture.csv,14,'=M12,foredeck,1400,40,metal,"
                                + "\"The mooring bollard is 40 mm away, and metal raises readings.\","
                                + "It counts as an upper bound.");
    }

    @Test
    void theOtherTablesHaveTheirColumns() throws IOException {
        assertThat(lines(NextReadingsCsv.of(SampleAssessment.damaged())))
                .containsExactly("rank,face,kind,x,y,gain,gain_unit,decisions", "1,foredeck,tap,1100,-500,0.0281,m2,0");
        assertThat(lines(BuyingListCsv.of(SampleAssessment.damaged())))
                .containsExactly(
                        "item,plan,buy,unit,basis",
                        "\"epoxy-foam-240, part A\",192.5,252,g,P50 plus waste; P90 plus waste");
    }

    /** RFC 7946, 3.1.6: exterior rings counter-clockwise; and every extent carries the region's id. */
    @Test
    void featuresAreOrientedAndNamed() throws IOException {
        JsonNode features =
                JSON.readTree(RegionsGeoJson.text(SampleAssessment.damaged())).get("features");

        assertThat(features).hasSize(3 * 2 + 1);
        assertThat(features.findValuesAsText("extent"))
                .containsExactly("likely", "possible", "likely", "possible", "likely", "possible", "undecided");
        assertThat(features).extracting(f -> f.get("id").textValue()).doesNotHaveDuplicates();
        assertThat(features.get(6).get("properties").get("bay").textValue()).isEqualTo("foredeck-B1");
        for (JsonNode feature : features) {
            JsonNode ring = feature.get("geometry").get("coordinates").get(0);
            assertThat(Orientation.isCCW(sequence(ring)))
                    .as(feature.get("id").textValue())
                    .isTrue();
            assertThat(ring.get(0)).isEqualTo(ring.get(ring.size() - 1));
        }
    }

    @Test
    void theFirstRowOfAGridLiesAtTheLargestY() throws IOException {
        Path file = folder.resolve("grid.asc");

        AsciiGrid.write(
                SampleAssessment.damaged().damage().faces().get(0).surfaces().pWet(), file);

        assertThat(Files.readAllLines(file))
                .containsExactly(
                        "ncols 6",
                        "nrows 4",
                        "xllcorner 0",
                        "yllcorner -1250.5",
                        "cellsize 625",
                        "NODATA_value -9999",
                        "1.8 1.9 2 2.1 2.2 2.3",
                        "1.2 1.3 1.4 1.5 1.6 1.7",
                        "0.6 0.7 0.8 0.9 1 1.1",
                        "-9999 0.1 0.2 0.3 0.4 0.5");
    }

    @Test
    void facesWithOddNamesGetSafeFilesOfTheirOwn() {
        assertThat(FileNames.of(List.of("cockpit sole", "cockpit/sole", "../x", "Bug, außen", "..."))
                        .values())
                .containsExactly("cockpit-sole", "cockpit-sole-2", "x", "Bug-außen", "face");
    }

    private List<String> lines(CsvTable table) throws IOException {
        Path file = folder.resolve("table.csv");
        table.write(file);
        return Files.readAllLines(file);
    }

    private static CoordinateSequence sequence(JsonNode ring) {
        Coordinate[] places = new Coordinate[ring.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(
                    ring.get(i).get(0).doubleValue(), ring.get(i).get(1).doubleValue());
        }
        return new CoordinateArraySequence(places);
    }
}
