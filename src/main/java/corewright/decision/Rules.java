package corewright.decision;

import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.survey.Feature;
import corewright.survey.Spot;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The rules for one region, in order: (1) rotted core, or wet core under a loose skin, or wet core found, is cut out; (2)
 * nothing is injected under a load; (3) wet and bonded is watched or dried; (4) loose over dry core is injected where the
 * core is proven dry and the patch is not too large.
 *
 * <p>Common practice; see docs/repair.md. Reasons come in the order in which they settled the matter.
 */
final class Rules {
    private final Thresholds rules;
    private final RepairOptions options;
    private final Evidence evidence;
    private final Region region;
    private final List<String> reasons = new ArrayList<>();
    private final Map<Method, String> notOffered = new EnumMap<>(Method.class);
    private @Nullable String firstStep;

    private Rules(Thresholds rules, RepairOptions options, Evidence evidence) {
        this.rules = rules;
        this.options = options;
        this.evidence = evidence;
        region = evidence.region();
    }

    static RegionDecision decide(Thresholds rules, RepairOptions options, Evidence evidence) {
        return new Rules(rules, options, evidence).decide();
    }

    private RegionDecision decide() {
        Method method = method();
        notOffered.remove(method);
        options.failed(region.id()).ifPresent(d -> reasons.add(d.sentence()));
        return new RegionDecision(
                region.id(),
                method,
                reasons,
                firstStep,
                notOffered,
                !evidence.loads().isEmpty());
    }

    private Method method() {
        boolean lost = rottedOrWet();
        boolean underLoad = underLoad();
        if (!region.condition().loose()) {
            refuse(Method.INJECT, "The skin is bonded: there is no empty space to fill.");
        }
        if (lost) {
            return Method.RECORE;
        }
        if (!region.condition().loose()) {
            return wetAndBonded(underLoad);
        }
        refuse(
                Method.DRY_OUT,
                "The core is more probably dry than wet here, and drying does not bond a loose skin again.");
        return underLoad ? Method.RECORE : looseAndDry();
    }

    /** Keeps the first reason given. */
    private void refuse(Method method, String why) {
        notOffered.putIfAbsent(method, why);
    }

    private boolean rottedOrWet() {
        Optional<String> rot = evidence.rot();
        Optional<String> found = evidence.wetFound(rules);
        boolean loose = region.condition().loose();
        if (rot.isPresent()) {
            reasons.add(rot.get() + " Nothing bonds to it, so it is cut out.");
            refuse(Method.MONITOR, "Rot goes on while it is wet: waiting makes it larger.");
            refuse(Method.DRY_OUT, "Drying does not bring back rotted core.");
            refuse(Method.INJECT, "The core is rotted: mix poured into it misses the point.");
        }
        if (region.condition() == Condition.WET_DELAMINATED) {
            reasons.add(
                    "The core is wet and the skin is off it: drying does not bond a skin again, and mix does not bond "
                            + "to wet core.");
        } else if (loose && region.wet()) {
            reasons.add("The skin stands off the core, and the core is more probably wet than dry ("
                    + inAHundred(region.pWetMean()) + "): mix does not bond to wet core.");
        }
        if (found.isPresent() && rot.isEmpty()) {
            reasons.add(found.get() + " Core that is wet through is cut out.");
        }
        boolean wet = found.isPresent() || (loose && region.wet());
        if (wet) {
            refuse(Method.INJECT, "The core is wet: mix does not bond to it.");
            refuse(
                    Method.DRY_OUT,
                    loose
                            ? "Drying does not bond a loose skin again."
                            : "Wet core was found, not only a raised reading: it dries too slowly under two skins.");
        }
        return rot.isPresent() || wet;
    }

    private static String inAHundred(double probability) {
        return probability > 0.99
                ? "more than 99 in 100"
                : String.format(Locale.ROOT, "%.0f in 100", 100 * probability);
    }

    private boolean underLoad() {
        List<String> names =
                evidence.loads().stream().map(Feature.Fitting::name).distinct().toList();
        if (names.isEmpty()) {
            return false;
        }
        String holds = region.id() + " holds or touches the place of " + Words.list(names) + ", which "
                + (names.size() == 1 ? "carries" : "carry") + " load.";
        if (region.condition().loose()) {
            reasons.add(holds + " Injection is not offered under a load; a naval architect or surveyor decides.");
            refuse(Method.INJECT, holds + " Injection is not offered under a load.");
            refuse(Method.MONITOR, holds + " A loose skin under a load is not left as it is.");
        } else {
            reasons.add(holds + " Take it off, seal the core's edge and bed it again before anything else; a naval "
                    + "architect or surveyor decides.");
        }
        return true;
    }

