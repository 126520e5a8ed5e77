package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.Conversions;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The regions of one face, a row each: what, how large, what to do and why. */
final class RegionTable {
    private RegionTable() {}

    static RuledTable of(Assessment assessment, FaceDamage face) {
        RuledTable table = new RuledTable(List.of(
                new Column("Region", 15, Anchor.LEFT),
                new Column("What", 39, Anchor.LEFT),
                new Column("Area, m²", 17, Anchor.RIGHT),
                new Column("Possibly", 20, Anchor.RIGHT),
                new Column("Do", 28, Anchor.LEFT),
                new Column("Why", 55, Anchor.LEFT)));
        double together = 0;
        for (Region region : face.regions()) {
            RegionDecision decision = assessment.decision().on(region.id());
            table.row(List.of(
                    Prose.bold(region.id()),
                    OwnerWords.plainly(region.condition()) + ", "
                            + Prose.plain(PlaceWords.of(face.face(), region.likely())),
                    m2(region.likely().getArea()),
                    m2(region.possible().getArea()),
                    filledWith(assessment, region).orElse(plainly(decision)),
                    why(decision) + missing(assessment, region)));
            together += hundredths(region.likely().getArea());
        }
        if (face.regions().size() > 1) {
            table.row(List.of("", "together", Figures.fixed(together / 100, 2), "", "", ""));
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
        return reason + judge + step;
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

    private static String m2(double mm2) {
        return Figures.fixed(hundredths(mm2) / 100, 2);
    }

    /** Hundredths of a square metre as printed, so that the rows add up to the sum beneath them. */
    private static double hundredths(double mm2) {
        return Math.round(Conversions.squareMetres(mm2) * 100);
    }
}
