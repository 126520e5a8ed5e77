package corewright.repair;

import corewright.DamageFixtures.Deck;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.intake.SurveyFolder;
import corewright.repair.fill.FillPlanning;
import corewright.repair.fill.FillTrial;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.plan.SpaceTask;
import corewright.repair.work.WorkLog;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * Plans in cavities other than planned for, drawn at random, with what is held back and without: what stays empty. A draw
 * has a volume (lognormal through P10 and P90), depths that differ from place to place (a fifth, over some 120 mm) and a
 * rim farther out or in (one in ten 12.5 mm). Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.repair.DrawnBenchmark}.
 */
public final class DrawnBenchmark {
    private static final int DRAWS = 12;
    private static final double P90 = 1.2816;
    private static final double RIM_SD_MM = 12.5 / P90;
    private static final double DEPTH_SD = 0.2;
    private static final double WAVE_MM = 500;

    private static final List<Double> WITH = new ArrayList<>();
    private static final List<Double> WITHOUT = new ArrayList<>();

    private DrawnBenchmark() {}

    /** @param args {@code demo} and seeds of ragged cavities */
    public static void main(String[] args) throws Exception {
        for (String arg : args) {
            if (arg.equals("demo")) {
                demo();
            } else {
                Deck deck = PlanBenchmark.raggedDeck(Long.parseLong(arg), 100);
                InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                        .injections()
                        .get(0);
                drawn("ragged " + arg, deck.survey(), deck.damage(), plan);
            }
        }
        print("all: with what is held back %s; without %s%n", told(WITH), told(WITHOUT));
    }

    private static void demo() throws Exception {
        Survey survey = SurveyFolder.read(Path.of("demo-data/quillwort")).survey();
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        Memory memory = new Memory();
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);
        Set<String> inject = Methods.of(survey, damage, options).of(Method.INJECT);
        RepairPlanner.together(survey, damage, options, inject, memory).injections().stream()
                .filter(p -> inject.contains(p.region()))
                .forEach(p -> drawn(p.region(), survey, damage, p));
    }

    private static void drawn(String name, Survey survey, DamageMap damage, InjectionPlan plan) {
        Resin resin = survey.settings().resin(plan.resin());
        EmptySpace space = EmptySpace.of(damage, plan);
        SpaceTask task = SpaceTask.of(survey, damage.face(space.face()), space);
        FillTrial.Work work = work(plan, resin, survey);
        FillTrial.Held held = held(plan, resin, survey, work);
        List<Double> with = new ArrayList<>();
        List<Double> without = new ArrayList<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            Cavity cavity = cavity(task, plan.cavityMm3(), new Random(1000 + draw));
            FillTrial trial = new FillTrial(damage.face(space.face()).face(), cavity, resin, survey.settings());
            with.add(trial.run(work, held).emptyShare());
            without.add(trial.run(work, FillTrial.Held.NOTHING).emptyShare());
        }
        WITH.addAll(with);
        WITHOUT.addAll(without);
        print("%s: with what is held back %s; without %s%n", name, told(with), told(without));
    }

    static FillTrial.Work work(InjectionPlan plan, Resin resin, Survey survey) {
        Map<String, Double> liquid = new HashMap<>();
        WorkLog.planned(plan, survey.settings().drilling().wasteFraction())
                .forEach((hole, grams) -> liquid.put(hole, grams / (resin.densityKgM3() * 1e-6)));
        return new FillTrial.Work(
                plan.holes().stream().filter(Hole::fills).toList(),
                plan.batches(),
                liquid,
                plan.holes().stream()
                        .filter(h -> !h.fills())
                        .map(h -> h.spot().coordinate())
                        .toList());
    }

    /** As the card has it: high grams less planned. */
    static FillTrial.Held held(InjectionPlan plan, Resin resin, Survey survey, FillTrial.Work work) {
        double gPerMm3 = resin.densityKgM3() * 1e-6;
        List<FillTrial.Dose> doses = new ArrayList<>();
        for (Hole hole : plan.holes()) {
            double more = hole.range().highG() / gPerMm3 - work.liquidMm3().getOrDefault(hole.id(), 0.0);
            double due = plan.fill()
                    .arrivalS()
                    .orElseThrow()
                    .cellAt(hole.spot().xMm(), hole.spot().yMm());
            doses.add(new FillTrial.Dose(hole.spot().coordinate(), more, due));
        }
        double mixed = plan.resinG() + plan.hardenerG();
        double net =
                plan.outlook().heldBackG() * (1 - survey.settings().drilling().wasteFraction());
        return new FillTrial.Held(doses, net / gPerMm3, plan.buyG() / mixed);
    }

    private static Cavity cavity(SpaceTask task, Quantiles mm3, Random random) {
        return cavity(task, mm3, random.nextGaussian(), random);
    }

    /** @param z of the volume: standard deviations of its logarithm from the middle */
    static Cavity cavity(SpaceTask task, Quantiles mm3, double z, Random random) {
        double tail = z > 0 ? mm3.p90() / mm3.p50() : mm3.p50() / mm3.p10();
        double volume = mm3.p50() * Math.pow(tail, z / P90);
        Polygon likely = task.space().area();
        Polygon area =
                likely.buffer(RIM_SD_MM * random.nextGaussian()) instanceof Polygon p && !p.isEmpty() ? p : likely;
        double fine = FillPlanning.cellMm(likely.getArea());
        Cavity cavity = Cavity.of(task, area, Math.max(fine, Math.min(25, Math.sqrt(likely.getArea() / 1600))));
        double[][] waves = new double[8][];
        for (int w = 0; w < waves.length; w++) {
            double turn = 2 * Math.PI * random.nextDouble();
            double k = 2 * Math.PI / WAVE_MM * (0.5 + random.nextDouble());
            waves[w] = new double[] {k * Math.cos(turn), k * Math.sin(turn), 2 * Math.PI * random.nextDouble()};
        }
        for (int c : cavity.cells) {
            double sum = 0;
            for (double[] w : waves) {
                sum += Math.cos(w[0] * cavity.x(c) + w[1] * cavity.y(c) + w[2]);
            }
            cavity.gapMm[c] *= Math.exp(DEPTH_SD * sum * Math.sqrt(2.0 / waves.length));
        }
        return cavity.holding(volume);
    }

    private static String told(List<Double> shares) {
        double[] s = shares.stream().mapToDouble(d -> 100 * d).sorted().toArray();
        return String.format(
                Locale.ROOT,
                "median %.1f %%, nine in ten %.1f %%, worst %.1f %%",
                s[s.length / 2],
                s[(int) (0.9 * (s.length - 1))],
                s[s.length - 1]);
    }

    private static void print(String format, Object... args) {
        System.out.print(String.format(Locale.ROOT, format, args));
    }
}
