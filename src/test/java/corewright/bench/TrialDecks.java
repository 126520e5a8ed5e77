package corewright.bench;

import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Scores the damage map on a folder of decks whose truth is known, one line a deck and the medians:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.TrialDecks -Dexec.args="FOLDER"
 * </pre>
 */
public final class TrialDecks {
    private TrialDecks() {}

    /** @param arguments the folder that holds one folder a deck */
    public static void main(String[] arguments) throws IOException {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        out.println(DeckScore.head());
        List<DeckScore> scores = new ArrayList<>();
        Calibration wet = new Calibration();
        Calibration loose = new Calibration();
        for (Path deck : decks(Path.of(arguments[0]))) {
            long start = System.nanoTime();
            DamageMap map =
                    Damage.fit(SurveyFolder.read(deck).survey(), new Memory()).map();
            double millis = (System.nanoTime() - start) / 1e6;
            Truth truth = Truth.read(deck);
            DeckScore score = DeckScore.of(String.valueOf(deck.getFileName()), map, truth, millis);
            scores.add(score);
            var surfaces = map.faces().get(0).surfaces();
            wet.add(surfaces.pWet(), truth.wet(), truth::wetAt);
            loose.add(surfaces.pLoose(), truth.loose(), truth::looseAt);
            out.println(score.line());
        }
        out.printf(
                Locale.ROOT, "stated and observed frequency differ by %.3f wet, %.3f loose%n", wet.gap(), loose.gap());
        out.println(medians("all", scores));
        // decks 00 to 11 are wet wherever they are loose; the later ones are loose over dry core
        out.println(medians("00-11", scores.subList(0, Math.min(12, scores.size()))));
        if (scores.size() > 12) {
            out.println(medians("12 on", scores.subList(12, scores.size())));
        }
    }

    static DeckScore score(Path deck) throws IOException {
        String name = String.valueOf(deck.getFileName());
        return DeckScore.of(name, SurveyFolder.read(deck).survey(), Truth.read(deck));
    }

    /** The folders in a folder that hold a deck and its truth. */
    public static List<Path> decks(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> Files.exists(p.resolve("truth-wet.asc")))
                    .sorted()
                    .toList();
        }
    }

    static String medians(String name, List<DeckScore> scores) {
        return String.format(
                Locale.ROOT,
                "%-8s %.3f  %.3f  %.3f  volume error %.3f, truth within P10..P90 %.2f, above P90 %.2f; damaged"
                        + " area error %.3f, truth within P10..P90 %.2f, above P90 %.2f, (P90-P10)/P50 %.3f",
                name,
                median(scores, s -> s.overlap().wet()),
                median(scores, s -> s.overlap().delaminated()),
                median(scores, s -> s.overlap().empty()),
                median(scores, DeckScore::volumeError),
                share(scores, s -> s.covered() ? 1 : 0),
                share(scores, s -> s.trueLitres() > s.litres().p90() ? 1 : 0),
                median(scores, s -> Math.abs(s.damagedM2().p50() - s.trueM2()) / s.trueM2()),
                share(scores, s -> s.areaCovered() ? 1 : 0),
                share(scores, s -> s.trueM2() > s.damagedM2().p90() ? 1 : 0),
                median(
                        scores,
                        s -> (s.damagedM2().p90() - s.damagedM2().p10())
                                / s.damagedM2().p50()));
    }

    static double share(List<DeckScore> scores, ToDoubleFunction<DeckScore> of) {
        return scores.stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    static double median(List<DeckScore> scores, ToDoubleFunction<DeckScore> of) {
        double[] sorted = scores.stream()
                .mapToDouble(of)
                .filter(v -> !Double.isNaN(v))
                .sorted()
                .toArray();
        int half = sorted.length / 2;
        return sorted.length == 0
                ? Double.NaN
                : Arrays.stream(sorted, (sorted.length - 1) / 2, half + 1)
                        .average()
                        .orElseThrow();
    }
}
