package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.drawing.cards.CutPlan;
import corewright.drawing.cards.CutSection;
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
import corewright.repair.CutOut;
import corewright.repair.plan.Holding;
import corewright.repair.plan.RecorePlan;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import corewright.survey.Face;
import corewright.survey.Face.Posture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;

/** The card of a cut: opening at the front, closing at the back. */
final class CutOutCard implements TwoSided {
    private static final double PLAN_WIDTH = 142;
    private static final double PLAN_TOP = 37;
    private static final double PLAN_FOOT = 171;
    private static final double RIGHT_LEFT = 158;
    private static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;
    private static final double RULE = 202;

    /** Height of the words beside the rule, which reach under the right column. */
    private static final double RULE_WORDS = 2.6;

    /** No strip of skin narrower than this can be kept between two saw cuts. Practice. */
    private static final double ONE_OPENING_MM = 10;

    private static final Prose LEGEND = Prose.CELL;

    private final Assessment assessment;
    private final Region region;
    private final CutOut cut;
    private final Measure measure;
    private final Face face;

    CutOutCard(Assessment assessment, RecorePlan plan) {
        this.assessment = assessment;
        region = assessment.damage().regions().stream()
                .filter(r -> r.id().equals(plan.region()))
                .findFirst()
                .orElseThrow();
        cut = CutOut.of(assessment.survey(), region, plan);
        measure = Measure.of(assessment.survey());
        face = assessment.survey().face(region.face());
    }

    CutOut cut() {
        return cut;
    }

    /** Opening: plan, section, steps, cautions. */
    @Override
    public void front(Paper paper, List<String> side) {
        CardSheet.head(paper, region.id() + " cut out", measure.say(facts()), side);
        gear(paper);
        CutPlan plan = new CutPlan(
                assessment.damage(), cut, measure, new Box(CardSheet.LEFT, PLAN_TOP, PLAN_WIDTH, PLAN_FOOT - PLAN_TOP));
        plan.paint(paper);
        underPlan(paper, plan);
        CutSection section = new CutSection(
                cut.laminate().outerSkinMm(),
                cut.laminate().coreMm(),
                cut.laminate().innerSkinMm(),
                cut.scarfMm(),
                face.posture(),
                measure);
        section.paint(paper, RIGHT_LEFT, PLAN_TOP - 2);
        double y = PLAN_TOP - 2 + section.heightMm();
        paper.text(
                "Section at the line, " + section.scaleWords(),
                RIGHT_LEFT,
                y + 3.2,
                new Type(Typeface.TEXT_BOLD, 9),
                Anchor.LEFT);
        y = CardSheet.heading(paper, "Open", RIGHT_LEFT, y + 5, RIGHT_WIDTH);
        y = CardSteps.paint(paper, opening(), 1, RIGHT_LEFT, y, RIGHT_WIDTH);
        String cautions = measure.say(String.join(" ", cut.plan().cautions()));
        fitting(cautions, RULE - RULE_WORDS - y - 1.5)
                .paint(paper, cautions, RIGHT_LEFT, y + 1.5, RIGHT_WIDTH, Anchor.LEFT);
        PrintRule.paint(paper, CardSheet.LEFT, RULE, measure);
    }

    /** Closing: steps, plies, cups, readings before it is closed. */
    @Override
    public void back(Paper paper, List<String> side) {
        CardSheet.head(paper, region.id() + " close", measure.say(CutOutBack.facts(assessment)), side);
        new CutOutBack(assessment, region, cut).paint(paper, opening().size() + 1);
    }

    private static Prose fitting(String words, double room) {
        return Stream.of(Prose.CELL, Prose.NOTE, new Prose(7.5, 3.3), new Prose(7, 3.1))
                .filter(p -> p.height(words, RIGHT_WIDTH) <= room)
                .findFirst()
                .orElse(new Prose(6.5, 2.8));
    }

    private String facts() {
        Envelope box = cut.plan().cut().getEnvelopeInternal();
        String place = Prose.plain(Titles.boat(assessment.survey().heading()).split(",", 2)[0]) + ", "
                + Prose.plain(region.face()) + ", "
                + PlaceNames.of(face).over(region.likely());
        RegionDecision decision = assessment.decision().on(region.id());
        String first = decision.architect()
                ? Prose.bold("A naval architect or surveyor decides first: load is carried here.") + "\n"
                : "";
        String step = decision.firstStep();
        List<String> others = joined();
        String joined = others.isEmpty()
                ? ""
                : Prose.bold("One opening with " + Wording.list(others) + ":")
                        + " saw round them together, leave no strip between, lay one skin over all. ";
        return first + joined + Prose.bold(place + ".") + " "
                + capital(region.condition().word().replace('-', ' ')) + " "
                + Figures.area(region.likely().getArea())
                + ". Cut " + Figures.fixed(box.getWidth(), 0) + " x " + Figures.fixed(box.getHeight(), 0) + " mm, "
                + Figures.area(cut.plan().cut().getArea()) + "."
                + (step == null || decision.architect() ? "" : "\n" + Prose.bold("First: ") + step);
    }

