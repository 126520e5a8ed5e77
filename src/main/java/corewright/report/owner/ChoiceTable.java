package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import corewright.report.page.Wording;
import java.util.ArrayList;
import java.util.List;

/** The choices side by side, from least to most done, one of them recommended; none while the verdict is withheld. */
final class ChoiceTable {
    /** What stands between days and the thing to know; takes its room from the first and the last column. */
    record Extra(Column column, List<String> cells) {}

    private ChoiceTable() {}

    /** Stiffness of the panel that lost most, as built = 100; nothing where no panel is damaged. */
    static List<Extra> stiffness(Assessment assessment) {
        List<Choice> choices = offered(assessment);
        if (choices.stream().allMatch(c -> c.ofAsBuilt().isEmpty())) {
            return List.of();
        }
        List<String> cells = choices.stream()
                .map(c -> c.ofAsBuilt().map(ChoiceTable::hundredths).orElse("not calculated"))
                .toList();
        return List.of(new Extra(new Column("Stiffness*", 21, Anchor.RIGHT), cells));
    }

    private static List<Choice> offered(Assessment assessment) {
        return assessment.verdict().withheld()
                ? List.of()
                : assessment.decision().choices();
    }

    private static String hundredths(Quantiles q) {
        String middle = Figures.fixed(100 * q.p50(), 0);
        String low = Figures.fixed(100 * q.p10(), 0);
        String high = Figures.fixed(100 * q.p90(), 0);
        return low.equals(high) ? middle : middle + "\n" + low + " to " + high;
    }

    /** Where the core may never be dry in this air there is no upper end. */
    private static String days(Choice choice) {
        return Double.isInfinite(choice.daysHigh())
                ? Wording.days(choice.daysLow(), choice.daysLow()) + " or more"
                : Wording.days(choice.daysLow(), choice.daysHigh());
    }

    static RuledTable of(Assessment assessment, List<Extra> extras) {
        double taken = extras.stream().mapToDouble(e -> e.column().widthMm()).sum();
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("Choice", 58 - taken / 2, Anchor.LEFT));
        columns.add(new Column("Cost", 31, Anchor.RIGHT));
        columns.add(new Column("Yard days", 20, Anchor.RIGHT));
        extras.forEach(e -> columns.add(e.column()));
        columns.add(new Column("What to know", PageFrame.FULL_WIDTH - 58 - 31 - 20 - taken / 2, Anchor.LEFT));
        RuledTable table = new RuledTable(columns);
        String currency = Prose.plain(assessment.survey().settings().costs().currency());
        List<Choice> choices = offered(assessment);
        if (choices.isEmpty()) {
            table.row(List.of("None yet", "", "", "A choice needs a verdict, and none is given."));
        }
        for (int i = 0; i < choices.size(); i++) {
            Choice choice = choices.get(i);
            List<String> cells = new ArrayList<>();
            cells.add(Prose.bold(Prose.plain(choice.title())) + "\n" + Prose.plain(choice.regions()));
            cells.add(Wording.money(currency, choice.costLow(), choice.costHigh()));
            cells.add(days(choice));
            for (Extra extra : extras) {
                cells.add(extra.cells().get(i));
            }
            cells.add((choice.advised() ? Prose.bold("Recommended.") + " " : "")
                    + Measure.of(assessment.survey()).say(Prose.plain(choice.toKnow())));
            if (choice.advised()) {
                table.markedRow(cells);
            } else {
                table.row(cells);
            }
        }
        return table;
    }
}
