package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Decider;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.Begun;
import corewright.repair.work.KeptRegions;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.StiffnessMap;
import corewright.store.RepairPlanText;
import corewright.survey.CoreState;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.NamedLog;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Probe;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Sequences of readings, logs and runs, drawn from a seed: whatever comes, a name means one place for good, what is drilled
 * stays, grams count once and every revision can be made again.
 */
final class PlanSequences {
    private static final int STEPS = 4;

    private final Random random;
    private final Map<String, String> places = new LinkedHashMap<>();
    private final Map<String, Double> stops = new LinkedHashMap<>();
    private final boolean lean;
    private Memory memory = new Memory();
    private Survey survey;

    /** @param lean what is as it was is taken from memory, but for the last revision, which is made again without */
    PlanSequences(Survey survey, long seed, boolean lean) {
        this.survey = survey;
        this.lean = lean;
        random = new Random(seed);
    }

    /** What a run comes to, without the panels: no plan rests on them. */
    record Run(FrozenPlan plan, WorkDone work, List<InjectionPlan> injections) {
        static Run of(Survey survey, Memory memory) {
            DamageMap damage = KeptRegions.on(survey, Damage.fit(survey, memory).map());
            RepairOptions options = RepairPlanner.plan(survey, damage, memory);
            Methods methods = Methods.of(survey, damage, options);
            RepairOptions plans = RepairPlanner.together(survey, damage, options, methods.of(Method.INJECT), memory);
            assertThat(plans.defects()).isEmpty();
            Decision decision = Decider.decide(
                    survey,
                    damage,
                    methods,
                    plans,
                    Gains.NONE,
                    new PanelGains(survey, damage, StiffnessMap.NONE, memory),
                    Map.of());
            return new Run(
                    Issued.of(survey, damage, decision).plan(),
                    WorkDone.of(survey, damage, decision.injections()),
                    decision.injections());
        }
    }

    /** What a number of sequences came to, so that it shows whether anything happened in them. */
    static final class Sums {
        int runs;
        int revisions;
        int drilled;
        int dropped;
        int holes;
        int elsewhere;

        @Override
        public String toString() {
            return runs + " runs, " + revisions + " revisions, " + holes + " names, " + dropped + " left out, "
                    + drilled + " drilled, " + elsewhere + " drilled where nothing is planned any more";
        }
    }

    /** Runs it through. */
    void run(Sums sums) {
        for (int step = 0; step <= STEPS; step++) {
            if (step > 0) {
                change();
            }
            Run run = Run.of(survey, memory());
            FrozenPlan plan = run.plan();
            assertThat(plan.revision())
                    .isBetween(
                            survey.repairPlan().revision(), survey.repairPlan().revision() + 1);
            placesStay(plan);
            drilledStays(plan);
            gramsCountOnce(run.work());
            String text = RepairPlanText.of(plan);
            if (!lean || step == STEPS) {
                sums.runs++;
                assertThat(RepairPlanText.of(Run.of(survey, new Memory()).plan()))
                        .as("made again")
                        .isEqualTo(text);
            }
            survey = survey.with(plan);
            assertThat(RepairPlanText.of(Run.of(survey, memory()).plan()))
                    .as("nothing changed; drilled: %s", Begun.holes(survey))
                    .isEqualTo(text);
            sums.runs += 2;
            sums.elsewhere += run.work().elsewhere().size();
        }
        sums.revisions += survey.repairPlan().revision();
        sums.holes += places.size();
        sums.drilled += Begun.holes(survey).size();
        sums.dropped += (int) survey.repairPlan().holes().stream()
                .filter(PlannedHole::dropped)
                .count();
    }

    private Memory memory() {
        memory = lean ? memory.next() : new Memory();
        return memory;
    }

