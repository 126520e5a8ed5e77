package corewright.repair.fill;

import corewright.repair.mix.Batches;
import corewright.repair.mix.HoleShares;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Mix;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How much goes into which hole, and from which cups.
 *
 * @param netG into all holes
 * @param fullG for the whole cavity, overfilled
 * @param lifts in how many lifts its holes are filled
 */
public record Pouring(
        String region,
        List<Hole> holes,
        double netG,
        double fullG,
        List<Batch> batches,
        Resin resin,
        Settings settings,
        Lifts lifts) {
    /** A hole may take so much more or less in the flow than it is given. */
    private static final double AS_POURED = 0.08;

    /** Rounding of what a scale shows, grams. */
    private static final double ROUNDING_G = 0.1;

    /** Where less than this share goes in, every hole gets less; a little stays over at the best of plans. */
    private static final double GOES_IN = 0.97;

    /** One step less. */
    private static final double LESS = 0.96;

    /** A hole that takes less than this share of what holes take on the mean takes nothing. Practice. */
    private static final double NOTHING = 0.05;

    private static final double SECONDS_PER_HOUR = 3600;

    /** With the grams of the whole cavity, by what each hole serves. */
    public static Pouring of(
            String region, List<Hole> holes, double netG, Resin resin, Settings settings, Lifts lifts) {
        return new Pouring(region, List.of(), 0, netG, List.of(), resin, settings, lifts).with(holes, netG);
    }

    private Pouring with(List<Hole> otherHoles, double otherNetG) {
        HoleShares shares = HoleShares.of(otherHoles, otherNetG);
        Mix mix = mix(shares.netG(), resin, settings);
        List<Batch> cups = Batches.of(region, shares.holes(), mix, resin, settings, lifts);
        return new Pouring(region, shares.holes(), shares.netG(), fullG, cups, resin, settings, lifts);
    }

    private static Mix mix(double netG, Resin resin, Settings settings) {
        return Mix.ofNet(netG, resin, settings.drilling().wasteFraction());
    }

    /** All that is mixed for them. */
    public Mix mix() {
        return mix(netG, resin, settings);
    }

    /** Whether less would still fill the cavity: not overfilled as far as the mix may be. */
    boolean canBeLess() {
        return netG * LESS >= fullG / resin.pack();
    }

    Pouring less() {
        return with(holes, netG * LESS);
    }

    /** Whether its holes get less than the whole cavity takes. */
    boolean canBeMore() {
        return netG < GOES_IN * fullG;
    }

    /** As much in all, but so many times as much into each hole, by its id. */
    Pouring times(Map<String, Double> factors) {
        double cavityMm3 = holes.stream().mapToDouble(Hole::servedMm3).sum();
        double sum = holes.stream()
                .mapToDouble(h -> h.servedMm3() * factors.getOrDefault(h.id(), 1.0))
                .sum();
        List<Hole> changed = holes.stream()
                .map(h -> h.serving(h.servedMm3() * factors.getOrDefault(h.id(), 1.0) * cavityMm3 / sum))
                .toList();
        return with(changed, netG);
    }

    /** The grams of the whole cavity, shared as these are. */
    Pouring full() {
        return with(holes, fullG);
    }

    /** A sentence where its cups take more than a day's work. */
    public Optional<String> tooLong() {
        double lastsS = batches.stream().mapToDouble(Batch::workUntilS).max().orElse(0);
        double hoursPerDay = settings.costs().hoursPerDay();
        return lastsS <= SECONDS_PER_HOUR * hoursPerDay
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "Its cups take %.0f hours, more than a day of %s: stop for the night after a cup, and mix the next when"
                                + " you are back.",
                        lastsS / SECONDS_PER_HOUR,
                        Amounts.plain(hoursPerDay)));
    }

    /** Liquid for each hole. */
    public Map<String, Double> liquidMm3() {
        double served = holes.stream().mapToDouble(Hole::servedMm3).sum();
        Map<String, Double> liquid = new LinkedHashMap<>();
        for (Hole hole : holes) {
            liquid.put(hole.id(), netG / gPerMm3() * hole.servedMm3() / served);
        }
        return liquid;
    }

    private double gPerMm3() {
        return resin.densityKgM3() * 1e-6;
    }

    /** Whether every hole takes what it is given. */
    boolean taken(Map<String, Double> takenMm3) {
        Map<String, Double> given = liquidMm3();
        return given.keySet().stream()
                .allMatch(id -> Math.abs(takenMm3.getOrDefault(id, 0.0) - given.getOrDefault(id, 0.0))
                        <= AS_POURED * given.getOrDefault(id, 0.0) + ROUNDING_G / gPerMm3());
    }

    /**
     * Grams after a fill with these. Where cups rise into the places of later ones, not all goes in: then every hole gets
     * less in proportion, so that later holes still take theirs. Where it goes in elsewhere than planned, each gets what it took, and one
     * that takes nothing is left out.
     *
     * @param exactly each gets what it took in any case
     */
    Pouring after(Map<String, Double> takenMm3, boolean exactly) {
        double taken = takenMm3.values().stream().mapToDouble(v -> v).sum();
        if (!(taken > 0)) {
            return this; // nothing goes in anywhere: no hole does worse than another
        }
        double share = taken * gPerMm3() / netG;
        if (share < GOES_IN && !exactly) {
            return with(holes, netG * share);
        }
        double cavityMm3 = holes.stream().mapToDouble(Hole::servedMm3).sum();
        double least = NOTHING * taken / holes.size();
        double kept = takenMm3.values().stream()
                .filter(v -> v >= least)
                .mapToDouble(v -> v)
                .sum();
        List<Hole> changed = new ArrayList<>();
        for (Hole hole : holes) {
            double mm3 = takenMm3.getOrDefault(hole.id(), 0.0);
            if (mm3 >= least) {
                changed.add(hole.serving(cavityMm3 * mm3 / kept));
            }
        }
        return with(changed, netG * Math.min(1, share));
    }
}
