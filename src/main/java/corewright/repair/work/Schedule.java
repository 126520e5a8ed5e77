package corewright.repair.work;

import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The day of some injections as bars over time, on the clock of their batches. Nobody has two things to do at once: see {@link
 * DayPlanner}.
 *
 * @param bars by start, then by batch
 */
public record Schedule(List<Bar> bars) {
    public Schedule {
        bars = bars.stream()
                .sorted(Comparator.comparingDouble(Bar::startS).thenComparingInt(Bar::batch))
                .toList();
    }

    /** What happens in a bar. */
    public enum What {
        MIX,
        INJECT,
        LEAVE,
        /** A vent at which mix shows. */
        PLUG,
        RISE,
        /** The skin over a cup's holes is warm. */
        WARM,
        /** Somebody goes round and feels for that. */
        FEEL,
        /** Weights, plate or props hold the skin. */
        HOLD,
        HARD,
        /** It may be walked on or loaded. */
        LOAD
    }

    /**
     * One bar.
     *
     * @param region whose plan it is
     * @param worker 1 or 2, 0 where nobody has to stand by
     * @param batch number of the batch, 0 where it is for all
     * @param hole id, empty where it is for none or all
     */
    public record Bar(String region, double startS, double endS, int worker, int batch, String hole, What what) {}

    /** The bars of a day's plans, each told by its region and those of its cups. */
    public static Schedule of(Survey survey, List<InjectionPlan> plans) {
        return new Schedule(new DayPlanner(survey).bars(plans, true));
    }

    /** Of what is left of plans, whose vents are due by another clock. */
    public static Schedule left(Survey survey, List<InjectionPlan> plans) {
        return new Schedule(new DayPlanner(survey).bars(plans, false));
    }

    /** Of the cups that are held back, should all be needed; into which places is found on the day. */
    public static Schedule heldBack(Survey survey, List<InjectionPlan> plans) {
        List<Bar> bars = new ArrayList<>();
        double mixingS = survey.settings().drilling().mixingS();
        for (Batch cup : HeldCups.of(plans, survey.settings())) {
            Resin resin = resin(survey, plans, cup);
            double pouredS = cup.mixAtS() + mixingS;
            int mixes = survey.settings().crew().people() > 1 ? 2 : 1;
            String region = cup.region();
            bars.add(new Bar(region, cup.mixAtS(), pouredS, mixes, cup.number(), "", What.MIX));
            bars.add(new Bar(region, pouredS, cup.workUntilS(), 1, cup.number(), "", What.INJECT));
            if (resin.expansion() > 1) {
                double factor = resin.timeFactor(survey.settings().climate().temperatureC());
                double endS = cup.mixAtS() + factor * resin.riseEndS();
                bars.add(new Bar(region, cup.firstRiseS(), endS, 0, cup.number(), "", What.RISE));
            }
            bars.add(new Bar(region, cup.hardAtS(), cup.hardAtS(), 0, cup.number(), "", What.HARD));
        }
        return new Schedule(bars);
    }

    private static Resin resin(Survey survey, List<InjectionPlan> plans, Batch cup) {
        return plans.stream()
                .filter(p -> p.region().equals(cup.region()))
                .map(p -> survey.settings().resin(p.resin()))
                .findFirst()
                .orElseThrow();
    }

    /** Those of one plan. */
    public Schedule of(String region) {
        return new Schedule(bars.stream().filter(b -> b.region.equals(region)).toList());
    }
}
