package corewright.repair.work;

import corewright.damage.Quantiles;
import corewright.repair.mix.Batches;
import corewright.repair.mix.Mix;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import corewright.repair.plan.SecondShot;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The second shots of a filled space as plans, one for each mix: cups for what is most likely left, the loose skin, and mix to
 * have at hand for the gap as mapped. A place where no hole may be drilled has none.
 */
public final class ShotPlans {
    private ShotPlans() {}

    /** Cups in tenths of a gram, as they are printed. */
    public static List<InjectionPlan> of(Survey survey, CuredFill fill) {
        Map<String, List<SecondShot>> byResin = new LinkedHashMap<>();
        for (SecondShot shot : fill.shots()) {
            if (shot.spot() != null) {
                byResin.computeIfAbsent(shot.resin(), r -> new ArrayList<>()).add(shot);
            }
        }
        List<InjectionPlan> plans = new ArrayList<>();
        byResin.forEach((resin, shots) ->
                plans.add(plan(survey, fill.region(), survey.settings().resin(resin), shots)));
        return plans;
    }

    private static InjectionPlan plan(Survey survey, String region, Resin resin, List<SecondShot> shots) {
        Drilling drilling = survey.settings().drilling();
        List<Hole> holes = new ArrayList<>();
        for (SecondShot shot : shots) {
            Spot spot = shot.spot();
            if (spot != null) {
                holes.add(new Hole(
                        shot.hole().isEmpty() ? shot.id() : shot.hole(),
                        shot.region(),
                        Hole.Kind.INJECTION,
                        holes.size() + 1,
                        spot,
                        drilling.holeDiameterMm(),
                        shot.depthStopMm(),
                        0,
                        shot.lowG(),
                        null,
                        Hole.Range.NONE,
                        survey.settings().thresholds().looseGapMm()));
            }
        }
        double lowG = shots.stream().mapToDouble(SecondShot::lowG).sum();
        double highG = shots.stream().mapToDouble(SecondShot::highG).sum();
        double waste = drilling.wasteFraction();
        Mix mix = Mix.ofNet(lowG * (1 - waste), resin, waste);
        List<Batch> cups = NextPapers.rounded(Batches.of(region, holes, mix, resin, survey.settings()));
        return new InjectionPlan(
                        region,
                        List.of(new InjectionPlan.Part(region, 0, 0, 0)),
                        resin.name(),
                        new Quantiles(0, 0, 0),
                        0,
                        "",
                        holes,
                        0,
                        cups,
                        0,
                        0,
                        0,
                        List.of(),
                        List.of(),
                        Fill.NONE,
                        Outlook.NONE)
                .with(holes, cups, highG);
    }
}
