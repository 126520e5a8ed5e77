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

    /** A curve goes on by this beyond the day that it leads to; in so many steps; and no farther than two years. */
    private static final double BEYOND = 1.1;

    private static final int STEPS = 60;
    private static final double MOST_SHOWN_DAYS = 730;

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
        List<Case> cases = cases(way);
        Optional<Progress> progress = Progress.of(survey, region);
        double fromPercent =
                samples.isEmpty() ? Math.sqrt(drying.startLowPercent() * drying.startHighPercent()) : mean(samples);
        List<String> notes = new ArrayList<>();
        notes.add(how(way));
        Quantiles days = progress.map(p -> updated(cases, p, notes)).orElseGet(() -> weighted(cases, even(cases), 0));
        if (Double.isInfinite(days.p50())) {
            notes.add(never());
        }
        return new DryingTime(region.face(), region.id(), way, fromPercent, gate, days, String.join(" ", notes));
    }

    /** Every draw worked out. */
    private List<Case> cases(Way way) {
        return Draw.all().stream().map(d -> drawn(d, way)).toList();
    }

    /**
     * A draw worked out.
     *
     * @param days when it is at the gate
     * @param meanLeft share left on a day, mean of the body
     * @param lastLeft the same where it dries last
     * @param start water over dry mass, per cent
     * @param air what it comes to
     */
    private record Case(
            double days, DoubleUnaryOperator meanLeft, DoubleUnaryOperator lastLeft, double start, double air) {
        /** Water over dry mass where it dries last, per cent. */
        double percent(double day) {
            return air + lastLeft.applyAsDouble(day) * (start - air);
        }
    }

    private Case drawn(Draw draw, Way way) {
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
            case SKIN_OFF -> {
                Body body = new Sheet(coreMm * surface / d);
                double unit = coreMm * coreMm / d;
                yield drawn(body.timeTo(share), body::mean, body::last, unit, start, air);
            }
            case THROUGH_HOLES -> {
                double hole = survey.settings().drilling().holeDiameterMm() / 2;
                double rim =
                        drying.holeSpacingMm() * Math.sqrt(Math.sqrt(3) / 2 / Math.PI); // a circle of the same area
                Body body = new RoundHole(Math.max(1.05, rim / hole), hole * surface / d);
                yield drawn(body.timeTo(share), body::mean, body::last, hole * hole / d, start, air);
            }
            case CUT_EDGES -> {
                double half = Math.max(1, inscribedMm(region.likely()));
                double length = Math.max(half, region.likely().getArea() / (4 * half));
                Block block = new Block(new Sheet(half * surface / d), new Sheet(length * surface / d), length / half);
                double unit = half * half / d;
                yield drawn(block.timeTo(share), block::mean, block::last, unit, start, air);
            }
        };
    }

    private static Case drawn(
            double time,
            DoubleUnaryOperator mean,
            DoubleUnaryOperator last,
            double unitDays,
            double start,
            double air) {
        return new Case(
                unitDays * time,
                day -> mean.applyAsDouble(day / unitDays),
                day -> last.applyAsDouble(day / unitDays),
                start,
                air);
    }

    private static double inscribedMm(Polygon area) {
        return MaximumInscribedCircle.getRadiusLine(area, 2).getLength();
    }

    private Quantiles updated(List<Case> cases, Progress progress, List<String> notes) {
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
        Optional<List<Double>> weights = agreed(cases, progress);
        if (weights.isEmpty()) {
            notes.add("The readings do not follow this way of drying, so the days are as foretold.");
        }
        return weighted(cases, weights.orElseGet(() -> even(cases)), day);
    }

    private static List<Double> even(List<Case> cases) {
        return cases.stream().map(c -> 1.0).toList();
    }

    /** How well each case agrees with the readings; empty where none does. */
    private static Optional<List<Double>> agreed(List<Case> cases, Progress progress) {
        List<Double> weights = cases.stream().map(c -> agreement(c, progress)).toList();
        double agreed = weights.stream().mapToDouble(w -> w).sum() / cases.size();
        return agreed < AGREES ? Optional.empty() : Optional.of(weights);
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
        return weighted(cases.stream().map(c -> Math.max(0, c.days - gone)).toList(), weights);
    }

    private static Quantiles weighted(List<Double> values, List<Double> weights) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(values::get));
        double all = weights.stream().mapToDouble(w -> w).sum();
        double[] at = new double[3];
        double[] share = {0.1, 0.5, 0.9};
        for (int q = 0; q < 3; q++) {
            double sum = 0;
            for (int i : order) {
                sum += weights.get(i);
                at[q] = values.get(i);
                if (sum >= share[q] * all) {
                    break;
                }
            }
        }
        return new Quantiles(at[0], at[1], at[2]);
    }

    /**
     * How a region dries through holes, by the same cases as its days: the middle crosses the gate on the middle day.
     *
     * @return empty where its core is more probably dry, or does not dry by diffusion
     */
    public static Optional<DryingCurve> curve(Survey survey, Region region) {
        DryingTimes times = new DryingTimes(survey, region);
        return region.wet() && times.grain.wood() ? Optional.of(times.curve()) : Optional.empty();
    }

    private DryingCurve curve() {
        List<Case> cases = cases(Way.THROUGH_HOLES);
        Optional<Progress> progress = Progress.of(survey, region);
        List<Double> weights = progress.flatMap(p -> agreed(cases, p)).orElseGet(() -> even(cases));
        double read = progress.map(p -> p.last().day()).orElse(0.0);
        Quantiles dry = weighted(cases, weights, 0);
        double last = Double.isInfinite(dry.p90()) ? drying.daysAvailable() : Math.min(dry.p90(), MOST_SHOWN_DAYS);
        double end = BEYOND * Math.max(1, Math.max(last, read));
        List<DryingCurve.Day> days = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double day = end * i / STEPS;
            Quantiles percent = weighted(cases.stream().map(c -> c.percent(day)).toList(), weights);
            days.add(new DryingCurve.Day(day, percent.p10(), percent.p50(), percent.p90()));
        }
        double start =
                weighted(cases.stream().map(Case::start).toList(), weights).p50();
        double air = weighted(cases.stream().map(Case::air).toList(), weights).p50();
        List<DryingCurve.Read> readings = progress.stream()
                .flatMap(p -> p.visits().stream())
                .map(v -> new DryingCurve.Read(v.day(), v.left(), air + v.left() * (start - air)))
                .toList();
        return new DryingCurve(region.id(), progress.map(Progress::from), gate, days, readings);
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