    private void placesStay(FrozenPlan plan) {
        for (PlannedHole hole : plan.holes()) {
            String place = hole.kind() + " " + hole.spot();
            assertThat(places.putIfAbsent(hole.name(), place)).as(hole.name()).isIn(null, place);
        }
        assertThat(plan.holes()).extracting(PlannedHole::name).doesNotHaveDuplicates();
        // every name that was ever given is still known
        assertThat(plan.holes()).extracting(PlannedHole::name).containsAll(places.keySet());
    }

    private void drilledStays(FrozenPlan plan) {
        for (String name : Begun.holes(survey)) {
            PlannedHole hole = plan.hole(name).orElseThrow();
            assertThat(hole.dropped()).as(name).isFalse();
            Double before = stops.putIfAbsent(name, hole.stopMm());
            assertThat(before).as("stop of " + name).isIn(null, hole.stopMm());
        }
    }

    /** Every line that is understood is in the work on one plan, or told as lying outside all. */
    private void gramsCountOnce(WorkDone work) {
        NamedLog log = WorkDone.log(survey, List.of());
        Map<String, Double> poured = new LinkedHashMap<>();
        log.entries().forEach(e -> poured.merge(e.hole(), e.grams(), Double::sum));
        Map<String, Double> counted = new LinkedHashMap<>();
        work.progress().forEach(p -> p.log().holes().forEach(h -> assertThat(counted.put(h.hole(), h.takenG()))
                .isNull()));
        work.elsewhere()
                .forEach(h -> assertThat(counted.put(h.hole(), h.takenG())).isNull());
        assertThat(counted.keySet()).isEqualTo(poured.keySet());
        // the same sums in another order: to the last digits
        poured.forEach((hole, grams) -> assertThat(counted.get(hole)).isCloseTo(grams, within(1e-9)));
    }

    private void change() {
        switch (random.nextInt(5)) {
            case 0 -> tap();
            case 1 -> probe();
            case 2 -> forget();
            default -> log();
        }
        if (random.nextBoolean()) {
            tap();
        }
    }

    private Spot anywhere() {
        return new Spot("foredeck", 20 + random.nextInt(860), 20 + random.nextInt(560));
    }

    private void tap() {
        List<Tap> taps = new ArrayList<>(survey.readings().taps());
        Sound sound = random.nextInt(3) == 0 ? Sound.SOUND : Sound.HOLLOW;
        taps.add(new Tap(here(), "X" + taps.size(), anywhere(), sound, null, Side.OUTER));
        survey = Part.TAPS.with(survey, taps);
    }

    private void probe() {
        List<Probe> probes = new ArrayList<>(survey.readings().probes());
        probes.add(new Probe(here(), "Y" + probes.size(), anywhere(), random.nextInt(8), CoreState.DRY, null));
        survey = Part.PROBES.with(survey, probes);
    }

    private void forget() {
        List<Tap> taps = new ArrayList<>(survey.readings().taps());
        taps.remove(random.nextInt(taps.size()));
        survey = Part.TAPS.with(survey, taps);
    }

    /** One to three lines, by name or card number, some of them nobody's, some written twice. */
    private void log() {
        List<PlannedHole> holes =
                survey.repairPlan().holes().stream().filter(h -> !h.dropped()).toList();
        List<WorkEntry> log = new ArrayList<>(survey.log());
        for (int i = 0; i <= random.nextInt(3); i++) {
            String name = holes.isEmpty() || random.nextInt(8) == 0
                    ? "Q7"
                    : holes.get(random.nextInt(holes.size())).name();
            String written =
                    switch (random.nextInt(3)) {
                        case 0 -> name.toLowerCase(Locale.ROOT);
                        case 1 -> name.substring(name.indexOf('-') + 1);
                        default -> name;
                    };
            double grams = random.nextInt(60);
            log.add(new WorkEntry(here(), written, 60.0 * log.size(), grams, null));
            if (random.nextInt(6) == 0) {
                log.add(log.get(log.size() - 1));
            }
        }
        survey = Part.LOG.with(survey, log);
    }

    private static Origin here() {
        return new Origin("test", 1);
    }
}
