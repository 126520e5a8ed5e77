package corewright.repair.work;

import corewright.repair.mix.Batches;
import corewright.repair.mix.HeldCups;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Mix;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A new plan of a space that is filled in part: what went in by an earlier revision stands as that planned it, and the open holes
 * share what the space still wants.
 *
 * @param doneG grams that were planned for each filled hole, without waste
 * @param takenG into these by the log
 */
record PartFilled(Survey survey, Map<String, Double> doneG, double takenG) {
    /** Plans are written in tenths of a gram: no more than their rounding. */
    static final double SAME_G = 0.05 + 1e-6;

    /** Where the space wants no more, open holes get this share to try until mix shows. Practice. */
    private static final double TO_TRY = 0.1;

    /** Less is rounding. */
    private static final double TOLD_G = 1;

    PartFilled {
        doneG = Collections.unmodifiableMap(new LinkedHashMap<>(doneG)); // sums keep their order
    }

    /** The plan as it is where it gives the filled holes what they were given. */
    InjectionPlan of(InjectionPlan fresh) {
        Map<String, Double> freshG = WorkLog.planned(fresh, waste());
        boolean other = doneG.entrySet().stream()
                .anyMatch(e -> Math.abs(e.getValue() - freshG.getOrDefault(e.getKey(), 0.0)) > SAME_G);
        return other && sum(freshG) > 0 ? adapted(fresh, freshG) : fresh;
    }

    private double waste() {
        return survey.settings().drilling().wasteFraction();
    }

    private InjectionPlan adapted(InjectionPlan fresh, Map<String, Double> freshG) {
        double wantedG = sum(freshG);
        double openG = freshG.entrySet().stream()
                .filter(e -> !doneG.containsKey(e.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        double stillG = wantedG - sum(doneG);
        double share = openG > 0 ? Math.min(1, Math.max(TO_TRY, stillG / openG)) : 0;
        double mm3PerG = fresh.filling().stream().mapToDouble(Hole::servedMm3).sum() / wantedG;
        List<Hole> holes = fresh.holes().stream()
                .map(h -> hole(h, share, mm3PerG * (share * freshG.getOrDefault(h.id(), 0.0)), mm3PerG))
                .toList();
        Mix mix = Mix.ofNet(sum(doneG) + share * openG, resin(fresh), waste());
        return with(fresh, holes, mix, said(share, openG, stillG));
    }

    private Hole hole(Hole hole, double share, double openMm3, double mm3PerG) {
        Double done = doneG.get(hole.id());
        Hole.Range range = hole.range();
        if (done != null) {
            return hole.serving(mm3PerG * done).with(new Hole.Range(done, done));
        }
        return hole.fills()
                ? hole.serving(openMm3).with(new Hole.Range(share * range.lowG(), share * range.highG()))
                : hole;
    }

    private List<String> said(double share, double openG, double stillG) {
        String in = Amounts.grams(takenG) + " of an earlier revision are in";
        double missingG = stillG - share * openG;
        List<String> said = new ArrayList<>();
        if (openG <= 0) {
            said.add(in + ", and every hole is filled: do not mix for them again.");
        } else if (share > TO_TRY) {
            said.add(in + ": do not mix for filled holes again. The other grams are for what the space still wants.");
        } else {
            said.add(in
                    + ": do not mix for filled holes again. The space wants little more: the other grams are a tenth of"
                    + " a full fill, to try. Stop as soon as mix shows or the skin rises.");
        }
        if (missingG > TOLD_G) {
            said.add("The space wants " + Amounts.grams(missingG)
                    + " more than the open places take: tap round the filled ones after cure.");
        }
        return said;
    }

    private InjectionPlan with(InjectionPlan fresh, List<Hole> holes, Mix mix, List<String> said) {
        Resin resin = resin(fresh);
        double buyG = Math.max(fresh.buyG(), mix.grossG());
        double likelyG = HeldCups.likelyG(fresh.cavityMm3().p50(), mix, resin, waste());
        List<String> arithmetic = new ArrayList<>(Mix.arithmetic(fresh.cavityMm3(), resin, waste()));
        arithmetic.addAll(HeldCups.told(mix.grossG(), likelyG, buyG - mix.grossG(), resin));
        List<String> cautions = new ArrayList<>(said);
        cautions.addAll(fresh.cautions());
        Fill fill = fresh.fill();
        Outlook outlook = fresh.outlook();
        return new InjectionPlan(
                fresh.region(),
                fresh.parts(),
                fresh.resin(),
                fresh.cavityMm3(),
                fresh.reachMm(),
                fresh.reachGovernedBy(),
                holes,
                fresh.coveredFraction(),
                cups(fresh.region(), holes, mix.netG(), resin),
                mix.partAG(),
                mix.partBG(),
                buyG,
                arithmetic,
                cautions,
                // what each hole took in the simulation was of a fill from the beginning
                new Fill(
                        fill.arrivalS(),
                        fill.liquidShare(),
                        fill.emptyShare(),
                        fill.pockets(),
                        Map.of(),
                        Map.of(),
                        fill.density()),
                new Outlook(
                        outlook.emptySmall(),
                        outlook.emptyLarge(),
                        outlook.emptyLargeWithout(),
                        likelyG,
                        buyG - mix.grossG(),
                        outlook.shows()));
    }

    private Resin resin(InjectionPlan plan) {
        return survey.settings().resin(plan.resin());
    }

    /** Those of the filled holes first, then those of the open ones, when the last of them is out of the pot and has risen. */
    private List<Batch> cups(String region, List<Hole> holes, double netG, Resin resin) {
        double inG = sum(doneG);
        List<Hole> done = holes.stream().filter(h -> doneG.containsKey(h.id())).toList();
        List<Hole> open = holes.stream().filter(h -> !doneG.containsKey(h.id())).toList();
        List<Batch> cups = new ArrayList<>(cups(region, done, Mix.ofNet(inG, resin, waste()), resin));
        double factor = resin.timeFactor(survey.settings().climate().temperatureC());
        double riseS = resin.expansion() > 1 ? factor * resin.riseEndS() : 0;
        double freeS = cups.stream()
                .mapToDouble(c -> Math.max(c.workUntilS(), c.mixAtS() + riseS))
                .max()
                .orElse(0);
        int before = cups.size();
        cups(region, open, Mix.ofNet(netG - inG, resin, waste()), resin)
                .forEach(c -> cups.add(c.movedTo(before + c.number(), freeS)));
        return cups;
    }

    private List<Batch> cups(String region, List<Hole> holes, Mix mix, Resin resin) {
        Settings settings = survey.settings();
        List<Hole> filling = holes.stream().filter(h -> h.servedMm3() > 0).toList();
        if (filling.isEmpty()) {
            return List.of();
        }
        Lifts lifts = Lifts.of(survey.face(filling.get(0).spot().face()), settings.drilling());
        return Batches.of(region, filling, mix, resin, settings, lifts);
    }

    private static double sum(Map<String, Double> grams) {
        return grams.values().stream().mapToDouble(g -> g).sum();
    }
}
