package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.drying.DryingTime;
import corewright.repair.plan.RepairOptions;
import corewright.survey.CoreMoisture;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;

/**
 * For each region the observation that would give it another method, and how likely it turns out so: a pilot hole, by the probability of
 * wet core at its place, of a loose skin over core that is not proven dry with what looseness says of water; the readings' mean, by its standard error. Where a person decided, nothing is told.
 */
final class WhatWouldChange {
    /** Readings this far apart err by themselves: the range of fields of water on decks. Common practice. */
    private static final double RANGE_MM = 110;

    private static final double STEP_MM = 25;

    /** Less likely than this is not worth a line. */
    private static final double LEAST = 0.01;

    private final Survey survey;
    private final RepairOptions options;
    private final List<DryingTime> drying;
    private final List<Flip> flips = new ArrayList<>();

    private WhatWouldChange(Survey survey, RepairOptions options, List<DryingTime> drying) {
        this.survey = survey;
        this.options = options;
        this.drying = drying;
    }

    /** R1 first, of each region the most likely first. */
    static List<Flip> of(
            Survey survey,
            DamageMap damage,
            RepairOptions options,
            List<DryingTime> drying,
            List<RegionDecision> decisions) {
        List<Flip> all = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                for (RegionDecision decision : decisions) {
                    if (decision.region().equals(region.id()) && decision.overruled() == null) {
                        WhatWouldChange one = new WhatWouldChange(survey, options, drying);
                        one.ask(face, region, decision);
                        one.flips.removeIf(f -> !(f.probability() >= LEAST));
                        one.flips.sort(
                                Comparator.comparingDouble(Flip::probability).reversed());
                        all.addAll(one.flips);
                    }
                }
            }
        }
        return all;
    }

    private void ask(FaceDamage face, Region region, RegionDecision decision) {
        Facts facts = Methods.facts(survey, face, region, options, drying);
        Spot pilot = decision.pilot();
        if (pilot != null) {
            double wet = facts.proven() ? at(face, pilot) : underLoose(face, pilot);
            hole(decision, Method.RECORE, "wet", pilot, wet, facts);
            if (!fired(decision, "not dry") && facts.wouldBeProven(pilot)) {
                hole(decision, Method.INJECT, "dry", pilot, 1 - wet, facts);
            }
        } else if (decision.method() == Method.INJECT) {
            Spot spot = farthest(region, facts);
            hole(decision, Method.RECORE, "wet", spot, at(face, spot), facts);
        } else if (decision.method() != Method.RECORE && region.wet()) {
            Spot spot = new Spot(
                    region.face(), region.label().getX(), region.label().getY());
            hole(decision, Method.RECORE, "wet", spot, at(face, spot), facts);
            if (!facts.underLoad() && facts.driesInTime() && speaks(facts, "wet but little")) {
                mean(face, region, decision, facts);
            }
        }
    }

    /** A rule that was set aside changes nothing. */
    private static boolean speaks(Facts facts, String rule) {
        return facts.aside(rule).isEmpty();
    }

    private static boolean fired(RegionDecision decision, String rule) {
        return decision.rules().stream().anyMatch(r -> r.name().equals(rule));
    }

    private static double at(FaceDamage face, Spot spot) {
        return face.surfaces().pWetAt(spot.xMm(), spot.yMm());
    }

    /**
     * Of wet core under a loose skin. The map of water does not ask whether the skin is loose; where the two go together it says
     * too little, and Bayes' rule multiplies the odds.
     */
    private static double underLoose(FaceDamage face, Spot spot) {
        double ratio = face.surfaces().looseIfWetOverDry(Math.PI * RANGE_MM * RANGE_MM);
        double wet = at(face, spot);
        return wet * ratio / (wet * ratio + 1 - wet);
    }

    private void hole(RegionDecision d, Method becomes, String found, Spot spot, double chance, Facts facts) {
        if (!speaks(facts, becomes == Method.RECORE ? "wet core found" : "proven dry")) {
            return;
        }
        String condition =
                "a pilot hole at " + Words.place(facts.evidence().face(), spot) + " finds " + found + " core";
        flips.add(new Flip(d.region(), d.method(), becomes, condition, chance, spot));
    }

    /** The mean's own error: each cell's, less for every range that the region is wide. */
    private void mean(FaceDamage face, Region region, RegionDecision decision, Facts facts) {
        double limit = facts.thresholds().monitorIndex();
        double mean = facts.evidence().meanIndex();
        double error = face.surfaces().meanMoistureIndexSd(region.likely())
                / Math.sqrt(Math.max(1, region.likely().getArea() / (Math.PI * RANGE_MM * RANGE_MM)));
        if (Double.isNaN(mean) || !(error > 0)) {
            return;
        }
        boolean above = mean < limit;
        String condition = String.format(
                Locale.ROOT,
                "further readings bring the mean of %.0f %s %s",
                mean,
                above ? "to" : "below",
                Words.plain(limit) + (above ? " or more" : ""));
        Method becomes = above ? Method.DRY_OUT : Method.MONITOR;
        flips.add(new Flip(
                decision.region(), decision.method(), becomes, condition, tail(Math.abs(mean - limit) / error), null));
    }

    /** Farthest from every hole that found dry core. */
    private static Spot farthest(Region region, Facts facts) {
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(region.likely());
        List<Coordinate> proofs = facts.evidence().cavityProbes().stream()
                .filter(p -> p.water() == CoreMoisture.DRY)
                .map(p -> p.spot().coordinate())
                .toList();
        Coordinate best = region.label().getCoordinate();
        double most = -1;
        Envelope box = region.likely().getEnvelopeInternal();
        for (double x = box.getMinX() + STEP_MM / 2; x < box.getMaxX(); x += STEP_MM) {
            for (double y = box.getMinY() + STEP_MM / 2; y < box.getMaxY(); y += STEP_MM) {
                Coordinate c = new Coordinate(x, y);
                double nearest = proofs.stream().mapToDouble(c::distance).min().orElse(0);
                if (nearest > most && inside.locate(c) == Location.INTERIOR) {
                    most = nearest;
                    best = c;
                }
            }
        }
        return new Spot(region.face(), best.x, best.y);
    }

    /** Of a standard normal above z (Abramowitz and Stegun 1964, 26.2.17, to 1e-7). */
    static double tail(double z) {
        double t = 1 / (1 + 0.2316419 * z);
        double poly = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * poly;
    }
}
