package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.drying.DryingCurve;
import corewright.decision.drying.DryingPattern;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.DryingTimes;
import corewright.decision.drying.Way;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.screen.ChartPainter;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.DepthStop;
import corewright.report.page.DryingChart;
import corewright.report.page.Prose;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The card of a region whose core is to be dried: at the front how it is opened and read, at the back how it should dry and a log. */
final class DryCard implements TwoSided {
    private static final double CHART_HEIGHT = 98;
    private static final double ROW = 9.4;

    /** Columns of the log after the day, from the right; widths on paper. */
    private static final double COLUMN = 16;

    private final Assessment assessment;
    private final Region region;
    private final Measure measure;
    private final FaceDamage damage;
    private final DryingPattern pattern;
    private final Optional<DryingCurve> curve;

    DryCard(Assessment assessment, Region region) {
        this.assessment = assessment;
        this.region = region;
        measure = Measure.of(assessment.survey());
        damage = assessment.damage().face(region.face());
        pattern = DryingPattern.of(assessment.survey(), region);
        curve = DryingTimes.curve(assessment.survey(), region);
    }

    /** Regions that are to be dried. */
    static List<Region> wanted(Assessment assessment) {
        return assessment.damage().regions().stream()
                .filter(r -> assessment.decision().on(r.id()).opensToDry())
                .toList();
    }

    @Override
    public void front(Paper paper, List<String> side) {
        new RegionSheet(assessment, region)
                .paint(
                        paper,
                        "dry",
                        "Nothing is filled or closed before a plug is dry.",
                        new RegionSheet.Marks(begin(), pattern.holes(), pattern.reads()),
                        key(),
                        side);
        double right = CardSheet.heading(
                paper, "Open and dry", RegionSheet.RIGHT_LEFT, RegionSheet.TOP, RegionSheet.RIGHT_WIDTH);
        right = CardSteps.paint(paper, steps(), 1, RegionSheet.RIGHT_LEFT, right, RegionSheet.RIGHT_WIDTH);
        String cautions = measure.say(Cautions.before("drilling", damage.face().posture())
                + " " + Cautions.SKIN
                + " Rotted core is dust that is not breathed. No heat that is left alone, no flame. "
                + Cautions.RULES);
        Prose.CELL.paint(paper, cautions, RegionSheet.RIGHT_LEFT, right + 2, RegionSheet.RIGHT_WIDTH, Anchor.LEFT);
    }

    /** The hole nearest to the region's name, from which the rows are laid out. */
    private Spot begin() {
        Spot middle =
                new Spot(region.face(), region.label().getX(), region.label().getY());
        return pattern.holes().stream()
                .min(Comparator.comparingDouble(s -> s.coordinate().distance(middle.coordinate())))
                .orElse(middle);
    }

    private String key() {
        double spacing = assessment.survey().settings().drying().holeSpacingMm();
        String reads = pattern.reads().isEmpty()
                ? " No reading was taken inside: choose three places, mark them, read only there."
                : " " + Prose.bold("Letters:") + " read here each time.";
        return Prose.bold("Ring and cross:") + " begin here. Rows "
                + Figures.fixed(DryingPattern.rowMm(spacing), 0) + " mm apart, holes " + Figures.fixed(spacing, 0)
                + " mm apart in a row, every other row half a step on." + reads;
    }

    private List<CardSteps.Step> steps() {
        Settings settings = assessment.survey().settings();
        Laminate laminate = assessment.survey().laminateAt(begin());
        double margin = settings.drilling().depthMarginMm();
        String gate = Figures.atMost(settings.thresholds().dryPlugPercent(), 0) + " %";
        List<CardSteps.Step> steps = new ArrayList<>();
        steps.add(new CardSteps.Step("Find the leak and stop it; until then nothing dries", "", 1));
        String holes = pattern.holes().size() + (pattern.holes().size() == 1 ? " hole of " : " holes of ")
                + Figures.fixed(settings.drilling().holeDiameterMm(), 1) + " mm";
        steps.add(
                DepthStop.possible(laminate, margin)
                        ? new CardSteps.Step(
                                holes + " through skin and core, collar at, " + measure.depthUnit(),
                                measure.stopFigure(DepthStop.collarMm(
                                        laminate, DepthStop.mm(laminate, laminate.coreMm(), margin), margin)),
                                1)
                        : new CardSteps.Step(holes + " through the outer skin only", "", 1));
        steps.add(
                new CardSteps.Step("Look at the chips: brown, soft, smells is rot. Stop: that core is cut out", "", 1));
        steps.add(new CardSteps.Step("Suck the holes clean. Rain and spray off, air under the cover", "", 1));
        steps.add(new CardSteps.Step("Read a, b, c each week, same meter, same side; write it on the back", "", 1));
        steps.add(new CardSteps.Step(
                "Low for two weeks: a core plug midway between holes, dried in the oven, %; dry at " + gate
                        + " or less",
                "",
                2));
        steps.add(new CardSteps.Step("Dry: fill the holes with thickened epoxy, fair, seal", "", 1));
        return steps;
    }

