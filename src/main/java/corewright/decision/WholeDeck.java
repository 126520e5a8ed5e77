package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.ExactSearch.Found;
import corewright.decision.ExactSearch.Place;
import corewright.decision.ExactSearch.Way;
import corewright.decision.drying.DryingTime;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Treatment;
import corewright.survey.Survey;
import corewright.survey.settings.Settings.Goal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The work of least cost that reaches what the survey asks for, from what is offered of each region. */
final class WholeDeck {
    /** Half a hundredth: what a figure in hundredths hides. */
    private static final double TOLD = 0.005;

    /** The next try asks for a hundredth more than the last one promised. */
    private static final double HIGHER = 0.01;

    /** Each try solves every panel that holds a region. */
    private static final int MOST_TRIES = 4;

    private final Survey survey;
    private final DamageMap damage;
    private final List<Option> options;
    private final Known known;

    private WholeDeck(Survey survey, DamageMap damage, List<Option> options, Known known) {
        this.survey = survey;
        this.damage = damage;
        this.options = options;
        this.known = known;
    }

    /** What was worked out before. */
    record Known(RegionOptions options, RepairOptions plans, List<DryingTime> drying, PanelGains panels) {
        Known {
            drying = List.copyOf(drying);
        }
    }

    /** A row for each goal that was set; none where no panel was calculated. */
    static List<Option> leastCost(Survey survey, DamageMap damage, List<Option> options, Known known) {
        Goal goal = survey.settings().goal();
        List<Option> rows = new ArrayList<>();
        WholeDeck deck = new WholeDeck(survey, damage, options, known);
        List<Place> places = deck.places();
        if (places.isEmpty()) {
            return rows;
        }
        ExactSearch search = new ExactSearch(places, deck.compliance(places));
        if (goal.stiffness() > 0) {
            String asked = String.format(Locale.ROOT, "At least %.0f in 100 of as built", 100 * goal.stiffness());
            rows.add(deck.row(places, deck.reaching(search, places, goal.stiffness()), asked));
        }
        if (goal.budget() > 0) {
            String asked = String.format(
                    Locale.ROOT, "At most %s %.0f", survey.settings().costs().currency(), goal.budget());
            // visits are paid whatever is done
            rows.add(deck.row(places, search.within(goal.budget() - deck.visits()), asked));
        }
        return rows;
    }

    /**
     * What the search finds, asked for more where the panels' own models show less than its sums: regions that share a softest place, or
     * hide one another's, do not add up. The last that is tried is the most that is offered.
     */
    private Optional<Found> reaching(ExactSearch search, List<Place> places, double share) {
        double least = share - TOLD;
        Optional<Found> found = search.reaching(share);
        for (int tries = 1; tries < MOST_TRIES && found.isPresent() && !has(places, found.get(), least); tries++) {
            found = search.reaching(found.get().share() + HIGHER);
        }
        return found.or(() -> search.within(Double.POSITIVE_INFINITY)).filter(f -> has(places, f, least));
    }

    private boolean has(List<Place> places, Found found, double share) {
        return weakest(places, treatments(places, found))
                .stiffness
                .filter(q -> q.p50() >= share)
                .isPresent();
    }

