package corewright.decision;

import corewright.damage.DamageMap;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.CuredFill;
import corewright.repair.work.NextPapers;
import corewright.repair.work.ShotPlans;
import corewright.repair.work.WorkDone;
import corewright.repair.work.WorkProgress;
import corewright.survey.NamedLog;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is left to mix, to do and to buy once the work has begun: the open holes of every region with their cups, then the
 * second shots. Grams in tenths, so that cups and list agree as they are printed. A cut that was made is not known to the
 * log: cuts stay in the list.
 *
 * @param plans in the order of the day that is left, minute 0 where its first cup is mixed
 */
public record LeftToDo(List<InjectionPlan> plans, List<BuyingItem> buying) {
    public LeftToDo {
        plans = List.copyOf(plans);
        buying = List.copyOf(buying);
    }

    public static LeftToDo of(Survey survey, DamageMap damage, Decision decision, WorkDone work) {
        Set<String> logged = logged(survey, decision.injections());
        List<InjectionPlan> open = new ArrayList<>();
        for (InjectionPlan plan : decision.injections()) {
            open(survey, plan, work, logged).ifPresent(open::add);
        }
        for (CuredFill fill : work.cured()) {
            open.addAll(ShotPlans.of(survey, fill));
        }
        List<InjectionPlan> day = Day.oneAfterAnother(open, damage, survey.settings());
        return new LeftToDo(day, BuyingList.of(survey, damage, day, decision.recores()));
    }

    private static Optional<InjectionPlan> open(Survey survey, InjectionPlan plan, WorkDone work, Set<String> logged) {
        Optional<WorkProgress> begun = work.progress().stream()
                .filter(p ->
                        p.region().equals(plan.region()) && !p.log().holes().isEmpty())
                .findFirst();
        if (begun.isEmpty()) {
            return Optional.of(plan.with(plan.holes(), NextPapers.rounded(onItsOwn(plan)), plan.buyG()));
        }
        double mostG =
                begun.get().log().leftP90G() / (1 - survey.settings().drilling().wasteFraction());
        return NextPapers.of(survey, plan, begun.get().log()).left(plan, logged, mostG);
    }

    /** Its cups on a clock that begins with the first of them. */
    private static List<Batch> onItsOwn(InjectionPlan plan) {
        double firstS = plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
        List<Batch> own = new ArrayList<>();
        for (Batch batch : plan.batches()) {
            own.add(batch.movedTo(own.size() + 1, -firstS));
        }
        return own;
    }

    private static Set<String> logged(Survey survey, List<InjectionPlan> plans) {
        Set<String> names = new HashSet<>();
        NamedLog log = WorkDone.log(survey, plans);
        for (WorkEntry entry : log.entries()) {
            names.add(entry.hole());
            Optional.ofNullable(entry.oozeAt()).ifPresent(names::add);
            Optional.ofNullable(entry.ventShown()).ifPresent(names::add);
        }
        return names;
    }
}
