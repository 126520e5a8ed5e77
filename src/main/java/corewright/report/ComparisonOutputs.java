package corewright.report;

import corewright.comparison.Comparison;
import corewright.report.compare.ComparisonCsv;
import corewright.report.compare.ComparisonMaps;
import corewright.report.compare.ComparisonReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes everything a comparison leaves behind. */
public final class ComparisonOutputs {
    private ComparisonOutputs() {}

    /** Writes the folder, whole or not at all, as {@link Outputs} does. */
    public static void write(Comparison comparison, Path folder) throws IOException {
        try (Destination destination = new Destination(folder)) {
            Path work = destination.work();
            ComparisonCsv.of(comparison)
                    .write(
                            work.resolve("comparison.csv"),
                            comparison.after().survey().settings().terms().csv());
            ComparisonReport.write(comparison, work.resolve("comparison.pdf"));
            ComparisonMaps.write(comparison, Files.createDirectory(work.resolve("maps")));
            destination.finish();
        }
    }
}
