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
    private static final double COST = 30;
    private static final double HOURS = 20;
    private static final double DAYS = 22;
    private static final double WEIGHT = 21;
    private static final double STIFFNESS = 23;

    private ChoiceTable() {}

    /** Whether stiffness is told of any choice: as built = 100, of the panel that lost most. */
    static boolean stiffness(Assessment assessment) {
        return offered(assessment).stream().anyMatch(c -> c.ofAsBuilt().isPresent());
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

    static RuledTable of(Assessment assessment) {
        boolean stiff = stiffness(assessment);
        double others = COST + HOURS + DAYS + WEIGHT + (stiff ? STIFFNESS : 0);
        List<Column> columns = new ArrayList<>(List.of(
                new Column("Choice", PageFrame.FULL_WIDTH - others, Anchor.LEFT),
                new Column("Cost", COST, Anchor.RIGHT),
                new Column("Hours", HOURS, Anchor.RIGHT),
                new Column("Yard days", DAYS, Anchor.RIGHT),
                new Column(Measure.of(assessment.survey()).weightUnit() + " aboard", WEIGHT, Anchor.RIGHT)));
        if (stiff) {
            columns.add(new Column("Stiffness*", STIFFNESS, Anchor.RIGHT));
        }
        RuledTable table = new RuledTable(columns);
        List<Choice> choices = offered(assessment);
        if (choices.isEmpty()) {
            List<String> none = new ArrayList<>(
                    List.of(Prose.bold("None yet") + "\nA choice needs a verdict, and none is given.", "", "", "", ""));
            table.row(none);
        }
        for (Choice choice : choices) {
            List<String> cells = cells(assessment, choice, stiff);
            if (choice.advised()) {
                table.markedRow(cells);
            } else {
                table.row(cells);
            }
        }
        return table;
    }

    private static List<String> cells(Assessment assessment, Choice choice, boolean stiff) {
        String currency = Prose.plain(assessment.survey().settings().costs().currency());
        boolean least = choice == assessment.decision().choices().get(0); // told under "If it is left"
        String toKnow = Measure.of(assessment.survey()).say(Prose.plain(choice.toKnow()));
        List<String> cells = new ArrayList<>();
        String standing = choice.advised() ? ". " + OwnerStops.standing(assessment) : "";
        cells.add(Prose.bold(Prose.plain(choice.title()) + standing) + "\n"
                + Prose.plain(Wording.sentence(choice.regions())) + "." + (least ? "" : " " + toKnow));
        cells.add(Wording.money(currency, choice.costLow(), choice.costHigh()));
        cells.add(OwnerCosts.hours(assessment, choice));
        cells.add(OwnerCosts.days(choice));
        cells.add(OwnerCosts.weight(assessment, choice));
        if (stiff) {
            cells.add(choice.ofAsBuilt().map(ChoiceTable::hundredths).orElse("not calculated"));
        }
        return cells;
    }
}
