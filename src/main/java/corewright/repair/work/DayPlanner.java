package corewright.repair.work;

import corewright.repair.mix.Batches;
import corewright.repair.mix.Curing;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Pour;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.Schedule.Bar;
import corewright.repair.work.Schedule.What;
import corewright.survey.Face.Posture;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gives the people of a day their work: (1) cups are mixed and poured on the clock of the batches, mixed by the second person
 * where there is one; (2) a vent, and a hole at which mix that does not rise shows before its turn, is plugged when mix is due there,
 * by who is free, and one who pours alone stops for it; (3) the
 * holes of a cup are felt by hand in one round while the skin over them is warm, as soon as somebody is free; (4) weights go on
 * over a cup's holes and vents when the last of them is plugged; a wall or an overhead face has its plate before the first cup.
 */
final class DayPlanner {
    /** Cured through at the reference temperature, by which the skin may carry. Practice: a day. */
    private static final double WALK_S = 24 * 3600;

    /** The skin is held until so long after it is hard. Practice. */
    private static final double HELD_AFTER_S = 600;

    /** Sound places that are felt or measured in each round. */
    private static final int SOUND_PLACES = 3;

    private final Survey survey;
    private final Drilling drilling;
    private final double temperatureC;
    private final Hands pours = new Hands();

    /** Who mixes, plugs and feels; the same person where one works alone. */
    private final Hands helps;

    private final int helper;
    private final List<Bar> bars = new ArrayList<>();
    private final List<Vent> vents = new ArrayList<>();
    private final Set<Vent> plugged = new HashSet<>();

    DayPlanner(Survey survey) {
        this.survey = survey;
        drilling = survey.settings().drilling();
        temperatureC = survey.settings().climate().temperatureC();
        boolean alone = survey.settings().crew().people() < 2;
        helps = alone ? pours : new Hands();
        helper = alone ? 1 : 2;
    }

    /**
     * A vent, or a hole before its turn, at which mix is due.
     *
     * @param cup that fills it, by number
     */
    private record Vent(String region, String hole, double dueS, int cup) {}

    /** @param due whether the clock of the plans' fills is that of their cups */
    List<Bar> bars(List<InjectionPlan> plans, boolean due) {
        if (due) {
            plans.forEach(p -> vents.addAll(vents(p)));
            vents.sort(Comparator.comparingDouble(Vent::dueS));
        }
        for (InjectionPlan plan : plans) {
            for (Batch batch : plan.batches()) {
                mix(plan, batch);
            }
        }
        for (InjectionPlan plan : plans) {
            for (Batch batch : plan.batches()) {
                pour(plan, batch);
            }
        }
        vents.stream().filter(v -> !plugged.contains(v)).toList().forEach(this::plug);
        for (InjectionPlan plan : plans) {
            for (Batch batch : plan.batches()) {
                rise(plan, batch);
            }
            hold(plan);
        }
        return bars;
    }

    private Resin resin(InjectionPlan plan) {
        return survey.settings().resin(plan.resin());
    }

    private double factor(InjectionPlan plan) {
        return resin(plan).timeFactor(temperatureC);
    }

    private List<Vent> vents(InjectionPlan plan) {
        double zeroS = plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
        List<Vent> vents = new ArrayList<>();
        for (Hole hole : plan.holes()) {
            double dueS = zeroS
                    + plan.fill()
                            .arrivalS()
                            .map(r -> r.cellAt(hole.spot().xMm(), hole.spot().yMm()))
                            .orElse(Double.NaN);
            boolean shows = !hole.fills() || resin(plan).expansion() <= 1 && hole.drilled() && hole.order() > 1;
            if (shows && !Double.isNaN(dueS)) {
                vents.add(new Vent(plan.region(), hole.id(), dueS, cup(plan, hole, dueS)));
            }
        }
        return vents;
    }

