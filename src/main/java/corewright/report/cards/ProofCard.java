package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.DepthStop;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.Prose;
import corewright.survey.Face;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The card of a region of which the core must be proven first: where to drill, what to look for, what follows. */
final class ProofCard implements TwoSided {
    private final Assessment assessment;
    private final Region region;
    private final RegionDecision decision;
    private final Measure measure;
    private final FaceDamage damage;
    private final @Nullable Spot drill;

    ProofCard(Assessment assessment, Region region) {
        this.assessment = assessment;
        this.region = region;
        decision = assessment.decision().on(region.id());
        measure = Measure.of(assessment.survey());
        damage = assessment.damage().face(region.face());
        drill = decision.pilot();
    }

    /** Regions that wait for a proof. */
    static List<Region> wanted(Assessment assessment) {
        return assessment.damage().regions().stream()
                .filter(r -> assessment.decision().on(r.id()).firstStep() != null)
                .toList();
    }

    private Optional<InjectionPlan> plan() {
        return assessment.plans().injection(region.id());
    }

    @Override
    public void front(Paper paper, List<String> side) {
        new RegionSheet(assessment, region)
                .paint(
                        paper,
                        "prove first",
                        "Nothing is filled and nothing is cut before this is settled.",
                        new RegionSheet.Marks(drill, List.of(), List.of()),
                        Prose.bold("Ring and cross:") + " drill here. " + decision.firstStep(),
                        side);
        Face face = damage.face();
        double right = CardSheet.heading(
                paper, "Drill and look", RegionSheet.RIGHT_LEFT, RegionSheet.TOP, RegionSheet.RIGHT_WIDTH);
        right = CardSteps.paint(paper, steps(), 1, RegionSheet.RIGHT_LEFT, right, RegionSheet.RIGHT_WIDTH);
        right = CardSheet.heading(paper, "What follows", RegionSheet.RIGHT_LEFT, right + 4, RegionSheet.RIGHT_WIDTH);
        right = outcomes(paper, right + 1);
        String cautions = measure.say(
                Cautions.before("drilling", face.posture()) + " " + Cautions.SKIN + " Write what you found"
                        + " into probes.csv (x, y, void_depth, core_state) and run again: the next cards follow from it.");
        Prose.CELL.paint(paper, cautions, RegionSheet.RIGHT_LEFT, right + 2, RegionSheet.RIGHT_WIDTH, Anchor.LEFT);
    }

    @Override
    public void back(Paper paper, List<String> side) {
        CardNotes.paint(paper, region.id(), side);
    }

    private List<CardSteps.Step> steps() {
        Settings settings = assessment.survey().settings();
        List<CardSteps.Step> steps = new ArrayList<>();
        Laminate laminate = assessment.survey().laminateAt(drill == null ? spot() : drill);
        if (DepthStop.possible(laminate, settings.drilling().depthMarginMm())) {
            double depth = damage.surfaces().voidDepthMm().cellAt(spot().xMm(), spot().yMm());
            double stop = DepthStop.mm(
                    laminate,
                    Double.isNaN(depth) ? 0 : depth,
                    settings.drilling().depthMarginMm());
            steps.add(new CardSteps.Step(
                    "Pilot hole by hand, collar at, " + measure.depthUnit(), measure.stopFigure(stop), 1));
        } else {
            steps.add(new CardSteps.Step("Pilot hole by hand through the outer skin only", "", 1));
        }
        steps.add(new CardSteps.Step(
                "The drill drops in at; empty below it, by a bent wire, " + measure.depthUnit(), "", 2));
        steps.add(
                new CardSteps.Step("Chips light and crisp: dry. Dark, cool: damp. Brown, soft, smells: rotted", "", 1));
        steps.add(new CardSteps.Step("In doubt: a core plug, dried in the oven, %", "", 1));
        steps.add(new CardSteps.Step("Close the hole with tape until it is used or filled", "", 1));
        return steps;
    }

    private Spot spot() {
        return drill != null
                ? drill
                : new Spot(region.face(), region.label().getX(), region.label().getY());
    }

    private double outcomes(Paper paper, double top) {
        Settings settings = assessment.survey().settings();
        String dry = Figures.atMost(settings.thresholds().dryPlugPercent(), 0) + " %";
        String wet = Figures.atMost(settings.thresholds().wetPlugPercent(), 0) + " %";
        String inject = plan().map(p -> p.count(Hole.Kind.INJECTION) + " holes, about " + Figures.fixed(p.mixedG(), 0)
                        + " g of " + p.resin())
                .orElse("as the next run plans it");
        String cut = assessment
                .plans()
                .recore(region.id())
                .map(c -> ", " + Figures.area(c.cut().getArea()))
                .orElse("");
        double y = top;
        y = outcome(paper, y, "Dry, plug at most " + dry, "inject: " + inject + ".");
        y = outcome(paper, y, "Damp, plug under " + wet, "open it to the air, read again; fill nothing.");
        y = outcome(paper, y, "Wet, plug " + wet + " or more", "cut out" + cut + ".");
        y = outcome(paper, y, "Rotted or gone", "cut out" + cut + "; look how far it goes.");
        return outcome(paper, y, "No gap, skin holds", "close the hole, watch it.");
    }

    private double outcome(Paper paper, double top, String found, String then) {
        double width = RegionSheet.RIGHT_WIDTH - 56;
        String words = measure.say(then);
        double height = Math.max(CardSheet.BOX, Prose.CELL.height(words, width)) + 2;
        CardSheet.box(paper, RegionSheet.RIGHT_LEFT, top + (height - CardSheet.BOX) / 2, CardSheet.BOX);
        paper.text(
                found,
                RegionSheet.RIGHT_LEFT + CardSheet.BOX + 3,
                CardSheet.level(CardSheet.WORD, top, height),
                CardSheet.WORD,
                Anchor.LEFT);
        Prose.CELL.paint(
                paper,
                words,
                RegionSheet.RIGHT_LEFT + 56,
                top + (height - Prose.CELL.height(words, width)) / 2,
                width,
                Anchor.LEFT);
        paper.line(Pen.FAINT, RegionSheet.RIGHT_LEFT, top + height, CardSheet.RIGHT, top + height);
        return top + height;
    }
}
