package corewright.decision.drying;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.survey.Plug;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Drying;
import corewright.survey.settings.Settings.Climate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Polygon;

/** Every wet region, every way. */
public final class DryingTimes {
    /**
     * Activation energy of bound water's diffusion over the gas constant, kelvin: 35 kJ/mol (Stamm, Wood and Cellulose Science, 1964;
     * from memory), which is about half as much again for each 10 degrees.
     */
    private static final double ACTIVATION_K = 35_000 / 8.314;

    private static final double REFERENCE_K = 293.15;
    private static final double ZERO_C_K = 273.15;

    /** Wood that loses water stays this far above the mean equilibrium, per cent: half of a hysteresis of 1 to 4 (practice). */
    private static final double DRYING_ABOVE_LOW = 0.5;

    private static final double DRYING_ABOVE_HIGH = 2;

    /** A dried sample speaks for its place; the core round it starts from so much less or more. Practice. */
    private static final double SAMPLE_LOW = 0.8;

    private static final double SAMPLE_HIGH = 1.25;

    /** Error of a share left that a relative meter tells, for it is not linear in water. Practice. */
    private static final double SHARE_ERROR = 0.1;

    /** Less of the draws' weight than this is no agreement. */
    private static final double AGREES = 1e-3;

    private final Survey survey;
    private final Region region;
    private final Drying drying;
    private final Climate climate;
    private final double gate;
    private final Grain grain;
    private final double coreMm;
    private final List<Double> samples;

    private DryingTimes(Survey survey, Region region) {
        this.survey = survey;
        this.region = region;
        drying = survey.settings().drying();
        climate = survey.settings().climate();
        gate = survey.settings().thresholds().dryPlugPercent();
        var laminate = survey.laminateAt(
                new Spot(region.face(), region.label().getX(), region.label().getY()));
        grain = Grain.of(laminate.core());
        coreMm = laminate.coreMm();
        samples = survey.readings().on(region.face()).plugs().stream()
                .filter(p -> region.likely()
                        .covers(region.likely()
                                .getFactory()
                                .createPoint(p.spot().coordinate())))
                .map(Plug::moisturePercent)
                .toList();
    }

    /** Of the whole survey, R1 first. */
    public static List<DryingTime> of(Survey survey, DamageMap damage) {
        return damage.regions().stream().flatMap(r -> of(survey, r).stream()).toList();
    }

    /** Of one region; none where its core is more probably dry. */
    public static List<DryingTime> of(Survey survey, Region region) {
        if (!region.wet()) {
            return List.of();
        }
        DryingTimes times = new DryingTimes(survey, region);
        return Stream.of(Way.values()).map(times::in).toList();
    }

    private DryingTime in(Way way) {
        if (!grain.wood()) {
            String note = grain == Grain.NONE
                    ? "Foam and honeycomb do not dry by diffusion: water stands in cells, cuts and joints. Open them, let it run "
                            + "out, and prove the place by a sample."
                    : "It is not known how this core takes water: no time is told. Prove it by a sample.";
            return new DryingTime(region.face(), region.id(), way, Double.NaN, gate, null, note);
        }
        double halfMm =
                way == Way.CUT_EDGES ? Math.max(1, inscribedMm(region.likely())) : 0; // takes longer than a draw
        List<Case> cases = Draw.all().stream().map(d -> drawn(d, way, halfMm)).toList();
        Optional<Progress> progress = Progress.of(survey, region);
        double fromPercent =
                samples.isEmpty() ? Math.sqrt(drying.startLowPercent() * drying.startHighPercent()) : mean(samples);
        List<String> notes = new ArrayList<>();
        notes.add(how(way));
        Quantiles days = progress.map(p -> updated(cases, p, notes))
                .orElseGet(() -> weighted(cases, cases.stream().map(c -> 1.0).toList(), 0));
        if (Double.isInfinite(days.p50())) {
            notes.add(never());
        }
        return new DryingTime(region.face(), region.id(), way, fromPercent, gate, days, String.join(" ", notes));
    }

    /** A draw worked out: when it is at the gate, and what share is left on the mean of a day. */
    private record Case(double days, DoubleUnaryOperator meanLeft) {}

