package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.Option;
import corewright.report.page.Numbers;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** options.csv: every region with every method, offered or not and why, then the whole deck. */
public final class OptionsCsv {
    private OptionsCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table =
                new CsvTable("region,method,offered,why,hours_low,hours_high,cost_low,cost_high,days_low,days_high,"
                        + "weight_kg,stiffness_p10,stiffness_p50,stiffness_p90,water_kg,panel,standing");
        for (Option option : assessment.decision().weighing().options()) {
            table.add(
                    option.region(),
                    option.method(),
                    option.offered() ? "yes" : "no",
                    option.why(),
                    work(option, Option.Work::hoursLow, 1),
                    work(option, Option.Work::hoursHigh, 1),
                    work(option, Option.Work::costLow, 0),
                    work(option, Option.Work::costHigh, 0),
                    work(option, Option.Work::daysLow, 1),
                    work(option, Option.Work::daysHigh, 1),
                    Numbers.rounded(option.weight().netKg(), 2),
                    share(option, Quantiles::p10),
                    share(option, Quantiles::p50),
                    share(option, Quantiles::p90),
                    Numbers.rounded(option.weight().waterKg(), 2),
                    option.panel(),
                    standing(option));
        }
        return table;
    }

    static String standing(Option option) {
        return option.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String work(Option option, ToDoubleFunction<Option.Work> figure, int decimals) {
        return option.work()
                .map(w -> Numbers.rounded(figure.applyAsDouble(w), decimals))
                .orElse("");
    }

    private static String share(Option option, ToDoubleFunction<Quantiles> figure) {
        return option.stiffness()
                .map(q -> Numbers.rounded(figure.applyAsDouble(q), 3))
                .orElse("");
    }
}
