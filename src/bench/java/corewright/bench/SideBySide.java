package corewright.bench;

import corewright.contour.Contours;
import corewright.contour.Raster;
import corewright.field.OrdinaryKriging;
import corewright.field.Samples;
import corewright.field.Shape;
import corewright.field.Variogram;
import corewright.linear.Cholesky;
import corewright.linear.RandomGrid;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/**
 * The engines beside general-purpose libraries that do the same, where these are installed: gstat and CHOLMOD in R (packages gstat, sp,
 * Matrix), GDAL's {@code gdal_contour}. The same input for both, in turn on the same machine; the least of five runs warm, and the least of
 * three whole processes with reading and writing. Run: see docs/performance.md.
 */
public final class SideBySide {
    private static final int RUNS = 5;
    private static final int PROCESSES = 3;
    private static final int WARM_UP = 5;

    private final Path folder;

    private SideBySide(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        SideBySide all = new SideBySide(Files.createTempDirectory("side-by-side"));
        System.out.printf("%-44s %9s %9s %7s%n", "seconds", "ours", "theirs", "ratio");
        for (int points : new int[] {500, 2000, 20_000}) {
            all.kriging(points);
        }
        for (int levels : new int[] {1, 5}) {
            all.contouring(levels);
        }
        all.solving(38, 27);
        all.solving(120, 84);
    }

    private interface Work {
        Object done();
    }

    private void kriging(int count) throws IOException, InterruptedException {
        Samples samples = SpeedInput.samples(count);
        double[] x = new double[SpeedInput.NODES * SpeedInput.NODES_ACROSS];
        double[] y = new double[x.length];
        SpeedInput.nodes(x, y);
        Path points = file("points.csv");
        Path nodes = file("nodes.csv");
        write(points, samples);
        write(nodes, x, y);
        String what = "100 000 nodes, nearest 24 of " + count;
        double ours = warm(() -> new OrdinaryKriging(samples, Variogram.isotropic(Shape.SPHERICAL, 0.5, 4, 1500))
                .estimate(x, y, 24));
        Theirs theirs = theirs("Rscript", script("kriging.R"), points.toString(), nodes.toString(), out("gstat.csv"));
        say(what + ", warm", ours, theirs.printed);
        double whole = process(ours(
                "estimate", "--points", points.toString(), "--value", "value", "--at", nodes.toString(), "--out",
                out("ours.csv"), "--model", "spherical", "--nugget", "0.5", "--sill", "4", "--range", "1500",
                "--neighbours", "24"));
        // the script kriges five times: four of them are not the process's
        double once = theirs.processS - theirs.total + theirs.printed;
        say(what + ", process", whole, once);
    }

    private void contouring(int count) throws IOException, InterruptedException {
        Raster hills = SpeedInput.hills(2000);
        double[] levels = SpeedInput.levels(count);
        Path grid = file("hills.asc");
        write(grid, hills);
        String what = "2000 x 2000 raster, " + count + (count == 1 ? " level" : " levels");
        double ours = warm(() -> Contours.bands(hills, levels));
        List<String> theirs = new ArrayList<>(List.of("gdal_contour", "-q", "-p", "-amin", "low", "-amax", "high"));
        theirs.add("-fl");
        Arrays.stream(levels).forEach(l -> theirs.add(Double.toString(l)));
        List<String> inMemory = new ArrayList<>(theirs);
        inMemory.addAll(List.of("-f", "Memory", binary(grid), "none"));
        say(what + ", warm (theirs: a process that writes nothing)", ours, processOrNothing(inMemory));
        theirs.addAll(List.of("-f", "GeoJSON", grid.toString()));
        double whole = process(ours(
                "contour", "--grid", grid.toString(), "--levels", joined(levels), "--out", out("ours.geojson")));
        double best = Double.NaN;
        for (int run = 0; run < PROCESSES; run++) {
            List<String> command = new ArrayList<>(theirs);
            command.add(out("gdal" + count + run + ".geojson"));
            best = least(best, processOrNothing(command));
        }
        say(what + ", process", whole, best);
    }

    private void solving(int columns, int rows) throws IOException, InterruptedException {
        RandomGrid grid = RandomGrid.regular(columns, rows, 10, 1);
        double[] load = new Random(3).doubles(grid.matrix.size()).toArray();
        double ours = warm(() -> Cholesky.factor(grid.matrix, grid.x, grid.y).solve(load));
        Theirs theirs = theirs("Rscript", script("cholesky.R"), Integer.toString(columns), Integer.toString(rows));
        say(String.format(Locale.ROOT, "%d unknowns factored and solved, warm", load.length), ours, theirs.printed);
    }

