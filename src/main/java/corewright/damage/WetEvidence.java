package corewright.damage;

import corewright.field.Site;
import corewright.survey.About;
import corewright.survey.CoreMoisture;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Point;

/**
 * Readings as statements on the logit of the moisture share: z = ln(S / (1 - S)), S = (value - dry) / (2 (wet - dry)), so
 * that z = 0 is the wet threshold. Near the ends of the share the logit runs away: there a reading only bounds z.
 */
final class WetEvidence {
    /** Below this share a reading only says "dry", above one minus it only "wet". */
    private static final double END = 0.10;

    private static final double END_LOGIT = logit(1 - END);

    /** A moisture reading counts false high by up to this share beside metal. */
    private static final double METAL_SHARE = 0.5;

    /** Noise of a bound on z, in its own unit: what a tenth of span is worth at the ends. */
    private static final double BOUND_NOISE = 0.5;

    /** Repeats this share of the span apart contradict each other: six times the usual scatter of their difference. */
    private static final double DISAGREE = 0.4;

    private static final double METER_DOUBT = 0.005;
    private static final double PROBE_DOUBT = 0.02;
    private static final double COIN = 0.5;

    private final Face face;
    private final Thresholds thresholds;
    private final Map<String, MeterScale> scales;
    private final Judged judged;
    private final MeterRules rules;
    private final List<Observation> observations = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private WetEvidence(Face face, Thresholds thresholds, Map<String, MeterScale> scales, Judged judged) {
        this.judged = judged;
        rules = new MeterRules(judged);
        this.face = face;
        this.thresholds = thresholds;
        this.scales = scales;
    }

    /** Everything a face's readings say of water; doubts are added to {@code findings}. */
    static List<Observation> of(
            Face face,
            Readings readings,
            Thresholds thresholds,
            Map<String, MeterScale> scales,
            Judged judged,
            List<Finding> findings) {
        WetEvidence evidence = new WetEvidence(face, thresholds, scales, judged);
        for (MeterScale scale : scales.values()) {
            List<Moisture> own = readings.moisture().stream()
                    .filter(m -> m.meter().equals(scale.meter().name()))
                    .toList();
            List<Moisture> latest = MeterScale.latest(own);
            Set<Moisture> kept = Collections.newSetFromMap(new IdentityHashMap<>());
            kept.addAll(latest);
            own.stream().filter(m -> !kept.contains(m)).forEach(m -> findings.add(replaced(m)));
            MeterScale.atOnePlace(latest).forEach(evidence::addMoisture);
        }
        readings.probes().forEach(evidence::addProbe);
        readings.plugs().forEach(evidence::addPlug);
        findings.addAll(evidence.findings);
        findings.addAll(evidence.rules.findings());
        return evidence.observations;
    }

    private void addMoisture(List<Moisture> repeats) {
        Moisture first = repeats.get(0);
        MeterScale scale = scaleOf(first);
        double value = repeats.stream()
                .mapToDouble(m -> PinMeter.value(scale.meter(), m))
                .average()
                .orElseThrow();
        boolean offScale = first.offScale() || value >= scale.meter().fullScale();
        double share = scale.share(offScale ? Math.max(value, scale.meter().fullScale()) : value);
        double error = error(repeats, scale);
        MeterRules.Effect effect = rules.of(first, scale.meter());
        if (effect != MeterRules.Effect.SET_ASIDE && !(effect == MeterRules.Effect.LOW_SAYS_NOTHING && share < COIN)) {
            String metal = share > END && !judged.trusted(repeats) ? nearMetal(first.spot()) : "";
            boolean raised = share > END && effect == MeterRules.Effect.FALSELY_HIGH;
            Site site = raised || !metal.isEmpty() ? falselyHigh(share, error) : plain(share, error, offScale);
            observations.add(new Observation(first.spot(), site, first));
            if (!metal.isEmpty()) {
                findings.add(doubtMetal(first, metal));
            }
        }
        if (first.reference()) {
            observations.add(new Observation(first.spot(), below(0, PROBE_DOUBT), first));
        }
    }

    /** Standard error of the mean of repeats, as a share of the span; their own scatter where that is larger than usual. */
    private double error(List<Moisture> repeats, MeterScale scale) {
        var read = repeats.stream()
                .mapToDouble(m -> PinMeter.value(scale.meter(), m))
                .summaryStatistics();
        double apart = scale.share(read.getMax()) - scale.share(read.getMin());
        if (apart > DISAGREE && !judged.trusted(repeats)) {
            findings.add(disagreeing(repeats, read.getMin(), read.getMax()));
        }
        return apart > DISAGREE ? apart / 2 : scale.repeatability() / Math.sqrt(repeats.size());
    }

