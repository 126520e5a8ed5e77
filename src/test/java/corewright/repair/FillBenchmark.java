package corewright.repair;

import static corewright.DamageFixtures.deck;

import corewright.DamageFixtures.Deck;
import java.lang.management.ManagementFactory;
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
        for (int seed = 1; seed <= 10; seed++) {
            plan("ragged " + seed, PlanBenchmark.raggedDeck(seed, 100));
        }
    }

    private static void plan(String name, Deck deck) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        InjectionPlan plan =
                RepairPlanner.plan(deck.survey(), deck.damage()).injections().get(0);
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
}
