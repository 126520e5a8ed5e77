package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Holding;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.Schedule;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.survey.Survey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** schedule.csv: the day of every injection as bars, on the clock of batches.csv. */
public final class ScheduleCsv {
    private ScheduleCsv() {}

    public static CsvTable of(Assessment assessment) {
        List<InjectionPlan> plans = assessment.decision().injections();
        Survey survey = assessment.survey();
        return of(survey, plans, List.of(Schedule.of(survey, plans), Schedule.heldBack(survey, plans)));
    }

    /** Of what is left. */
    public static CsvTable left(Assessment assessment, List<InjectionPlan> plans) {
        return of(assessment.survey(), plans, List.of(Schedule.left(assessment.survey(), plans)));
    }

    private static CsvTable of(Survey survey, List<InjectionPlan> plans, List<Schedule> schedules) {
        CsvTable table = new CsvTable("region,batch,worker,hole,what,start_min,end_min");
        Map<String, Holding> holding = new LinkedHashMap<>();
        for (InjectionPlan plan : plans) {
            String face = plan.holes().get(0).spot().face();
            holding.putIfAbsent(plan.region(), Holding.of(survey.face(face).posture()));
        }
        holding.forEach((region, held) ->
                schedules.stream().flatMap(s -> s.of(region).bars().stream()).forEach(bar -> add(table, bar, held)));
        return table;
    }

    private static void add(CsvTable table, Schedule.Bar bar, Holding holding) {
        table.add(
                bar.region(),
                unless0(bar.batch()),
                unless0(bar.worker()),
                bar.hole(),
                word(bar.what(), holding),
                Numbers.rounded(bar.startS() / Conversions.SECONDS_PER_MINUTE, 2),
                Numbers.rounded(bar.endS() / Conversions.SECONDS_PER_MINUTE, 2));
    }

    private static String word(Schedule.What what, Holding holding) {
        return switch (what) {
            case HOLD -> holding.thing();
            case LOAD -> holding.use();
            default -> what.name().toLowerCase(Locale.ROOT);
        };
    }

    private static String unless0(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }
}
