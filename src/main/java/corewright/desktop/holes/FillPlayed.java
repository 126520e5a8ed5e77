package corewright.desktop.holes;

import corewright.assessment.Assessment;
import corewright.contour.Raster;
import corewright.repair.fill.DrawnCavities;
import corewright.repair.fill.FillTrial;
import corewright.repair.fill.HeldBack;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SpaceTask;
import corewright.repair.work.WorkLog;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * The planned cups poured into a cavity as small or as large as one in ten, with what is held back for it.
 *
 * @param arrivalS seconds after the first cup, NaN where no mix comes
 * @param emptyShare of that cavity, at the end
 */
record FillPlayed(Raster arrivalS, double emptyShare) {
    private static final double KG_M3_TO_G_MM3 = 1e-6;

    /** Takes a second or so: not for the window's thread. */
    static FillPlayed of(Assessment found, InjectionPlan plan, DrawnCavities.Size size) {
        EmptySpace space = EmptySpace.of(found.damage(), plan);
        SpaceTask task = SpaceTask.of(found.survey(), found.damage().face(space.face()), space);
        Resin resin = found.survey().settings().resin(plan.resin());
        double waste = found.survey().settings().drilling().wasteFraction();
        FillTrial.Work work = work(plan, resin, waste);
        FillTrial.Run run = new DrawnCavities(task, plan.cavityMm3(), plan.filling())
                .trial(size, resin)
                .run(work, held(plan, resin, waste, work));
        Cavity c = run.setting().cavity();
        return new FillPlayed(
                new Raster(
                        c.x0,
                        c.y0,
                        c.cell,
                        c.rows,
                        c.columns,
                        run.result().arrivalS().clone()),
                run.emptyShare());
    }

    private static FillTrial.Work work(InjectionPlan plan, Resin resin, double waste) {
        Map<String, Double> liquid = new LinkedHashMap<>();
        WorkLog.planned(plan, waste)
                .forEach((hole, grams) -> liquid.put(hole, grams / (resin.densityKgM3() * KG_M3_TO_G_MM3)));
        List<Coordinate> vents = plan.holes().stream()
                .filter(h -> !h.fills())
                .map(h -> h.spot().coordinate())
                .toList();
        return new FillTrial.Work(plan.filling(), plan.batches(), liquid, vents);
    }

    /** As the card has it: high grams less planned. */
    private static FillTrial.Held held(InjectionPlan plan, Resin resin, double waste, FillTrial.Work work) {
        double gPerMm3 = resin.densityKgM3() * KG_M3_TO_G_MM3;
        Raster due = plan.fill().arrivalS().orElseThrow();
        List<FillTrial.Dose> doses = new ArrayList<>();
        for (Hole hole : plan.holes()) {
            doses.add(new FillTrial.Dose(
                    hole.spot().coordinate(),
                    hole.range().highG() / gPerMm3 - work.liquidMm3().getOrDefault(hole.id(), 0.0),
                    due.cellAt(hole.spot().xMm(), hole.spot().yMm()),
                    hole.fills() ? List.of() : HeldBack.watched(hole.spot().coordinate(), work.vents(), work.holes())));
        }
        double netG = plan.outlook().heldBackG() * (1 - waste);
        return new FillTrial.Held(doses, netG / gPerMm3, plan.buyG() / (plan.resinG() + plan.hardenerG()));
    }
}
