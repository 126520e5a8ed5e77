package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import corewright.intake.text.RefusedException;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Support;
import org.junit.jupiter.api.Test;

class PanelReaderTest {
    static final String PANEL = """
            outline: "POLYGON((0 0,900 0,900 600,0 600,0 0))"
            edges: simple
            outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
            inner_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
            core: { thickness_mm: 12.5, Gxz_MPa: 157, Gyz_MPa: 157, Ez_MPa: 3900 }
            patches:
              - { area: "POLYGON((300 200,600 200,600 400,300 400,300 200))", void_depth_mm: 12.5 }
            loads:
              - { area: "POLYGON((400 250,500 250,500 350,400 350,400 250))", force_N: 1000 }
              - { pressure_kPa: 5 }
            mesh_mm: 40
            probe_points: [[450,300],[300,300]]
            """;

    @Test
    void readsEveryKey() throws RefusedException {
        PanelFile panel = PanelReader.read("p.yaml", PANEL);

        PanelSpec spec = panel.panel();
        assertThat(spec.outline().getArea()).isEqualTo(540_000);
        assertThat(spec.edges()).containsExactly(Support.SIMPLE);
        assertThat(spec.openings().support()).isEqualTo(Support.FREE);
        assertThat(spec.core().material().ezMPa()).isEqualTo(3900);
        assertThat(((Patch.Loose) spec.patches().get(0)).depthMm()).isEqualTo(12.5);
        assertThat(panel.loads()).hasSize(2).last().isEqualTo(new Load.Pressure(5));
        assertThat(panel.meshMm()).hasValue(40);
        assertThat(panel.probePoints()).containsExactly(new PanelFile.Probe(450, 300), new PanelFile.Probe(300, 300));
    }

    @Test
    void listsEveryComplaintWithItsLine() {
        String bad = PANEL.replace("edges: simple", "edges: [simple, loose]")
                .replace(
                        "outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }",
                        "outer_skin: { E_MPa: x, nu: 0.7 }")
                .replace("force_N", "force")
                .replace("void_depth_mm: 12.5", "void_depth_mm: 13");

        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> PanelReader.read("p.yaml", bad));

        assertThat(refused.getMessage()).isEqualTo("""
                        p.yaml:2: edges[2]: found "loose", expected simple, simple-hard, clamped or free
                        p.yaml:2: edges: found 2 edges, expected one for each of the 4 sides of the outline, or a single word
                        p.yaml:3: outer_skin.thickness_mm: found nothing, expected a number
                        p.yaml:3: outer_skin.E_MPa: found "x", expected a number
                        p.yaml:3: outer_skin.nu: found 0.7, expected less than 0.5 and more than -1
                        p.yaml:7: patches[1].void_depth_mm: found 13.0, expected 0 to the core's thickness, 12.5
                        p.yaml:9: loads[1].force: this key is not known, expected area, force_N, pressure_kPa, line, moment_x_Nmm or moment_y_Nmm
                        p.yaml:9: loads[1].force_N: found nothing, expected a number""");
    }

    /** A record further on would refuse it, and that would be no complaint. */
    @Test
    void refusesAContractionSoNearItsLimitThatTheStiffnessMeansNothing() {
        String bad = PANEL.replace(
                "inner_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }",
                "inner_skin: { thickness_mm: 3.0, Ex_MPa: 100, Ey_MPa: 100, nu_xy: 0.9997, Gxy_MPa: 50 }");

        assertThat(message(bad))
                .isEqualTo("p.yaml:4: inner_skin.nu_xy: found 0.9997, expected less than the root of Ex/Ey");
    }

    @Test
    void refusesWhatIsNotYaml() {
        RefusedException refused =
                catchThrowableOfType(RefusedException.class, () -> PanelReader.read("p.yaml", "outline: [1, 2"));

        assertThat(refused.complaints()).hasSize(1);
        assertThat(refused.complaints().get(0).origin().file()).isEqualTo("p.yaml");
    }

    @Test
    void refusesTagsDoubledKeysAndHalfEscapesWithTheirPlace() {
        assertThat(message("a: \"x\"\noutline: !!java.net.URL [x]\n"))
                .isEqualTo("p.yaml:2: found \"tag:yaml.org,2002:java.net.URL\", expected a value without a type tag");
        assertThat(message(PANEL + "mesh_mm: 50\n")).isEqualTo("p.yaml:13: mesh_mm: the key stands here a second time");
        assertThat(message("edges: simple\noutline: \"000\\x\"\n"))
                .startsWith("p.yaml:2: this is not YAML: expected escape sequence of 2 hexadecimal numbers");
        assertThat(message("edges: simple\noutline: \"000\\U99999999\"\n"))
                .isEqualTo("p.yaml:2: this is not YAML: an escape such as \\x41 is not whole");
        assertThat(message("a: " + "[".repeat(60) + "]".repeat(60))).startsWith("p.yaml");
    }

    private static String message(String text) {
        return String.valueOf(catchThrowableOfType(RefusedException.class, () -> PanelReader.read("p.yaml", text))
                .getMessage());
    }

    @Test
    void refusesAnOutlineThatCrossesItself() {
        String bad = PANEL.replace("(0 0,900 0,900 600,0 600,0 0)", "(0 0,900 600,900 0,0 600,0 0)");

        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> PanelReader.read("p.yaml", bad));

        assertThat(refused.getMessage())
                .isEqualTo(
                        "p.yaml:1: outline: found an outline that crosses or touches itself near (450 300), expected one"
                                + " that does not");
    }
}
