package corewright.decision;

import corewright.damage.Region;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.survey.Survey;
import corewright.survey.settings.Costs;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;

/** Hours and materials of each method, low and high: common practice rates times the region's own figures. */
final class Effort {
    /** To set up and clear away at one region, whatever its size. Practice. */
    private static final double SETUP_HOURS_LOW = 0.5;

    private static final double SETUP_HOURS_HIGH = 2;

    private final Survey survey;
    private final RepairOptions options;
    private final Function<Region, Share> shares;

    Effort(Survey survey, RepairOptions options) {
        this(survey, options, r -> Share.WHOLE);
    }

    /** @param shares what there truly is of each region */
    Effort(Survey survey, RepairOptions options, Function<Region, Share> shares) {
        this.survey = survey;
        this.options = options;
        this.shares = shares;
    }

    /** What there truly is of a region, over what is planned: of its area, and of the mix that fills it. */
    record Share(double area, double mix) {
        static final Share WHOLE = new Share(1, 1);
    }

    /** Hours of work and materials in the survey's currency, each low to high. */
    record Estimate(double hoursLow, double hoursHigh, double materialLow, double materialHigh) {
        static final Estimate NONE = new Estimate(0, 0, 0, 0);

        Estimate and(Estimate o) {
            return new Estimate(
                    hoursLow + o.hoursLow,
                    hoursHigh + o.hoursHigh,
                    materialLow + o.materialLow,
                    materialHigh + o.materialHigh);
        }

        /** From the lower end of this to the upper end of the other: it is not decided yet which. */
        Estimate orElse(Estimate o) {
            return new Estimate(
                    Math.min(hoursLow, o.hoursLow),
                    Math.max(hoursHigh, o.hoursHigh),
                    Math.min(materialLow, o.materialLow),
                    Math.max(materialHigh, o.materialHigh));
        }
    }

    Estimate visits(double low, double high) {
        double hours = survey.settings().costs().visitHours();
        return new Estimate(low * hours, high * hours, 0, 0);
    }

    Estimate dry(Region region) {
        Costs costs = survey.settings().costs();
        double m2 = m2(region, region.likely());
        return new Estimate(
                SETUP_HOURS_LOW + costs.dryHoursLow() * m2, SETUP_HOURS_HIGH + costs.dryHoursHigh() * m2, 0, 0);
    }

    Estimate inject(Region region) {
        Costs costs = survey.settings().costs();
        double m2 = m2(region, region.likely());
        InjectionPlan plan = options.injection(region.id()).orElse(null);
        if (plan != null && plan.fillsBeside(region.id())) { // mix and setting up count where it is filled from
            return new Estimate(costs.injectHoursLow() * m2, costs.injectHoursHigh() * m2, 0, 0);
        }
        double mix = shares.apply(region).mix();
        double planKg = plan == null ? 0 : mix * (plan.resinG() + plan.hardenerG()) / 1000;
        double buyKg = plan == null ? 0 : mix * plan.buyG() / 1000;
        return new Estimate(
                SETUP_HOURS_LOW + costs.injectHoursLow() * m2,
                SETUP_HOURS_HIGH + costs.injectHoursHigh() * m2,
                planKg * costs.resinPerKg(),
                buyKg * costs.resinPerKg());
    }

    Estimate recore(Region region) {
        Costs costs = survey.settings().costs();
        double m2 = m2(
                region,
                options.recore(region.id()).<Geometry>map(RecorePlan::cut).orElse(region.likely()));
        return new Estimate(
                SETUP_HOURS_LOW + costs.recoreHoursLow() * m2,
                SETUP_HOURS_HIGH + costs.recoreHoursHigh() * m2,
                costs.materialPerM2() * m2,
                costs.materialPerM2() * m2);
    }

    private double m2(Region region, Geometry planned) {
        return shares.apply(region).area() * planned.getArea() / 1e6;
    }

    /** What the advised method takes; where dry core must be proven first, from injecting to cutting out. */
    Estimate advised(Region region, RegionDecision decision) {
        return decision.firstStep() == null
                ? of(region, decision.method())
                : inject(region).orElse(recore(region));
    }

    /** What a method takes. */
    Estimate of(Region region, Method method) {
        return switch (method) {
            case MONITOR -> Estimate.NONE;
            case DRY_OUT -> dry(region);
            case INJECT -> inject(region);
            case RECORE -> recore(region);
        };
    }
}