    /** Regions whose cuts run into this one, each with a card of its own. */
    private List<String> joined() {
        return assessment.decision().recores().stream()
                .filter(p -> !p.region().equals(region.id()))
                .filter(p -> face(p.region()).equals(region.face()))
                .filter(p -> p.cut().isWithinDistance(cut.plan().cut(), ONE_OPENING_MM))
                .map(RecorePlan::region)
                .toList();
    }

    private String face(String id) {
        return assessment.damage().regions().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow()
                .face();
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void gear(Paper paper) {
        List<String> all = new ArrayList<>(List.of(
                face.posture() == Posture.OVERHEAD ? "goggles, face shield" : "eye protection",
                "gloves",
                "P3 mask",
                "dust drawn off",
                "power off",
                "fuel vapour out",
                "looked " + Holding.of(face.posture()).otherSide()));
        double words = all.stream().mapToDouble(CardSheet.WORD::width).sum();
        double gap = (CardSheet.FULL_WIDTH - words - all.size() * (CardSheet.BOX + 2)) / (all.size() - 1);
        double x = CardSheet.LEFT;
        for (String gear : all) {
            CardSheet.box(paper, x, CardSheet.BODY, CardSheet.BOX);
            x += CardSheet.BOX + 2;
            paper.text(
                    gear,
                    x,
                    CardSheet.level(CardSheet.WORD, CardSheet.BODY, CardSheet.BOX),
                    CardSheet.WORD,
                    Anchor.LEFT);
            x += CardSheet.WORD.width(gear) + gap;
        }
    }

    private void underPlan(Paper paper, CutPlan plan) {
        Type bold = new Type(Typeface.TEXT_SEMIBOLD, 9);
        String scale = "1 : " + Figures.atMost(plan.scale(), 0) + " on "
                + LyingSheet.of(assessment.survey()).word() + ", "
                + (measure == Measure.METRIC ? "millimetres" : "inches") + " from the datum";
        double y = PLAN_FOOT + 4;
        paper.text(scale, CardSheet.LEFT + PLAN_WIDTH, y, bold, Anchor.RIGHT);
        paper.text(
                Orientation.of(face), CardSheet.LEFT + PLAN_WIDTH, y + 4, new Type(Typeface.TEXT, 8.5), Anchor.RIGHT);
        String legend =
                Prose.bold("Dash and dot, heavy:") + " saw here, corners of 25 mm radius. " + Prose.bold("Grey:")
                        + " grind the scarf, " + Figures.atMost(cut.scarfMm(), 0) + " mm. " + Prose.bold("a b c:")
                        + " read here before closing."
                        + (cut.scarfShort() > 0.01
                                ? " "
                                        + Prose.bold(String.format(
                                                Locale.ROOT,
                                                "%.0f %% of the scarf falls off the skin:",
                                                100 * cut.scarfShort()))
                                        + " there the kept skin is set back from an edge, or the scarf is ground into the piece."
                                : "")
                        + (cut.below().isEmpty()
                                ? " Nothing is known to lie on the other side: look."
                                : " " + Prose.bold("On the other side: " + Wording.list(cut.below()) + "."));
        LEGEND.paint(paper, measure.say(legend), CardSheet.LEFT, y + 5.5, PLAN_WIDTH, Anchor.LEFT);
    }

    private List<CardSteps.Step> opening() {
        Holding holding = Holding.of(face.posture());
        List<CardSteps.Step> steps = new ArrayList<>();
        if (!cut.fittings().isEmpty()) {
            steps.add(new CardSteps.Step("Take off " + Wording.list(cut.fittings()), "", 1));
        }
        steps.add(new CardSteps.Step(
                switch (face.posture()) {
                    case DECK -> "Prop it from below, beside the cut";
                    case WALL -> "Strut the wall; hold the piece before the last cut";
                    case OVERHEAD -> "Board and props under the piece; nobody stands below";
                },
                "",
                1));
        steps.add(new CardSteps.Step(
                "Pilot hole; then saw along the line, depth, " + measure.depthUnit(),
                measure.stopFigure(cut.laminate().outerSkinMm()),
                1));
        steps.add(new CardSteps.Step("Lift the skin off. Mark bow and outside, keep it flat", "", 1));
        steps.add(new CardSteps.Step(
                "Rake out to sound dry core; leave the inner skin whole, look at it " + holding.otherSide(), "", 1));
        steps.add(new CardSteps.Step(
                "Dry. Core plugs beside the edge at a, b, c: at most",
                Figures.atMost(assessment.survey().settings().thresholds().dryPlugPercent(), 0) + " %",
                3));
        steps.add(new CardSteps.Step(
                "Grind the scarf, " + measure.depthUnit() + "; inner skin to dull, dust off",
                measure.lengthFigure(cut.scarfMm()),
                1));
        return steps;
    }
}
