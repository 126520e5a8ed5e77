package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * A plan on its way through the flow, and its fill of the most likely cavity.
 *
 * @param vents as cells of the pattern's raster
 * @param near vents nearer to another opening than is wished, each with the share of the cavity that it is to empty
 * @param fine the pattern's raster
 * @param run null where nothing can flow
 */
public record FillState(
        Pouring pouring, List<Integer> vents, Map<Integer, Double> near, Cavity fine, FillTrial.@Nullable Run run) {
    public FillState {
        vents = List.copyOf(vents);
        near = Map.copyOf(near);
    }

    static FillState of(
            Pouring pouring, List<Integer> vents, Map<Integer, Double> near, Cavity fine, FillTrial middle) {
        return new FillState(pouring, vents, near, fine, middle.shared(work(pouring, vents, fine)));
    }

    /** Just so many grams into each hole, whatever shows. */
    FillState pouring(Pouring exactly, FillTrial middle) {
        FillTrial.Work work = work(exactly, vents, fine);
        return new FillState(exactly, vents, near, fine, middle.run(work, FillTrial.Held.NOTHING));
    }

    private static FillTrial.Work work(Pouring pouring, List<Integer> vents, Cavity fine) {
        return new FillTrial.Work(
                pouring.holes(),
                pouring.batches(),
                pouring.liquidMm3(),
                vents.stream().map(fine::centre).toList());
    }

    public FillTrial.Work work() {
        return work(pouring, vents, fine);
    }

    FillState with(Pouring other, FillTrial middle) {
        return of(other, vents, near, fine, middle);
    }

    FillState with(List<Integer> otherVents, Map<Integer, Double> otherNear, FillTrial middle) {
        return of(pouring, otherVents, otherNear, fine, middle);
    }

    /** Its vents less one. */
    Vents but(int vent) {
        List<Integer> others = new ArrayList<>(vents);
        others.remove(Integer.valueOf(vent));
        Map<Integer, Double> nearOthers = new LinkedHashMap<>(near);
        nearOthers.remove(vent);
        return new Vents(others, nearOthers);
    }

    FillState without(int vent, FillTrial middle) {
        Vents others = but(vent);
        return with(others.cells(), others.near(), middle);
    }

    FillTrial.Run ran() {
        return Objects.requireNonNull(run);
    }

    double emptyShare() {
        return ran().emptyShare();
    }

    /** Of the filled volume, as dense as the mean within 15 per cent. */
    double evenShare() {
        return new FillRecord(ran()).density().evenShare();
    }

    /** Another plan, if it goes in as poured and leaves less empty. */
    FillState orBetter(FillState other) {
        return other.asPoured() && other.emptyShare() < emptyShare() ? other : this;
    }

    Map<String, Double> takenMm3() {
        return ran().takenMm3();
    }

    /** Whether every hole takes what it is given. */
    boolean asPoured() {
        return pouring.taken(takenMm3());
    }

    /** Where mix is put in, then the vents. */
    List<Coordinate> places() {
        List<Coordinate> places = new ArrayList<>();
        for (Hole hole : pouring.holes()) {
            places.add(hole.spot().coordinate());
        }
        vents.forEach(v -> places.add(fine.centre(v)));
        return places;
    }

    /** Whether a vent stands nearer to a hole or to an earlier vent than is wished. */
    public boolean crowded(int vent) {
        Coordinate at = fine.centre(vent);
        List<Coordinate> before = places().subList(0, pouring.holes().size() + vents.indexOf(vent));
        return before.stream().anyMatch(p -> p.distance(at) < VentPlacing.APART_MM);
    }

    /** Another list of vents with what is known of the near ones. */
    record Vents(List<Integer> cells, Map<Integer, Double> near) {}
}
