package corewright.bench;

import corewright.Assessments;
import corewright.bench.InventedTruth.Kind;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.Flip;
import corewright.repair.RepairPlanner;
import corewright.reuse.Memory;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * The stated chance that a pilot hole changes a method against how often it does: the hole is drilled in the truth of an invented
 * deck, the deck mapped anew, and the method of the region asked that then holds the place:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.FlipBenchmark -Dexec.args="COUNT FIRSTSEED"
 * </pre>
 */
public final class FlipBenchmark {
    private static final int BINS = 5;

    private FlipBenchmark() {}

    /** @param arguments decks of each kind; first seed */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        double[] said = new double[BINS];
        double[] came = new double[BINS];
        int[] n = new int[BINS];
        for (Kind kind : Kind.values()) {
            for (int i = 0; i < count; i++) {
                InventedDeck deck = new InventedDeck(kind, first + i);
                DamageMap map = Damage.fit(deck.survey(), new Memory()).map();
                for (Flip flip : decide(deck.survey(), map).weighing().flips()) {
                    Spot spot = flip.spot();
                    if (spot != null) {
                        int bin = Math.min(BINS - 1, (int) (BINS * flip.probability()));
                        said[bin] += flip.probability();
                        came[bin] += flips(new InventedDeck(kind, first + i), spot, flip) ? 1 : 0;
                        n[bin]++;
                    }
                }
            }
        }
        for (int b = 0; b < BINS; b++) {
            out.printf(
                    Locale.ROOT,
                    "%.1f to %.1f: %d holes, said %.3f, came %.3f%n",
                    (double) b / BINS,
                    (b + 1.0) / BINS,
                    n[b],
                    said[b] / Math.max(1, n[b]),
                    came[b] / Math.max(1, n[b]));
        }
    }

    private static Decision decide(Survey survey, DamageMap map) {
        return Assessments.decide(survey, map, RepairPlanner.plan(survey, map, new Memory()));
    }

    private static boolean flips(InventedDeck again, Spot spot, Flip flip) {
        again.take(NextReading.Kind.PROBE, spot.xMm(), spot.yMm());
        Survey survey = again.survey();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        Decision decision = decide(survey, map);
        return map.regions().stream()
                .filter(r -> holds(r, spot))
                .anyMatch(r -> decision.on(r.id()).method() == flip.becomes());
    }

    private static boolean holds(Region region, Spot spot) {
        return region.likely().covers(region.likely().getFactory().createPoint(spot.coordinate()));
    }
}
