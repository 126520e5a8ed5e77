package corewright.repair;

import com.sun.management.OperatingSystemMXBean;
import corewright.DamageFixtures.Deck;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkLog;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What a plan says against its own simulated fill: grams, density, vents, emptiness, and processor time of all threads.
 * Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.repair.GramsBenchmark}.
 */
public final class GramsBenchmark {
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private GramsBenchmark() {}

    /**
     * @param args seeds of ragged cavities; after {@code loose}, those of loose skins, P90 1.7 times and four times the
     *     middle
     */
    public static void main(String[] args) throws Exception {
        int runs = Integer.getInteger("runs", 3);
        if (runs > 0) {
            demo(runs);
        }
        for (int run = 0; run < runs; run++) {
            plan("3 m2", PlanBenchmark.threeDeck());
        }
        boolean loose = false;
        for (String arg : args) {
            loose |= arg.equals("loose");
            if (arg.equals("loose")) {
                continue;
            }
            long seed = Long.parseLong(arg);
            if (loose) {
                plan("loose " + seed, PlanBenchmark.looseDeck(seed, 1.7));
                plan("wide " + seed, PlanBenchmark.looseDeck(seed, 4));
            } else {
                plan("ragged " + seed, PlanBenchmark.raggedDeck(seed, 100));
            }
        }
    }

    private static void demo(int runs) throws Exception {
        Survey survey = SurveyFolder.read(Path.of("demo-data/quillwort")).survey();
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        for (int run = 0; run < runs; run++) {
            Memory memory = new Memory();
            long start = SYSTEM.getProcessCpuTime();
            RepairOptions options = RepairPlanner.plan(survey, damage, memory);
            Set<String> inject = Methods.of(survey, damage, options).of(Method.INJECT);
            RepairOptions plans = RepairPlanner.together(survey, damage, options, inject, memory);
            long ms = (SYSTEM.getProcessCpuTime() - start) / 1_000_000;
            print("demo: planning %d ms%n", ms);
            if (run == 0) {
                plans.injections().stream()
                        .filter(p -> inject.contains(p.region()))
                        .forEach(p -> say(p.region(), p, survey, 0));
            }
        }
    }

    private static void plan(String name, Deck deck) {
        long start = SYSTEM.getProcessCpuTime();
        InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .injections()
                .get(0);
        say(name, plan, deck.survey(), (SYSTEM.getProcessCpuTime() - start) / 1_000_000);
    }

    private static void say(String name, InjectionPlan plan, Survey survey, long ms) {
        Resin resin = survey.settings().resin(plan.resin());
        Map<String, Double> grams =
                WorkLog.planned(plan, survey.settings().drilling().wasteFraction());
        Fill fill = plan.fill();
        double worst = 0;
        StringBuilder off = new StringBuilder();
        for (Map.Entry<String, Double> hole : grams.entrySet()) {
            double taken = fill.takenMm3().getOrDefault(hole.getKey(), 0.0) * resin.densityKgM3() * 1e-6;
            double error = Math.abs(taken / hole.getValue() - 1);
            worst = Math.max(worst, error);
            if (error > 0.1) {
                off.append(String.format(Locale.ROOT, " %s %.1f/%.1f", hole.getKey(), taken, hole.getValue()));
            }
        }
        int places = (int) plan.holes().stream().filter(Hole::fills).count();
        Fill.Density d = fill.density();
        print(
                "%-10s places %d vents %d (%.2f) cups %d empty %.4f (small %.4f large %.4f without %.4f, unshown %d) grams worst %.1f %% density %.0f (%.0f to %.0f) even %.3f cpu %d%s%n",
                name,
                places,
                plan.count(Hole.Kind.VENT),
                (double) plan.count(Hole.Kind.VENT) / places,
                plan.batches().size(),
                fill.emptyShare(),
                plan.outlook().emptySmall(),
                plan.outlook().emptyLarge(),
                plan.outlook().emptyLargeWithout(),
                plan.outlook().shows().size(),
                100 * worst,
                d.mean(),
                d.low(),
                d.high(),
                d.evenShare(),
                ms,
                off);
    }

    private static void print(String format, Object... args) {
        System.out.print(String.format(Locale.ROOT, format, args));
    }
}
