package corewright.bench;

import com.sun.management.OperatingSystemMXBean;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Decider;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.intake.SurveyFolder;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** One reading of the demo changed, and everything but stiffness concluded anew, with what did not change remembered. */
final class DemoEdit {
    private final Random random = new Random(3);
    private Survey survey;
    private Memory memory = new Memory();

    DemoEdit() throws IOException {
        survey = SurveyFolder.read(Path.of("demo-data", "quillwort")).survey();
        conclude();
    }

    /**
     * One change.
     *
     * @param face of the reading
     * @param worked bays, plans and cuts worked anew, by the kind of their input
     */
    record Change(String face, double ms, double busyMs, Map<String, Integer> worked) {}

    Change next() {
        List<Moisture> all = survey.readings().moisture();
        Moisture old = all.get(random.nextInt(all.size()));
        Moisture other = new Moisture(
                old.origin(),
                old.id(),
                old.spot(),
                Math.max(0, old.value() + 1 + random.nextInt(4)),
                old.offScale(),
                old.meter(),
                old.temperatureC(),
                old.taken(),
                old.reference(),
                old.side(),
                old.note());
        survey = Edit.replace(survey, Part.MOISTURE, old, other).apply(survey);
        memory = memory.next();
        long busy = busyNs();
        long from = System.nanoTime();
        conclude();
        double ms = (System.nanoTime() - from) / 1e6;
        return new Change(old.spot().face(), ms, (busyNs() - busy) / 1e6, memory.worked());
    }

    /** The chain without its stages of stiffness, in its order. */
    private void conclude() {
        DamageMap damage = Damage.fit(survey, memory).map();
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);
        Methods methods = Methods.of(survey, damage, options);
        RepairOptions plans = RepairPlanner.together(survey, damage, options, methods.of(Method.INJECT), memory);
        Decision decision = Decider.decide(
                survey,
                damage,
                methods,
                plans,
                Gains.NONE,
                new PanelGains(survey, damage, StiffnessMap.NONE, memory),
                Map.of());
        WorkDone.of(survey, damage, decision.injections());
    }

    static long busyNs() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }
}
