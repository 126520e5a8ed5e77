package corewright.damage;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a meter's scale means on this boat.
 *
 * @param dry reading over dry core
 * @param wet reading from which core counts as wet
 * @param repeatability standard deviation of one reading, as a share of the span {@code 2 (wet - dry)}
 */
record MeterScale(Meter meter, double dry, double wet, double repeatability, List<Finding> findings) {
    /** Share of the readings taken to be over dry core where neither the meter nor a reading says what is dry. */
    private static final double LOW_END = 0.10;

    /** 4.5 % of span: typical of hand-held meters re-read at one place, common practice; used without repeats. */
    private static final double USUAL_REPEATABILITY = 0.045;

    /** Pairs of repeats needed before their own scatter is trusted. */
    private static final int ENOUGH_REPEATS = 5;

    /** The scale of every meter of the survey, by name. */
    static Map<String, MeterScale> all(Survey survey) {
        Map<String, List<Moisture>> readings = new LinkedHashMap<>();
        survey.meters().forEach(m -> readings.put(m.name(), new ArrayList<>()));
        for (Moisture m : latest(survey.readings().moisture())) {
            List<Moisture> own = readings.get(m.meter());
            if (own != null) {
                own.add(m);
            }
        }
        Map<String, MeterScale> scales = new LinkedHashMap<>();
        for (Meter meter : survey.meters()) {
            List<Moisture> own = readings.getOrDefault(meter.name(), List.of());
            Match match = meter.dry() != null && meter.wet() != null ? null : match(survey, meter, readings);
            scales.put(meter.name(), of(meter, own, match));
        }
        return scales;
    }

    /** A meter whose scale is known, and the line to it. */
    private record Match(Meter known, MeterMatch line) {}

    /** The known meter read at most places in common with this one; null where there is none. */
    private static @Nullable Match match(Survey survey, Meter meter, Map<String, List<Moisture>> readings) {
        Match best = null;
        for (Meter known : survey.meters()) {
            if (known.equals(meter) || known.dry() == null || known.wet() == null) {
                continue;
            }
            MeterMatch line = MeterMatch.of(
                    readings.getOrDefault(meter.name(), List.of()), readings.getOrDefault(known.name(), List.of()));
            if (line != null && (best == null || line.places() > best.line.places())) {
                best = new Match(known, line);
            }
        }
        return best;
    }

    private static MeterScale of(Meter meter, List<Moisture> readings, @Nullable Match match) {
        List<Finding> findings = new ArrayList<>();
        Double dryGiven = meter.dry();
        Double wetGiven = meter.wet();
        if (match != null) {
            Double knownDry = match.known.dry();
            Double knownWet = match.known.wet();
            if (dryGiven == null && knownDry != null && readings.stream().noneMatch(Moisture::reference)) {
                dryGiven = Math.max(0, match.line.onOwnScale(knownDry));
            }
            if (wetGiven == null && knownWet != null) {
                wetGiven = match.line.onOwnScale(knownWet);
            }
            findings.add(matched(meter, readings, match));
        }
        double dry = dryGiven != null ? dryGiven : dryFrom(meter, readings, findings);
        double wet = wetGiven != null && wetGiven > dry ? wetGiven : wetFrom(meter, dry, readings, findings);
        double repeatability = repeatability(meter, readings, 2 * (wet - dry));
        return new MeterScale(meter, dry, wet, repeatability, List.copyOf(findings));
    }

    private static Finding matched(Meter meter, List<Moisture> readings, Match match) {
        return finding(
                meter,
                readings,
                String.format(
                        Locale.ROOT,
                        "what meter %s leaves unsaid of its scale is taken from meter %s by a straight line through %d"
                                + " places read with both",
                        meter.name(),
                        match.known.name(),
                        match.line.places()),
                "the two are read as one; more common places, wet ones among them, make the line surer");
    }

    /** 0 at dry, 0.5 at wet, 1 at twice the step from dry to wet. */
    double share(double value) {
        return (value - dry) / (2 * (wet - dry));
    }

