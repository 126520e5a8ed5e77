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
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Thresholds;
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

    /**
     * @param arguments decks of each kind; first seed; then, to try others, pairs such as 0.2:25 of cut_wet and recore_margin_mm; or
     *     "injected": nothing is planned, and only what is injected is told
     */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long first = Long.parseLong(arguments[1]);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        if (arguments.length > 2 && arguments[2].equals("injected")) {
            injected(out, count, first);
            return;
        }
        Thresholds usual = Thresholds.DEFAULT;
        List<Thresholds> trials = new ArrayList<>();
        for (int i = 2; i < arguments.length; i++) {
            String[] pair = arguments[i].split(":", 2);
            trials.add(with(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])));
        }
        if (trials.isEmpty()) {
            trials.add(usual);
        }
        List<List<Score>> scores = new ArrayList<>();
        trials.forEach(t -> scores.add(new ArrayList<>()));
        for (Kind kind : Kind.values()) {
            for (int i = 0; i < count; i++) {
                InventedDeck deck = new InventedDeck(kind, first + i);
                DamageMap map = Damage.fit(deck.survey(), new Memory()).map();
                for (int t = 0; t < trials.size(); t++) {
                    Survey survey = with(deck.survey(), trials.get(t));
                    RepairOptions options = RepairPlanner.plan(survey, map, new Memory());
                    scores.get(t).add(score(deck, map, Assessments.decide(survey, map, options)));
                }
            }
        }
        for (int t = 0; t < trials.size(); t++) {
            out.printf(
                    "cut_wet %s, margin %s mm%n",
                    trials.get(t).cutWet(), trials.get(t).recoreMarginMm());
            tell(out, scores.get(t));
        }
    }

    private static void injected(PrintWriter out, int count, long first) {
        List<Score> scores = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            for (Kind kind : Kind.values()) {
                InventedDeck deck = new InventedDeck(kind, first + i);
                DamageMap map = Damage.fit(deck.survey(), new Memory()).map();
                Score score = score(deck, map, Assessments.decide(deck.survey(), map, Unplanned.of(map)));
                scores.add(score);
                if (score.overWetMm2 > 0) {
                    out.printf(
                            Locale.ROOT,
                            "%s %d: %.4f m2 over wet core of %.3f%n",
                            kind,
                            first + i,
                            score.overWetMm2 / 1e6,
                            score.injectedMm2 / 1e6);
                }
            }
            injected(out, scores);
        }
    }

    private static void injected(PrintWriter out, List<Score> scores) {
        out.printf(
                Locale.ROOT,
                "%d injected regions on %d decks, %.3f m2, of it over wet core %.4f m2; more than 3 %% of a deck's fill: %d decks%n",
                scores.stream().mapToInt(Score::injections).sum(),
                scores.size(),
                scores.stream().mapToDouble(Score::injectedMm2).sum() / 1e6,
                scores.stream().mapToDouble(Score::overWetMm2).sum() / 1e6,
                scores.stream()
                        .filter(s -> s.overWetMm2 > 0.03 * s.injectedMm2 && s.injectedMm2 > 0)
                        .count());
    }

    private static void tell(PrintWriter out, List<Score> scores) {
        List<Score> cuts =
                scores.stream().filter(s -> s.cutMm2 > 0 && s.wetMm2 > 0).toList();
        List<Double> left = cuts.stream().map(s -> s.leftMm2 / s.wetMm2).toList();
        List<Double> cut =
                cuts.stream().map(s -> s.cutMm2 / Math.max(1, s.wetCutMm2)).toList();
        out.printf(
                Locale.ROOT,
                "wet core left within %.0f mm of new core over wet: median %.4f, nine in ten %.4f, none in %d of %d%n",
                BESIDE_MM,
                at(left, 0.5),
                at(left, 0.9),
                left.stream().filter(l -> l == 0).count(),
                left.size());
        out.printf(
                Locale.ROOT,
                "cuts of wet regions over what is truly wet in or beside them: median %.2f, nine in ten %.2f%n",
                at(cut, 0.5),
                at(cut, 0.9));
        injected(out, scores);
    }

    private static Thresholds with(double cutWet, double marginMm) {
        Thresholds t = Thresholds.DEFAULT;
        return new Thresholds(
                t.likely(),
                t.possible(),
                t.undecidedLow(),
                t.undecidedHigh(),
                t.voidDepthMm(),
                t.smallestRegionMm2(),
                t.metalInfluenceMm(),
                t.dryPlugPercent(),
                t.wetPlugPercent(),
                t.injectLargestMm2(),
                t.monitorIndex(),
                t.looseGapMm(),
                marginMm,
                t.scarfRatio(),
                cutWet);
    }

    private static Survey with(Survey s, Thresholds thresholds) {
        Settings d = s.settings();
        Settings settings =
                new Settings(thresholds, d.drilling(), d.resins(), d.costs(), d.crew(), d.climate(), d.numerics());
        return new Survey(
                s.heading(),
                s.faces(),
                s.meters(),
                s.laminates(),
                s.materials(),
                s.readings(),
                settings,
                s.log(),
                s.photos(),
                s.judgements(),
                s.loads(),
                s.repairPlan());
    }

    private record Score(
            double wetMm2,
            double cutMm2,
            double wetCutMm2,
            double leftMm2,
            int injections,
            double injectedMm2,
            double overWetMm2) {}

    private static Score score(InventedDeck deck, DamageMap map, Decision d) {
        GeometryFactory factory = new GeometryFactory();
        Geometry cut = union(factory, d.recores().stream().map(r -> r.cut()).toList());
        List<Region> filled = map.regions().stream()
                .filter(r -> d.on(r.id()).method() == Method.INJECT)
                .toList();
        Geometry fill =
                union(factory, filled.stream().map(r -> (Geometry) r.likely()).toList());
        IndexedPointInAreaLocator inCut = new IndexedPointInAreaLocator(cut);
        IndexedPointInAreaLocator beside = new IndexedPointInAreaLocator(cut.buffer(BESIDE_MM));
        IndexedPointInAreaLocator inFill = new IndexedPointInAreaLocator(fill);
        Geometry wetCuts = union(
                factory,
                d.recores().stream()
                        .filter(r -> map.regions().stream().anyMatch(g -> g.id().equals(r.region()) && g.wet()))
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
            over += inside(inFill, at) && !inside(inCut, at) ? mm2 : 0; // what is cut out is not filled
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
