package corewright.decision.drying;

import corewright.damage.Region;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Survey;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How far a region has dried by the readings taken meanwhile: at each place what a reading stands above dry, over what the first one
 * there stood above it, averaged by day. A relative scale stays relative: only its ratios are used.
 *
 * @param visits the first is day 0 with all left
 */
record Progress(LocalDate from, List<Visit> visits) {
    /** Over less time nothing is said of standing still. Practice. */
    private static final double SETTLING_DAYS = 7;

    /** A fall of less than this share is none: what a hand-held meter repeats to. Practice. */
    private static final double NO_FALL = 0.03;

    /** @param left share of what was to dry, mean over the places read */
    record Visit(double day, double left) {}

    Progress {
        visits = List.copyOf(visits);
    }

    /** What the readings in a region say; empty where no place was read on two days with a meter whose dry is known. */
    static Optional<Progress> of(Survey survey, Region region) {
        Map<List<Object>, List<Moisture>> places = survey.readings().on(region.face()).moisture().stream()
                .filter(m -> m.taken() != null && !m.offScale())
                .filter(m -> region.possible()
                        .covers(region.likely()
                                .getFactory()
                                .createPoint(m.spot().coordinate())))
                .collect(Collectors.groupingBy(
                        m -> List.of(m.spot(), m.side(), m.meter()), LinkedHashMap::new, Collectors.toList()));
        TreeMap<LocalDate, List<Double>> left = new TreeMap<>();
        for (List<Moisture> place : places.values()) {
            follow(place, survey.meter(place.get(0).meter()), left);
        }
        if (left.size() < 2) {
            return Optional.empty();
        }
        LocalDate from = left.firstKey();
        List<Visit> visits = new ArrayList<>();
        left.forEach((day, shares) -> visits.add(new Visit(
                Duration.between(from.atStartOfDay(), day.atStartOfDay()).toHours() / 24.0,
                shares.stream().mapToDouble(s -> s).average().orElse(1))));
        return Optional.of(new Progress(from, visits));
    }

    private static void follow(List<Moisture> place, Meter meter, Map<LocalDate, List<Double>> left) {
        Double dry = meter.dry();
        List<Moisture> inTime =
                place.stream().sorted(Comparator.comparing(Progress::taken)).toList();
        double first = inTime.get(0).value();
        boolean days = !taken(inTime.get(0))
                .toLocalDate()
                .equals(taken(inTime.get(inTime.size() - 1)).toLocalDate());
        if (dry == null || !days || first <= dry) {
            return;
        }
        for (Moisture m : inTime) {
            left.computeIfAbsent(taken(m).toLocalDate(), d -> new ArrayList<>())
                    .add(Math.max(0, (m.value() - dry) / (first - dry)));
        }
    }

    private static LocalDateTime taken(Moisture reading) {
        LocalDateTime taken = reading.taken();
        return taken == null ? LocalDateTime.MIN : taken;
    }

    Visit last() {
        return visits.get(visits.size() - 1);
    }

    /** Since when nothing has fallen any more, in days before the last visit; empty where it still dries. */
    Optional<Double> stalledDays() {
        Visit last = last();
        return visits.stream()
                .filter(v -> last.day - v.day >= SETTLING_DAYS && v.left - last.left < NO_FALL)
                .findFirst()
                .map(v -> last.day - v.day);
    }
}
