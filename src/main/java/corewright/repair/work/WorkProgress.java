package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import corewright.survey.settings.Drilling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * How far the injection of one region has come, by the work log and the warmth of the skin.
 *
 * @param cavityMm3 the space by the readings and the log together
 * @param nextCupG mixed grams of the next cup, 0 where nothing is left to fill
 * @param warmth readings over the region, and those beside it where mix was found
 */
public record WorkProgress(
        String region, WorkLog log, Quantiles cavityMm3, double nextCupG, List<FillCheck.Place> warmth) {
    /** Readings so near in time are compared. Practice. */
    private static final double SAME_TIME_S = 900;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    public WorkProgress {
        warmth = List.copyOf(warmth);
    }

    /** Every region that was worked on or felt for warmth, in the order of the plans. */
    static List<WorkProgress> of(Survey survey, DamageMap damage, List<InjectionPlan> plans) {
        if (survey.log().isEmpty() && survey.readings().temperatures().isEmpty()) {
            return List.of();
        }
        Map<String, List<SurfaceTemperature>> felt = felt(survey, damage, plans);
        List<WorkProgress> all = new ArrayList<>();
        for (InjectionPlan plan : plans) {
            WorkProgress progress = of(survey, damage, plan, felt.getOrDefault(plan.region(), List.of()));
            if (!progress.log.holes().isEmpty() || !progress.warmth.isEmpty()) {
                all.add(progress);
            }
        }
        return all;
    }

    private static WorkProgress of(
            Survey survey, DamageMap damage, InjectionPlan plan, List<SurfaceTemperature> readings) {
        Drilling drilling = survey.settings().drilling();
        Map<String, Double> planned = WorkLog.planned(plan, drilling.wasteFraction());
        WorkLog log = WorkLog.of(planned, lifts(survey, plan), plan.cavityMm3(), survey.log());
        FillClock clock = new FillClock(survey, plan);
        List<FillCheck.Place> warmth = new ArrayList<>();
        for (SurfaceTemperature reading : readings) {
            FaceDamage face = damage.face(reading.spot().face());
            FillCheck.of(
                            List.of(since(reading, clock.startS(reading))),
                            plan.fill(),
                            face.surfaces().voidDepthMm(),
                            soundC(reading, survey, damage),
                            survey.settings().resin(plan.resin()),
                            survey.settings().climate().temperatureC())
                    .forEach(p -> warmth.add(p.of(reading)));
        }
        warmth.removeIf(
                p -> distance(damage, plan, point(p.reading().spot())) > 0 && p.verdict() != FillCheck.Verdict.ARRIVED);
        double cupG = log.nextCupG(drilling.wasteFraction(), drilling.largestBatchG());
        Quantiles cavityMm3 = log.holes().isEmpty()
                ? plan.cavityMm3()
                : log.cavity().times(plan.cavityMm3().p50());
        return new WorkProgress(plan.region(), log, cavityMm3, cupG, warmth);
    }

    private static Map<String, Integer> lifts(Survey survey, InjectionPlan plan) {
        LiftsIn in = new LiftsIn(plan.batches(), survey.log());
        Map<String, Integer> lifts = new LinkedHashMap<>();
        plan.filling().forEach(h -> lifts.put(h.id(), in.all(h.id())));
        return lifts;
    }

    /** On the clock of the simulated fill. */
    private static SurfaceTemperature since(SurfaceTemperature r, double startS) {
        return new SurfaceTemperature(r.origin(), r.id(), r.spot(), r.afterS() - startS, r.valueC(), r.warm());
    }

    /** Readings by the region they lie over; those over none by the nearest one on their face. */
    private static Map<String, List<SurfaceTemperature>> felt(
            Survey survey, DamageMap damage, List<InjectionPlan> plans) {
        Map<String, List<SurfaceTemperature>> felt = new LinkedHashMap<>();
        for (SurfaceTemperature reading : survey.readings().temperatures()) {
            Geometry at = point(reading.spot());
            plans.stream()
                    .filter(p -> face(damage, p).equals(reading.spot().face()))
                    .min(Comparator.comparingDouble(p -> distance(damage, p, at)))
                    .ifPresent(p -> felt.computeIfAbsent(p.region(), id -> new ArrayList<>())
                            .add(reading));
        }
        return felt;
    }

    private static String face(DamageMap damage, InjectionPlan plan) {
        return region(damage, plan.region()).face();
    }

    /** From the nearest of the plan's regions. */
    private static double distance(DamageMap damage, InjectionPlan plan, Geometry at) {
        return plan.parts().stream()
                .mapToDouble(p -> region(damage, p.region()).likely().distance(at))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Middle of what was measured over sound places of the face at about that time, else the day's temperature. */
    private static double soundC(SurfaceTemperature of, Survey survey, DamageMap damage) {
        double[] sound = survey.readings().temperatures().stream()
                .filter(r -> r.spot().face().equals(of.spot().face()))
                .filter(r -> Math.abs(r.afterS() - of.afterS()) <= SAME_TIME_S)
                .filter(r -> damage.regions().stream().noneMatch(region -> over(region, r)))
                .map(SurfaceTemperature::valueC)
                .flatMap(c -> Optional.ofNullable(c).stream())
                .mapToDouble(c -> c)
                .sorted()
                .toArray();
        return sound.length == 0 ? survey.settings().climate().temperatureC() : sound[(sound.length - 1) / 2];
    }

    private static Region region(DamageMap damage, String id) {
        return damage.regions().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static boolean over(Region region, SurfaceTemperature reading) {
        return region.face().equals(reading.spot().face()) && region.likely().covers(point(reading.spot()));
    }

    private static Geometry point(Spot spot) {
        return FACTORY.createPoint(spot.coordinate());
    }

    /** What to look at: holes that took far more or less than planned, places where the mix is not or should not be. */
    static List<Finding> findings(Survey survey, List<WorkProgress> all) {
        List<Finding> findings = new ArrayList<>();
        for (WorkProgress progress : all) {
            for (WorkLog.Filled filled : progress.log.holes()) {
                progress.finding(filled, survey).ifPresent(findings::add);
            }
            for (FillCheck.Place place : progress.warmth) {
                progress.finding(place).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> finding(WorkLog.Filled filled, Survey survey) {
        String advice = advice(filled);
        Origin origin = survey.log().stream()
                .filter(e -> e.hole().equals(filled.hole()))
                .map(WorkEntry::origin)
                .findFirst()
                .orElseThrow();
        return advice.isEmpty()
                ? Optional.empty()
                : Optional.of(new Finding(
                        Finding.Severity.DOUBT,
                        origin,
                        new About.OfHole(filled.hole()),
                        Subject.WORK_LOG,
                        WorkWords.took(filled),
                        advice));
    }

    /** What to do about a hole, empty where nothing. */
    public static String advice(WorkLog.Filled filled) {
        return WorkWords.advice(filled);
    }

    private Optional<Finding> finding(FillCheck.Place place) {
        String advice = advice(place);
        return advice.isEmpty()
                ? Optional.empty()
                : Optional.of(new Finding(
                        Finding.Severity.DOUBT,
                        place.reading().origin(),
                        About.of(place.reading()),
                        Subject.FILL_CHECK,
                        place.verdict() == FillCheck.Verdict.ARRIVED
                                ? "Warm where the plan of " + region + " expects no mix."
                                : "Cold where the mix of " + region + " should be.",
                        advice));
    }

    /** What to do about a place, empty where nothing. */
    public static String advice(FillCheck.Place place) {
        return switch (place.verdict()) {
            case ARRIVED ->
                place.surprise() ? "The cavity goes on farther than mapped: tap around this place after cure." : "";
            case NOT_ARRIVED -> "Tap here after cure; where it is hollow, drill and fill again.";
            case DOUBTFUL, OUT_OF_TIME -> "";
        };
    }
}
