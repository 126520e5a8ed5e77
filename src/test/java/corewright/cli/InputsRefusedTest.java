package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import corewright.intake.text.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Files of the expert commands that no person wrote are refused with their place. */
class InputsRefusedTest {
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC}) // they have device files
    void devicesAndFoldersAreNotOpened(@TempDir Path dir) {
        Path device = Path.of("/dev/zero");
        assertThat(refusal(() -> GridReader.read(device))).isEqualTo("zero: is not a file but a device or a pipe");
        assertThat(refusal(() -> NumberTable.read(device, List.of("x"))))
                .isEqualTo("zero: is not a file but a device or a pipe");
        assertThat(refusal(() -> PanelReader.read(device))).isEqualTo("zero: is not a file but a device or a pipe");
        assertThat(refusal(() -> PanelReader.read(dir))).endsWith(": is a folder");
    }

    @Test
    void numbersThatCannotBeReckonedWithAreRefused(@TempDir Path dir) throws IOException {
        Path points = dir.resolve("p.csv");
        Files.writeString(points, "x,y\n1e308,2\n1,-Infinity\n");
        String grid = "ncols 1\nnrows 1\nxllcorner 1e15\nyllcorner 0\ncellsize 1\nNODATA_value -3.4028e38\n";

        assertThat(refusal(() -> NumberTable.read(points, List.of("x", "y"))))
                .isEqualTo("p.csv:2: x: found \"1e308\", expected a number\n"
                        + "p.csv:3: y: found \"-Infinity\", expected a number");
        assertThat(refusal(() -> GridReader.parse("g.asc", grid + "1")))
                .isEqualTo("g.asc:3: xllcorner: found \"1e15\", expected a number from -1e9 to 1e9, or as many cells");
        assertThat(refusal(() -> GridReader.parse("g.asc", grid.replace("1e15", "0") + "1e308")))
                .isEqualTo("g.asc:7: found \"1e308\", expected a number from -1e30 to 1e30, or the nodata_value");
        assertThat(GridReader.parse("g.asc", grid.replace("1e15", "0") + "-3.4028e38")
                        .values())
                .containsExactly(Double.NaN);
    }

    private static String refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable read) {
        return String.valueOf(catchThrowableOfType(RefusedException.class, read).getMessage());
    }
}
