package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.Load;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

/**
 * A loose skin under a foot, linear, with contact, and with contact and large displacements, against 3-D solid elements: the
 * values of src/test/resources/sandwich/solids-nonlinear.csv (its head names the source). Tolerances are the claim: 3 % over
 * a void, 5 % where the skin is merely loose, both skins, on the coarsest mesh that holds them: 25 mm, but where a void has just
 * closed. There the inner skin carries what the outer one has too much, and 0.5 % of the outer skin's deflection are 4 % of
 * the inner one's: a full void needs 12.5 mm and 9.4 at the rim, and the half void at 500 N keeps 4 % on 12.5 mm.
 */
class SolidContactTest {
    @ParameterizedTest(name = "{0}, {1} N")
    @CsvSource({
        "N1, 200, 25, 25, 5",
        "N1, 500, 25, 25, 5",
        "N1, 1000, 25, 25, 5",
        "N2, 200, 25, 25, 3",
        "N2, 500, 25, 12.5, 4",
        "N2, 1000, 25, 25, 3",
        "N3, 200, 25, 25, 3",
        "N3, 500, 25, 25, 3",
        "N3, 1000, 12.5, 9.4, 3",
        "N4, 200, 25, 25, 5",
        "N4, 500, 25, 25, 5",
        "N4, 1000, 25, 25, 5"
    })
    void deflectsAsSolidElementsDo(String which, int force, double general, double rim, double tolerance)
            throws IOException {
        PanelModel model = PanelModel.of(Panels.loose(depth(which)), new MeshSize(general, rim));
        double x = which.equals("N4") ? 570 : 450;
        Response linear = model.solve(List.of(Load.foot(new Coordinate(x, 300), 100, force)));

        agrees(which, 'a', force, linear, x, tolerance);
        agrees(which, 'b', force, linear.withContact(), x, tolerance);
        agrees(which, 'c', force, linear.largeDeflection().orElseThrow(), x, tolerance);
    }

    private static double depth(String which) {
        return which.equals("N2") ? 6.25 : which.equals("N3") ? 12.5 : 0;
    }

    private static void agrees(String which, char theory, int force, Response response, double x, double tolerance)
            throws IOException {
        double[] solids = solids(which, theory, force);
        Response.Deflection d = response.at(x, 300).orElseThrow();
        assertThat(d.outerMm()).as("%s outer", theory).isCloseTo(solids[0], withinPercentage(tolerance));
        assertThat(d.innerMm()).as("%s inner", theory).isCloseTo(solids[1], withinPercentage(tolerance));
        // what is left out of balance is a millionth of the load
        assertThat(response.reactionSumN()).as("%s reactions", theory).isCloseTo(force, within(1e-6 * force));
    }

    /** Outer and inner skin on the finest mesh but the one of more layers: the last named coarse or, failing that, light. */
    private static double[] solids(String which, char theory, int force) throws IOException {
        String file = "/sandwich/solids-nonlinear.csv";
        try (InputStream in = Objects.requireNonNull(SolidContactTest.class.getResourceAsStream(file))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String mesh : List.of("fine", "coarse", "light")) {
                for (String line : text.split("\n")) {
                    String[] cell = line.split(",");
                    if (line.startsWith(which + "," + theory + "," + force + "," + mesh + ",")) {
                        return new double[] {Double.parseDouble(cell[4]), Double.parseDouble(cell[5])};
                    }
                }
            }
        }
        throw new AssertionError("no row " + which + " " + theory + " " + force);
    }
}
