package corewright.bench;

import corewright.Assessments;
import corewright.bench.InventedTruth.Kind;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.overlay.Overlay;
import corewright.repair.RepairPlanner;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

/**
 * What the advised methods do to invented decks whose truth is known: wet core left beside new core, cut area over truly wet
 * area, injected area over truly wet core:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=corewright.bench.DecisionBenchmark -Dexec.args="COUNT FIRSTSEED"
 * </pre>
 */
public final class DecisionBenchmark {
    /** Beside new core: nearer to a cut than this. Water goes as far along the joints of the core in a season: practice. */
    private static final double BESIDE_MM = 50;

    private DecisionBenchmark() {}

    /** @param arguments decks of each kind; first seed */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        List<Double> left = new ArrayList<>();
        List<Double> cut = new ArrayList<>();
        int injected = 0;
        int over = 0;
        double overM2 = 0;
        for (Kind kind : Kind.values()) {
            for (int i = 0; i < count; i++) {
                Score score = score(new InventedDeck(kind, first + i));
                if (score.cutMm2 > 0 && score.wetMm2 > 0) {
                    left.add(score.leftMm2 / score.wetMm2);
                    cut.add(score.cutMm2 / Math.max(1, score.wetCutMm2));
                }
                injected += score.injections;
                over += score.overWetMm2 > 0.03 * score.injectedMm2 ? 1 : 0;
                overM2 += score.overWetMm2 / 1e6;
                out.printf(
                        Locale.ROOT,
                        "%s-%d wet %.3f m2 cut %.3f left beside %.4f injected %.3f over wet %.4f%n",
                        kind,
                        first + i,
                        score.wetMm2 / 1e6,
                        score.cutMm2 / 1e6,
                        score.leftMm2 / 1e6,
                        score.injectedMm2 / 1e6,
                        score.overWetMm2 / 1e6);
            }
        }
        out.printf(
                Locale.ROOT,
                "left beside new core over wet: median %.4f, nine in ten %.4f (%d decks with a cut)%n",
                at(left, 0.5),
                at(left, 0.9),
                left.size());
        out.printf(
                Locale.ROOT, "cuts of wet regions over what is truly wet in or beside them: median %.2f, nine in ten %.2f%n", at(cut, 0.5), at(cut, 0.9));
        out.printf(Locale.ROOT, "injections %d, decks with more than 3 %% of them over wet core %d, %.4f m2%n", injected, over, overM2);
    }

    private record Score(
            double wetMm2,
            double cutMm2,
            double wetCutMm2,
            double leftMm2,
            int injections,
            double injectedMm2,
            double overWetMm2) {}

    private static Score score(InventedDeck deck) {
        Survey survey = deck.survey();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        Decision d = Assessments.decide(survey, map, RepairPlanner.plan(survey, map, new Memory()));
        GeometryFactory factory = new GeometryFactory();
        Geometry cut = union(factory, d.recores().stream().map(r -> r.cut()).toList());
        List<Region> filled = map.regions().stream()
                .filter(r -> d.on(r.id()).method() == Method.INJECT)
                .toList();
        Geometry fill = union(factory, filled.stream().map(r -> (Geometry) r.likely()).toList());
        IndexedPointInAreaLocator inCut = new IndexedPointInAreaLocator(cut);
        IndexedPointInAreaLocator beside = new IndexedPointInAreaLocator(cut.buffer(BESIDE_MM));
        IndexedPointInAreaLocator inFill = new IndexedPointInAreaLocator(fill);
        Geometry wetCuts = union(
                factory,
                d.recores().stream()
                        .filter(r -> map.regions().stream()
                                .anyMatch(g -> g.id().equals(r.region()) && g.wet()))
                        .map(r -> r.cut())
                        .toList());
        Truth truth = deck.grids();
        double mm2 = truth.wet().cell * truth.wet().cell;
        double wet = 0;
        double taken = 0;
        double left = 0;
        double over = 0;
        for (int i = 0; i < truth.wet().size(); i++) {
            if (!truth.wet().onDeck(i) || !truth.wetAt(i)) {
                continue;
            }
            Coordinate at = new Coordinate(truth.wet().x(i), truth.wet().y(i));
            wet += mm2;
            taken += inside(inCut, at) ? mm2 : 0;
            left += !inside(inCut, at) && inside(beside, at) ? mm2 : 0;
            over += inside(inFill, at) ? mm2 : 0;
        }
        return new Score(wet, wetCuts.getArea(), taken + left, left, filled.size(), fill.getArea(), over);
    }

    private static Geometry union(GeometryFactory factory, List<Geometry> areas) {
        return areas.isEmpty() ? factory.createPolygon() : Overlay.union(areas);
    }

    private static boolean inside(IndexedPointInAreaLocator area, Coordinate at) {
        return area.locate(at) != Location.EXTERIOR;
    }

    private static double at(List<Double> values, double share) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.isEmpty() ? Double.NaN : sorted.get((int) Math.floor(share * (sorted.size() - 1)));
    }
}
