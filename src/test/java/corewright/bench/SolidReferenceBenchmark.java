package corewright.bench;

import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Panels;
import corewright.sandwich.Response;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Support;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * The whole table of src/test/resources/sandwich/solids-900x600.csv on several meshes, with the panel command's own mesh
 * (rims at three quarters of the core's thickness) last. Run: {@code mvn -o -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.SolidReferenceBenchmark}.
 */
public final class SolidReferenceBenchmark {
    private SolidReferenceBenchmark() {}

    public static void main(String[] args) throws IOException {
        for (double mesh : new double[] {25, 12.5, 0}) {
            for (String line : Files.readAllLines(Path.of("src/test/resources/sandwich/solids-900x600.csv"))) {
                if (line.startsWith("soft") || line.startsWith("hard")) {
                    compare(line.split(",", -1), mesh);
                }
            }
        }
    }

    private static void compare(String[] row, double mesh) {
        Support support = row[0].equals("soft") ? Support.SIMPLE : Support.SIMPLE_HARD;
        PanelSpec panel = Panels.solids(row[2].charAt(0), support);
        Load load = row[1].equals("2kPa") ? new Load.Pressure(2) : Load.foot(new Coordinate(450, 300), 100, 1000);
        PanelModel model = PanelModel.of(panel, mesh == 0 ? MeshSize.automatic(panel) : MeshSize.uniform(mesh));
        Response.Deflection d = model.solve(List.of(load)).at(450, 300).orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%s %s %s, mesh %s: outer %.4f mm (%+.2f %%), inner %.4f mm (%+.2f %%)%n",
                row[0],
                row[1],
                row[2],
                mesh == 0 ? "automatic, " + model.unknowns() + " unknowns" : mesh + " mm",
                d.outerMm(),
                100 * (d.outerMm() / Double.parseDouble(row[3]) - 1),
                d.innerMm(),
                100 * (d.innerMm() / Double.parseDouble(row[4]) - 1));
    }
}
