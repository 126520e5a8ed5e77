package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PanelCommandTest {
    private static final String PANEL = """
            outline: "POLYGON((0 0,900 0,900 600,0 600,0 0),(60 60,120 60,120 120,60 120,60 60))"
            edges: [simple, clamped, simple-hard, free]
            openings: free
            outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30, strength_MPa: 150 }
            inner_skin: { thickness_mm: 2.5, Ex_MPa: 12000, Ey_MPa: 9000, nu_xy: 0.2, Gxy_MPa: 3000 }
            core: { thickness_mm: 12.5, Gxz_MPa: 157, Gyz_MPa: 120, Ez_MPa: 3900, shear_strength_MPa: 1.9 }
            patches:
              - { area: "POLYGON((300 200,600 200,600 400,300 400,300 200))", void_depth_mm: 3 }
              - { area: "POLYGON((500 200,600 200,600 400,500 400,500 200))", core: { Gxz_MPa: 58, Gyz_MPa: 58, Ez_MPa: 202 } }
            loads:
              - { area: "POLYGON((350 250,450 250,450 350,350 350,350 250))", force_N: 1000 }
              - { pressure_kPa: 1 }
              - { line: "LINESTRING(700 100,700 500)", force_N: 300 }
              - { area: "POLYGON((700 250,760 250,760 310,700 310,700 250))", moment_x_Nmm: 20000 }
            bond: { shear_strength_MPa: 4, peel_strength_MPa: 2 }
            mesh_mm: 40
            probe_points: [[400,300]]
            """;

    @Test
    void answersEveryOption(@TempDir Path dir) throws IOException {
        Path file = Files.writeString(dir.resolve("p.yaml"), PANEL);
        Path out = dir.resolve("f.json");
        StringWriter printed = new StringWriter();

        int status = Corewright.run(
                new PrintWriter(printed),
                new PrintWriter(new StringWriter()),
                "panel",
                file.toString(),
                "--out",
                out.toString(),
                "--json");

        assertThat(status).isZero();
        JsonNode root = new ObjectMapper().readTree(Files.readString(out));
        assertThat(new ObjectMapper().readTree(printed.toString())).isEqualTo(root);
        double area = 900 * 600 - 60 * 60;
        assertThat(root.get("reaction_sum_N").asDouble()).isCloseTo(1300 + area * 1e-3, within(2e-3));
        JsonNode linear = root.get("deflections").get(0);
        JsonNode resting = root.get("with_contact").get("deflections").get(0);
        assertThat(linear.get("outer_mm").asDouble() - linear.get("inner_mm").asDouble())
                .isGreaterThan(3);
        assertThat(resting.get("outer_mm").asDouble() - resting.get("inner_mm").asDouble())
                .isBetween(2.9, 3.1);
        assertThat(root.get("max_core_shear_MPa").asDouble()).isPositive();
        assertThat(root.get("margins").findValuesAsText("what"))
                .containsExactly(
                        "core shear",
                        "outer skin",
                        "repair bond, shear",
                        "repair bond, peel",
                        "outer skin wrinkling",
                        "inner skin wrinkling",
                        "loose skin buckling");
        JsonNode large = root.get("large_deflection");
        assertThat(large.get("approach_mm").asDouble())
                .isBetween(0.5, root.get("loose_skin").get("linear_mm").asDouble());
        assertThat(large.get("reaction_sum_N").asDouble()).isCloseTo(1300 + area * 1e-3, within(2e-3));
        assertThat(root.get("notes").toString()).contains("overstates", "naval architect");
    }

    /** Nothing loose, but wide: the skins' pull is told beside the linear figure, and why. */
    @Test
    void aWideBondedPanelIsToldWithThePullOfItsSkins(@TempDir Path dir) throws IOException {
        Path file = Files.writeString(dir.resolve("wide.yaml"), """
                outline: "POLYGON((0 0,2400 0,2400 2000,0 2000,0 0))"
                outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
                inner_skin: { thickness_mm: 2.5, E_MPa: 11000, nu: 0.30 }
                core: { thickness_mm: 9.5, Gxz_MPa: 157, Gyz_MPa: 157, Ez_MPa: 3900 }
                loads: [{ area: "POLYGON((1150 950,1250 950,1250 1050,1150 1050,1150 950))", force_N: 1000 }]
                mesh_mm: 100
                probe_points: [[1200,1000]]
                """);
        Path out = dir.resolve("f.json");
        Corewright.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(new StringWriter()),
                "panel",
                file.toString(),
                "--out",
                out.toString());

        JsonNode root = new ObjectMapper().readTree(Files.readString(out));
        JsonNode large = root.get("large_deflection");
        double linear = root.get("deflections").get(0).get("outer_mm").asDouble();
        assertThat(large.get("deflections").get(0).get("outer_mm").asDouble()).isBetween(0.7 * linear, 0.9 * linear);
        assertThat(large.has("approach_mm")).isFalse();
        assertThat(large.get("reaction_sum_N").asDouble()).isCloseTo(1000, within(1e-3));
        assertThat(root.get("notes").toString()).contains("more than half its thickness");
    }

    @Test
    void refusesPointsOutsideAndPanelsThatNothingHolds(@TempDir Path dir) throws IOException {
        Path out = dir.resolve("f.json");
        Path outside = Files.writeString(dir.resolve("a.yaml"), PANEL.replace("[[400,300]]", "[[90,90]]"));
        Path unheld =
                Files.writeString(dir.resolve("b.yaml"), PANEL.replace("[simple, clamped, simple-hard, free]", "free"));

        assertThat(refusal(outside, out)).isEqualTo("a.yaml: probe_points: (90.0, 90.0) lies outside the panel");
        assertThat(refusal(unheld, out)).isEqualTo("b.yaml: its supports leave the panel free to move or to tilt");
        assertThat(out).doesNotExist();
    }

    /** Refused from its size: it overflowed an array before. And a place that cannot be written is told before the work. */
    @Test
    void refusesAMeshTooFineAndAPlaceThatIsNone(@TempDir Path dir) throws IOException {
        Path file = dir.resolve("p.yaml");
        Files.writeString(file, PANEL.replace("mesh_mm: 40", "mesh_mm: 0.001"));
        assertThat(refusal(file, dir.resolve("out.json")))
                .contains("mesh_mm: found \"0.001\", expected at least ", "for a panel of this size");
        assertThat(refusal(file, dir.resolve("none").resolve("out.json")))
                .contains("there is no such folder to put it in")
                .doesNotContain("mesh_mm");
    }

    private static String refusal(Path file, Path out) {
        StringWriter err = new StringWriter();
        int status = Corewright.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "panel",
                file.toString(),
                "--out",
                out.toString());
        assertThat(status).isEqualTo(3);
        return err.toString().strip();
    }
}
