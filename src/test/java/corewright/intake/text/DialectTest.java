package corewright.intake.text;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.Reads;
import corewright.survey.Moisture;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The same three readings however a spreadsheet wrote them. */
class DialectTest {
    private static final String PLAIN = "id,x,y,value,note\nM1,100.5,200,12.5,dry\nM2,300,200.25,40,\nM3,500,200,7,\n";

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] marked(String text, Charset charset) {
        return ("\uFEFF" + text).getBytes(charset);
    }

    static Stream<Arguments> files() {
        String semicolons = "id;x;y;value;note\nM1;100,5;200;12,5;dry\nM2;300;200,25;40;\nM3;500;200;7;\n";
        return Stream.of(
                Arguments.of("as is", utf8(PLAIN)),
                Arguments.of("semicolons and decimal commas", utf8(semicolons)),
                Arguments.of("semicolons and decimal dots", utf8(PLAIN.replace(',', ';'))),
                Arguments.of("tabs", utf8(PLAIN.replace(',', '\t'))),
                Arguments.of("tabs and decimal commas", utf8(semicolons.replace(';', '\t'))),
                Arguments.of("the separator named", utf8("sep=;\n" + semicolons)),
                Arguments.of(
                        "quoted decimal commas",
                        utf8("id,x,y,value\nM1,\"100,5\",200,\"12,5\"\nM2,300,\"200,25\",40\nM3,500,200,7\n")),
                Arguments.of("byte-order mark", marked(PLAIN, StandardCharsets.UTF_8)),
                Arguments.of("UTF-16LE with mark", marked(PLAIN, StandardCharsets.UTF_16LE)),
                Arguments.of("UTF-16BE with mark", marked(PLAIN, StandardCharsets.UTF_16BE)),
                Arguments.of("UTF-16LE without mark", PLAIN.getBytes(StandardCharsets.UTF_16LE)),
                Arguments.of("UTF-16BE without mark", PLAIN.getBytes(StandardCharsets.UTF_16BE)),
                Arguments.of("Latin-1", PLAIN.replace("dry", "d\u00FCrr").getBytes(StandardCharsets.ISO_8859_1)),
                Arguments.of("CRLF", utf8(PLAIN.replace("\n", "\r\n"))),
                Arguments.of("CR", utf8(PLAIN.replace('\n', '\r'))),
                Arguments.of("blank lines", utf8("\n\n" + PLAIN.replace("\n", "\n,,,,\n\n"))),
                Arguments.of("no last line ending", utf8(PLAIN.strip())),
                Arguments.of(
                        "header in capitals with spaces", utf8(PLAIN.replace("id,x,y,value", " ID , X,Y , Value "))),
                Arguments.of("all quoted", utf8(PLAIN.replaceAll("([^,\n]+)", "\"$1\""))),
                Arguments.of(
                        "columns in another order",
                        utf8("value,y,x,id\n12.5,200,100.5,M1\n40,200.25,300,M2\n7,200,500,M3\n")),
                Arguments.of(
                        "without ids", utf8(PLAIN.replaceAll("M[1-3],", ",").replaceAll("M[1-3],", ","))),
                Arguments.of("empty trailing column", utf8(PLAIN.replace("\n", ",\n"))),
                Arguments.of("spaces around cells", utf8(PLAIN.replace(",", " , "))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void readsTheSameReadings(String name, byte[] file, @TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).with("moisture.csv", file);

        List<Moisture> read = Reads.read(folder).survey().readings().moisture();

        assertThat(read).extracting(m -> m.spot().xMm()).containsExactly(100.5, 300.0, 500.0);
        assertThat(read).extracting(m -> m.spot().yMm()).containsExactly(200.0, 200.25, 200.0);
        assertThat(read).extracting(Moisture::value).containsExactly(12.5, 40.0, 7.0);
    }

    @Test
    void countsPhysicalLinesAcrossQuotedLineBreaks(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("moisture.csv", "id,x,y,value,note\nM1,100,200,12,\"two\nlines\"\n\nM2,300,200,4l.5,\n");

        assertThat(Reads.complaints(folder))
                .containsExactly("moisture.csv:5: value: found \"4l.5\", expected a number");
    }

    @Test
    void aReadingsPlaceIsTheLineItStartsOn(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with(
                        "moisture.csv",
                        "sep=,\r\nid,x,y,value,note\r\n,100,200,12,\"two\r\nlines\"\r\n\r\n,300,200,4,\r\n");

        assertThat(Reads.read(folder).survey().readings().moisture())
                .extracting(Moisture::id)
                .containsExactly("moisture.csv:3", "moisture.csv:6");
    }

    @Test
    void decidesTheDecimalSignByTheCellsThatLeaveNoDoubt(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "length: mm", "length: m")
                .with("plan.csv", "face,kind,name,wkt\n,outline,,\"POLYGON((0 0,5 0,5 5,0 5,0 0))\"\n")
                .with("moisture.csv", "x\ty\tvalue\n1,234\t0,5\t12\n")
                .with("taps.csv", "x,y,sound\n1.234,0.500,sound\n")
                .with("probes.csv", "x;y;void_depth\n1.234;2.345;0\n");

        var readings = Reads.read(folder).survey().readings();

        assertThat(readings.moisture().get(0).spot().xMm()).isEqualTo(1234);
        assertThat(readings.taps().get(0).spot().xMm()).isEqualTo(1234);
        assertThat(readings.probes().get(0).spot().xMm()).isEqualTo(1234);
    }

    @Test
    void saysWhatIsWrongWithAHeader(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("moisture.csv", "id,x,y,reading\nM1,1,2,3\n")
                .with("taps.csv", "id,x,y,X,sound\nT1,1,2,3,sound\n")
                .with("probes.csv", "");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "moisture.csv:1: value: the column is missing, found id, x, y, reading",
                        "taps.csv:1: X: two columns have this name",
                        "probes.csv: the file is empty, expected the columns x, y, void_depth");
    }

    @Test
    void readsRenamedColumns(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .adding("survey.yaml", "columns: { moisture: { x: Aft, y: stbd, value: \"reading\" } }\n")
                .with("moisture.csv", "id,aft,Stbd,Reading\nM1,100,200,12\n");

        assertThat(Reads.read(folder)
                        .survey()
                        .readings()
                        .moisture()
                        .get(0)
                        .spot()
                        .xMm())
                .isEqualTo(100);

        folder.with("moisture.csv", "id,x,y,value\nM1,100,200,12\n");
        assertThat(Reads.complaints(folder))
                .first()
                .isEqualTo("moisture.csv:1: x: the column is missing (called \"aft\" in survey.yaml), found id, x, y,"
                        + " value");
    }

    @Test
    void hintsAtColumnsItDoesNotUse(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).replacing("probes.csv", "core_state", "core_state,weather");

        assertThat(Reads.findings(folder))
                .containsExactly("probes.csv:1: probes.csv has columns that are not used: weather. They are left out.");
    }

    @Test
    void complainsOfCellsBeyondTheHeader(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).with("moisture.csv", "id,x,y,value\nM1,100,200,12,5\n");

        assertThat(Reads.complaints(folder))
                .containsExactly("moisture.csv:2: found 5 cells, expected 4 as in the first line; a decimal comma or"
                        + " other text with the separator needs quotation marks");
    }

    @Test
    void complainsOfALongCellAndALargeFile(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .adding("moisture.csv", "M9,1,1,12,A".replace("M9", "M".repeat(100_001)) + "\n")
                .with("taps.csv", new byte[(64 << 20) + 1]);

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "moisture.csv:26: cell 1 has 100001 characters, expected at most 100000",
                        "taps.csv: the file has 67108865 bytes, expected at most 67108864");
    }
}
