package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTableTest {
    private static NumberTable read(Path dir, String text, Charset charset) throws IOException {
        Path file = dir.resolve("p.csv");
        Files.write(file, text.getBytes(charset));
        return NumberTable.read(file, List.of("x", "y", "zinc"));
    }

    private static NumberTable read(Path dir, String text) throws IOException {
        return read(dir, text, StandardCharsets.UTF_8);
    }

    private static List<String> complaints(Path dir, String text) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> read(dir, text));
        return refused.complaints().stream().map(Complaint::toString).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x,y,zinc\n1,2.5,-3e2\n",
                "\uFEFFX,Y,Zinc\r\n1,2.5,-3e2",
                "id;zinc;Y;x\n7;-300;2,5;1,0\n",
                "id\tzinc\ty\tx\n\n7\t\u2212300\t2.5\t1\n\n",
                "note,x,y,zinc\n\"a, b\",\"1\", 2.5 ,-300.,\n,,,\n"
            })
    void readsTheDialectsOfSpreadsheets(String text, @TempDir Path dir) throws IOException {
        NumberTable table = read(dir, text);

        assertThat(table.column("x")).hasSize(1);
        assertThat(table.column("x")).containsExactly(1);
        assertThat(table.column("y")).containsExactly(2.5);
        assertThat(table.column("zinc")).containsExactly(-300);
    }

    @Test
    void readsUtf16AndLatin1(@TempDir Path dir) throws IOException {
        String text = "x,y,zinc,Tür\n1,2,3,ä\n";

        assertThat(read(dir, "\uFEFF" + text, StandardCharsets.UTF_16LE).column("y"))
                .containsExactly(2);
        assertThat(read(dir, "\uFEFF" + text, StandardCharsets.UTF_16BE).column("y"))
                .containsExactly(2);
        assertThat(read(dir, text, StandardCharsets.ISO_8859_1).column("y")).containsExactly(2);
    }

    @Test
    void everyBadCellIsListedWithItsLine(@TempDir Path dir) {
        String text = "x,y,zinc\n1,2,3\n\nO,2,4l.5\n1,,NaN\n1,2,1e999\n1,2\n1,5,2,3\n0x10,1d,7\n";

        assertThat(complaints(dir, text))
                .containsExactly(
                        "p.csv:4: x: found \"O\", expected a number",
                        "p.csv:4: zinc: found \"4l.5\", expected a number",
                        "p.csv:5: y: found \"\", expected a number",
                        "p.csv:5: zinc: found \"NaN\", expected a number",
                        "p.csv:6: zinc: found \"1e999\", expected a number",
                        "p.csv:7: zinc: found \"\", expected a number",
                        "p.csv:8: found 4 cells, expected 3",
                        "p.csv:9: x: found \"0x10\", expected a number",
                        "p.csv:9: y: found \"1d\", expected a number");
    }

    @Test
    void missingAndDoubledColumnsAreNamed(@TempDir Path dir) {
        assertThat(complaints(dir, "x,yy,X\n1,2,3\n"))
                .containsExactly(
                        "p.csv:1: x: two columns have this name",
                        "p.csv:1: y: found \"x, yy, X\", expected a column of this name",
                        "p.csv:1: zinc: found \"x, yy, X\", expected a column of this name");
    }

    @Test
    void nothingToReadIsRefused(@TempDir Path dir) {
        String noRow = "p.csv: expected at least one row below the header";
        assertThat(complaints(dir, "")).containsExactly(noRow);
        assertThat(complaints(dir, "x,y,zinc\n\n")).containsExactly(noRow);
        assertThat(complaints(dir, "x,y,zinc\n1,2,\"3\n"))
                .singleElement()
                .asString()
                .isEqualTo(
                        "p.csv:2: a quotation mark is opened here that is not closed, or text follows the closing one");
        assertThatThrownBy(() -> NumberTable.read(dir.resolve("none.csv"), List.of("x")))
                .hasMessage("none.csv: no such file");
        assertThatThrownBy(() -> NumberTable.read(dir, List.of("x"))).hasMessageEndingWith(": is a folder");
    }
}
