package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.decision.Option;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.util.List;
import java.util.Optional;

/** What the choices cost, in money, hours, days and weight. */
final class OwnerCosts {
    private static final String TIED = Wording.TIED;

    private OwnerCosts() {}

    /** The row of options.csv that is this choice of the whole deck; none where the choices were not weighed. */
    static Optional<Option> row(Assessment assessment, Choice choice) {
        return assessment.decision().weighing().options().stream()
                .filter(o -> o.region().equals(Option.DECK) && o.why().startsWith(choice.title() + ": "))
                .findFirst();
    }

    /** {@code 16 to 45}; empty where the choices were not weighed. */
    static String hours(Assessment assessment, Choice choice) {
        return row(assessment, choice)
                .flatMap(Option::work)
                .map(w -> Wording.range(w.hoursLow(), w.hoursHigh(), 0))
                .orElse("");
    }

    /** Weight brought aboard less what is taken out dry, with its sign; empty where it is not known. */
    static String weight(Assessment assessment, Choice choice) {
        double net = row(assessment, choice).map(o -> o.weight().netKg()).orElse(Double.NaN);
        if (Double.isNaN(net)) {
            return "";
        }
        String figure = Figures.fixed(Measure.of(assessment.survey()).weight(Math.abs(net)), 1);
        return figure.equals("0.0") ? "0" : (net > 0 ? "+" : "–") + figure;
    }

    /** Days in the yard; where the core may never be dry in this air there is no upper end. */
    static String days(Choice choice) {
        return Double.isInfinite(choice.daysHigh())
                ? Wording.days(choice.daysLow(), choice.daysLow()) + " or more"
                : Wording.days(choice.daysLow(), choice.daysHigh());
    }

    /** What the advised choice costs and gives, and what the least and the most that can be done would cost. */
    static String inShort(Assessment assessment) {
        List<Choice> choices = assessment.decision().choices();
        if (assessment.verdict().withheld() || choices.isEmpty()) {
            return "";
        }
        String currency = Prose.plain(assessment.survey().settings().costs().currency());
        Choice advised = choices.stream().filter(Choice::advised).findFirst().orElse(choices.get(0));
        StringBuilder words =
                new StringBuilder(Prose.bold(Prose.plain(advised.title()) + ", " + OwnerStops.within(assessment) + ": "
                        + Wording.money(currency, advised.costLow(), advised.costHigh()) + ","));
        String hours = hours(assessment, advised);
        words.append(hours.isEmpty() ? "" : " " + hours + TIED + "hours of work,")
                .append(' ')
                .append(days(advised))
                .append(TIED + "days in the yard.");
        words.append(givenBack(assessment, advised));
        for (Choice other : List.of(choices.get(0), choices.get(choices.size() - 1))) {
            if (other != advised) {
                words.append(' ')
                        .append(Prose.plain(other.title()))
                        .append(": ")
                        .append(Wording.money(currency, other.costLow(), other.costHigh()))
                        .append('.');
            }
        }
        return words.append(choices.size() > 1 ? " Page" + TIED + "2 has the choices side by side." : "")
                .toString();
    }

    private static String givenBack(Assessment assessment, Choice advised) {
        Optional<Quantiles> after = advised.ofAsBuilt();
        return assessment
                .stiffness()
                .worst()
                .filter(p -> after.isPresent())
                .map(p -> " " + Wording.sentence(Prose.plain(p.panel().name())) + ", the panel that lost most, has "
                        + hundredths(p.in(State.AS_FOUND).ofAsBuilt()) + " of 100 of its stiffness, and "
                        + after.map(OwnerCosts::hundredths).orElse("") + " after it" + loads(assessment, p) + ".")
                .orElse("");
    }

    /** Which panel the survey's loads ask most of, beside the one just named; empty where there are no loads. */
    private static String loads(Assessment assessment, PanelStiffness named) {
        return assessment
                .stiffness()
                .mostLoaded()
                .map(p -> p.equals(named)
                        ? ", and the survey's loads ask most of it"
                        : "; the survey's loads ask most of "
                                + Prose.plain(p.panel().name()))
                .orElse("");
    }

    static String hundredths(Quantiles share) {
        return Figures.fixed(100 * share.p50(), 0);
    }
}
