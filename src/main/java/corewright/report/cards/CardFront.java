package corewright.report.cards;

import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.drawing.cards.CardPlan;
import corewright.drawing.cards.HoleSection;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlaceNames;
import corewright.drawing.kit.PrintRule;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.RampMark;
import corewright.repair.mix.ReachLaw;
import corewright.repair.pattern.Slope;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.Hole;
import corewright.report.page.Prose;
import corewright.survey.Face;
import corewright.survey.Face.Posture;
import corewright.survey.Laminate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The side for drilling: protective gear, plan of the holes, a section at full size, and the holes as a table. */
final class CardFront {
    private static final double TABLE_LEFT = CardSheet.RIGHT - HoleTable.WIDTH;
    private static final double PLAN_WIDTH = 143;
    private static final double PLAN_TOP = 43.5;
    private static final double LEAST_UNDER_PLAN = 10.5;

    /** Figures on the plan's axis, and clear of them. */
    private static final double AXIS = 5.5;

    private static final double FOOT = 195.5;
    private static final double GAP = 2;
    private static final double LEGEND_LEFT = 92;
    private static final double RULE = 202;

    private static final Prose LEGEND = Prose.CELL;

    /** A thicker laminate leaves no room for a section at full size. */
    private static final double HIGHEST_SECTION = 40;

    /** Larger type only where the plan keeps this much. */
    private static final double GOOD_PLAN = 90;

    private final InjectionCard card;
    private final String cautions;
    private final Prose cautionType;
    private final double cautionTop;
    private final double sectionTop;
    private final double underPlan;
    private final CardPlan plan;

    /** Laid out from the foot up: cautions in full, the section at full size, and what is left for the plan. */
    CardFront(InjectionCard card) {
        this.card = card;
        cautions = card.measure().say(cautions(card));
        underPlan = Math.max(
                LEAST_UNDER_PLAN,
                AXIS + RampMark.of(card.face().face(), 0, 0).box().height());
        double under = Math.max(sectionHeight(), LEGEND.height(legend(true, true, true), legendWidth())) + underPlan;
        double large = FOOT - CardSheet.TEXT.height(cautions, PLAN_WIDTH) - GAP - under - PLAN_TOP;
        cautionType = large >= GOOD_PLAN ? CardSheet.TEXT : Prose.NOTE;
        cautionTop = FOOT - cautionType.height(cautions, PLAN_WIDTH);
        sectionTop = cautionTop - GAP - under + underPlan;
        plan = new CardPlan(
                card.assessment(),
                card.plan(),
                new Box(CardSheet.LEFT, PLAN_TOP, PLAN_WIDTH, sectionTop - underPlan - PLAN_TOP));
    }

    private static double legendWidth() {
        return CardSheet.LEFT + PLAN_WIDTH - LEGEND_LEFT;
    }

    /**
     * Paints it.
     *
     * @param table of some of the holes
     * @param side what card it is
     */
    void paint(Paper paper, HoleTable table, List<String> side) {
        CardSheet.head(paper, card.title() + " inject", card.measure().say(facts()), side);
        gear(paper);
        String head = card.deepest().drilled()
                ? "Drill " + Figures.atMost(card.deepest().diameterMm(), 1) + " mm" + order()
                : "Nothing to drill: a nozzle fills it through the opening";
        paper.text(card.measure().say(head), CardSheet.LEFT, 41, CardSheet.HEAD, Anchor.LEFT);
        plan.paint(paper);
        underPlan(paper);
        section(paper);
        LEGEND.paint(
                paper,
                legend(plan.showsArrival(), plan.showsKeepOut(), plan.showsAir()),
                LEGEND_LEFT,
                sectionTop,
                legendWidth(),
                Anchor.LEFT);
        cautionType.paint(paper, cautions, CardSheet.LEFT, cautionTop, PLAN_WIDTH, Anchor.LEFT);
        table.paint(paper, TABLE_LEFT, CardSheet.TABLE_TOP);
        PrintRule.paint(paper, CardSheet.LEFT, RULE, card.measure());
    }

    private String facts() {
        Region region = card.region();
        Face face = card.face().face();
        Hole deepest = card.deepest();
        Laminate laminate = card.laminateAt(deepest);
        String what = region.condition() == Condition.VOID ? "Empty space " : "Loose skin ";
        String deep = region.condition() == Condition.VOID
                ? ", mean depth " + Figures.fixed(region.meanVoidDepthMm(), 1) + " mm"
                : "";
        return Prose.bold(card.place()) + " " + PlaceNames.of(face).over(region.likely()) + ". "
                + what + Figures.area(region.likely().getArea()) + deep + rims() + ".\nSkin "
                + Figures.fixed(laminate.outerSkinMm(), 1) + " mm, core " + Figures.fixed(laminate.coreMm(), 1)
                + " mm. " + (face.posture() == Posture.DECK ? "Lower" : "Inner") + " skin at "
                + Figures.fixed(laminate.outerSkinMm() + laminate.coreMm(), 1)
                + " mm"
                + (deepest.drilled()
                        ? ": " + Prose.bold("never drill past " + Figures.fixed(deepest.depthStopMm(), 1) + " mm.")
                        : ".");
    }

