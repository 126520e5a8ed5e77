package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.decision.Choice;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.report.page.Wording;
import java.util.List;

/**
 * The owner's first page in its parts, for a screen: the same words as on paper.
 *
 * @param title the finding
 * @param wrong what is wrong, the gravest places
 * @param doubt what the readings do not settle
 * @param now what to do before anything else
 * @param choices from least to most done; none where no verdict may be given
 * @param standing of the choice that is planned: recommended, or decided by hand
 * @param costs what the sums hold
 */
public record OwnerView(
        String title, String wrong, String doubt, String now, List<Choice> choices, String standing, String costs) {
    private static final int PLACES_TOLD = 3;

    public OwnerView {
        choices = List.copyOf(choices);
    }

    public static OwnerView of(Assessment assessment) {
        Measure measure = Measure.of(assessment.survey());
        boolean withheld = assessment.verdict().withheld();
        return new OwnerView(
                said(measure, OwnerTitle.of(assessment)),
                said(measure, OwnerWords.wrong(assessment, PLACES_TOLD))
                        .replace("in the table on the following pages", "on the plan or in the report"),
                said(measure, OwnerWords.doubt(assessment)).replaceAll(" [^.]*: see findings\\.csv\\.", ""),
                said(measure, OwnerWords.now(assessment)),
                withheld ? List.of() : assessment.decision().choices(),
                OwnerStops.standing(assessment),
                said(measure, OwnerWords.costs(assessment)).replaceAll(" \\* .*", ""));
    }

    /** A screen has its own way to make words stand out. */
    private static String said(Measure measure, String words) {
        return measure.say(words).replace("**", "");
    }

    /** What a choice costs, in money and days, rounded as on paper. */
    public static String effort(String currency, Choice choice) {
        String days = OwnerCosts.days(choice);
        return Wording.money(currency, choice.costLow(), choice.costHigh()) + ", " + days
                + (days.equals("1") ? " day" : " days");
    }

    /** The map of the face with most damage, without readings. */
    public static void paintMap(Paper paper, Assessment assessment, Box box) {
        OwnerMap.paint(paper, assessment, OwnerTitle.worst(assessment), box);
    }
}
