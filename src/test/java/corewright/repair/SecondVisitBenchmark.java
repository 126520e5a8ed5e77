package corewright.repair;

import corewright.DamageFixtures.Deck;
import corewright.damage.Quantiles;
import corewright.repair.fill.FillTrial;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SecondShot;
import corewright.repair.plan.SpaceTask;
import corewright.repair.work.CuredFill;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import corewright.survey.settings.Resin;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Work followed from the first cup to the second visit, in ragged cavities that are other than planned: volume drawn between
 * P10 and P90, depth and rim as in {@link DrawnBenchmark}. The first visit is the simulated fill with what is held back; it
 * writes the log. Every place of a grid is tapped after cure, two rows past the edge too; hollow is where more than half is empty round it. The
 * program makes the second shots from log and taps, and each is poured once, by its own way in, at most what its paper has
 * at hand. In a second shot the mix fills what hangs together with the hole, nearest first: air in its way is not simulated,
 * so the last figure is a lower bound. Run: {@code java corewright.repair.SecondVisitBenchmark 401 402 ...}, seeds of cavities.
 */
public final class SecondVisitBenchmark {
    private static final double P90 = 1.2816;

    /** Places are tapped so far apart, and heard so far round. Practice. */
    private static final double TAPPED_MM = 40;

    private static final double HEARD_MM = 20;

    /** Two rows past the edge, as the cards tell. */
    private static final double BEYOND_MM = 80;

    private static final double FULL = 0.5;
    private static final double WANTED = 0.03;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Survey survey;
    private final InjectionPlan plan;
    private final Resin resin;
    private final Polygon area;
    private final Cavity cavity;
    private final double[] filled;

    private SecondVisitBenchmark(Deck deck, InjectionPlan plan, long seed) {
        this.plan = plan;
        resin = deck.survey().settings().resin(plan.resin());
        EmptySpace space = EmptySpace.of(deck.damage(), plan);
        area = space.area();
        SpaceTask task = SpaceTask.of(deck.survey(), deck.damage().face(space.face()), space);
        Random random = new Random(seed);
        double z = random.nextGaussian();
        while (Math.abs(z) > P90) {
            z = random.nextGaussian();
        }
        cavity = DrawnBenchmark.cavity(task, plan.cavityMm3(), z, random);
        FillTrial.Work work = DrawnBenchmark.work(plan, resin, deck.survey());
        FillTrial.Held held = DrawnBenchmark.held(plan, resin, deck.survey(), work);
        FillTrial.Run run =
                new FillTrial(task.face(), cavity, resin, deck.survey().settings()).run(work, held);
        filled = run.result().filled().clone();
        survey = Part.CURED_TAPS.with(Part.LOG.with(deck.survey(), log(run)), taps(space));
    }

    public static void main(String[] args) {
        int met = 0;
        int within = 0;
        for (String arg : args) {
            long seed = Long.parseLong(arg);
            Deck deck = PlanBenchmark.raggedDeck(seed, 100);
            InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                    .injections()
                    .get(0);
            SecondVisitBenchmark work = new SecondVisitBenchmark(deck, plan, seed);
            double first = work.empty();
            WorkDone done = WorkDone.of(work.survey, deck.damage(), List.of(plan));
            CuredFill cured = done.cured().get(0);
            Quantiles known = done.progress().get(0).cavityMm3();
            within += known.p10() <= work.cavity.mm3() && work.cavity.mm3() <= known.p90() ? 1 : 0;
            cured.shots().forEach(work::pour);
            double end = work.empty();
            met += end <= WANTED ? 1 : 0;
            double beyond = work.empty(c -> !work.area.covers(work.point(c)));
            double part = work.empty(c -> work.area.covers(work.point(c)) && work.filled[c] >= FULL);
            print(
                    "ragged %d: cavity %.2f of the plan's (by readings %.2f to %.2f, with the log %.2f to %.2f), empty %.1f %% after the first visit, %d second shots, %.1f %% at the end (%.1f beyond the mapped edge, %.1f in what is part filled)%n",
                    seed,
                    work.cavity.mm3() / plan.cavityMm3().p50(),
                    plan.cavityMm3().p10() / plan.cavityMm3().p50(),
                    plan.cavityMm3().p90() / plan.cavityMm3().p50(),
                    known.p10() / plan.cavityMm3().p50(),
                    known.p90() / plan.cavityMm3().p50(),
                    100 * first,
                    cured.shots().size(),
                    100 * end,
                    100 * beyond,
                    100 * part);
        }
        print(
                "%d of %d at most %.0f %% empty; cavity within its range with the log in %d%n",
                met, args.length, 100 * WANTED, within);
    }

