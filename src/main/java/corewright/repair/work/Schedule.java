package corewright.repair.work;

import corewright.repair.mix.Batches;
import corewright.repair.mix.Pour;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The day of an injection as bars over time, on the clock of its batches.
 *
 * @param bars by start, then by batch
 */
public record Schedule(List<Bar> bars) {
    /** Cured through at the reference temperature, by which the skin may carry. Practice: a day. */
    private static final double WALK_S = 24 * 3600;

    /** The skin is held until so long after it is hard. Practice. */
    private static final double HELD_AFTER_S = 600;

    public Schedule {
        bars = List.copyOf(bars);
    }

    /** What happens in a bar. */
    public enum What {
        MIX,
        INJECT,
        LEAVE,
        RISE,
        FEEL,
        /** Weights, plate or props hold the skin. */
        HOLD,
        HARD,
        /** It may be walked on or loaded. */
        LOAD
    }

    /**
     * One bar.
     *
     * @param worker 1 or 2, 0 where nobody has to stand by
     * @param batch number of the batch, 0 where it is for all
     * @param hole id, empty where it is for none or all
     */
    public record Bar(double startS, double endS, int worker, int batch, String hole, What what) {}

    /**
     * The bars of some batches of one mix, in the order of the clock.
     *
     * @param holes into which they go
     */
    public static Schedule of(List<Hole> holes, List<Batch> batches, Resin resin, Settings settings) {
        List<Bar> bars = new ArrayList<>();
        double factor = resin.timeFactor(settings.climate().temperatureC());
        for (Batch batch : batches) {
            bars.addAll(ofBatch(holes, batch, resin, settings));
        }
        if (!batches.isEmpty()) {
            double first = batches.get(0).mixAtS();
            double hard = batches.stream().mapToDouble(Batch::hardAtS).max().orElse(first);
            double rise = factor * resin.firstRiseS();
            // on before the first cup rises, before any is poured of a mix that does not; off when the last is hard
            double holdS = resin.expansion() > 1 ? first + 0.8 * rise : first;
            bars.add(new Bar(holdS, hard + HELD_AFTER_S, 0, 0, "", What.HOLD));
            double walkS = Math.max(hard, batches.get(batches.size() - 1).mixAtS() + factor * WALK_S);
            bars.add(new Bar(walkS, walkS, 0, 0, "", What.LOAD));
        }
        bars.sort(Comparator.comparingDouble(Bar::startS).thenComparingInt(Bar::batch));
        return new Schedule(bars);
    }

    private static List<Bar> ofBatch(List<Hole> holes, Batch batch, Resin resin, Settings settings) {
        Drilling drilling = settings.drilling();
        double temperatureC = settings.climate().temperatureC();
        double factor = resin.timeFactor(temperatureC);
        int people = settings.crew().people();
        List<Bar> bars = new ArrayList<>();
        double at = batch.mixAtS() + drilling.mixingS();
        bars.add(new Bar(batch.mixAtS(), at, people > 1 ? 2 : 1, batch.number(), "", What.MIX));
        Pour pour = new Pour(resin, drilling, temperatureC);
        double netG = (batch.partAG() + batch.partBG()) * (1 - drilling.wasteFraction());
        List<Hole> own =
                holes.stream().filter(h -> batch.holes().contains(h.id())).toList();
        double served = own.stream().mapToDouble(Hole::servedMm3).sum();
        for (Hole hole : own) {
            double pourS = pour.seconds(hole, netG * hole.servedMm3() / served);
            bars.add(new Bar(at, at + pourS, 1, batch.number(), hole.id(), What.INJECT));
            at += pourS + Batches.HOLE_S;
        }
        if (at < batch.workUntilS()) {
            bars.add(new Bar(at, batch.workUntilS(), 0, batch.number(), "", What.LEAVE));
        }
        double riseEnd = batch.mixAtS() + factor * resin.riseEndS();
        if (resin.expansion() > 1) {
            bars.add(new Bar(batch.firstRiseS(), riseEnd, 0, batch.number(), "", What.RISE));
            bars.add(new Bar(
                    batch.mixAtS() + factor * FillCheck.WARM_FROM_S,
                    batch.mixAtS() + factor * FillCheck.WARM_UNTIL_S,
                    1,
                    batch.number(),
                    "",
                    What.FEEL));
        }
        bars.add(new Bar(batch.hardAtS(), batch.hardAtS(), 0, batch.number(), "", What.HARD));
        return bars;
    }
}