    /** @param halfMm half the width of the block with cut edges */
    private Case drawn(Draw draw, Way way, double halfMm) {
        double warmth = Math.exp(ACTIVATION_K * (1 / REFERENCE_K - 1 / (climate.temperatureC() + ZERO_C_K)));
        double d = grain.diffusion(way, drying, draw.diffusion()) * warmth;
        double surface = Draw.spread(drying.surfaceLowMmPerDay(), drying.surfaceHighMmPerDay(), draw.surface());
        double start = samples.isEmpty()
                ? Draw.spread(drying.startLowPercent(), drying.startHighPercent(), draw.start())
                : mean(samples) * Draw.spread(SAMPLE_LOW, SAMPLE_HIGH, draw.start());
        double air = EquilibriumMoisture.percent(climate.temperatureC(), climate.humidityPercent())
                + DRYING_ABOVE_LOW
                + draw.air() * (DRYING_ABOVE_HIGH - DRYING_ABOVE_LOW);
        double share = start <= gate ? 1 : (gate - air) / (start - air);
        return switch (way) {
            case SKIN_OFF -> body(new Sheet(coreMm * surface / d), coreMm * coreMm / d, share);
            case THROUGH_HOLES -> {
                double hole = survey.settings().drilling().holeDiameterMm() / 2;
                double rim =
                        drying.holeSpacingMm() * Math.sqrt(Math.sqrt(3) / 2 / Math.PI); // a circle of the same area
                yield body(new RoundHole(Math.max(1.05, rim / hole), hole * surface / d), hole * hole / d, share);
            }
            case CUT_EDGES -> {
                double length = Math.max(halfMm, region.likely().getArea() / (4 * halfMm));
                Block block =
                        new Block(new Sheet(halfMm * surface / d), new Sheet(length * surface / d), length / halfMm);
                double unit = halfMm * halfMm / d;
                yield new Case(unit * block.timeTo(share), day -> block.mean(day / unit));
            }
        };
    }

    private static Case body(Body body, double unitDays, double share) {
        return new Case(unitDays * body.timeTo(share), day -> body.mean(day / unitDays));
    }

    private static double inscribedMm(Polygon area) {
        return MaximumInscribedCircle.getRadiusLine(area, 2).getLength();
    }

    private Quantiles updated(List<Case> cases, Progress progress, List<String> notes) {
        List<Double> weights = cases.stream().map(c -> agreement(c, progress)).toList();
        double agreed = weights.stream().mapToDouble(w -> w).sum() / cases.size();
        double day = progress.last().day();
        notes.add(String.format(
                Locale.ROOT,
                "Read until day %.0f, %.0f in 100 of what stood above dry are left; the days are from then on.",
                day,
                100 * progress.last().left()));
        progress.stalledDays()
                .ifPresent(d -> notes.add(String.format(
                        Locale.ROOT,
                        "It has stalled: nothing has fallen for %.0f days. Look for the leak, open more of it, bring drier air.",
                        d)));
        if (agreed < AGREES) {
            notes.add("The readings do not follow this way of drying, so the days are as foretold.");
            return weighted(cases, cases.stream().map(c -> 1.0).toList(), day);
        }
        return weighted(cases, weights, day);
    }

    private static double agreement(Case drawn, Progress progress) {
        double squares = 0;
        for (Progress.Visit visit : progress.visits()) {
            double off = (visit.left() - drawn.meanLeft.applyAsDouble(visit.day())) / SHARE_ERROR;
            squares += off * off;
        }
        return Math.exp(-squares / 2);
    }

    /** Days still to go, at the tenth, half and nine tenths of the weight. */
    private static Quantiles weighted(List<Case> cases, List<Double> weights, double gone) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> cases.get(i).days));
        double all = weights.stream().mapToDouble(w -> w).sum();
        double[] at = new double[3];
        double[] share = {0.1, 0.5, 0.9};
        for (int q = 0; q < 3; q++) {
            double sum = 0;
            for (int i : order) {
                sum += weights.get(i);
                at[q] = Math.max(0, cases.get(i).days - gone);
                if (sum >= share[q] * all) {
                    break;
                }
            }
        }
        return new Quantiles(at[0], at[1], at[2]);
    }

    private String how(Way way) {
        return switch (way) {
            case THROUGH_HOLES ->
                String.format(
                        Locale.ROOT,
                        "Holes of %.1f mm through one skin and the core, %.0f mm apart, staggered; dry where the core lies "
                                + "midway between them.",
                        survey.settings().drilling().holeDiameterMm(),
                        drying.holeSpacingMm());
            case CUT_EDGES ->
                String.format(
                        Locale.ROOT,
                        "All edges open, %.0f mm to the middle of the core.",
                        inscribedMm(region.likely()));
            case SKIN_OFF -> "One skin off; dry where the core meets the other one.";
        };
    }

    private String never() {
        return String.format(
                Locale.ROOT,
                "In air of %.0f °C and %.0f %% humidity core stays at about %.0f %%: it does not come to the gate. Dry or warm "
                        + "the air.",
                climate.temperatureC(),
                climate.humidityPercent(),
                EquilibriumMoisture.percent(climate.temperatureC(), climate.humidityPercent()));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(Double.NaN);
    }
}
