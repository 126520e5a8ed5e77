package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.ragged;
import static corewright.DamageFixtures.rectangle;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.mix.Pour;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.Schedule;
import corewright.repair.work.Schedule.Bar;
import corewright.repair.work.Schedule.What;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Days of invented plans, and what they ask that no one can do. */
final class DayFaults {
    /** Mix that shows is plugged so soon: 6 mm of open hole lose a few grams of a slow rise in it. Practice. */
    private static final double PLUG_WITHIN_S = 120;

    private DayFaults() {}

    /** A deck with one or two places, its people, weather, tool and mixes drawn. */
    static Deck deckOf(long seed) {
        SplittableRandom random = new SplittableRandom(7000 + seed);
        Settings d = Settings.defaults();
        double[] pressures = {10, 40, 100};
        Drilling drilling =
                new Drilling(6.4, 12.5, 1.5, pressures[random.nextInt(3)], 3, 0.5, 150, 0.15, 60, 200, 12, 300, 6, 5);
        double temperatureC = 10 + 20 * random.nextDouble();
        List<Resin> resins = new ArrayList<>();
        for (Resin r : d.resins()) { // work times from 3 minutes up
            double work = r.structural() ? Math.max(180, r.workS() * (0.5 + random.nextDouble())) : r.workS();
            double share = work / r.workS();
            resins.add(new Resin(
                    r.name(),
                    r.hardenerPerResin(),
                    r.densityKgM3(),
                    r.expansion(),
                    r.pack(),
                    r.viscosityPaS(),
                    work,
                    r.firstRiseS() * share,
                    r.riseEndS() * share,
                    r.gelS() * share,
                    r.hardS() * share,
                    r.referenceC(),
                    r.structural(),
                    0,
                    0,
                    0,
                    0,
                    "invented"));
        }
        Settings settings = new Settings(
                d.thresholds(),
                drilling,
                resins,
                d.costs(),
                new Settings.Crew(1 + random.nextInt(2)),
                new Settings.Climate(temperatureC, 60),
                d.numerics());
        double[] tilts = {0, 3, 20, 80, 100, 170};
        Deck deck = deck(rectangle(0, -1500, 4000, 1500)).with(settings).slope(tilts[random.nextInt(tilts.length)], 90);
        int places = 1 + random.nextInt(2);
        for (int i = 0; i < places; i++) {
            Polygon area = (Polygon) AffineTransformation.translationInstance(-900 + 1400.0 * i, 0)
                    .transform(ragged(10 * seed + i, 250 + 450 * random.nextDouble()));
            boolean loose = random.nextInt(3) == 0;
            deck.region(
                    loose ? Condition.DELAMINATED : Condition.VOID,
                    area,
                    loose ? 0 : 0.5 + 7 * random.nextDouble() * random.nextDouble(),
                    0.1);
        }
        return deck;
    }

    /** Every fault in a sentence. */
    static List<String> of(Deck deck) {
        Survey survey = deck.survey();
        List<InjectionPlan> plans = Day.oneAfterAnother(
                Assessments.alone(survey, deck.damage(), new Memory()).injections(), deck.damage(), survey.settings());
        List<String> faults = new ArrayList<>();
        List<Bar> bars = Schedule.of(survey, plans).bars();
        List<Bar> all = new ArrayList<>(bars);
        all.addAll(Schedule.heldBack(survey, plans).bars());
        twoAtOnce(all, faults);
        for (InjectionPlan plan : plans) {
            Resin resin = survey.settings().resin(plan.resin());
            for (Batch batch : plan.batches()) {
                List<Bar> own =
                        bars.stream().filter(b -> b.batch() == batch.number()).toList();
                pouring(survey, plan, batch, own, faults);
                if (resin.expansion() > 1 && own.stream().noneMatch(b -> b.what() == What.FEEL)) {
                    faults.add("cup " + batch.number() + " is felt by nobody");
                }
            }
            vents(plan, resin.expansion() > 1, bars, faults);
        }
        return faults;
    }

    private static void twoAtOnce(List<Bar> bars, List<String> faults) {
        List<Bar> busy = bars.stream().filter(b -> b.worker() > 0).toList();
        for (Bar a : busy) {
            for (Bar b : busy) {
                boolean later = b.startS() > a.startS() || b.startS() == a.startS() && b.endS() > a.endS();
                if (a != b && later && a.worker() == b.worker() && b.startS() < a.endS() - 1e-6) {
                    faults.add("two at once: " + a + " and " + b);
                }
            }
        }
    }

    /** All within the work time, each hole as long as the gap needs. */
    private static void pouring(Survey survey, InjectionPlan plan, Batch batch, List<Bar> own, List<String> faults) {
        Drilling drilling = survey.settings().drilling();
        Resin resin = survey.settings().resin(plan.resin());
        Pour pour = new Pour(resin, drilling, survey.settings().climate().temperatureC());
        List<Hole> holes = plan.holes().stream()
                .filter(h -> batch.holes().contains(h.id()))
                .toList();
        double served = holes.stream().mapToDouble(Hole::servedMm3).sum();
        for (Hole hole : holes) {
            double netG =
                    (batch.partAG() + batch.partBG()) * (1 - drilling.wasteFraction()) * hole.servedMm3() / served;
            List<Bar> into = own.stream()
                    .filter(b -> b.what() == What.INJECT && b.hole().equals(hole.id()))
                    .toList();
            double lastsS =
                    into.stream().mapToDouble(b -> b.endS() - b.startS()).sum();
            double endS = into.stream().mapToDouble(Bar::endS).max().orElse(0);
            if (endS > batch.workUntilS() + 1e-6) {
                faults.add(hole.id() + " is poured after the work time");
            }
            if (lastsS < pour.seconds(hole, netG) * (1 - 1e-6)) {
                faults.add(String.format(
                        Locale.ROOT, "%s gets %.0f of %.0f s", hole.id(), lastsS, pour.seconds(hole, netG)));
            }
        }
    }

    private static void vents(InjectionPlan plan, boolean rises, List<Bar> bars, List<String> faults) {
        double zeroS = plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
        for (Hole vent : plan.holes()) {
            double dueS = zeroS
                    + plan.fill()
                            .arrivalS()
                            .map(r -> r.cellAt(vent.spot().xMm(), vent.spot().yMm()))
                            .orElse(Double.NaN);
            if (vent.fills() || Double.isNaN(dueS)) {
                continue;
            }
            if (!rises && plan.batches().stream().noneMatch(b -> b.mixAtS() <= dueS && dueS <= b.workUntilS())) {
                faults.add(String.format(Locale.ROOT, "%s is due at %.0f s, in no work time", vent.id(), dueS));
            }
            double lateS = bars.stream()
                    .filter(b -> b.what() == What.PLUG && b.hole().equals(vent.id()))
                    .mapToDouble(b -> b.startS() - dueS)
                    .max()
                    .orElse(Double.POSITIVE_INFINITY);
            if (lateS > PLUG_WITHIN_S) {
                faults.add(String.format(Locale.ROOT, "%s is plugged %.0f s late", vent.id(), lateS));
            }
        }
    }
}