    private static double dryFrom(Meter meter, List<Moisture> readings, List<Finding> findings) {
        double[] reference = readings.stream()
                .filter(Moisture::reference)
                .mapToDouble(m -> PinMeter.value(meter, m))
                .sorted()
                .toArray();
        if (reference.length > 0) {
            return median(reference);
        }
        double[] sorted = readings.stream()
                .mapToDouble(m -> PinMeter.value(meter, m))
                .sorted()
                .toArray();
        double dry = sorted.length == 0 ? 0 : sorted[(int) Math.floor(LOW_END * (sorted.length - 1))];
        findings.add(finding(
                meter,
                readings,
                String.format(
                        Locale.ROOT,
                        "no dry reading is stated for meter %s and none is marked as a reference; %s, the low end of"
                                + " its readings, is taken for dry",
                        meter.name(),
                        text(dry)),
                "if the whole deck is damp, wet core is called dry; read a place proven dry and mark it"));
        return dry;
    }

    private static double wetFrom(Meter meter, double dry, List<Moisture> readings, List<Finding> findings) {
        double wet = dry > 0 ? 2 * dry : dry + 0.1 * meter.fullScale();
        findings.add(finding(
                meter,
                readings,
                String.format(
                        Locale.ROOT,
                        "no usable wet reading is stated for meter %s; %s, %s, is taken",
                        meter.name(),
                        text(wet),
                        dry > 0 ? "twice its dry reading" : "a tenth of its scale"),
                "the border of the wet regions rests on this; a plug at the border would settle it"));
        return wet;
    }

    private static Finding finding(Meter meter, List<Moisture> readings, String message, String effect) {
        Origin origin = readings.isEmpty()
                ? new Origin("survey.yaml", 0)
                : new Origin(readings.get(0).origin().file(), 0);
        return new Finding(
                Finding.Severity.DOUBT, origin, new About.OfMeter(meter.name()), Subject.METER_SCALE, message, effect);
    }

    /** Pooled standard deviation of readings repeated at one place, as a share of the span. */
    private static double repeatability(Meter meter, List<Moisture> readings, double span) {
        double squares = 0;
        int freedom = 0;
        for (List<Moisture> same : atOnePlace(readings)) {
            double mean = same.stream()
                    .mapToDouble(m -> PinMeter.value(meter, m))
                    .average()
                    .orElse(0);
            for (Moisture m : same) {
                double off = PinMeter.value(meter, m) - mean;
                squares += off * off;
            }
            freedom += same.size() - 1;
        }
        // a scale read in whole divisions cannot repeat to better than a fifth of the usual error
        return freedom < ENOUGH_REPEATS
                ? USUAL_REPEATABILITY
                : Math.max(USUAL_REPEATABILITY / 5, Math.sqrt(squares / freedom) / span);
    }

    /** Without those that a later reading at the same place replaces: core dries, and the map is of today. */
    static List<Moisture> latest(List<Moisture> readings) {
        Map<List<Object>, LocalDateTime> last = new HashMap<>();
        for (Moisture m : readings) {
            LocalDateTime taken = m.taken();
            if (taken != null) {
                last.merge(place(m), taken, (a, b) -> a.isAfter(b) ? a : b);
            }
        }
        return readings.stream()
                .filter(m -> {
                    LocalDateTime taken = m.taken();
                    LocalDateTime newest = last.get(place(m));
                    return taken == null || newest == null || taken.plusDays(1).isAfter(newest);
                })
                .toList();
    }

    private static List<Object> place(Moisture m) {
        return List.of(m.spot(), m.side(), m.meter());
    }

    /** Readings of one meter grouped by place, in the order first met; off-scale ones stand apart. */
    static List<List<Moisture>> atOnePlace(List<Moisture> readings) {
        Map<List<Object>, List<Moisture>> groups = readings.stream()
                .collect(Collectors.groupingBy(
                        m -> List.of(m.spot(), m.side(), m.offScale()), LinkedHashMap::new, Collectors.toList()));
        return List.copyOf(groups.values());
    }

    /** A reading as a meter shows it: whole, or with one decimal. */
    static String text(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** Findings of the scales that at least one of these readings uses. */
    static List<Finding> findings(Map<String, MeterScale> scales, List<Moisture> readings) {
        return scales.values().stream()
                .filter(s -> readings.stream().anyMatch(m -> m.meter().equals(s.meter.name())))
                .sorted(Comparator.comparing(s -> s.meter.name()))
                .flatMap(s -> s.findings.stream())
                .toList();
    }
}
