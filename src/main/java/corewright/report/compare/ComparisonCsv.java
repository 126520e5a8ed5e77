package corewright.report.compare;

import corewright.comparison.Change;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Limits;
import corewright.comparison.NewPlace;
import corewright.comparison.Quantity;
import corewright.comparison.RegionChange;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.report.data.CsvTable;
import corewright.report.page.Numbers;
import org.jspecify.annotations.Nullable;

/** comparison.csv: a row a figure, the whole first, then face by face its totals, regions, new places and panels. */
public final class ComparisonCsv {
    private static final int DECIMALS = 4;

    private ComparisonCsv() {}

    public static CsvTable of(Comparison comparison) {
        CsvTable table =
                new CsvTable("face,region,quantity,unit,before,after,difference,low,high,proven,promised,verdict,why");
        comparison.totals().forEach(c -> row(table, c, verdict(c)));
        for (FaceComparison face : comparison.faces()) {
            if (!face.compared()) {
                open(table, face);
            }
            face.totals().forEach(c -> row(table, c, verdict(c)));
            for (RegionChange region : face.regions()) {
                region.figures().forEach(c -> row(table, c, region.fate().word()));
            }
            for (NewPlace place : face.news()) {
                row(table, place.figure(), place.fate().word());
            }
            face.panels().forEach(c -> row(table, c, verdict(c)));
        }
        return table;
    }

    private static void row(CsvTable table, Change change, String verdict) {
        Limits limits = change.limits();
        boolean told = limits != null;
        table.add(
                change.face(),
                change.region(),
                change.quantity().word(),
                change.quantity().unit().word(),
                figure(change.quantity(), change.before()),
                figure(change.quantity(), change.after()),
                told ? figure(change.quantity(), change.difference()) : "",
                limits != null ? figure(change.quantity(), limits.low()) : "",
                limits != null ? figure(change.quantity(), limits.high()) : "",
                change.proven() ? "yes" : "no",
                figure(change.quantity(), change.promised()),
                verdict,
                change.why());
    }

    /** {@code less more}, or why neither. */
    static String verdict(Change change) {
        return change.limits() == null
                ? RegionChange.Fate.NOT_COMPARABLE.word()
                : change.fell() ? "less" : change.rose() ? "more" : RegionChange.Fate.NOT_PROVEN.word();
    }

    private static String figure(Quantity quantity, double value) {
        return Numbers.rounded(quantity.unit().told(value), DECIMALS);
    }

    /** A face that cannot be compared has what each survey found, and why. */
    private static void open(CsvTable table, FaceComparison face) {
        table.add(
                face.name(),
                "",
                Quantity.DAMAGED.word(),
                Quantity.DAMAGED.unit().word(),
                damaged(face.before()),
                damaged(face.after()),
                "",
                "",
                "",
                "no",
                "",
                RegionChange.Fate.NOT_COMPARABLE.word(),
                face.whyNot());
    }

    private static String damaged(@Nullable FaceDamage face) {
        return face == null || !face.told()
                ? ""
                : figure(Quantity.DAMAGED, face.deckMm2() - face.areaMm2(Condition.SOUND));
    }
}
