package corewright.assessment;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Next readings over all faces. Each face keeps its own order; of the faces' first places the one that tells most goes
 * next. Square metres and litres are compared as shares of the largest gain in their unit.
 */
final class NextOverall {
    private NextOverall() {}

    static List<NextReading> of(DamageMap damage) {
        return ranked(damage.faces().stream().map(FaceDamage::next).toList());
    }

    static List<NextReading> ranked(List<List<NextReading>> faces) {
        Map<NextReading.Unit, Double> largest = new EnumMap<>(NextReading.Unit.class);
        List<Deque<NextReading>> queues = new ArrayList<>();
        for (List<NextReading> face : faces) {
            face.forEach(n -> largest.merge(n.unit(), n.gain(), Math::max));
            queues.add(new ArrayDeque<>(face));
        }
        Comparator<NextReading> byShare =
                Comparator.comparingDouble(n -> n.gain() / largest.getOrDefault(n.unit(), 1.0));
        List<NextReading> ranked = new ArrayList<>();
        while (true) {
            Deque<NextReading> best = queues.stream()
                    .filter(q -> !q.isEmpty())
                    .max(Comparator.comparing(Deque::getFirst, byShare))
                    .orElse(null);
            if (best == null) {
                return ranked;
            }
            NextReading n = best.removeFirst();
            ranked.add(new NextReading(ranked.size() + 1, n.kind(), n.spot(), n.gain(), n.unit()));
        }
    }
}
