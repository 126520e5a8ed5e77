package corewright.bench;

import corewright.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * A large yacht scanned closely: a survey folder of so many readings, two in three of moisture, the others taps, 32 mm apart on a deck 5 m
 * wide and as long as they need (60 m for 300 000), raster of 25 mm; a bulkhead every 1.5 m, two deck girders, a leak every 3 m. Then the whole
 * job on it. Run: see docs/performance.md.
 */
public final class ScaleBenchmark {
    private static final double BREADTH_MM = 5000;
    private static final double MM2_PER_READING = 1000;
    private static final double BAY_MM = 1500;
    private static final double LEAK_MM = 3000;

    private ScaleBenchmark() {}

    /** @param args how many readings, and the folder to be made for survey and outputs */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[1]);
        Path survey = write(Integer.parseInt(args[0]), Files.createDirectories(folder.resolve("survey")));
        Main.main(new String[] {"run", survey.toString(), "--out", folder.resolve("out").toString()});
    }

    private static Path write(int readings, Path folder) throws IOException {
        double length = readings * MM2_PER_READING / BREADTH_MM;
        Files.writeString(
                folder.resolve("survey.yaml"),
                """
                format: 1
                name: "a long deck (invented)"
                surveyed: 2026-05-19
                units: { length: mm, depth: mm, temperature: C }
                faces: [{ name: deck, tilt_deg: 2, uphill_deg: 0 }]
                files: { plan: plan.csv, moisture: moisture.csv, taps: taps.csv }
                meters: [{ name: A, full_scale: 100, dry: 10, wet: 25 }]
                laminates: [{ name: deck, outer_skin_mm: 3, core_mm: 20, inner_skin_mm: 2.5, skin: e-glass-polyester, core: balsa-150 }]
                """);
        try (PrintWriter plan = open(folder, "plan.csv", "face,kind,name,wkt,edge")) {
            line(plan, "deck,outline,edge,\"POLYGON((0 -2500,%1$.0f -2500,%1$.0f 2500,0 2500,0 -2500))\",", length);
            for (double x = BAY_MM; x < length - BAY_MM / 2; x += BAY_MM) {
                line(plan, "deck,support,bulkhead %.0f,\"LINESTRING(%2$.0f -2500,%2$.0f 2500)\",simple", x / BAY_MM, x);
            }
            for (int side : new int[] {-1, 1}) {
                line(plan, "deck,support,girder %1$d,\"LINESTRING(0 %1$d,%2$.0f %1$d)\",simple", side * 900, length);
            }
        }
        Random random = new Random(9);
        try (PrintWriter moisture = open(folder, "moisture.csv", "id,face,x,y,value,meter");
                PrintWriter taps = open(folder, "taps.csv", "id,face,x,y,sound")) {
            double pitch = Math.sqrt(MM2_PER_READING);
            int n = 0;
            for (double x = pitch / 2; x < length; x += pitch) {
                for (double y = pitch / 2 - BREADTH_MM / 2; y < BREADTH_MM / 2; y += pitch) {
                    double wet = wet(x, y);
                    if (n % 3 == 2) {
                        line(taps, "T%d,deck,%.0f,%.0f,%s", n, x, y, wet > 0.6 ? "hollow" : "sound");
                    } else {
                        double value = Math.max(0, Math.rint(10 + 40 * wet + 2 * random.nextGaussian()));
                        line(moisture, "M%d,deck,%.0f,%.0f,%.0f,A", n, x, y, value);
                    }
                    n++;
                }
            }
        }
        return folder;
    }

    private static PrintWriter open(Path folder, String name, String header) throws IOException {
        PrintWriter to = new PrintWriter(Files.newBufferedWriter(folder.resolve(name), StandardCharsets.UTF_8));
        to.println(header);
        return to;
    }

    private static void line(PrintWriter to, String format, Object... values) {
        to.printf(Locale.ROOT, format + "%n", values);
    }

    /** Leaks of 150 to 350 mm, one every three metres of deck. */
    private static double wet(double x, double y) {
        int k = (int) Math.floor(x / LEAK_MM);
        double size = 150 + 200 * (0.5 + 0.5 * Math.sin(5.3 * k));
        double far = Math.hypot(x - (k + 0.5) * LEAK_MM, y - 1900 * Math.sin(2.1 * k));
        return Math.exp(-far * far / (2 * size * size));
    }
}