    private static double warm(Work work) {
        double least = Double.NaN;
        for (int run = -WARM_UP; run < RUNS; run++) {
            long from = System.nanoTime();
            if (work.done().hashCode() == 0) {
                throw new IllegalStateException("nothing came of it");
            }
            if (run >= 0) {
                least = least(least, (System.nanoTime() - from) / 1e9);
            }
        }
        return least;
    }

    private static double least(double a, double b) {
        return Double.isNaN(a) || b < a ? b : a;
    }

    /**
     * What another program took.
     *
     * @param printed the least second it printed itself; not a number where it is not installed
     * @param total all that it printed
     * @param processS from start to end
     */
    private record Theirs(double printed, double total, double processS) {
        static final Theirs MISSING = new Theirs(Double.NaN, Double.NaN, Double.NaN);
    }

    private Theirs theirs(String... command) throws InterruptedException, IOException {
        Path said = file("said.txt");
        double seconds = run(List.of(command), said);
        if (Double.isNaN(seconds)) {
            return Theirs.MISSING;
        }
        double[] printed = Files.readAllLines(said, StandardCharsets.UTF_8).stream()
                .mapToDouble(line -> Double.parseDouble(line.trim()))
                .toArray();
        return new Theirs(
                Arrays.stream(printed).min().orElse(Double.NaN), Arrays.stream(printed).sum(), seconds);
    }

    private double process(List<String> command) throws InterruptedException {
        double least = Double.NaN;
        for (int run = 0; run < PROCESSES; run++) {
            least = least(least, processOrNothing(command));
        }
        return least;
    }

    private double processOrNothing(List<String> command) throws InterruptedException {
        return run(command, file("said.txt"));
    }

    /** Seconds; not a number where there is no such program or it failed. */
    private static double run(List<String> command, Path said) throws InterruptedException {
        long from = System.nanoTime();
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(said.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor() == 0 ? (System.nanoTime() - from) / 1e9 : Double.NaN;
        } catch (IOException missing) {
            return Double.NaN;
        }
    }

    private static List<String> ours(String... args) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return Stream.concat(
                        Stream.of(java, "-Xmx2g", "-cp", System.getProperty("java.class.path"), "corewright.Main"),
                        Arrays.stream(args))
                .toList();
    }

    /** The grid as the other program reads it fastest; as it is where it cannot be turned. */
    private String binary(Path grid) throws InterruptedException {
        String tif = out("hills.tif");
        double turned = run(List.of("gdal_translate", "-q", grid.toString(), tif), file("said.txt"));
        return Double.isNaN(turned) ? grid.toString() : tif;
    }

    private static void say(String what, double ours, double theirs) {
        String other = Double.isNaN(theirs) ? "not here" : String.format(Locale.ROOT, "%.3f", theirs);
        String ratio = Double.isNaN(theirs) ? "" : String.format(Locale.ROOT, "%.2f", ours / theirs);
        System.out.printf(Locale.ROOT, "%-44s %9.3f %9s %7s%n", what, ours, other, ratio);
    }

    private static String script(String name) {
        return Path.of("src", "bench", "r", name).toString();
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    private String out(String name) {
        return file(name).toString();
    }

    private static String joined(double[] levels) {
        return String.join(
                ",", Arrays.stream(levels).mapToObj(Double::toString).toList());
    }

    private static void write(Path file, Samples samples) throws IOException {
        try (PrintWriter to = new PrintWriter(Files.newBufferedWriter(file))) {
            to.println("x,y,value");
            for (int i = 0; i < samples.size(); i++) {
                to.println(samples.x(i) + "," + samples.y(i) + "," + samples.value(i));
            }
        }
    }

    private static void write(Path file, double[] x, double[] y) throws IOException {
        try (PrintWriter to = new PrintWriter(Files.newBufferedWriter(file))) {
            to.println("x,y");
            for (int i = 0; i < x.length; i++) {
                to.println(x[i] + "," + y[i]);
            }
        }
    }

    private static void write(Path file, Raster raster) throws IOException {
        try (PrintWriter to = new PrintWriter(Files.newBufferedWriter(file))) {
            to.printf(
                    Locale.ROOT,
                    "ncols %d%nnrows %d%nxllcorner 0%nyllcorner 0%ncellsize 1%n",
                    raster.columns(),
                    raster.rows());
            for (int row = raster.rows() - 1; row >= 0; row--) {
                StringBuilder line = new StringBuilder();
                for (int column = 0; column < raster.columns(); column++) {
                    line.append((float) raster.at(row, column)).append(' ');
                }
                to.println(line);
            }
        }
    }
}
