package corewright.comparison;

import corewright.damage.Condition;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.damage.Parameters;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.survey.Face;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Figures of one face in both surveys: of all of it and of places on it. */
final class FaceFigures {
    /** Whole faces are told in these. */
    static final List<Quantity> TOTALS = List.of(
            Quantity.DAMAGED,
            Quantity.WET,
            Quantity.DELAMINATED,
            Quantity.WET_DELAMINATED,
            Quantity.VOID,
            Quantity.WATER,
            Quantity.LOOSE,
            Quantity.VOID_VOLUME);

    final FaceDamage before;
    final FaceDamage after;
    private final Parameters.Drawn drawnBefore;
    private final Parameters.Drawn drawnAfter;
    private final String water;
    private final Coverage coverageBefore;
    private final Coverage coverageAfter;
    private final boolean seenBefore;
    private final boolean seenAfter;
    private final ReadPlaces readBefore;
    private final ReadPlaces readAfter;

    FaceFigures(Side before, Side after, Face face) {
        this.before = before.damage().face(face.name());
        this.after = after.damage().face(face.name());
        drawnBefore = before.parameters().drawn(this.before);
        drawnAfter = after.parameters().drawn(this.after);
        water = MeterScales.whyNot(before.survey(), after.survey(), face.name());
        coverageBefore = Coverage.of(before.survey(), this.before.face());
        coverageAfter = Coverage.of(after.survey(), this.after.face());
        seenBefore = before.survey().readings().on(face.name()).coreSeen();
        seenAfter = after.survey().readings().on(face.name()).coreSeen();
        readBefore = new ReadPlaces(before.survey(), this.before);
        readAfter = new ReadPlaces(after.survey(), this.after);
    }

    /** The sentence on the meters' scales; empty where water can be compared. */
    String water() {
        return water;
    }

    /** One figure of a face with the draws behind it, so that faces can be added up. */
    record Figure(Change change, List<Double> before, List<Double> after) {}

    Figure total(Quantity quantity) {
        Polygon all = before.face().outline();
        String why = whyNot(quantity);
        if (why.isEmpty()) {
            why = unread(quantity);
        }
        return figure("", quantity, all, whole(before, quantity, all), whole(after, quantity, all), why);
    }

    /** Of a whole face; its empty space as drawn together, which is more than its regions' middles added up. */
    private static double whole(FaceDamage face, Quantity quantity, Geometry all) {
        return quantity == Quantity.VOID_VOLUME ? face.voidMm3().p50() : mapped(face, quantity, all);
    }

    /** A figure of a place. */
    Figure of(String region, Quantity quantity, Polygon area) {
        String why = whyNot(quantity);
        if (why.isEmpty() && !readAfter.read(area, quantity)) {
            why = "It was not read again.";
        } else if (why.isEmpty() && !readBefore.read(area, quantity)) {
            why = "It was not read before.";
        }
        return figure(region, quantity, area, mapped(before, quantity, area), mapped(after, quantity, area), why);
    }

    boolean readAgain(Quantity quantity, Polygon area) {
        return readAfter.read(area, quantity);
    }

    boolean readBefore(Quantity quantity, Polygon area) {
        return readBefore.read(area, quantity);
    }

    private Figure figure(String region, Quantity quantity, Polygon area, double was, double is, String why) {
        String face = before.face().name();
        List<Double> drawnWas = drawn(drawnBefore, quantity, area);
        List<Double> drawnIs = drawn(drawnAfter, quantity, area);
        boolean few = Math.min(drawnWas.size(), drawnIs.size()) < Limits.LEAST_DRAWS;
        String reason = why.isEmpty() && few ? "Fewer than a hundred draws were asked for." : why;
        Change change = reason.isEmpty()
                ? new Change(
                        face,
                        region,
                        quantity,
                        was,
                        is,
                        Limits.ofDifference(drawnWas, drawnIs)
                                .widened(quantity.widening())
                                .with(is - was),
                        Double.NaN,
                        "")
                : Change.open(face, region, quantity, was, is, reason);
        return new Figure(change, drawnWas, drawnIs);
    }

    private static List<Double> drawn(Parameters.Drawn drawn, Quantity quantity, Geometry area) {
        return quantity == Quantity.VOID_VOLUME ? drawn.voidMm3(area) : drawn.areaMm2(area, quantity.conditions());
    }

    private String whyNot(Quantity quantity) {
        if (quantity.needsWater() && !water.isEmpty()) {
            return water;
        }
        boolean empty = quantity == Quantity.VOID_VOLUME || quantity == Quantity.VOID;
        return empty && !(seenBefore && seenAfter)
                ? "Empty space was not measured in both surveys: no pilot hole or rod."
                : "";
    }

    private String unread(Quantity quantity) {
        boolean all = (!quantity.needsWater() || whole(coverageBefore.water(), coverageAfter.water()))
                && (!quantity.needsBond() || whole(coverageBefore.bond(), coverageAfter.bond()));
        return all ? "" : "Not all of the face was read in both surveys: only places can be compared.";
    }

    private static boolean whole(double before, double after) {
        return Math.min(before, after) >= Coverage.WHOLE;
    }

    /** A quantity as a survey's map has it within a part of the face. */
    static double mapped(FaceDamage face, Quantity quantity, Geometry area) {
        if (quantity == Quantity.VOID_VOLUME) {
            return face.regions().stream()
                    .filter(r -> r.likely().getEnvelopeInternal().intersects(area.getEnvelopeInternal()))
                    .mapToDouble(r -> r.voidMm3().p50() * share(r, area))
                    .sum();
        }
        return damaged(face, quantity.conditions(), area);
    }

    private static double share(Region region, Geometry area) {
        return Overlay.intersection(region.likely(), area).getArea()
                / region.likely().getArea();
    }

    static double damaged(FaceDamage face, Set<Condition> conditions, Geometry area) {
        return face.regions().stream()
                .filter(r -> conditions.contains(r.condition()))
                .filter(r -> r.likely().getEnvelopeInternal().intersects(area.getEnvelopeInternal()))
                .mapToDouble(r -> Overlay.intersection(r.likely(), area).getArea())
                .sum();
    }
}
