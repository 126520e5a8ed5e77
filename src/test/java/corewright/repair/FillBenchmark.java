package corewright.repair;

import static corewright.DamageFixtures.deck;

import corewright.DamageFixtures.Deck;
import corewright.damage.FaceDamage;
import corewright.repair.fill.FillSimulation;
import corewright.repair.fill.SimulatedFill;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.Slope;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The whole plan with its simulated fill: what stays empty on ten ragged cavities, and the time of 3 m2. Run: {@code mvn -o
 * -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.repair.FillBenchmark}.
 */
public final class FillBenchmark {
    private FillBenchmark() {}

    public static void main(String[] args) {
        for (int run = 0; run < 2; run++) {
            plan("3 m2", PlanBenchmark.threeDeck());
        }
        for (int run = 0; run < 3; run++) {
            fill(25);
            fill(12.5);
        }
        for (int seed = 1; seed <= 10; seed++) {
            plan("ragged " + seed, PlanBenchmark.raggedDeck(seed, 100));
        }
    }

    private static void plan(String name, Deck deck) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .injections()
                .get(0);
        long ms = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000;
        System.out.print(String.format(
                Locale.ROOT,
                "%s: %d holes, %d vents, liquid %.2f, empty %.4f in %d pockets, whole plan cpu %d ms%n",
                name,
                plan.count(Hole.Kind.INJECTION),
                plan.count(Hole.Kind.VENT),
                plan.fill().liquidShare(),
                plan.fill().emptyShare(),
                plan.fill().pockets().size(),
                ms));
    }

    /** One fill of the plan for 3 m2, liquid and rise, on a raster of this size. */
    private static void fill(double cellMm) {
        Deck deck = PlanBenchmark.threeDeck();
        FaceDamage damage = deck.damage().faces().get(0);
        Settings settings = deck.survey().settings();
        InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .injections()
                .get(0);
        Resin resin = settings.resin(plan.resin());
        Cavity cavity = Cavity.of(damage.regions().get(0).likely(), damage, cellMm, 0.3);
        double gaps =
                Arrays.stream(cavity.cells).mapToDouble(c -> cavity.gapMm[c]).sum();
        double liquidMm3 = gaps * cellMm * cellMm * resin.pack() / resin.expansion();
        double served = plan.holes().stream().mapToDouble(Hole::servedMm3).sum();
        List<FillSimulation.Shot> shots = new ArrayList<>();
        for (Batch batch : plan.batches()) {
            for (Hole hole : plan.holes()) {
                if (batch.holes().contains(hole.id())) {
                    double share = liquidMm3 * hole.servedMm3() / served; // no hole here takes a second cup
                    shots.add(new FillSimulation.Shot(hole.id(), cell(cavity, hole), share, batch.mixAtS(), 0));
                }
            }
        }
        int[] vents = plan.holes().stream()
                .filter(h -> !h.fills())
                .mapToInt(h -> cell(cavity, h))
                .toArray();
        long start = System.nanoTime();
        FillSimulation.Result result = SimulatedFill.run(
                new FillSimulation.Setting(
                        cavity,
                        FillSimulation.Setting.heights(
                                cavity, Slope.of(damage.face()), damage.face().tiltDeg()),
                        vents,
                        resin,
                        settings.drilling(),
                        settings.climate().temperatureC()),
                shots);
        System.out.print(String.format(
                Locale.ROOT,
                "3 m2, one fill on %.1f mm, %d cells: %.2f s, empty %.4f%n",
                cellMm,
                cavity.cells.length,
                (System.nanoTime() - start) / 1e9,
                result.emptyShare()));
    }

    private static int cell(Cavity cavity, Hole hole) {
        return Arrays.stream(cavity.cells)
                .boxed()
                .min(Comparator.comparingDouble(
                        c -> cavity.centre(c).distance(hole.spot().coordinate())))
                .orElseThrow();
    }
}
