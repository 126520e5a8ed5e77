package corewright.report.compare;

import corewright.comparison.Change;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Limits;
import corewright.comparison.NewPlace;
import corewright.comparison.Quantity;
import corewright.comparison.RegionChange;
import corewright.damage.Condition;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Figures before, after, between what the difference lies, and whether it is proven. */
final class ChangeTables {
    /** Pounds of force per inch to one newton per millimetre: 25.4 / 4.448222 (NIST SP 811). */
    private static final double LBF_PER_INCH = 5.710147;

    private final Measure measure;

    ChangeTables(Measure measure) {
        this.measure = measure;
    }

    RuledTable totals(List<Change> changes) {
        RuledTable table = new RuledTable(List.of(
                new Column("What", 48, Anchor.LEFT),
                new Column("Before", 20, Anchor.RIGHT),
                new Column("After", 20, Anchor.RIGHT),
                new Column("Between, in 99 cases of 100", 52, Anchor.LEFT),
                new Column("Difference", 34, Anchor.LEFT)));
        changes.stream()
                .filter(c -> c.quantity() == Quantity.DAMAGED || !nought(c))
                .forEach(c -> table.row(List.of(
                        what(c.quantity()) + " " + unit(c.quantity()),
                        figure(c, c.before()),
                        figure(c, c.after()),
                        between(c),
                        verdict(c))));
        return table;
    }

    RuledTable panels(List<Change> changes) {
        RuledTable table = new RuledTable(List.of(
                new Column("Panel, stiffness in " + unit(Quantity.STIFFNESS), 46, Anchor.LEFT),
                new Column("Before", 18, Anchor.RIGHT),
                new Column("Promised", 22, Anchor.RIGHT),
                new Column("After", 18, Anchor.RIGHT),
                new Column("Between, in 99 cases of 100", 38, Anchor.LEFT),
                new Column("Difference", 32, Anchor.LEFT)));
        changes.forEach(c -> table.row(List.of(
                Prose.plain(c.region()),
                figure(c, c.before()),
                Double.isNaN(c.promised()) ? "" : figure(c, c.promised()),
                figure(c, c.after()),
                between(c),
                verdict(c))));
        return table;
    }

    /** Every region of the first survey and every place that only the second finds damaged. */
    RuledTable places(Comparison comparison) {
        boolean several = comparison.faces().size() > 1;
        RuledTable table = new RuledTable(List.of(
                new Column("Place", 46, Anchor.LEFT),
                new Column("Promised", 28, Anchor.LEFT),
                new Column("Damaged before, " + measure.areaUnit(), 24, Anchor.RIGHT),
                new Column("After, " + measure.areaUnit(), 20, Anchor.RIGHT),
                new Column("Reached", 56, Anchor.LEFT)));
        for (FaceComparison face : comparison.faces()) {
            String on = several ? " on " + Prose.plain(face.name()) : "";
            for (RegionChange region : face.regions()) {
                table.row(List.of(
                        Prose.bold(region.region().id()) + " "
                                + region.region().condition().word() + on,
                        ComparisonWords.promised(region),
                        measure.areaFigure(region.region().likely().getArea()),
                        measure.areaFigure(region.leftMm2()),
                        ComparisonWords.reached(region)));
            }
            for (NewPlace place : face.news()) {
                table.row(List.of(
                        Prose.bold(place.id()) + " " + conditions(place) + on,
                        "",
                        measure.areaFigure(place.figure().before()),
                        measure.areaFigure(place.figure().after()),
                        reached(place)));
            }
        }
        return table;
    }

    private static String conditions(NewPlace place) {
        return place.conditions().stream().map(Condition::word).collect(Collectors.joining(", "));
    }

    private static String reached(NewPlace place) {
        String now =
                "Now " + String.join(", ", place.regions().stream().sorted().toList()) + ". ";
        return now
                + switch (place.fate()) {
                    case NEW -> Prose.bold("New.") + " Proven.";
                    case NOT_READ -> Prose.bold("Not read before.");
                    case NOT_COMPARABLE ->
                        Prose.bold("Cannot be compared.") + " "
                                + Prose.plain(place.figure().why());
                    default -> Prose.bold("Not proven") + " to be new.";
                };
    }

    static String what(Quantity quantity) {
        return switch (quantity) {
            case DAMAGED -> Prose.bold("Damaged core,");
            case WET -> "Wet, bonded,";
            case DELAMINATED -> "Skin loose, dry,";
            case WET_DELAMINATED -> "Wet and loose,";
            case VOID -> "Over empty space,";
            case WATER -> "Wet core, bonded or not,";
            case LOOSE -> "Skin off the core,";
            case VOID_VOLUME -> "Empty space,";
            case STIFFNESS -> "Stiffness,";
        };
    }

    private String unit(Quantity quantity) {
        return switch (quantity.unit()) {
            case AREA -> measure.areaUnit();
            case VOLUME -> measure.volumeUnit();
            case STIFFNESS -> measure == Measure.METRIC ? "N/mm" : "lbf/in";
        };
    }

    private String figure(Change change, double value) {
        return switch (change.quantity().unit()) {
            case AREA -> measure.areaFigure(value);
            case VOLUME -> measure.volumeFigure(value);
            case STIFFNESS -> Figures.fixed(measure == Measure.METRIC ? value : value * LBF_PER_INCH, 0);
        };
    }

    /** Nothing before, nothing after, and nothing possible in between, as far as it is told. */
    private boolean nought(Change change) {
        Limits limits = change.limits();
        return limits != null
                && DoubleStream.of(change.before(), change.after(), limits.low(), limits.high())
                        .allMatch(v -> figure(change, Math.abs(v)).equals(figure(change, 0)));
    }

    private String between(Change change) {
        Limits limits = change.limits();
        if (limits == null) {
            return "";
        }
        String low = figure(change, Math.abs(limits.low()));
        String high = figure(change, Math.abs(limits.high()));
        if (limits.high() <= 0) {
            return high + " and " + low + " less";
        }
        return limits.low() >= 0 ? low + " and " + high + " more" : low + " less and " + high + " more";
    }

    private String verdict(Change change) {
        String less = figure(change, Math.abs(change.difference())) + (change.difference() < 0 ? " less," : " more,");
        return change.limits() == null
                ? "cannot be compared"
                : change.proven() ? Prose.bold(less) + " proven" : "not proven";
    }
}
