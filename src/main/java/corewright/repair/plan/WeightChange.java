package corewright.repair.plan;

import corewright.damage.Region;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.settings.Drilling;

/**
 * What a repair of one region adds to the boat, at the region's label point. Water that leaves with drying or with the old
 * core is not counted: how much it was is not known.
 *
 * @param addedKg mix, or new core and its epoxy
 * @param removedKg dry weight of the old core cut out
 */
public record WeightChange(double addedKg, double removedKg) {
    private static final double G_PER_KG = 1000;
    private static final double MM3_PER_M3 = 1e9;

    /** Mix that stays in the cavity: what is mixed less the waste. */
    public static WeightChange of(InjectionPlan plan, Drilling drilling) {
        return new WeightChange((plan.resinG() + plan.hardenerG()) * (1 - drilling.wasteFraction()) / G_PER_KG, 0);
    }

    /** The old skin goes back on; the epoxy that is not wasted stays. */
    public static WeightChange of(
            RecorePlan plan, Region region, Laminate laminate, Materials materials, Drilling drilling) {
        double area = plan.cut().getArea();
        double core =
                area * plan.coreMm() / MM3_PER_M3 * materials.core(plan.core()).densityKgM3();
        double epoxy = plan.epoxyG() * (1 - drilling.wasteFraction()) / G_PER_KG;
        double old = Math.max(0, area * laminate.coreMm() - region.voidMm3().p50())
                / MM3_PER_M3
                * materials.core(laminate.core()).densityKgM3();
        return new WeightChange(core + epoxy, old);
    }

    /** Added less removed. */
    public double netKg() {
        return addedKg - removedKg;
    }
}
