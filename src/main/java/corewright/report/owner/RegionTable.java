package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The regions of one face, a row each: what, how large likely and possibly, what to do and why. */
final class RegionTable {
    private RegionTable() {}

    static RuledTable of(Assessment assessment, FaceDamage face) {
        Measure measure = Measure.of(assessment.survey());
        RuledTable table = new RuledTable(List.of(
                new Column("Region", 13, Anchor.LEFT),
                new Column("What", 40, Anchor.LEFT),
                new Column("Area, " + measure.areaUnit(), 17, Anchor.RIGHT),
                new Column("Do", 22, Anchor.LEFT),
                new Column("Why", 82, Anchor.LEFT)));
        double together = 0;
        for (Region region : face.regions()) {
            RegionDecision decision = assessment.decision().on(region.id());
            table.row(List.of(
                    Prose.bold(region.id()),
                    OwnerWords.plainly(region.condition()) + ", "
                            + measure.say(Prose.plain(PlaceWords.of(face.face(), region.likely()))),
                    measure.areaFigure(region.likely().getArea()) + "\nto "
                            + measure.areaFigure(region.possible().getArea()),
                    filledWith(assessment, region).orElse(plainly(decision)),
                    measure.say(why(decision) + missing(assessment, region))));
            together += shown(measure, region.likely().getArea());
        }
        if (face.regions().size() > 1) {
            table.row(List.of("", "together", Figures.fixed(together, measure == Measure.METRIC ? 2 : 1), "", ""));
        }
        return table;
    }

    /** What could not be calculated of a region. */
    private static String missing(Assessment assessment, Region region) {
        return assessment.defects().stream()
                .filter(d -> d.about().id().equals(region.id()))
                .map(d -> "\n" + Prose.plain(d.sentence()))
                .collect(Collectors.joining());
    }

    private static String why(RegionDecision decision) {
        String reason = decision.reasons().isEmpty()
                ? ""
                : Prose.plain(decision.reasons().get(0));
        boolean said = reason.endsWith("surveyor decides.");
        String judge = decision.architect() && !said ? " A naval architect or surveyor decides." : "";
        String step = decision.firstStep() == null
                ? ""
                : "\n" + Prose.bold("First:") + " " + Prose.plain(decision.firstStep());
        String stop = decision.stopPassed()
                .map(s -> "\n" + Prose.bold("Past a stop sign:") + " " + Prose.plain(s))
                .orElse("");
        return reason + judge + stop + step;
    }

    private static Optional<String> filledWith(Assessment assessment, Region region) {
        return assessment.decision().injections().stream()
                .filter(p -> p.fillsBeside(region.id()))
                .findFirst()
                .map(p -> "fill together with " + p.region());
    }

    private static String plainly(RegionDecision decision) {
        if (decision.method() == Method.MONITOR && decision.firstStep() != null) {
            return "prove the core first";
        }
        return switch (decision.method()) {
            case MONITOR -> "leave and watch";
            case DRY_OUT -> "dry out";
            case INJECT -> "fill through holes";
            case RECORE -> "cut out, new core";
        };
    }

    /** An area as printed, so that the rows add up to the sum beneath them. */
    private static double shown(Measure measure, double mm2) {
        double step = measure == Measure.METRIC ? 100 : 10;
        return Math.round(measure.areaOf(mm2) * step) / step;
    }
}