    /** What else is filled with it. */
    private String rims() {
        double area = card.regions().stream()
                .skip(1)
                .mapToDouble(r -> r.likely().getArea())
                .sum();
        return area > 0 ? "; loose skin beside it " + Figures.area(area) : "";
    }

    private String order() {
        return card.holding().order(Slope.of(card.face().face()).sloping());
    }

    private void gear(Paper paper) {
        List<String> all = card.words().gear();
        double words = all.stream().mapToDouble(CardSheet.WORD::width).sum();
        double gap = (CardSheet.FULL_WIDTH - words - all.size() * (CardSheet.BOX + 2)) / (all.size() - 1);
        double x = CardSheet.LEFT;
        for (String gear : all) {
            CardSheet.box(paper, x, CardSheet.BODY, CardSheet.BOX);
            x += CardSheet.BOX + 2;
            double y = CardSheet.level(CardSheet.WORD, CardSheet.BODY, CardSheet.BOX);
            paper.text(gear, x, y, CardSheet.WORD, Anchor.LEFT);
            x += CardSheet.WORD.width(gear) + gap;
        }
    }

    private void underPlan(Paper paper) {
        Face face = card.face().face();
        double y = sectionTop - 3.5;
        RampMark.of(face, CardSheet.LEFT, y).paint(paper);
        Type bold = new Type(Typeface.TEXT_SEMIBOLD, 10.5);
        double right = CardSheet.LEFT + PLAN_WIDTH;
        String scale =
                "1 : " + Figures.atMost(plan.scale(), 0) + " on " + card.sheet().word() + ", "
                        + (card.measure() == Measure.METRIC ? "millimetres" : "inches") + " from the datum; "
                        + card.measure().say("within " + Figures.atMost(ReachLaw.POSITION_MM, 0) + " mm");
        paper.text(scale, right, y - 4.4, bold, Anchor.RIGHT);
        paper.text(Orientation.of(face), right, y + 0.4, new Type(Typeface.TEXT, 9), Anchor.RIGHT);
    }

    private Optional<HoleSection> section() {
        Hole deepest = card.deepest();
        Laminate laminate = card.laminateAt(deepest);
        double depth = card.face()
                .surfaces()
                .voidDepthMm()
                .cellAt(deepest.spot().xMm(), deepest.spot().yMm());
        HoleSection section = new HoleSection(
                laminate.outerSkinMm(),
                laminate.coreMm(),
                laminate.innerSkinMm(),
                Double.isNaN(depth) ? 0 : depth,
                deepest.depthStopMm(),
                deepest.diameterMm(),
                card.face().face().posture(),
                card.measure());
        return deepest.drilled() && section.heightMm() <= HIGHEST_SECTION ? Optional.of(section) : Optional.empty();
    }

    private double sectionHeight() {
        return section().map(HoleSection::heightMm).orElse(0.0);
    }

    private void section(Paper paper) {
        section().ifPresent(s -> {
            String head = "At " + Figures.holeNumber(card.deepest().id()) + ", full size";
            Type type = new Type(Typeface.TEXT_BOLD, 10.5);
            paper.text(head, CardSheet.LEFT + 24, s.besideBit(sectionTop), type, Anchor.LEFT);
            s.paint(paper, CardSheet.LEFT, sectionTop);
        });
    }

    private boolean nozzle() {
        return card.plan().count(Hole.Kind.NOZZLE) > 0;
    }

    private String legend(boolean arrival, boolean keepOut, boolean air) {
        return Prose.bold("Disc:") + " injection hole, in order.\n" + Prose.bold("Bar over a figure:")
                + " collar stop, " + card.measure().depthUnit() + ".\n" + Prose.bold("Ring:") + " "
                + card.words().vent()
                + (nozzle() ? "\n" + Prose.bold("Arrowhead:") + " nozzle through an opening, no hole." : "")
                + (keepOut ? "\n" + Prose.bold("Dotted:") + " a fitting, keep out." : "")
                + (arrival ? "\n" + Prose.bold("Thin lines:") + " simulated arrival of the mix, minutes." : "")
                + (air ? "\n" + Prose.bold("Cross:") + " air may stay. Tap here after cure." : "");
    }

    private static String cautions(InjectionCard card) {
        List<String> words = new ArrayList<>();
        String first = card.decision().firstStep();
        if (first != null) {
            words.add(Prose.bold("First: " + Prose.plain(first)));
        }
        if (card.decision().architect()) {
            words.add(Prose.bold("This place carries load: a naval architect or surveyor decides first."));
        }
        if (!card.deepest().drilled()) {
            words.add(Cautions.before("filling", card.face().face().posture()));
        }
        words.addAll(CardCautions.of(card.plan().cautions()).drilling());
        return String.join(" ", words);
    }
}
