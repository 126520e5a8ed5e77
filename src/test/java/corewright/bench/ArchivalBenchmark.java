package corewright.bench;

import corewright.report.Kept;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Every document of whole runs before the judges of {@link Kept}: PDF/A-2b by an independent validator, told part by part, legible.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.ArchivalBenchmark -Dexec.args="target/demo"
 * </pre>
 */
public final class ArchivalBenchmark {
    private ArchivalBenchmark() {}

    /** @param folders of runs, comparisons or sheets */
    public static void main(String[] folders) throws Exception {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        int passed = 0;
        int refused = 0;
        for (String folder : folders) {
            for (Path file : documents(Path.of(folder))) {
                try {
                    Kept.check(file);
                    passed++;
                } catch (AssertionError e) {
                    refused++;
                    out.println(file + ": " + e.getMessage());
                }
            }
        }
        out.printf(Locale.ROOT, "%d documents passed, %d refused%n", passed, refused);
    }

    private static List<Path> documents(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
    }
}