    @Override
    public void back(Paper paper, List<String> side) {
        CardSheet.head(
                paper,
                region.id() + " readings",
                "The same into moisture.csv, with the day in the column " + Prose.bold("taken.")
                        + " Run again: it says how it dries.",
                side);
        double top =
                CardSheet.heading(paper, "How it should dry", CardSheet.LEFT, CardSheet.BODY, RegionSheet.PLAN_WIDTH);
        time().ifPresent(t -> expected(paper, t, top + 2));
        double right =
                CardSheet.heading(paper, "Read", RegionSheet.RIGHT_LEFT, CardSheet.BODY, RegionSheet.RIGHT_WIDTH);
        log(paper, right);
    }

    private Optional<DryingTime> time() {
        return assessment.decision().weighing().drying().stream()
                .filter(t -> t.region().equals(region.id()) && t.way() == Way.THROUGH_HOLES)
                .findFirst();
    }

    private void expected(Paper paper, DryingTime time, double top) {
        double y = top;
        if (curve.isPresent()) {
            DryingCurve c = curve.get();
            paper.figure(
                    DryingChart.lines(c),
                    p -> ChartPainter.onPaper(
                            p, DryingChart.of(c), new Box(CardSheet.LEFT, top, RegionSheet.PLAN_WIDTH, CHART_HEIGHT)));
            y += CHART_HEIGHT + 3;
            String lines = measure.say(DryingChart.lines(c));
            Prose.NOTE.paint(paper, lines, CardSheet.LEFT, y, RegionSheet.PLAN_WIDTH, Anchor.LEFT);
            y += Prose.NOTE.height(lines, RegionSheet.PLAN_WIDTH);
        }
        String then = (curve.isPresent() ? Prose.bold(DryingChart.dry(time, curve.get())) + " " : "")
                + Prose.plain(time.note()) + "\n" + Prose.bold("Nothing falls for a week:")
                + " look for the leak, open more, bring drier air. "
                + (curve.isPresent() ? Prose.bold("Not dry when the slow case is over:") + " cut it out. " : "")
                + "A meter proves nothing: a plug does.";
        Prose.TEXT.paint(paper, measure.say(then), CardSheet.LEFT, y + 3, RegionSheet.PLAN_WIDTH, Anchor.LEFT);
    }

    private void log(Paper paper, double top) {
        List<String> columns = List.of("a", "b", "c", "plug, %");
        double first = CardSheet.RIGHT - columns.size() * COLUMN;
        paper.text(
                "day", RegionSheet.RIGHT_LEFT, CardSheet.level(CardSheet.WORD, top, ROW), CardSheet.WORD, Anchor.LEFT);
        for (int i = 0; i < columns.size(); i++) {
            paper.text(
                    columns.get(i),
                    first + (i + 0.5) * COLUMN,
                    CardSheet.level(CardSheet.WORD, top, ROW),
                    CardSheet.WORD,
                    Anchor.CENTRE);
        }
        for (double y = top + ROW; y + ROW < CardSheet.BODY_END; y += ROW) {
            CardSheet.box(paper, RegionSheet.RIGHT_LEFT, y, first - RegionSheet.RIGHT_LEFT, ROW);
            for (int i = 0; i < columns.size(); i++) {
                CardSheet.box(paper, first + i * COLUMN, y, COLUMN, ROW);
            }
        }
    }
}
