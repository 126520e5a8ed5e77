package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import corewright.contour.Raster;
import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ESRI ASCII raster format, as ArcGIS documents it and as other programs write it. */
class GridReaderTest {
    private static final String HEAD = "ncols 3\nnrows 2\nxllcorner 10\nyllcorner -5\ncellsize 2\nNODATA_value -1\n";

    @Test
    void firstRowIsTheOneAtTheLargestY() throws RefusedException {
        Raster grid = GridReader.parse("g.asc", HEAD + "1 2 3\n4 5 6\n");
        assertThat(grid.values()).containsExactly(4, 5, 6, 1, 2, 3);
        assertThat(List.of(grid.x0(), grid.y0(), grid.cell())).containsExactly(10.0, -5.0, 2.0);
        assertThat(List.of(grid.rows(), grid.columns())).containsExactly(2, 3);
    }

    @Test
    void centresAreHalfACellInside() throws RefusedException {
        Raster grid =
                GridReader.parse("g.asc", "NCOLS 1\r\nNROWS 1\r\nXLLCENTER 1\r\nYllCenter 2\r\nCELLSIZE 2\r\n7\r\n");
        assertThat(List.of(grid.x0(), grid.y0())).containsExactly(0.0, 1.0);
        assertThat(grid.values()).containsExactly(7);
    }

    @Test
    void noDataAndNaNAreNaN() throws RefusedException {
        assertThat(GridReader.parse("g.asc", HEAD + "-1 nan -1.0\n4 5 6e0").values())
                .containsExactly(4, 5, 6, Double.NaN, Double.NaN, Double.NaN);
        assertThat(GridReader.parse("g.asc", HEAD.replace("-1", "nan") + "NaN 2 3 4 5 6")
                        .values())
                .containsExactly(4, 5, 6, Double.NaN, 2, 3);
        assertThat(GridReader.parse("g.asc", HEAD.replace("NODATA_value -1\n", "") + "-9999 2 3 4 5 6")
                        .values())
                .containsExactly(4, 5, 6, Double.NaN, 2, 3);
    }

    @Test
    void lineBreaksBetweenValuesCarryNoMeaning() throws RefusedException {
        assertThat(GridReader.parse("g.asc", HEAD + "1\n2 3 4 5\n\n6").values()).containsExactly(4, 5, 6, 1, 2, 3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nrows 2|nrows two|g.asc:2: nrows: found \"two\", expected a number",
                "nrows 2|nrows 2.5|g.asc:2: nrows: found \"2.5\", expected a whole number from 1",
                "nrows 2|nrows 0|g.asc:2: nrows: found \"0\", expected a whole number from 1",
                "nrows 2|nrows 2 3|g.asc:2: nrows: found 2 values, expected one",
                "ncols 3|ncols 2000000000|g.asc:2: nrows: found \"2\", expected at most 10000000 values in all",
                "cellsize 2|cellsize -2|g.asc:5: cellsize: found \"-2\", expected a number above 0",
                "cellsize 2|cellsize 1e999|g.asc:5: cellsize: found \"1e999\", expected a number",
                "cellsize 2|ncols 3|g.asc:5: ncols: found a second time",
                "yllcorner -5|xllcenter 3|g.asc:4: xllcenter: found \"3\", expected only one of xllcorner and xllcenter",
                "yllcorner -5|xllcenter 3|g.asc: the header has neither yllcorner nor yllcenter",
                "cellsize 2|dx 2|g.asc: the header has no cellsize",
                "1 2 3|1 x 3|g.asc:7: found \"x\", expected a number",
                "1 2 3|1 2,5 3|g.asc:7: found \"2,5\", expected a number",
                "1 2 3|1 Infinity 3|g.asc:7: found \"Infinity\", expected a number",
                "1 2 3|1 2|g.asc:8: found 5 values, expected 2 rows of 3 columns",
                "1 2 3|1 2 3 4|g.asc:8: found more than the 6 values of 2 rows of 3 columns",
            })
    void whatIsWrongIsSaidWithItsPlace(String right, String wrong, String complaint) {
        RefusedException refused = catchThrowableOfType(
                RefusedException.class,
                () -> GridReader.parse("g.asc", (HEAD + "1 2 3\n4 5 6\n").replace(right, wrong)));
        assertThat(refused.complaints()).extracting(Complaint::toString).contains(complaint);
    }

    @Test
    void everythingWrongIsListedAtOnceUpToALimit() {
        RefusedException refused = catchThrowableOfType(
                RefusedException.class,
                () -> GridReader.parse("g.asc", HEAD.replace("ncols 3", "ncols 300") + "a b\n".repeat(300)));
        assertThat(refused.complaints()).hasSizeBetween(10, 50);
    }

    @Test
    void anEmptyFileIsRefused() {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> GridReader.parse("g.asc", ""));
        assertThat(refused.complaints()).hasSize(5);
    }
}
