package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.drawing.cards.RegionPlan;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlaceNames;
import corewright.drawing.kit.PrintRule;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Spot;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The front of a card that has one region's plan at the left and steps at the right: head, ticks, plan with its key, rule. */
record RegionSheet(Assessment assessment, Region region) {
    static final double TOP = 37;
    static final double PLAN_WIDTH = 142;
    static final double RIGHT_LEFT = 158;
    static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;

    private static final double PLAN_FOOT = 171;
    private static final double RULE = 202;
    private static final Type SCALE = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type SEEN = new Type(Typeface.TEXT, 8.5);

    /** What the plan marks: where to drill, or to begin; holes that follow from it; places to read at. */
    record Marks(@Nullable Spot drill, List<Spot> more, List<Spot> reads) {}

    private FaceDamage damage() {
        return assessment.damage().face(region.face());
    }

    /**
     * Paints all but the right half.
     *
     * @param verb after the region's name
     * @param rule the sentence that matters most
     * @param key below the plan
     */
    void paint(Paper paper, String verb, String rule, Marks marks, String key, List<String> side) {
        Measure measure = Measure.of(assessment.survey());
        CardSheet.head(paper, region.id() + " " + verb, measure.say(facts() + Prose.bold(rule)), side);
        CardSheet.ticks(paper, new CardWords(damage().face().posture(), false).gear());
        RegionPlan plan = new RegionPlan(
                damage(),
                region,
                marks.drill,
                marks.more,
                marks.reads,
                measure,
                new Box(CardSheet.LEFT, TOP, PLAN_WIDTH, PLAN_FOOT - TOP));
        plan.paint(paper);
        double y = PLAN_FOOT + 4;
        double right = CardSheet.LEFT + PLAN_WIDTH;
        String scale = "1 : " + Figures.atMost(plan.scale(), 0) + " on "
                + LyingSheet.of(assessment.survey()).word() + ", "
                + (measure == Measure.METRIC ? "millimetres" : "inches") + " from the datum";
        paper.text(scale, right, y, SCALE, Anchor.RIGHT);
        paper.text(Orientation.of(damage().face()), right, y + 4, SEEN, Anchor.RIGHT);
        Prose.CELL.paint(paper, measure.say(key), CardSheet.LEFT, y + 5.5, PLAN_WIDTH, Anchor.LEFT);
        PrintRule.paint(paper, CardSheet.LEFT, RULE, measure);
    }

    private String facts() {
        String boat = Titles.boat(assessment.survey().heading()).split(",", 2)[0];
        return Prose.bold(Prose.plain(boat) + ", " + Prose.plain(region.face()) + ".") + " "
                + PlaceNames.of(damage().face()).over(region.likely()) + ". "
                + Figures.area(region.likely().getArea())
                + ", " + region.condition().word().replace('-', ' ') + ".\n";
    }
}
