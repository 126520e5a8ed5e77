package corewright.bench;

import corewright.Assessments;
import corewright.bench.InventedTruth.Kind;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.Flip;
import corewright.reuse.Memory;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;

/**
 * The stated chance that a further reading changes a method against how often it does, on invented decks, every other of which a
 * hurried surveyor read. A pilot hole is drilled in the truth; where readings are named, a grid of 100 mm is read over the region.
 * The deck is mapped anew, and the method asked of the region that then holds the place. No injection is planned, which takes most
 * of the time and moves no method but where none could be; a pilot hole stands at the region's middle instead of the planned
 * hole nearest to it:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.FlipBenchmark -Dexec.args="COUNT FIRSTSEED"
 * </pre>
 */
public final class FlipBenchmark {
    private static final int BINS = 5;
    private static final double STEP_MM = 100;
    private static final int HURRIED = 3;

    private final PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    private final double[] said = new double[BINS];
    private final double[] came = new double[BINS];
    private final int[] n = new int[BINS];

    private FlipBenchmark() {}

    /** @param arguments decks of each kind; first seed */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        FlipBenchmark benchmark = new FlipBenchmark();
        for (int i = 0; i < count; i++) {
            for (Kind kind : Kind.values()) {
                benchmark.deck(kind, first + i);
            }
            benchmark.tell();
        }
    }

    private static InventedDeck made(Kind kind, long seed) {
        InventedDeck deck = new InventedDeck(kind, seed);
        return seed % 2 == 0 ? deck : deck.hurried(HURRIED);
    }

    private void deck(Kind kind, long seed) {
        Survey survey = made(kind, seed).survey();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        for (Flip flip : decide(survey, map).weighing().flips()) {
            Region region = map.regions().stream()
                    .filter(r -> r.id().equals(flip.region()))
                    .findFirst()
                    .orElseThrow();
            String then = method(made(kind, seed), region, flip);
            int bin = Math.min(BINS - 1, (int) (BINS * flip.probability()));
            boolean as = then.equals(flip.becomes().word());
            said[bin] += flip.probability();
            came[bin] += as ? 1 : 0;
            n[bin]++;
            if (as != flip.probability() > 0.5) {
                out.printf(
                        Locale.ROOT,
                        "  %s %d %s %s, %.2f to be %s if %s: %s%n",
                        kind,
                        seed,
                        region.condition().word(),
                        flip.method().word(),
                        flip.probability(),
                        flip.becomes().word(),
                        flip.condition(),
                        then);
            }
        }
    }

    private void tell() {
        for (int b = 0; b < BINS; b++) {
            out.printf(
                    Locale.ROOT,
                    "%.1f to %.1f: %d, said %.3f, came %.3f%n",
                    (double) b / BINS,
                    (b + 1.0) / BINS,
                    n[b],
                    said[b] / Math.max(1, n[b]),
                    came[b] / Math.max(1, n[b]));
        }
    }

    private static Decision decide(Survey survey, DamageMap map) {
        return Assessments.decide(survey, map, Unplanned.of(map));
    }

    /** The word of the method after the reading, of the region that holds the place then. */
    private static String method(InventedDeck again, Region region, Flip flip) {
        Spot spot = flip.spot();
        if (spot == null) {
            read(again, region);
        } else {
            again.take(NextReading.Kind.PROBE, spot.xMm(), spot.yMm());
        }
        Survey survey = again.survey();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        Decision decision = decide(survey, map);
        Point place =
                spot == null ? region.label() : region.likely().getFactory().createPoint(spot.coordinate());
        return map.regions().stream()
                .filter(r -> r.likely().covers(place))
                .findFirst()
                .map(r -> decision.on(r.id()).method().word())
                .orElse("none");
    }

    private static void read(InventedDeck deck, Region region) {
        Envelope box = region.likely().getEnvelopeInternal();
        for (double x = box.getMinX() + STEP_MM / 2; x < box.getMaxX(); x += STEP_MM) {
            for (double y = box.getMinY() + STEP_MM / 2; y < box.getMaxY(); y += STEP_MM) {
                if (region.likely().covers(region.likely().getFactory().createPoint(new Coordinate(x, y)))) {
                    deck.take(NextReading.Kind.MOISTURE, x, y);
                }
            }
        }
    }
}