    private static Finding disagreeing(List<Moisture> repeats, double least, double most) {
        Moisture last = repeats.get(repeats.size() - 1);
        return new Finding(
                Finding.Severity.DOUBT,
                last.origin(),
                About.of(last),
                Subject.CONTRADICTION,
                String.format(
                        Locale.ROOT,
                        "%d readings at one place, %s to %s, range from %s to %s",
                        repeats.size(),
                        repeats.get(0).id(),
                        last.id(),
                        MeterScale.text(least),
                        MeterScale.text(most)),
                "their mean is kept, as uncertain as they lie apart; read it again");
    }

    private static Site plain(double share, double error, boolean offScale) {
        if (share >= 1 - END) {
            return above(END_LOGIT, METER_DOUBT);
        }
        if (share <= END) {
            return below(-END_LOGIT, METER_DOUBT);
        }
        return offScale
                ? above(logit(share), METER_DOUBT)
                : new Site.Value(logit(share), error / (share * (1 - share)));
    }

    /**
     * A reading beside metal may be false high by anything from nothing to {@link #METAL_SHARE}: the mean and variance
     * of z over six equal steps of that, so that the error reaches down only.
     */
    private static Site falselyHigh(double share, double error) {
        int steps = 6;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < steps; i++) {
            double z = logit(clamp(share - METAL_SHARE * i / (steps - 1), 0.03, 0.97));
            sum += z;
            squares += z * z;
        }
        double mean = sum / steps;
        double s = clamp(share, END, 1 - END);
        double own = error / (s * (1 - s));
        return new Site.Value(mean, Math.sqrt(own * own + squares / steps - mean * mean));
    }

    private void addProbe(Probe probe) {
        CoreMoisture water = probe.water();
        if (water != null) {
            observations.add(new Observation(probe.spot(), said(water), probe));
        }
    }

    private void addPlug(Plug plug) {
        double percent = plug.moisturePercent();
        CoreMoisture water = percent >= thresholds.wetPlugPercent()
                ? CoreMoisture.WET
                : percent <= thresholds.dryPlugPercent() ? CoreMoisture.DRY : CoreMoisture.DAMP;
        observations.add(new Observation(plug.spot(), said(water), plug));
    }

    /** Core seen wet or dry lies beyond the threshold; damp core between a quarter and three quarters of the share. */
    private static Site said(CoreMoisture water) {
        return switch (water) {
            case WET -> above(0, PROBE_DOUBT);
            case DRY -> below(0, PROBE_DOUBT);
            case DAMP -> new Site.Interval(logit(0.25), logit(0.75), BOUND_NOISE, 2 * PROBE_DOUBT, COIN);
        };
    }

    private MeterScale scaleOf(Moisture m) {
        MeterScale scale = scales.get(m.meter());
        if (scale == null) {
            throw new IllegalArgumentException("reading " + m.id() + " names the unknown meter " + m.meter());
        }
        return scale;
    }

    /** What metal or disturbance lies within its influence of a place; empty where none. */
    private String nearMetal(Spot spot) {
        Point point = face.outline().getFactory().createPoint(spot.coordinate());
        for (Feature f : face.features()) {
            boolean upsets = f instanceof Feature.Disturbance || (f instanceof Feature.Fitting x && x.metal());
            if (upsets && f.geometry().isWithinDistance(point, thresholds.metalInfluenceMm())) {
                return String.format(
                        Locale.ROOT,
                        "%s, %.0f mm away",
                        f.called(),
                        f.geometry().distance(point));
            }
        }
        return "";
    }

    private static Finding replaced(Moisture m) {
        return new Finding(
                Finding.Severity.HINT,
                m.origin(),
                About.of(m),
                Subject.EARLIER_READING,
                String.format(
                        Locale.ROOT, "the reading %s was taken again here on a later day", MeterScale.text(m.value())),
                "set aside: the map shows the latest state");
    }

    private static Finding doubtMetal(Moisture m, String metal) {
        return new Finding(
                Finding.Severity.DOUBT,
                m.origin(),
                About.of(m),
                Subject.METAL,
                String.format(
                        Locale.ROOT,
                        "raised reading %s beside %s: it may be falsely high",
                        MeterScale.text(m.value()),
                        metal),
                "kept, but it may stand for anything down to dry; low readings here are trusted in full");
    }

    static Site above(double bound, double doubt) {
        return new Site.Interval(bound, Double.POSITIVE_INFINITY, BOUND_NOISE, doubt, COIN);
    }

    static Site below(double bound, double doubt) {
        return new Site.Interval(Double.NEGATIVE_INFINITY, bound, BOUND_NOISE, doubt, COIN);
    }

    static double logit(double share) {
        return Math.log(share / (1 - share));
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
