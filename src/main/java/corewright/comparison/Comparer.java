package corewright.comparison;

import corewright.assessment.Verdict;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.survey.Face;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** From two surveys to what changed: see the package for the steps. */
public final class Comparer {
    private final Side before;
    private final Side after;
    private final List<FaceComparison> faces = new ArrayList<>();
    private final Map<Quantity, List<FaceFigures.Figure>> totals = new EnumMap<>(Quantity.class);
    private int news;

    private Comparer(Side before, Side after) {
        this.before = before;
        this.after = after;
    }

    /** Compares a survey with a later one. */
    public static Comparison compare(Side before, Side after) {
        Comparer comparer = new Comparer(before, after);
        for (Face face : before.survey().faces()) {
            comparer.faces.add(comparer.face(face));
        }
        for (Face face : after.survey().faces()) {
            if (find(before, face.name()).isEmpty()) {
                comparer.faces.add(FaceComparison.open(
                        face.name(), null, after.damage().face(face.name()), "Only the later survey has it."));
            }
        }
        return new Comparison(before, after, comparer.together(), comparer.faces);
    }

    private static Optional<Face> find(Side side, String face) {
        return side.survey().faces().stream().filter(f -> f.name().equals(face)).findFirst();
    }

    private FaceComparison face(Face face) {
        FaceDamage was = before.damage().face(face.name());
        Optional<Face> again = find(after, face.name());
        if (again.isEmpty()) {
            return FaceComparison.open(face.name(), was, null, "Only the earlier survey has it.");
        }
        FaceDamage is = after.damage().face(face.name());
        String whyNot = FaceMatch.whyNot(face, again.get());
        if (whyNot.isEmpty()) {
            whyNot = untold(was, before, "earlier") + untold(is, after, "later");
        }
        if (whyNot.isEmpty()
                && !before.survey()
                        .settings()
                        .thresholds()
                        .equals(after.survey().settings().thresholds())) {
            whyNot = "The two surveys go by different thresholds.";
        }
        return whyNot.isEmpty() ? compared(face, was, is) : FaceComparison.open(face.name(), was, is, whyNot);
    }

    private static String untold(FaceDamage face, Side side, String which) {
        if (face.told()) {
            return "";
        }
        String sentence =
                Verdict.of(side.survey(), side.assessment().findings()).sentence();
        return "Nothing can be said of it in the " + which + " survey. " + sentence;
    }

    private FaceComparison compared(Face face, FaceDamage was, FaceDamage is) {
        FaceFigures figures = new FaceFigures(before, after, face);
        List<String> notes = new ArrayList<>(FaceMatch.notes(was, is));
        if (!figures.water().isEmpty()) {
            notes.add(figures.water());
        }
        List<Change> own = new ArrayList<>();
        for (Quantity quantity : FaceFigures.TOTALS) {
            FaceFigures.Figure figure = figures.total(quantity);
            totals.computeIfAbsent(quantity, q -> new ArrayList<>()).add(figure);
            own.add(figure.change());
        }
        List<RegionChange> regions = was.regions().stream()
                .map(r -> RegionFates.of(figures, r, method(r)))
                .toList();
        List<NewPlace> places = new ArrayList<>();
        double smallest = before.survey().settings().thresholds().smallestRegionMm2();
        for (NewPlace place : NewPlaces.of(figures, smallest)) {
            places.add(place.named("N" + ++news));
        }
        List<Change> panels = Panels.of(figures, before.assessment(), after.assessment());
        return new FaceComparison(face.name(), was, is, "", notes, own, regions, places, panels);
    }

    private @Nullable Method method(Region region) {
        return before.assessment().decision().regions().stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst()
                .map(RegionDecision::method)
                .orElse(null);
    }

    /** All compared faces; a quantity that one of them leaves open is open. */
    private List<Change> together() {
        List<Change> sums = new ArrayList<>();
        totals.forEach((quantity, figures) -> {
            boolean joint = quantity == Quantity.VOID_VOLUME && figures.size() == faces.size();
            double was = joint
                    ? before.damage().voidMm3().p50() // as summary.json has it
                    : figures.stream().mapToDouble(f -> f.change().before()).sum();
            double is = joint
                    ? after.damage().voidMm3().p50()
                    : figures.stream().mapToDouble(f -> f.change().after()).sum();
            Optional<String> why = figures.stream()
                    .map(f -> f.change().why())
                    .filter(w -> !w.isEmpty())
                    .findFirst();
            sums.add(
                    why.isPresent()
                            ? Change.open("", "", quantity, was, is, why.get())
                            : new Change(
                                    "", "", quantity, was, is, limits(quantity, figures, is - was), Double.NaN, ""));
        });
        return sums;
    }

    private static Limits limits(Quantity quantity, List<FaceFigures.Figure> figures, double difference) {
        List<Double> was = sum(figures.stream().map(FaceFigures.Figure::before).toList());
        List<Double> is = sum(figures.stream().map(FaceFigures.Figure::after).toList());
        return Limits.ofDifference(was, is).widened(quantity.widening()).with(difference);
    }

    private static List<Double> sum(List<List<Double>> draws) {
        List<Double> sum = new ArrayList<>(draws.get(0));
        for (List<Double> other : draws.subList(1, draws.size())) {
            for (int d = 0; d < sum.size(); d++) {
                sum.set(d, sum.get(d) + other.get(d % other.size()));
            }
        }
        return sum;
    }
}
