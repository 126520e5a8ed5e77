package corewright.bench;

import corewright.assessment.Assessment;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.report.Overlaps;
import corewright.report.Printed;
import corewright.report.cards.WorkCards;
import corewright.report.owner.OwnerReport;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Words on words and words on hole marks, in every document of generated surveys: invented decks of each kind and the demo after random
 * edits, without panels, whose pages have no placed words.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.OverlapBenchmark -Dexec.args="20 1 target/overlaps"
 * </pre>
 */
public final class OverlapBenchmark {
    private OverlapBenchmark() {}

    /** @param arguments how many surveys; first seed; folder for the documents */
    public static void main(String[] arguments) throws Exception {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        int count = Integer.parseInt(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        int overlaps = 0;
        int regions = 0;
        for (long seed = first; seed < first + count; seed++) {
            Assessment assessment = Printed.withoutPanels(survey(seed));
            regions += assessment.damage().regions().size();
            List<String> found = found(assessment, Files.createDirectories(Path.of(arguments[2], "survey-" + seed)));
            overlaps += found.size();
            found.forEach(out::println);
            out.printf(Locale.ROOT, "survey %d: %d overlaps%n", seed, found.size());
        }
        out.printf(Locale.ROOT, "%d surveys with %d regions: %d overlaps%n", count, regions, overlaps);
    }

    private static Intake survey(long seed) throws Exception {
        InventedTruth.Kind[] kinds = InventedTruth.Kind.values();
        int kind = (int) Math.floorMod(seed, kinds.length + 1L);
        return kind < kinds.length
                ? SurveyCheck.check(new InventedDeck(kinds[kind], seed).survey(), List.of())
                : WholeChainBenchmark.edited(seed);
    }

    private static List<String> found(Assessment assessment, Path folder) throws Exception {
        OwnerReport.write(assessment, folder.resolve("owner-report.pdf"));
        WorkCards.write(assessment, folder.resolve("work-cards.pdf"));
        SurveyRecord.write(assessment, Map.of(), folder.resolve("survey-record.pdf"));
        DrillTemplate.tiles(assessment, folder.resolve("drill-template.pdf"));
        DrillTemplate.sheets(assessment, folder.resolve("drill-template-sheet.pdf"));
        try (Stream<Path> files = Files.list(folder)) {
            Stream.Builder<String> all = Stream.builder();
            for (Path file : files.sorted().toList()) {
                Overlaps.of(file).forEach(f -> all.add(folder.getFileName() + " " + f));
            }
            return all.build().toList();
        }
    }
}
