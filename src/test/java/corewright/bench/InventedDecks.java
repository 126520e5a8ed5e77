package corewright.bench;

import corewright.bench.InventedTruth.Kind;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.NextReading;
import corewright.reuse.Memory;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Scores the damage map on invented decks of every kind: overlaps, volume, calibration, what the suggested readings and
 * six suggested pilot holes are worth, false regions on undamaged decks:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.InventedDecks -Dexec.args="COUNT FIRSTSEED"
 * </pre>
 */
public final class InventedDecks {
    private InventedDecks() {}

    /** All that was counted on decks of one kind. */
    record Tally(
            List<DeckScore> scores,
            Calibration wet,
            Calibration loose,
            List<Double> suggested,
            List<Double> spread,
            List<Double> probed,
            List<Double> falseM2) {
        Tally() {
            this(
                    new ArrayList<>(),
                    new Calibration(),
                    new Calibration(),
                    new ArrayList<>(),
                    new ArrayList<>(),
                    new ArrayList<>(),
                    new ArrayList<>());
        }
    }

    /** @param arguments decks of each kind; first seed */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        boolean gains = arguments.length < 3;
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        for (Kind kind : Kind.values()) {
            Tally tally = new Tally();
            for (int i = 0; i < count; i++) {
                add(tally, kind, first + i, gains);
            }
            out.println(line(kind.name(), tally));
        }
    }

    /** Maps one deck; with {@code gains} also after the suggested readings, which takes three times as long. */
    static void add(Tally tally, Kind kind, long seed, boolean gains) {
        InventedDeck deck = new InventedDeck(kind, seed);
        Truth truth = deck.grids();
        DamageMap map = Damage.fit(deck.survey(), new Memory()).map();
        DeckScore score = DeckScore.of(kind + "-" + seed, map, truth, 0);
        tally.scores.add(score);
        var surfaces = map.faces().get(0).surfaces();
        tally.wet.add(surfaces.pWet(), truth.wet(), truth::wetAt);
        tally.loose.add(surfaces.pLoose(), truth.loose(), truth::looseAt);
        if (kind == Kind.NONE) {
            tally.falseM2.add(map.regions().stream()
                            .mapToDouble(r -> r.likely().getArea())
                            .sum()
                    / 1e6);
        } else if (gains) {
            double wrong = DeckScore.wrongM2(map, truth);
            List<NextReading> next = map.faces().get(0).next();
            tally.suggested.add(1 - after(kind, seed, next, truth) / wrong);
            tally.spread.add(1 - afterSpread(kind, seed, next) / wrong);
            InventedDeck probed = new InventedDeck(kind, seed);
            next.stream()
                    .filter(n -> n.kind() == NextReading.Kind.PROBE)
                    .limit(6)
                    .forEach(n -> probed.take(n.kind(), n.spot().xMm(), n.spot().yMm()));
            double error = DeckScore.of("", probed.survey(), truth).volumeError();
            if (!Double.isNaN(error)) {
                tally.probed.add(error);
            }
        }
    }

    private static double after(Kind kind, long seed, List<NextReading> next, Truth truth) {
        InventedDeck deck = new InventedDeck(kind, seed);
        next.forEach(n -> deck.take(n.kind(), n.spot().xMm(), n.spot().yMm()));
        return DeckScore.wrongM2(Damage.fit(deck.survey(), new Memory()).map(), truth);
    }

    /** As many readings of the same kinds in the middle of equal strips of the deck, row after row: the yardstick. */
    private static double afterSpread(Kind kind, long seed, List<NextReading> next) {
        InventedDeck deck = new InventedDeck(kind, seed);
        for (int i = 0; i < next.size(); i++) {
            double x = deck.lengthMm() * (i + 0.5) / next.size();
            double y = deck.widthMm() * ((i * 0.618034 + 0.3) % 1);
            deck.take(next.get(i).kind(), x, y);
        }
        return DeckScore.wrongM2(Damage.fit(deck.survey(), new Memory()).map(), deck.grids());
    }

    private static String line(String name, Tally t) {
        return String.format(
                Locale.ROOT,
                "%s%n         gap wet %.3f loose %.3f; suggested %.3f, spread %.3f of wrong area removed; volume error after"
                        + " six probes %.3f; false above 0.02 m2 %.3f",
                TrialDecks.medians(String.format(Locale.ROOT, "%-10s", name), t.scores),
                t.wet.gap(),
                t.loose.gap(),
                mean(t.suggested),
                mean(t.spread),
                t.probed.stream().sorted().skip(t.probed.size() / 2).findFirst().orElse(Double.NaN),
                mean(t.falseM2.stream().map(a -> a > 0.02 ? 1.0 : 0.0).toList()));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(Double.NaN);
    }
}