    /** The cup whose hole is nearest to a vent, of those that still flow or rise when mix is due there, else the last one before. */
    private int cup(InjectionPlan plan, Hole vent, double dueS) {
        int best = plan.batches().get(0).number();
        double least = Double.POSITIVE_INFINITY;
        Resin resin = resin(plan);
        double movesS = factor(plan) * (resin.expansion() > 1 ? resin.riseEndS() : resin.workS());
        for (Batch batch : plan.batches()) {
            boolean moves = batch.mixAtS() <= dueS && dueS <= batch.mixAtS() + movesS;
            if (batch.mixAtS() <= dueS && Double.isInfinite(least)) {
                best = batch.number();
            }
            for (Hole hole : holes(plan, batch)) {
                double mm = hole.spot().coordinate().distance(vent.spot().coordinate());
                if (moves && mm < least) {
                    least = mm;
                    best = batch.number();
                }
            }
        }
        return best;
    }

    private static List<Hole> holes(InjectionPlan plan, Batch batch) {
        return plan.holes().stream().filter(h -> batch.holes().contains(h.id())).toList();
    }

    private void mix(InjectionPlan plan, Batch batch) {
        double endS = batch.mixAtS() + drilling.mixingS();
        helps.take(batch.mixAtS(), endS);
        bars.add(new Bar(plan.region(), batch.mixAtS(), endS, helper, batch.number(), "", What.MIX));
    }

    private void pour(InjectionPlan plan, Batch batch) {
        Pour pour = new Pour(resin(plan), drilling, temperatureC);
        double netG = (batch.partAG() + batch.partBG()) * (1 - drilling.wasteFraction());
        List<Hole> own = holes(plan, batch);
        double served = own.stream().mapToDouble(Hole::servedMm3).sum();
        double at = batch.mixAtS() + drilling.mixingS();
        for (Hole hole : own) {
            itsTurnNext(plan, hole, at);
            double g = netG * hole.servedMm3() / served;
            double lastsS = pour.seconds(hole, g, at - batch.mixAtS(), beforeG(plan, batch, hole));
            at = pour(plan, batch, hole, at, Math.min(lastsS, Math.max(0, batch.workUntilS() - at)));
        }
        if (at < batch.workUntilS()) {
            bars.add(new Bar(plan.region(), at, batch.workUntilS(), 0, batch.number(), "", What.LEAVE));
        }
    }

    /** A hole at which mix shows only while the one before it is filled is not plugged before. */
    private void itsTurnNext(InjectionPlan plan, Hole hole, double atS) {
        List<Hole> filling = plan.filling();
        int next = filling.indexOf(hole) + 1;
        if (next < filling.size()) {
            String id = filling.get(next).id();
            vents.stream()
                    .filter(v -> v.region.equals(plan.region()) && v.hole.equals(id) && v.dueS > atS - Batches.HOLE_S)
                    .forEach(plugged::add);
        }
    }

    /** What cups of its own have put into a hole before. */
    private double beforeG(InjectionPlan plan, Batch batch, Hole hole) {
        return plan.batches().stream()
                .filter(b -> b.mixAtS() < batch.mixAtS() && b.holes().contains(hole.id()))
                .mapToDouble(b -> (b.partAG() + b.partBG()) * (1 - drilling.wasteFraction()))
                .sum();
    }

    /** One hole, and then on to the next; one who is alone plugs the vents that are due meanwhile. */
    private double pour(InjectionPlan plan, Batch batch, Hole hole, double fromS, double lastingS) {
        double at = fromS;
        double left = lastingS;
        for (Vent vent : helps == pours ? vents : List.<Vent>of()) {
            if (!plugged.contains(vent) && vent.dueS >= batch.mixAtS() && vent.dueS < at + left) {
                double stopS = Math.max(at, vent.dueS);
                inject(plan, batch, hole, at, stopS);
                left -= stopS - at;
                plug(vent, 1, stopS);
                at = stopS + Batches.HOLE_S;
            }
        }
        inject(plan, batch, hole, at, at + left);
        pours.take(at + left, at + left + Batches.HOLE_S);
        return at + left + Batches.HOLE_S;
    }

