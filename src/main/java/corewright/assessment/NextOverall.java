package corewright.assessment;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.decision.Flip;
import corewright.survey.Spot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Next readings over all faces. Each face keeps its own order; of the faces' first places the one that tells most goes
 * next. Square metres and litres are compared as shares of the largest gain in their unit; on top counts how many regions are expected to
 * get another method by it. What may change a decision does not wait for its face's turn.
 */
final class NextOverall {
    /** A pilot hole within two cells of a suggested one is that one. */
    private static final double SAME_HOLE_MM = 50;

    private NextOverall() {}

    static List<NextReading> of(DamageMap damage, List<Flip> flips) {
        List<List<NextReading>> faces = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            faces.add(deciding(face.regions(), face.next(), face.face().name(), flips));
        }
        return ranked(faces);
    }

    /** The face's places with what each may decide, and pilot holes that decide and were not among them. */
    static List<NextReading> deciding(List<Region> regions, List<NextReading> next, String face, List<Flip> flips) {
        List<NextReading> places = new ArrayList<>(next);
        Map<Spot, Double> holes = new LinkedHashMap<>();
        for (Flip flip : flips) {
            Spot spot = flip.spot();
            if (spot == null) {
                regions.stream()
                        .filter(r -> r.id().equals(flip.region()))
                        .forEach(r -> credit(places, first(places, r), flip.probability()));
            } else if (spot.face().equals(face)) {
                holes.merge(spot, flip.probability(), Double::sum);
            }
        }
        holes.forEach((spot, decisions) -> {
            int known = nearest(places, spot);
            if (known < 0) {
                places.add(new NextReading(
                        places.size() + 1, NextReading.Kind.PROBE, spot, 0, NextReading.Unit.LITRE, decisions));
            } else {
                credit(places, known, decisions);
            }
        });
        return places;
    }

    /** The first place in a region for the meter; -1 where there is none. */
    private static int first(List<NextReading> places, Region region) {
        for (int i = 0; i < places.size(); i++) {
            NextReading n = places.get(i);
            if (n.kind() == NextReading.Kind.MOISTURE
                    && region.likely()
                            .covers(region.likely()
                                    .getFactory()
                                    .createPoint(n.spot().coordinate()))) {
                return i;
            }
        }
        return -1;
    }

    private static int nearest(List<NextReading> places, Spot spot) {
        int best = -1;
        double least = SAME_HOLE_MM;
        for (int i = 0; i < places.size(); i++) {
            NextReading n = places.get(i);
            double far = n.spot().coordinate().distance(spot.coordinate());
            if (n.kind() == NextReading.Kind.PROBE && far <= least) {
                best = i;
                least = far;
            }
        }
        return best;
    }

    private static void credit(List<NextReading> places, int at, double decisions) {
        if (at >= 0) {
            NextReading n = places.get(at);
            places.set(
                    at, new NextReading(n.rank(), n.kind(), n.spot(), n.gain(), n.unit(), n.decisions() + decisions));
        }
    }

    static List<NextReading> ranked(List<List<NextReading>> faces) {
        Map<NextReading.Unit, Double> largest = new EnumMap<>(NextReading.Unit.class);
        faces.forEach(face -> face.forEach(n -> largest.merge(n.unit(), n.gain(), Math::max)));
        ToDoubleFunction<NextReading> worth =
                n -> n.decisions() + n.gain() / Math.max(Double.MIN_NORMAL, largest.getOrDefault(n.unit(), 1.0));
        List<Deque<NextReading>> queues = new ArrayList<>();
        for (List<NextReading> face : faces) {
            queues.add(new ArrayDeque<>(
                    face.stream().filter(n -> n.decisions() == 0).toList()));
        }
        queues.add(new ArrayDeque<>(faces.stream()
                .flatMap(List::stream)
                .filter(n -> n.decisions() > 0)
                .sorted(Comparator.comparingDouble(worth).reversed())
                .toList()));
        List<NextReading> ranked = new ArrayList<>();
        while (true) {
            Deque<NextReading> best = queues.stream()
                    .filter(q -> !q.isEmpty())
                    .max(Comparator.comparingDouble(q -> worth.applyAsDouble(q.getFirst())))
                    .orElse(null);
            if (best == null) {
                return ranked;
            }
            NextReading n = best.removeFirst();
            ranked.add(new NextReading(ranked.size() + 1, n.kind(), n.spot(), n.gain(), n.unit(), n.decisions()));
        }
    }
}
