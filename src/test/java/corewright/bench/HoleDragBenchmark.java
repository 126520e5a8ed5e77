package corewright.bench;

import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.intake.SurveyFolder;
import corewright.repair.RepairPlanner;
import corewright.repair.pattern.HoleTrial;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.plan.SpaceTask;
import corewright.reuse.Memory;
import corewright.survey.MovedHole;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A hole under the hand: what the window shows while it is held, and the plan of its space after letting go. Wanted: 50 ms and 400
 * ms. Prints median and worst of eight places, clock and processor time of the whole program.
 *
 * <p>{@code java -cp target/classes:target/test-classes:... corewright.bench.HoleDragBenchmark demo-data/quillwort}
 */
final class HoleDragBenchmark {
    private static final int PLACES = 8;
    private static final double STEP_MM = 3;

    private HoleDragBenchmark() {}

    public static void main(String[] args) throws Exception {
        Survey survey = SurveyFolder.read(Path.of(args[0])).survey();
        Memory memory = new Memory();
        DamageMap damage = Damage.fit(survey, memory).map();
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);
        Set<String> inject = Methods.of(survey, damage, options).of(Method.INJECT);
        RepairPlanner.together(survey, damage, options, inject, memory).injections().stream()
                .filter(p -> inject.contains(p.region()))
                .forEach(p -> drag(survey, damage, p));
    }

    private static void drag(Survey survey, DamageMap damage, InjectionPlan plan) {
        EmptySpace space = EmptySpace.of(damage, plan);
        SpaceTask task = SpaceTask.of(survey, damage.face(space.face()), space);
        HoleTrial trial = HoleTrial.of(task, plan);
        List<Hole> holes = plan.holes().stream().filter(Hole::fills).toList();
        Spot first = holes.get(0).spot();
        List<double[]> held = new ArrayList<>();
        List<double[]> let = new ArrayList<>();
        Memory memory = new Memory();
        for (int i = -2; i < PLACES; i++) {
            Spot to = new Spot(first.face(), first.xMm() - STEP_MM * (i + 3), first.yMm());
            List<HoleTrial.Place> places =
                    new ArrayList<>(holes.stream().map(HoleTrial.Place::of).toList());
            places.set(0, new HoleTrial.Place(to, 0));
            double[] one = timed(() -> trial.at(places));
            Survey moved = Part.HOLES.with(survey, List.of(new MovedHole(first, to)));
            double[] other = timed(() -> RepairPlanner.again(moved, damage, plan, memory));
            if (i >= 0) { // the first two warm up
                held.add(one);
                let.add(other);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s, %d holes, %.2f m2: held %s; planned after letting go %s%n",
                plan.region(),
                plan.holes().size(),
                space.area().getArea() / 1e6,
                told(held),
                told(let));
    }

    private static double[] timed(Runnable deed) {
        double cpu = cpuMs();
        long from = System.nanoTime();
        deed.run();
        return new double[] {(System.nanoTime() - from) / 1e6, cpuMs() - cpu};
    }

    private static double cpuMs() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / 1e6;
    }

    private static String told(List<double[]> times) {
        return String.format(
                Locale.ROOT,
                "median %.0f ms (processor %.0f), worst %.0f ms (processor %.0f)",
                at(times, 0, 0.5),
                at(times, 1, 0.5),
                at(times, 0, 1),
                at(times, 1, 1));
    }

    private static double at(List<double[]> times, int which, double share) {
        List<Double> all = new ArrayList<>(times.stream().map(t -> t[which]).toList());
        Collections.sort(all);
        return all.get((int) Math.min(all.size() - 1, share * all.size()));
    }
}
