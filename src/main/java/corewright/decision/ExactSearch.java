package corewright.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Which method for which region, at least cost, so that every panel keeps a given share of its stiffness; or what gives most for a
 * given sum. Exact: a region lies in one panel, so each panel has its own front of costs and shares, made region by region with
 * what is beaten on both left out (Nemhauser and Ullmann, Management Science 15 (1969) 494), and the panels are put together.
 *
 * <p>In a panel, compliances add: what a method takes from the panel's compliance is the same whatever is done beside it. A check
 * with the panel's own model stands behind the result.
 */
final class ExactSearch {
    /**
     * One way for one region.
     *
     * @param cost in the survey's currency
     * @param removed compliance it takes from the panel, in terms of the one as built
     */
    record Way(Method method, double cost, double removed) {}

    /** @param ways at least one */
    record Place(String region, String panel, List<Way> ways) {
        Place {
            ways = List.copyOf(ways);
        }
    }

    /**
     * @param methods in the order of the places
     * @param share of the panel that has least
     */
    record Found(List<Method> methods, double cost, double share) {
        Found {
            methods = List.copyOf(methods);
        }
    }

    /** A choice of ways for the first places of a panel. */
    private record Point(double cost, double removed, List<Method> methods) {}

    private final List<Place> places;
    private final Map<String, Double> compliance;
    private final Map<String, List<Point>> fronts = new LinkedHashMap<>();

    /**
     * @param compliance of each panel as found, over the one as built
     */
    ExactSearch(List<Place> places, Map<String, Double> compliance) {
        this.places = List.copyOf(places);
        this.compliance = Map.copyOf(compliance);
        for (Place place : places) {
            fronts.merge(place.panel, List.of(new Point(0, 0, List.of())), (a, b) -> a);
        }
        fronts.replaceAll((panel, start) -> front(panel, start));
    }

    private List<Point> front(String panel, List<Point> start) {
        List<Point> front = start;
        for (Place place : places) {
            if (place.panel.equals(panel)) {
                List<Point> next = new ArrayList<>();
                for (Point point : front) {
                    for (Way way : place.ways) {
                        List<Method> methods = new ArrayList<>(point.methods);
                        methods.add(way.method);
                        next.add(new Point(point.cost + way.cost, point.removed + way.removed, methods));
                    }
                }
                front = unbeaten(next);
            }
        }
        return front;
    }

    /** From the cheapest on, only what takes more. */
    private static List<Point> unbeaten(List<Point> points) {
        points.sort(Comparator.comparingDouble(Point::cost)
                .thenComparing(Comparator.comparingDouble(Point::removed).reversed()));
        List<Point> kept = new ArrayList<>();
        double most = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            if (point.removed > most) {
                kept.add(point);
                most = point.removed;
            }
        }
        return kept;
    }

    /** Least cost with at least this share in every panel; empty where no choice has it. */
    Optional<Found> reaching(double share) {
        Map<String, Point> chosen = new LinkedHashMap<>();
        for (Map.Entry<String, List<Point>> panel : fronts.entrySet()) {
            Optional<Point> point = panel.getValue().stream()
                    .filter(p -> share(panel.getKey(), p) >= share)
                    .findFirst();
            if (point.isEmpty()) {
                return Optional.empty();
            }
            chosen.put(panel.getKey(), point.get());
        }
        return Optional.of(found(chosen));
    }

    /** The greatest share of the weakest panel for at most this sum, at least cost; empty where even the cheapest costs more. */
    Optional<Found> within(double budget) {
        TreeSet<Double> shares = new TreeSet<>();
        fronts.forEach((panel, front) -> front.forEach(p -> shares.add(share(panel, p))));
        List<Double> order = List.copyOf(shares);
        int low = 0;
        int high = order.size() - 1;
        Optional<Found> best = Optional.empty();
        while (low <= high) { // what reaches more costs no less
            int middle = (low + high) >>> 1;
            Optional<Found> found = reaching(order.get(middle)).filter(f -> f.cost <= budget);
            if (found.isPresent()) {
                best = found;
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return best;
    }

    private double share(String panel, Point point) {
        return 1 / Math.max(1e-9, compliance.getOrDefault(panel, 1.0) - point.removed);
    }

    private Found found(Map<String, Point> chosen) {
        Map<String, Integer> next = new LinkedHashMap<>();
        List<Method> methods = new ArrayList<>();
        for (Place place : places) {
            Point point = chosen.getOrDefault(place.panel, new Point(0, 0, List.of()));
            int index = next.merge(place.panel, 1, Integer::sum) - 1;
            methods.add(point.methods.get(index));
        }
        double cost = chosen.values().stream().mapToDouble(Point::cost).sum();
        double least = chosen.entrySet().stream()
                .mapToDouble(e -> share(e.getKey(), e.getValue()))
                .min()
                .orElse(1);
        return new Found(methods, cost, least);
    }
}
