package corewright.bench;

import corewright.SurveyFolders;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.survey.Readings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Times the reading of large survey folders: every id written and every reading on the deck; and the worst a folder can
 * do, no id anywhere, every tenth reading outside the outline, every place read twice, a cell note each. The first of the
 * runs is what the command line does, in a machine just started. Run: {@code mvn -o -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.IntakeBenchmark [-Dexec.args=1000000]}.
 */
public final class IntakeBenchmark {
    private IntakeBenchmark() {}

    public static void main(String[] args) throws IOException {
        int readings = args.length == 0 ? 300_000 : Integer.parseInt(args[0]);
        Path parent = Files.createTempDirectory("intake-benchmark");
        try {
            Path tidy = Files.createDirectory(parent.resolve("a"));
            Path worst = Files.createDirectory(parent.resolve("b"));
            time("tidy", folder(tidy, readings, false), 4);
            time("worst", folder(worst, readings, true), 4);
        } finally {
            try (Stream<Path> all = Files.walk(parent)) {
                all.sorted(Comparator.reverseOrder()).forEach(IntakeBenchmark::delete);
            }
        }
    }

    private static void time(String name, Path folder, int runs) throws IOException {
        for (int run = 0; run < runs; run++) {
            long start = System.nanoTime();
            long startCpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Intake intake = SurveyFolder.read(folder);
            Readings r = intake.survey().readings();
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d readings, %d findings, %.2f s, of which this thread's processor time %.2f s%n",
                    name,
                    r.moisture().size() + r.taps().size() + r.probes().size(),
                    intake.findings().size(),
                    (System.nanoTime() - start) * 1e-9,
                    (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - startCpu) * 1e-9);
        }
    }

    /** Two thirds moisture, the rest taps, and a thousand probes, on a deck of 12 x 4 m with openings and a curved edge. */
    private static Path folder(Path parent, int readings, boolean worst) {
        int probes = 1000;
        int moisture = readings * 2 / 3;
        int taps = readings - moisture - probes;
        Random random = new Random(20260402);
        return SurveyFolders.minimal(parent)
                .with("plan.csv", plan())
                .with("moisture.csv", rows("id,x,y,value,meter,note\n", "M", moisture, worst, random))
                .with("taps.csv", rows("id,x,y,sound,note\n", "T", taps, worst, random))
                .with("probes.csv", rows("id,x,y,void_depth,core_state,note\n", "P", probes, worst, random))
                .path();
    }

    private static String rows(String header, String kind, int n, boolean worst, Random random) {
        StringBuilder text = new StringBuilder(header);
        double x = 0;
        double y = 0;
        for (int i = 0; i < n; i++) {
            if (!worst || i % 2 == 0) {
                x = 10 + 11_900 * random.nextDouble();
                y = (worst && i % 20 == 0 ? 3000 : 1900) * (2 * random.nextDouble() - 1) * Math.sqrt(1 - x / 12_000);
            }
            text.append(worst ? "" : kind + (i + 1));
            text.append(String.format(Locale.ROOT, ",%.1f,%.1f,", x, y));
            text.append(
                    switch (kind) {
                        case "M" -> Math.round(8 + 60 * random.nextDouble()) + ",A";
                        case "T" -> random.nextInt(5) == 0 ? "hollow" : "sound";
                        default -> random.nextInt(4) + ".5,wet";
                    });
            text.append(worst ? ",\"seen, and noted\"\n" : ",\n");
        }
        return text.toString();
    }

    private static String plan() {
        StringBuilder outline = new StringBuilder("0 -2000");
        for (int i = 1; i <= 100; i++) {
            outline.append(String.format(Locale.ROOT, ",%d %.1f", 120 * i, -2000 * Math.sqrt(1 - i / 100.0)));
        }
        for (int i = 99; i >= 0; i--) {
            outline.append(String.format(Locale.ROOT, ",%d %.1f", 120 * i, 2000 * Math.sqrt(1 - i / 100.0)));
        }
        return "face,kind,name,wkt,metal,load_bearing,keepout,edge,laminate\n"
                + "foredeck,outline,deck edge,\"POLYGON((" + outline + ",0 -2000))\",,,,,deck\n"
                + "foredeck,opening,hatch,\"POLYGON((3000 -300,3600 -300,3600 300,3000 300,3000 -300))\",,,,,\n"
                + "foredeck,opening,companionway,\"POLYGON((6000 -500,8000 -500,8000 500,6000 500,6000 -500))\",,,,,\n"
                + "foredeck,fitting,cleat,POINT(450 300),yes,yes,60,,\n";
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