    private Method wetAndBonded(boolean underLoad) {
        boolean low = evidence.meanIndex() < rules.monitorIndex();
        String mean = Double.isNaN(evidence.meanIndex())
                ? "The skin is bonded, and how wet the core is was not read here"
                : String.format(
                        Locale.ROOT,
                        "The skin is bonded. The readings stand at %.0f on the mean, where 0 is this deck dry and 100 "
                                + "counts as wet",
                        evidence.meanIndex());
        if (low && !underLoad) {
            reasons.add(mean + "; below " + Words.plain(rules.monitorIndex()) + " it is watched.");
            reasons.add("Reseal the fittings around it and read again after a dry spell: what rises is a leak.");
            return Method.MONITOR;
        }
        reasons.add(mean
                + (low ? ", but water at a load-bearing fitting is not left in." : ": it is dried before it rots."));
        reasons.add("Find the leak and stop it first, then open the holes, dry, and read again.");
        return Method.DRY_OUT;
    }

    private Method looseAndDry() {
        double area = region.likely().getArea();
        if (area > rules.injectLargestMm2()) {
            String large = "At " + Words.squareMetres(area) + " it is larger than the "
                    + Words.squareMetres(rules.injectLargestMm2())
                    + " that are injected blind: it is opened, so that the bond can be seen.";
            reasons.add(large);
            refuse(Method.INJECT, large);
            return Method.RECORE;
        }
        Optional<InjectionPlan> plan = options.injection(region.id());
        if (plan.isEmpty() && options.failed(region.id()).isEmpty()) {
            String why = options.refused().getOrDefault(region.id(), "No injection could be planned here.");
            reasons.add(why);
            refuse(Method.INJECT, why);
            return Method.RECORE;
        }
        Optional<String> against = evidence.notDry(rules);
        Optional<String> proof = evidence.dryProof(rules);
        if (against.isEmpty() && proof.isPresent()) {
            Optional<Geometry> beyond = evidence.beyondProof(rules);
            reasons.add(proof.get());
            if (beyond.isPresent()) {
                return beyondProof(beyond.get());
            }
            reasons.add(
                    region.condition() == Condition.VOID
                            ? "The skin stands over an empty space that can be filled through small holes."
                            : "The skin is loose and can be bonded again through small holes.");
            return Method.INJECT;
        }
        return unproven(against, plan);
    }

    /** Proven dry in one place, but the region goes on farther than that proof speaks. */
    private Method beyondProof(Geometry beyond) {
        Coordinate at = beyond.getInteriorPoint().getCoordinate();
        String reach = String.format(
                Locale.ROOT,
                "That speaks for %.0f mm around, and %s of %s lie farther off: water comes and goes within that distance.",
                Evidence.PROOF_REACH_MM,
                Words.squareMetres(beyond.getArea()),
                region.id());
        reasons.add(reach);
        refuse(Method.INJECT, "The core is proven dry in a part only. " + reach);
        firstStep = "Drill a further pilot hole at " + Words.place(evidence.face(), new Spot(region.face(), at.x, at.y))
                + " and look at the core: dry core opens the way to injection, wet core means cutting out.";
        return Method.MONITOR;
    }

    private Method unproven(Optional<String> against, Optional<InjectionPlan> plan) {
        String place = Words.place(evidence.face(), pilotSpot(plan));
        if (against.isPresent()) {
            reasons.add("The skin is loose, and the core is not proven dry. " + against.get());
            refuse(Method.INJECT, "The core is not proven dry. " + against.get());
            firstStep = "Open the place to the air until it is dry, then drill a pilot hole at " + place
                    + " and look at the core: dry core opens the way to injection, wet core means cutting out.";
        } else {
            reasons.add(
                    "The skin is loose over core that is more probably dry, but no pilot hole or core sample inside "
                            + "proves it; a moisture meter proves nothing.");
            refuse(
                    Method.INJECT,
                    "The core is not proven dry: no pilot hole or core sample inside says so, and a moisture meter proves "
                            + "nothing.");
            firstStep = "Drill a pilot hole at " + place
                    + " and look at the core: dry core opens the way to injection, wet core means cutting out.";
        }
        return Method.MONITOR;
    }

    /** The planned hole nearest to the region's middle: allowed there, and used again when the place is filled. */
    private Spot pilotSpot(Optional<InjectionPlan> plan) {
        Spot middle =
                new Spot(region.face(), region.label().getX(), region.label().getY());
        return plan.stream()
                .flatMap(p -> p.holes().stream())
                .filter(h -> h.kind() == Hole.Kind.INJECTION)
                .map(Hole::spot)
                .min(Comparator.comparingDouble(s -> s.coordinate().distance(middle.coordinate())))
                .orElse(middle);
    }
}