    private List<WorkEntry> log(FillTrial.Run run) {
        Map<String, Double> grams = new LinkedHashMap<>();
        double[] placed = run.result().placedMm3();
        for (int i = 0; i < placed.length; i++) {
            grams.merge(run.shots().get(i).hole(), placed[i] * resin.densityKgM3() * 1e-6, Double::sum);
        }
        List<WorkEntry> log = new ArrayList<>();
        grams.forEach((hole, g) ->
                log.add(new WorkEntry(new Origin("log.csv", log.size() + 2), hole, 60.0 * log.size(), g, null)));
        return log;
    }

    private List<Tap> taps(EmptySpace space) {
        Geometry tapped = space.area().buffer(BEYOND_MM);
        Envelope box = tapped.getEnvelopeInternal();
        List<Tap> taps = new ArrayList<>();
        for (double x = box.getMinX() + TAPPED_MM / 2; x < box.getMaxX(); x += TAPPED_MM) {
            for (double y = box.getMinY() + TAPPED_MM / 2; y < box.getMaxY(); y += TAPPED_MM) {
                Spot spot = new Spot(space.face(), Math.rint(x), Math.rint(y));
                if (tapped.covers(FACTORY.createPoint(spot.coordinate()))) {
                    Sound sound = hollow(spot) ? Sound.HOLLOW : Sound.SOUND;
                    taps.add(new Tap(
                            new Origin("cured.csv", taps.size() + 2),
                            "C" + taps.size(),
                            spot,
                            sound,
                            null,
                            Side.OUTER));
                }
            }
        }
        return taps;
    }

    private boolean hollow(Spot spot) {
        double[] near = Arrays.stream(cavity.cells)
                .filter(c -> Math.hypot(cavity.x(c) - spot.xMm(), cavity.y(c) - spot.yMm()) <= HEARD_MM)
                .mapToDouble(c -> 1 - Math.min(1, filled[c]))
                .toArray();
        return near.length > 0 && Arrays.stream(near).average().orElse(0) > 1 - FULL;
    }

    private Point point(int c) {
        return FACTORY.createPoint(cavity.centre(c));
    }

    private double empty() {
        return empty(c -> true);
    }

    private double empty(IntPredicate where) {
        double empty = 0;
        double all = 0;
        for (int c : cavity.cells) {
            empty += where.test(c) ? cavity.gapMm[c] * (1 - Math.min(1, filled[c])) : 0;
            all += cavity.gapMm[c];
        }
        return empty / all;
    }

    /** Mix as planned for the space, as its bit drops into empty space; at most what the paper has at hand. */
    private void pour(SecondShot shot) {
        Spot at = shot.spot();
        if (at == null) {
            return;
        }
        double waste = survey.settings().drilling().wasteFraction();
        double mm3 = shot.highG() * (1 - waste) / (resin.densityKgM3() * 1e-6) * resin.expansion();
        Deque<Integer> open = new ArrayDeque<>();
        boolean[] seen = new boolean[cavity.size()];
        Arrays.stream(cavity.cells)
                .filter(c -> filled[c] < FULL)
                .boxed()
                .min((a, b) -> Double.compare(far(a, at), far(b, at)))
                .filter(c -> far(c, at) <= HEARD_MM + cavity.cell)
                .ifPresent(open::add);
        open.forEach(c -> seen[c] = true);
        while (!open.isEmpty() && mm3 > 0) {
            int c = open.removeFirst();
            double room = cavity.gapMm[c] * (1 - Math.min(1, filled[c])) * cavity.cell * cavity.cell;
            double in = Math.min(room, mm3);
            mm3 -= in;
            filled[c] += in / (cavity.gapMm[c] * cavity.cell * cavity.cell);
            for (int to : new int[] {c - 1, c + 1, c - cavity.columns, c + cavity.columns}) {
                if (!seen[to] && cavity.inside(to) && filled[to] < FULL) {
                    seen[to] = true;
                    open.addLast(to);
                }
            }
        }
    }

    private double far(int c, Spot at) {
        return Math.hypot(cavity.x(c) - at.xMm(), cavity.y(c) - at.yMm());
    }

    private static void print(String format, Object... args) {
        System.out.print(String.format(Locale.ROOT, format, args));
    }
}