    private void inject(InjectionPlan plan, Batch batch, Hole hole, double fromS, double toS) {
        if (toS > fromS) {
            pours.take(fromS, toS);
            bars.add(new Bar(plan.region(), fromS, toS, 1, batch.number(), hole.id(), What.INJECT));
        }
    }

    private void plug(Vent vent) {
        double helpS = helps.freeS(vent.dueS, Batches.HOLE_S);
        double pourS = pours.freeS(vent.dueS, Batches.HOLE_S);
        plug(vent, helpS <= pourS ? helper : 1, Math.min(helpS, pourS));
    }

    private void plug(Vent vent, int worker, double atS) {
        double endS = atS + Batches.HOLE_S;
        (worker == 1 ? pours : helps).take(atS, endS);
        bars.add(new Bar(vent.region, atS, endS, worker, vent.cup, vent.hole, What.PLUG));
        plugged.add(vent);
    }

    private void rise(InjectionPlan plan, Batch batch) {
        double factor = factor(plan);
        if (resin(plan).expansion() > 1) {
            double endS = batch.mixAtS() + factor * resin(plan).riseEndS();
            bars.add(new Bar(plan.region(), batch.firstRiseS(), endS, 0, batch.number(), "", What.RISE));
            if (Lifts.last(batch, plan.batches())) { // over an earlier lift there is air
                warm(plan, batch);
            }
        }
        bars.add(new Bar(plan.region(), batch.hardAtS(), batch.hardAtS(), 0, batch.number(), "", What.HARD));
    }

    private void warm(InjectionPlan plan, Batch batch) {
        Curing curing = Curing.of(resin(plan), temperatureC);
        double warmS = batch.mixAtS() + curing.warmFromS();
        double coldS = batch.mixAtS() + curing.warmUntilS();
        bars.add(new Bar(plan.region(), warmS, coldS, 0, batch.number(), "", What.WARM));
        feel(plan, batch, warmS, coldS);
    }

    /** One round; none where nobody is free for it in time. */
    private void feel(InjectionPlan plan, Batch batch, double warmS, double coldS) {
        double lastingS = Batches.HOLE_S * (batch.holes().size() + SOUND_PLACES);
        double helpS = helps.freeS(warmS, lastingS);
        double pourS = pours.freeS(warmS, lastingS);
        double atS = Math.min(helpS, pourS);
        if (atS + lastingS <= coldS) {
            (helpS <= pourS ? helps : pours).take(atS, atS + lastingS);
            int worker = helpS <= pourS ? helper : 1;
            bars.add(new Bar(plan.region(), atS, atS + lastingS, worker, batch.number(), "", What.FEEL));
        }
    }

    private void hold(InjectionPlan plan) {
        if (plan.batches().isEmpty()) {
            return;
        }
        String region = plan.region();
        double hardS = plan.batches().stream().mapToDouble(Batch::hardAtS).max().orElse(0);
        if (survey.face(plan.holes().get(0).spot().face()).posture() == Posture.DECK) {
            plan.batches().stream()
                    .filter(b -> Lifts.last(b, plan.batches()))
                    .forEach(b -> bars.add(new Bar(
                            region,
                            closedS(region, b.number()),
                            b.hardAtS() + HELD_AFTER_S,
                            0,
                            b.number(),
                            "",
                            What.HOLD)));
        } else {
            bars.add(new Bar(region, plan.batches().get(0).mixAtS(), hardS + HELD_AFTER_S, 0, 0, "", What.HOLD));
        }
        double lastS = plan.batches().get(plan.batches().size() - 1).mixAtS();
        double loadS = Math.max(hardS, lastS + factor(plan) * WALK_S);
        bars.add(new Bar(region, loadS, loadS, 0, 0, "", What.LOAD));
    }

    /** When the last hole or vent of a cup is plugged. */
    private double closedS(String region, int cup) {
        return bars.stream()
                .filter(b -> b.region().equals(region) && b.batch() == cup)
                .mapToDouble(b -> switch (b.what()) {
                    case INJECT -> b.endS() + Batches.HOLE_S;
                    case PLUG -> b.endS();
                    default -> 0;
                })
                .max()
                .orElse(0);
    }
}
