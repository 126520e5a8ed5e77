package corewright.decision;

import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.Way;
import corewright.overlay.Overlay;
import corewright.repair.plan.RepairOptions;
import corewright.survey.Feature;
import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import corewright.survey.settings.Thresholds;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What a rule may ask of a region.
 *
 * @param options of each region alone
 * @param drying of this region
 * @param daysAvailable the boat may dry for so long
 * @param aside rules that a person set aside
 * @param cutBeside a wet or rotted region that is cut out and shares an edge with this one; empty where there is none
 */
record Facts(
        Thresholds thresholds,
        RepairOptions options,
        Evidence evidence,
        List<DryingTime> drying,
        double daysAvailable,
        List<RuleOverride> aside,
        Optional<String> cutBeside) {
    Facts {
        drying = List.copyOf(drying);
        aside = List.copyOf(aside);
    }

    Region region() {
        return evidence.region();
    }

    Facts beside(String cut) {
        return new Facts(thresholds, options, evidence, drying, daysAvailable, aside, Optional.of(cut));
    }

    /** Who set a rule aside and why, the last of them; empty where nobody did. */
    Optional<RuleOverride> aside(String rule) {
        return aside.stream().filter(o -> o.rule().equals(rule)).reduce((before, later) -> later);
    }

    boolean loose() {
        return region().condition().loose();
    }

    boolean rotted() {
        return evidence.rot().isPresent();
    }

    Optional<String> wetFound() {
        return evidence.wetFound(thresholds);
    }

    /** Core that neither dries nor bonds: it comes out. */
    boolean lost() {
        return rotted() || wetFound().isPresent() || (loose() && region().wet());
    }

    boolean wetLoose() {
        return region().condition() == Condition.WET_DELAMINATED;
    }

    boolean underLoad() {
        return !evidence.loads().isEmpty();
    }

    boolean bondedWet() {
        return !lost() && !loose();
    }

    /** Loose over core that is more probably dry, and no load on it. */
    boolean looseDry() {
        return !lost() && loose() && !underLoad();
    }

    boolean low() {
        return evidence.meanIndex() < thresholds.monitorIndex();
    }

    String holds() {
        List<String> names =
                evidence.loads().stream().map(Feature.Fitting::name).distinct().toList();
        return region().id() + " holds or touches the place of " + Words.list(names) + ", which "
                + (names.size() == 1 ? "carries" : "carry") + " load.";
    }

    String mean() {
        return Double.isNaN(evidence.meanIndex())
                ? "The skin is bonded, and how wet the core is was not read here"
                : String.format(
                        Locale.ROOT,
                        "The skin is bonded. The readings stand at %.0f on the mean, where 0 is this deck dry and 100 "
                                + "counts as wet",
                        evidence.meanIndex());
    }

    String wetChance() {
        return region().pWetMean() > 0.99
                ? "more than 99 in 100"
                : String.format(Locale.ROOT, "%.0f in 100", 100 * region().pWetMean());
    }

    /** How long it dries through holes; empty where it is dry, or no time is told. */
    Optional<DryingTime> throughHoles() {
        return drying.stream()
                .filter(t -> t.way() == Way.THROUGH_HOLES && t.days() != null)
                .findFirst();
    }

    boolean driesInTime() {
        return throughHoles().map(t -> t.within(daysAvailable)).orElse(true);
    }

    boolean large() {
        return region().likely().getArea() > thresholds.injectLargestMm2();
    }

    /** No plan, and not by a defect of this program. */
    boolean cannotBePlanned() {
        return !options.fillable(region().id()) && options.failed(region().id()).isEmpty();
    }

    /** Loose, dry, small enough, and it can be planned. */
    boolean injectable() {
        return looseDry() && !large() && !cannotBePlanned();
    }

    Optional<String> against() {
        return evidence.notDry(thresholds);
    }

    /** Found dry somewhere, and nothing against it. */
    boolean proven() {
        return against().isEmpty() && evidence.dryProof(thresholds).isPresent();
    }

    Optional<Geometry> beyond() {
        return evidence.beyondProof(thresholds);
    }

    String reachOfProof() {
        double rest = beyond().map(Geometry::getArea).orElse(0.0);
        return String.format(
                Locale.ROOT,
                "That speaks for %.0f mm around, and %s of %s lie farther off: water comes and goes within that distance.",
                Evidence.PROOF_REACH_MM,
                Words.squareMetres(rest),
                region().id());
    }

    /** Well inside what no proof reaches. */
    Spot beyondSpot() {
        Coordinate at = beyond().orElse(region().likely()).getInteriorPoint().getCoordinate();
        return new Spot(region().face(), at.x, at.y);
    }

    /** Whether one more hole that finds dry core there would prove all of it. */
    boolean wouldBeProven(Spot spot) {
        Geometry reached =
                region().likely().getFactory().createPoint(spot.coordinate()).buffer(Evidence.PROOF_REACH_MM);
        double rest = Overlay.difference(
                        beyond().orElse(region().likely().getFactory().createPolygon()), reached)
                .getArea();
        return rest <= Evidence.BEYOND_SHARE * region().likely().getArea();
    }

    /** The planned hole nearest to the region's middle: allowed there, and used again when the place is filled. */
    Spot pilotSpot() {
        Spot middle = new Spot(
                region().face(), region().label().getX(), region().label().getY());
        return options.injectionHoles(region().id()).stream()
                .min(Comparator.comparingDouble(s -> s.coordinate().distance(middle.coordinate())))
                .orElse(middle);
    }
}
