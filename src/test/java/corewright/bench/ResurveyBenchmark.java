package corewright.bench;

import corewright.bench.InventedTruth.Kind;
import corewright.comparison.Change;
import corewright.comparison.Comparer;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.RegionChange;
import corewright.comparison.Side;
import corewright.damage.Damage;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Two surveys of one invented deck, every reading drawn anew: how often a change is claimed where there is none, and how often a
 * mended region of 0.05 square metres is found, over decks of all kinds:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.ResurveyBenchmark -Dexec.args="same|new COUNT FIRSTSEED"
 * </pre>
 *
 * {@code same}: the second survey reads the same places; {@code new}: places drawn anew, at a spacing of their own.
 */
public final class ResurveyBenchmark {
    private static final double AREA_MM2 = 50_000;
    private static final double CLEAR_MM = 300;
    private static final int TRIES = 400;

    private final boolean samePlaces;
    private final int count;
    private final long first;
    private final PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);

    private ResurveyBenchmark(String[] arguments) {
        samePlaces = arguments[0].equals("same");
        count = Integer.parseInt(arguments[1]);
        first = Long.parseLong(arguments[2]);
    }

    /** @param arguments which places; pairs; first seed */
    public static void main(String[] arguments) {
        ResurveyBenchmark benchmark = new ResurveyBenchmark(arguments);
        if (arguments.length < 4) {
            benchmark.unchanged();
        }
        benchmark.mended();
    }

    private static Kind kind(int i) {
        return Kind.values()[i % Kind.values().length];
    }

    private void unchanged() {
        int quiet = 0;
        TreeMap<String, Integer> claims = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            InventedDeck deck = new InventedDeck(kind(i), first + i);
            InventedDeck again = deck.again(deck.truth, 90_000 + first + i, samePlaces);
            List<Change> proven = compare(deck.survey(), again.survey()).figures().stream()
                    .filter(Change::proven)
                    .toList();
            quiet += proven.isEmpty() ? 1 : 0;
            proven.forEach(c -> out.println("  claimed: " + c));
            proven.forEach(c -> claims.merge(where(c) + " " + c.quantity().word(), 1, Integer::sum));
        }
        out.printf(Locale.ROOT, "same truth: no change claimed in %d of %d; claims %s%n", quiet, count, claims);
    }

    private static String where(Change change) {
        return change.face().isEmpty()
                ? "whole"
                : change.region().isEmpty() ? "face" : change.region().substring(0, 1);
    }

    private void mended() {
        int[] tried = new int[3];
        int[] mapped = new int[3];
        int[] found = new int[3];
        int[] wrong = new int[3];
        for (int i = 0; i < count; i++) {
            int what = i % 3;
            InventedDeck deck = new InventedDeck(kind(i / 3), first + 1000 + i);
            Random random = new Random(70_000 + first + i);
            Coordinate middle = clear(deck, random);
            if (middle == null) {
                continue;
            }
            double radius = Math.sqrt(AREA_MM2 / Math.PI);
            InventedTruth damaged = deck.truth.with(middle, radius, what != 1, what != 0, random);
            InventedDeck before = deck.again(damaged, 80_000 + first + i, true);
            InventedDeck after = deck.again(deck.truth, 90_000 + first + i, samePlaces);
            Comparison comparison = compare(before.survey(), after.survey());
            Polygon place = (Polygon) new GeometryFactory().createPoint(middle).buffer(radius);
            FaceComparison face = comparison.faces().get(0);
            tried[what]++;
            face.regions().stream()
                    .filter(r -> at(r, place) && !fell(r))
                    .flatMap(r -> r.figures().stream())
                    .forEach(c -> out.println("  not proven: " + c));
            mapped[what] += face.regions().stream().anyMatch(r -> at(r, place)) ? 1 : 0;
            found[what] += face.regions().stream().anyMatch(r -> at(r, place) && fell(r)) ? 1 : 0;
            boolean elsewhere = face.regions().stream().anyMatch(r -> !at(r, place) && fell(r))
                    || face.news().stream().anyMatch(n -> n.figure().proven());
            wrong[what] += elsewhere ? 1 : 0;
        }
        String[] names = {"wet", "loose", "wet and loose"};
        for (int k = 0; k < names.length; k++) {
            out.printf(
                    Locale.ROOT,
                    "mended 0.05 m2, %s: on the first map %d, found mended %d, of %d; claims elsewhere in %d%n",
                    names[k],
                    mapped[k],
                    found[k],
                    tried[k],
                    wrong[k]);
        }
    }

    private static boolean fell(RegionChange region) {
        return region.fate() == RegionChange.Fate.MENDED || region.fate() == RegionChange.Fate.PARTLY;
    }

    private static boolean at(RegionChange region, Polygon place) {
        return region.region().likely().intersects(place);
    }

    /** A place clear of other damage and of the deck's edge; null where the deck has none. */
    private static @Nullable Coordinate clear(InventedDeck deck, Random random) {
        for (int k = 0; k < TRIES; k++) {
            double x = 200 + (deck.lengthMm() - 400) * random.nextDouble();
            double y = 200 + (deck.widthMm() - 400) * random.nextDouble();
            boolean free = Math.max(deck.truth.wetInner(x, y), deck.truth.looseInner(x, y)) < -CLEAR_MM;
            if (free) {
                return new Coordinate(x, y);
            }
        }
        return null;
    }

    private static Comparison compare(Survey before, Survey after) {
        return Comparer.compare(
                Side.mapped(before, Damage.fit(before, new Memory())),
                Side.mapped(after, Damage.fit(after, new Memory())));
    }
}
