package corewright.decision;

import corewright.damage.Quantiles;
import corewright.decision.ExactSearch.Found;
import corewright.decision.ExactSearch.Place;
import corewright.decision.ExactSearch.Way;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.stiffness.StiffnessMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The works of least cost for the whole deck, from the cheapest on, each stiffer than the one before: the steps that somebody climbs
 * who asks for more stiffness or has more to spend. By {@link ExactSearch}, without each panel's own model behind it.
 */
public final class DeckSteps {
    /** A step is higher by a hundredth at least, the finest that anybody is told. */
    private static final double HIGHER = 0.01;

    /** More steps than anybody looks at. */
    private static final int MOST = 60;

    private DeckSteps() {}

    /**
     * One step.
     *
     * @param methods by region; only of regions that lie in a calculated panel
     * @param work of all of them without visits, with what must be waited for
     * @param netKg brought aboard less taken out dry
     * @param share stiffness of the weakest of these panels over the one as built, middle figure
     */
    public record Step(Map<String, Method> methods, Option.Work work, double netKg, double share) {
        public Step {
            methods = Map.copyOf(methods);
        }

        /** Middle of the cost. */
        public double cost() {
            return (work.costLow() + work.costHigh()) / 2;
        }
    }

    /**
     * @param options of every region, as weighed; those not offered are left out
     * @param hoursADay of everybody who works
     */
    public static List<Step> of(List<Option> options, StiffnessMap stiffness, double hoursADay) {
        Map<String, Double> compliance = new LinkedHashMap<>();
        for (PanelStiffness p : stiffness.panels()) {
            compliance.put(
                    p.panel().name(), 1 / p.in(State.AS_FOUND).ofAsBuilt().p50());
        }
        List<Place> places = places(options, compliance);
        List<Step> steps = new ArrayList<>();
        if (places.isEmpty()) {
            return steps;
        }
        double most = renewed(places, stiffness);
        ExactSearch search = new ExactSearch(places, compliance);
        Optional<Found> found = search.reaching(0);
        while (found.isPresent() && steps.size() < MOST) {
            Found step = found.get();
            steps.add(step(places, step, options, hoursADay, most));
            found = step.share() >= most ? Optional.empty() : search.reaching(step.share() + HIGHER);
        }
        return steps;
    }

    /**
     * Stiffness of the weakest panel with all its damaged core renewed: where regions share the softest place, what each takes from the
     * panel's compliance adds up to more than there is, and no work gives more than this.
     */
    private static double renewed(List<Place> places, StiffnessMap stiffness) {
        return stiffness.panels().stream()
                .filter(p -> places.stream()
                        .anyMatch(place -> place.panel().equals(p.panel().name())))
                .mapToDouble(p -> p.in(State.AFTER_RECORE).ofAsBuilt().p50())
                .min()
                .orElse(1);
    }

    private static List<Place> places(List<Option> options, Map<String, Double> compliance) {
        Map<String, List<Option>> offered = new LinkedHashMap<>();
        options.stream()
                .filter(o -> o.offered() && o.stiffness().isPresent() && compliance.containsKey(o.panel()))
                .filter(o -> !o.region().equals(Option.DECK))
                .forEach(o -> offered.computeIfAbsent(o.region(), r -> new ArrayList<>())
                        .add(o));
        List<Place> places = new ArrayList<>();
        offered.forEach((region, list) -> {
            String panel = list.get(0).panel();
            double asFound = compliance.getOrDefault(panel, 1.0);
            List<Way> ways = new ArrayList<>();
            for (Option o : list) {
                double after = 1 / o.stiffness().map(Quantiles::p50).orElse(Double.NaN);
                ways.add(new Way(
                        method(o),
                        o.work().map(w -> (w.costLow() + w.costHigh()) / 2).orElse(0.0),
                        asFound - after));
            }
            places.add(new Place(region, panel, ways));
        });
        return places;
    }

    private static Step step(List<Place> places, Found found, List<Option> options, double hoursADay, double most) {
        Map<String, Method> methods = new LinkedHashMap<>();
        List<Option> taken = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            String region = places.get(i).region();
            Method method = found.methods().get(i);
            methods.put(region, method);
            options.stream()
                    .filter(o -> o.region().equals(region) && o.method().equals(method.word()))
                    .findFirst()
                    .ifPresent(taken::add);
        }
        double netKg = taken.stream().mapToDouble(o -> o.weight().netKg()).sum();
        return new Step(methods, together(taken, hoursADay), netKg, Math.min(most, found.share()));
    }

    /** Hours and costs add up; regions dry and harden beside one another, so that of each the longest counts. */
    private static Option.Work together(List<Option> taken, double hoursADay) {
        double[] sums = new double[4];
        double[] dries = new double[2];
        double[] cures = new double[2];
        for (Option option : taken) {
            option.work().ifPresent(w -> {
                sums[0] += w.hoursLow();
                sums[1] += w.hoursHigh();
                sums[2] += w.costLow();
                sums[3] += w.costHigh();
                double[] waits = method(option) == Method.DRY_OUT ? dries : cures;
                waits[0] = Math.max(waits[0], w.daysLow() - w.hoursLow() / hoursADay);
                waits[1] = Math.max(waits[1], w.daysHigh() - w.hoursHigh() / hoursADay);
            });
        }
        return new Option.Work(
                sums[0],
                sums[1],
                sums[2],
                sums[3],
                sums[0] / hoursADay + dries[0] + cures[0],
                sums[1] / hoursADay + dries[1] + cures[1]);
    }

    private static Method method(Option option) {
        return Method.valueOf(option.method().toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
