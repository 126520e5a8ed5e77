package corewright.report.compare;

import corewright.comparison.Change;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Limits;
import corewright.comparison.NewPlace;
import corewright.comparison.Quantity;
import corewright.comparison.RegionChange;
import corewright.comparison.RegionChange.Fate;
import corewright.drawing.kit.Figures;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a comparison says, in sentences; metric, for {@code Measure.say}. */
public final class ComparisonWords {
    private ComparisonWords() {}

    /** The finding: is it better, by how much, how sure. */
    public static String answer(Comparison comparison) {
        if (comparison.faces().stream().noneMatch(FaceComparison::compared)) {
            return "The two surveys cannot be compared.";
        }
        Optional<Change> damaged = total(comparison, Quantity.DAMAGED);
        List<String> fresh = places(comparison, Fate.NEW);
        String but = fresh.isEmpty()
                ? ""
                : " " + Wording.sentence(Wording.count(fresh.size(), "new damaged place"))
                        + (fresh.size() == 1 ? " is" : " are") + " proven.";
        if (damaged.isPresent() && damaged.get().proven()) {
            Change change = damaged.get();
            String area = Figures.area(Math.abs(change.difference()));
            return change.fell()
                    ? "It is better: " + area + " less core is damaged, and the readings prove it." + but
                    : "It is worse: " + area + " more core is damaged, and the readings prove it.";
        }
        int mended = places(comparison, Fate.MENDED).size()
                + places(comparison, Fate.PARTLY).size();
        if (mended > 0) {
            boolean whole = damaged.isPresent() && damaged.get().limits() != null;
            return Wording.sentence(Wording.count(mended, "damaged place")) + (mended == 1 ? " is" : " are")
                    + " proven to be better. "
                    + (whole
                            ? "Of the deck as a whole no change is proven."
                            : "The deck as a whole cannot be compared.")
                    + but;
        }
        return fresh.isEmpty() ? "The readings prove no change." : but.strip();
    }

    /** Ids of the places that came to this, in order. */
    static List<String> places(Comparison comparison, Fate fate) {
        Stream<String> regions = comparison.faces().stream()
                .flatMap(f -> f.regions().stream())
                .filter(r -> r.fate() == fate)
                .map(r -> r.region().id());
        Stream<String> news = comparison.faces().stream()
                .flatMap(f -> f.news().stream())
                .filter(n -> n.fate() == fate)
                .map(NewPlace::id);
        return Stream.concat(regions, news).toList();
    }

    static Optional<Change> total(Comparison comparison, Quantity quantity) {
        return comparison.totals().stream()
                .filter(c -> c.quantity() == quantity)
                .findFirst();
    }

    /** What a person wants to see at the end, a line each. */
    public static List<String> brief(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.add(answer(comparison));
        total(comparison, Quantity.DAMAGED).map(ComparisonWords::sentence).ifPresent(lines::add);
        for (Fate fate : Fate.values()) {
            List<String> ids = places(comparison, fate);
            if (!ids.isEmpty()) {
                lines.add(fate.word() + ": " + String.join(" ", ids));
            }
        }
        for (FaceComparison face : comparison.faces()) {
            if (!face.compared()) {
                lines.add("not compared: " + Prose.plain(face.name()) + ". " + Prose.plain(face.whyNot()));
            }
            face.notes().forEach(n -> lines.add(Prose.plain(face.name()) + ": " + Prose.plain(n)));
        }
        return lines;
    }

    /** Before, after, and between what the difference lies. */
    static String sentence(Change change) {
        String figures = "Damaged core: " + Figures.area(change.before()) + " before, " + Figures.area(change.after())
                + " after.";
        Limits limits = change.limits();
        return limits == null ? figures + " " + change.why() : figures + " " + between(change, limits);
    }

    private static String between(Change change, Limits limits) {
        String sure = change.proven() ? "The difference is proven: " : "A difference is not proven: ";
        return sure + "in 99 cases of 100 it lies " + range(limits.low(), limits.high()) + ".";
    }

    /** {@code between 0.10 m² and 0.32 m² less}, or across nought. */
    static String range(double lowMm2, double highMm2) {
        if (highMm2 <= 0) {
            return "between " + Figures.area(-highMm2) + " and " + Figures.area(-lowMm2) + " less";
        }
        if (lowMm2 >= 0) {
            return "between " + Figures.area(lowMm2) + " and " + Figures.area(highMm2) + " more";
        }
        return "between " + Figures.area(-lowMm2) + " less and " + Figures.area(highMm2) + " more";
    }

    /** What was promised of a region. */
    static String promised(RegionChange region) {
        if (region.method() == null) {
            return "no plan";
        }
        return switch (region.method()) {
            case MONITOR -> "leave and watch";
            case DRY_OUT -> "dry out";
            case INJECT -> "fill through holes";
            case RECORE -> "cut out, new core";
        };
    }

    /** What became of it. */
    static String reached(RegionChange region) {
        String first = what(region.figures().get(0));
        return switch (region.fate()) {
            case MENDED -> Prose.bold("Mended,") + " proven: " + first + ".";
            case PARTLY -> Prose.bold("Partly mended,") + " proven: " + first + ", but not everywhere.";
            case NOT_PROVEN -> Prose.bold("Not proven") + " that it changed.";
            case NOT_READ -> Prose.bold("Not read again.");
            case NOT_COMPARABLE, NEW ->
                Prose.bold("Cannot be compared.") + " "
                        + Prose.plain(region.figures().get(0).why());
        };
    }

    private static String what(Change change) {
        return switch (change.quantity()) {
            case LOOSE -> "the skin is bonded";
            case WATER -> "the core reads dry";
            default -> "the core reads sound";
        };
    }
}