    private List<Treatment> treatments(List<Place> places, Found found) {
        List<Treatment> treatments = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            known.options
                    .treatment(region(places.get(i).region()), found.methods().get(i))
                    .ifPresent(treatments::add);
        }
        return treatments;
    }

    private double visits() {
        var costs = survey.settings().costs();
        return 1.5 * costs.visitHours() * costs.ratePerHour();
    }

    /** Regions that lie in a calculated panel, with all that is offered and calculated of them. */
    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Region region : damage.regions()) {
            List<Option> offered = options.stream()
                    .filter(o -> o.region().equals(region.id()) && o.stiffness().isPresent())
                    .toList();
            if (offered.isEmpty()) {
                continue;
            }
            String panel = offered.get(0).panel();
            double found = 1 / known.panels.asFound(panel).p50();
            List<Way> ways = new ArrayList<>();
            for (Option option : offered) {
                double after = 1 / option.stiffness().map(Quantiles::p50).orElse(Double.NaN);
                ways.add(new Way(method(option), cost(option), found - after));
            }
            places.add(new Place(region.id(), panel, ways));
        }
        return places;
    }

    private static Method method(Option option) {
        return Method.valueOf(option.method().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static double cost(Option option) {
        return option.work().map(w -> (w.costLow() + w.costHigh()) / 2).orElse(0.0);
    }

    private Map<String, Double> compliance(List<Place> places) {
        Map<String, Double> compliance = new LinkedHashMap<>();
        for (Place place : places) {
            compliance.put(
                    place.panel(), 1 / known.panels.asFound(place.panel()).p50());
        }
        return compliance;
    }

    private Option row(List<Place> places, Optional<Found> found, String asked) {
        if (found.isEmpty()) {
            return new Option(
                    Option.DECK,
                    "least-cost",
                    Option.Standing.NOT_OFFERED,
                    asked + ": nothing that is offered comes to that.",
                    Optional.empty(),
                    new Option.Weight(Double.NaN, Double.NaN),
                    "",
                    Optional.empty());
        }
        double visitHours = survey.settings().costs().visitHours();
        Effort.Estimate sum = new Effort.Estimate(visitHours, 2 * visitHours, 0, 0);
        Option.Work work = known.options.work(sum, Waiting.NONE);
        Option.Weight weight = Option.Weight.NONE;
        Waiting waiting = Waiting.NONE;
        double aDay = survey.settings().costs().hoursPerDay()
                * survey.settings().crew().people();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            Method method = found.get().methods().get(i);
            Region region = region(places.get(i).region());
            Option option = option(region, method);
            Option.Work own = option.work().orElseThrow();
            work = new Option.Work(
                    work.hoursLow() + own.hoursLow(),
                    work.hoursHigh() + own.hoursHigh(),
                    work.costLow() + own.costLow(),
                    work.costHigh() + own.costHigh(),
                    work.daysLow() + own.hoursLow() / aDay,
                    work.daysHigh() + own.hoursHigh() / aDay);
            waiting = waiting.and(Waiting.of(region.id(), method, known.drying, survey.settings()));
            weight = weight.and(option.weight());
            words.add(region.id() + " " + method.word());
        }
        Option.Work whole = new Option.Work(
                work.hoursLow(),
                work.hoursHigh(),
                work.costLow(),
                work.costHigh(),
                work.daysLow() + waiting.low(),
                work.daysHigh() + waiting.high());
        Weakest weakest = weakest(places, treatments(places, found.get()));
        return new Option(
                Option.DECK,
                "least-cost",
                Option.Standing.OFFERED,
                asked + ": " + String.join(", ", words)
                        + ". Least cost for that, and no advice: what is only watched may grow.",
                Optional.of(whole),
                weight,
                weakest.panel,
                weakest.stiffness);
    }

    private record Weakest(String panel, Optional<Quantiles> stiffness) {}

    /** By each panel's own model, with all that is done in it. */
    private Weakest weakest(List<Place> places, List<Treatment> treatments) {
        return places.stream()
                .map(Place::panel)
                .distinct()
                .map(p -> new Weakest(p, known.panels.after(new PanelGains.Asked(p, treatments))))
                .filter(w -> w.stiffness.isPresent())
                .min(Comparator.comparingDouble(
                        w -> w.stiffness.map(Quantiles::p50).orElse(1.0)))
                .orElse(new Weakest("", Optional.empty()));
    }

    private Region region(String id) {
        return damage.regions().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Option option(Region region, Method method) {
        return options.stream()
                .filter(o -> o.region().equals(region.id()) && o.method().equals(method.word()))
                .findFirst()
                .orElseThrow();
    }
}
