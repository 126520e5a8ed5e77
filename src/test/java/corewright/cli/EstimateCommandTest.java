package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference numbers: R gstat 2.1-0, see {@code reference/geostat/README.md}. */
class EstimateCommandTest {
    /** The model of meuse_model.csv. */
    private static final String[] MODEL = {
        "--model",
        "spherical",
        "--nugget",
        "0.0506624268192143",
        "--sill",
        "0.590607802210119",
        "--range",
        "897.020909797001"
    };

    private record Outcome(int status, String out, String err) {}

    private static Outcome run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Corewright.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Outcome(status, out.toString(), err.toString());
    }

    private static String reference(String name) {
        try {
            var url = Objects.requireNonNull(EstimateCommandTest.class.getResource("/reference/geostat/" + name));
            return Path.of(url.toURI()).toString();
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }

    private static Outcome meuse(Path dir, String[] model, String... more) {
        List<String> args = new ArrayList<>(List.of(
                "estimate",
                "--points",
                reference("meuse_points.csv"),
                "--value",
                "zinc",
                "--log",
                "--at",
                reference("meuse_predictions.csv"),
                "--out",
                dir.resolve("f.csv").toString()));
        args.addAll(Arrays.asList(model));
        args.addAll(Arrays.asList(more));
        return run(args.toArray(String[]::new));
    }

    private static double[] column(Path csv, int column) throws IOException {
        return Files.readAllLines(csv).stream()
                .skip(1)
                .mapToDouble(l -> Double.parseDouble(l.split(",", -1)[column]))
                .toArray();
    }

    @Test
    void givesGstatsNumbersInNodeOrder(@TempDir Path dir) throws IOException {
        Outcome o = meuse(dir, MODEL);

        Path theirs = Path.of(reference("meuse_predictions.csv"));
        Path ours = dir.resolve("f.csv");
        assertThat(o.status()).as(o.err()).isZero();
        assertThat(Files.readAllLines(ours).get(0)).isEqualTo("x,y,estimate,variance");
        assertThat(column(ours, 0)).containsExactly(column(theirs, 1));
        assertThat(column(ours, 1)).containsExactly(column(theirs, 2));
        assertThat(column(ours, 2)).containsExactly(column(theirs, 3), within(1e-6));
        assertThat(column(ours, 3)).containsExactly(column(theirs, 4), within(1e-6));
        assertThat(o.out()).isEqualTo("30 estimates in " + ours + System.lineSeparator());
        try (Stream<Path> left = Files.list(dir)) {
            assertThat(left).containsExactly(ours);
        }
    }

    @Test
    void neighboursAndLeaveOneOutGiveGstatsNumbers(@TempDir Path dir) throws IOException {
        Outcome o = meuse(dir, MODEL, "--neighbours", "24", "--cross-validate", "--json");

        Path theirs = Path.of(reference("meuse_predictions.csv"));
        assertThat(column(dir.resolve("f.csv"), 2)).containsExactly(column(theirs, 5), within(1e-6));
        assertThat(column(dir.resolve("f.csv"), 3)).containsExactly(column(theirs, 6), within(1e-6));
        JsonNode score = new ObjectMapper().readTree(o.out()).get("cross_validation");
        assertThat(score.get("root_mean_square").asDouble()).isCloseTo(0.389050523809266, within(1e-6));
        assertThat(score.get("mean_error").asDouble()).isCloseTo(0.00661917061253269, within(1e-6));
    }

    @Test
    void withoutModelOneIsFittedAndPrintedAsOptions(@TempDir Path dir) throws IOException {
        Outcome o = meuse(dir, new String[0], "--cross-validate");

        assertThat(o.status()).as(o.err()).isZero();
        assertThat(o.out()).contains("foretells left-out readings best").contains("leave-one-out: mean error ");
        String fitted = o.out()
                .lines()
                .filter(l -> l.startsWith("fitted: "))
                .findFirst()
                .orElseThrow();
        double[] first = column(dir.resolve("f.csv"), 2);
        meuse(dir, fitted.substring("fitted: ".length()).split(" ", -1));
        assertThat(column(dir.resolve("f.csv"), 2)).containsExactly(first);
    }

    @Test
    void aDirectionTurnsFromXTowardsY(@TempDir Path dir) throws IOException {
        Path points = Files.writeString(dir.resolve("p.csv"), "X;Y;v\n0;0;1\n10;0;2\n0;10;4\n10;10;8\n");
        Path nodes = Files.writeString(dir.resolve("n.csv"), "y,x\n0,5\n5,0\n10,10\n");
        String out = dir.resolve("f.csv").toString();

        Outcome o = run(("estimate --points %s --value v --at %s --model exponential --nugget 0 --sill 1 --range 20"
                        + " --major-deg 90 --ratio 0.1 --out %s")
                .formatted(points, nodes, out)
                .split(" ", -1));

        assertThat(o.status()).as(o.err()).isZero();
        double[] estimate = column(Path.of(out), 2);
        double[] variance = column(Path.of(out), 3);
        assertThat(variance[1]).isLessThan(variance[0] / 2); // along y the points foretell far better
        assertThat(estimate[1]).isBetween(2.0, 4.0);
        assertThat(estimate[2]).isEqualTo(8);
        assertThat(variance[2]).isZero();
    }

    @Test
    void repeatsAreAveragedAndSaid(@TempDir Path dir) throws IOException {
        Path points = Files.writeString(dir.resolve("p.csv"), "x,y,v\n0,0,1\n0,0,3\n10,0,5\n");
        Path nodes = Files.writeString(dir.resolve("n.csv"), "x,y\n0,0\n");
        String out = dir.resolve("f.csv").toString();

        Outcome o = run("estimate --points %s --value v --at %s --model gaussian --sill 1 --range 20 --out %s"
                .formatted(points, nodes, out)
                .split(" ", -1));

        assertThat(o.out()).contains("averaged with another point at the same place: 1 of 3 points");
        assertThat(column(Path.of(out), 2)).containsExactly(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--model spherical --nugget 1 --sill 1|--model needs --sill and --range",
                "--range 5|none is given",
                "--model spherical --sill 1 --range 0|variogram range is 0.0, expected above 0",
                "--model spherical --sill -1 --range 1|variogram sill is -1.0, expected 0 or more",
                "--model spherical --sill 1 --range 1 --major-deg 30 --ratio 0|ratio is 0.0, expected above 0",
                "--model spherical --sill 1 --range 1 --ratio 0.5|--major-deg and --ratio go together",
                "--model spherical --sill 0 --range 1|are both 0",
                "--model cubic --sill 1 --range 1|--model",
                "--model spherical --sill NaN --range 1|variogram sill is NaN, expected 0 or more",
                "--neighbours 0|--neighbours is 0, expected 1 or more",
                "--neighbours few|--neighbours",
                "--colour red|--colour"
            })
    void wrongUseIsASentenceAndStatusTwo(String line, @TempDir Path dir) {
        String[] parts = line.split("\\|", -1);

        Outcome o = meuse(dir, parts[0].split(" ", -1));

        assertThat(o.status()).isEqualTo(2);
        assertThat(o.err().lines().findFirst().orElse("")).contains(parts[1]);
        assertThat(dir).isEmptyDirectory();
    }

    @Test
    void badInputOfBothFilesIsListedAtOnceAndNothingIsWritten(@TempDir Path dir) throws IOException {
        Path points = Files.writeString(dir.resolve("p.csv"), "x,y,v\n0,0,1\n1,l,2\n");
        Path nodes = Files.writeString(dir.resolve("n.csv"), "x,z\n0,0\n");

        Outcome o = run("estimate --points %s --value v --at %s --json --out %s"
                .formatted(points, nodes, dir.resolve("f.csv"))
                .split(" ", -1));

        assertThat(o.status()).isEqualTo(3);
        assertThat(o.err().lines())
                .containsExactly(
                        "p.csv:3: y: found \"l\", expected a number",
                        "n.csv:1: y: found \"x, z\", expected a column of this name");
        assertThat(new ObjectMapper().readTree(o.out()).get("complaints")).hasSize(2);
        assertThat(dir.resolve("f.csv")).doesNotExist();
    }

    @Test
    void aLogarithmOfZeroIsRefusedWithItsLine(@TempDir Path dir) throws IOException {
        Path points = Files.writeString(dir.resolve("p.csv"), "x,y,v\n0,0,1\n1,1,0\n");

        Outcome o = run("estimate --points %s --value v --at %s --log --out %s"
                .formatted(points, points, dir.resolve("f.csv"))
                .split(" ", -1));

        assertThat(o.status()).isEqualTo(3);
        assertThat(o.err().strip())
                .isEqualTo("p.csv:3: v: found \"0.0\", expected a number above 0, for its logarithm");
    }

    @Test
    void anOutputThatCannotBeWrittenLeavesNothingBehind(@TempDir Path dir) throws IOException {
        Path points = Files.writeString(dir.resolve("p.csv"), "x,y,v\n0,0,1\n1,1,2\n");
        String line = "estimate --points %s --value v --at %s --out %s";

        Outcome folder = run(line.formatted(points, points, dir).split(" ", -1));
        Outcome absent =
                run(line.formatted(points, points, dir.resolve("no/f.csv")).split(" ", -1));
        Outcome input = run(line.formatted(points, points, points).split(" ", -1));

        assertThat(folder.status()).isEqualTo(3);
        assertThat(folder.err()).contains("is a folder, expected a file to write");
        assertThat(absent.status()).isEqualTo(3);
        assertThat(absent.err()).contains("no such folder");
        assertThat(input.status()).isEqualTo(2);
        assertThat(input.err()).contains("--out would overwrite");
        assertThat(dir).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void fewAndEqualPointsStillGiveAnAnswer(@TempDir Path dir) throws IOException {
        Path one = Files.writeString(dir.resolve("one.csv"), "x,y,v\n3,4,9\n");
        Path equal = Files.writeString(dir.resolve("equal.csv"), "x,y,v\n0,0,5\n1,0,5\n0,1,5\n");
        Path nodes = Files.writeString(dir.resolve("n.csv"), "x,y\n7,7\n");
        Path out = dir.resolve("f.csv");
        String line = "estimate --points %s --value v --at %s --cross-validate --json --out %s";

        assertThat(run(line.formatted(one, nodes, out).split(" ", -1)).status()).isZero();
        assertThat(column(out, 2)).containsExactly(9);
        assertThat(run(line.formatted(equal, nodes, out).split(" ", -1)).status())
                .isZero();
        assertThat(column(out, 2)).containsExactly(5);
    }
}
