package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.report.page.Wording;
import corewright.stiffness.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The owner's first page in its parts, for a screen: the same words as on paper.
 *
 * @param title the finding
 * @param wrong what is wrong, the gravest places
 * @param doubt what the readings do not settle
 * @param amounts how much it is, with the range of it
 * @param now what to do before anything else, gravest first
 * @param choices from least to most done; none where no verdict may be given
 * @param standing of the choice that is planned: recommended, or decided by hand
 * @param foot how far the deck gives under one, where that is calculated
 * @param costs what the sums hold
 */
public record OwnerView(
        String title,
        String wrong,
        String doubt,
        List<Amount> amounts,
        List<String> now,
        List<Choice> choices,
        String standing,
        Optional<Foot> foot,
        String costs) {
    private static final int PLACES_TOLD = 3;
    private static final String DAMAGED = "Damaged core, in 8 cases of 10";
    private static final String COUNTED = " The range of the damaged core counts what is doubtful too.";

    /** A quantity and between what it lies in 8 cases of 10. */
    public record Amount(String what, double low, double middle, double high, String unit) {}

    /**
     * How far the panel that lost most gives under a foot, where it gives most.
     *
     * @param face it belongs to, as it is spoken of
     * @param builtMm as built, under 1 kN
     */
    public record Foot(String face, double builtMm) {
        /** With so much of its stiffness left, mm. */
        public double dipMm(double ofAsBuilt) {
            return builtMm / ofAsBuilt;
        }
    }

    public OwnerView {
        amounts = List.copyOf(amounts);
        now = List.copyOf(now);
        choices = List.copyOf(choices);
    }

    public static OwnerView of(Assessment assessment) {
        Measure measure = Measure.of(assessment.survey());
        boolean withheld = assessment.verdict().withheld();
        List<Amount> amounts = withheld ? List.of() : amounts(assessment, measure);
        boolean counted = amounts.stream().anyMatch(a -> a.what().equals(DAMAGED));
        return new OwnerView(
                said(measure, OwnerTitle.of(assessment)),
                said(measure, OwnerWords.wrong(assessment, PLACES_TOLD))
                        .replace("in the table on the following pages", "on the plan or in the report"),
                said(measure, OwnerWords.doubt(assessment)).replaceAll(" [^.]*: see findings\\.csv\\.", "")
                        + (counted ? COUNTED : ""),
                amounts,
                OwnerWords.steps(assessment).stream()
                        .map(step -> said(measure, step))
                        .toList(),
                withheld ? List.of() : assessment.decision().choices(),
                OwnerStops.standing(assessment),
                assessment
                        .stiffness()
                        .worst()
                        .map(p -> new Foot(
                                PlaceWords.named(p.panel().face()),
                                p.in(State.AS_BUILT).deflectionMm())),
                said(measure, OwnerWords.costs(assessment)).replaceAll(" \\* .*", ""));
    }

    private static List<Amount> amounts(Assessment assessment, Measure measure) {
        List<Amount> amounts = new ArrayList<>();
        DamageMap damage = assessment.damage();
        Quantiles area = damage.damagedMm2();
        if (area.p90() > 0) {
            amounts.add(new Amount(
                    DAMAGED,
                    measure.areaOf(area.p10()),
                    measure.areaOf(area.p50()),
                    measure.areaOf(area.p90()),
                    measure.areaUnit()));
        }
        Quantiles empty = damage.voidMm3();
        if (empty.p90() > 0 && assessment.survey().readings().coreSeen()) {
            amounts.add(new Amount(
                    "Empty space, in 8 cases of 10",
                    measure.volume(empty.p10()),
                    measure.volume(empty.p50()),
                    measure.volume(empty.p90()),
                    measure.volumeUnit()));
        }
        return amounts;
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
