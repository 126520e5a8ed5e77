package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.repair.plan.EmptySpace;
import corewright.survey.Tap;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * A filled space and the skin just outside it, where nothing was mapped: what is hollow there after cure hangs together with the
 * space, as its edge is known no better than the taps stood apart.
 */
final class Surroundings {
    /** Two rows of taps past the edge. Practice. */
    static final double BESIDE_MM = 80;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final EmptySpace space;
    private final Geometry around;

    Surroundings(DamageMap damage, EmptySpace space) {
        this.space = space;
        Geometry bay = damage.face(space.face()).bays().stream()
                .filter(b -> b.name().equals(space.lead().bay()))
                .<Geometry>map(b -> b.area())
                .findFirst()
                .orElse(space.area());
        List<Geometry> others = damage.regions().stream()
                .filter(r -> r.face().equals(space.face()) && !space.regions().contains(r))
                .<Geometry>map(Region::likely)
                .toList();
        Geometry near = Overlay.intersection(space.area().buffer(BESIDE_MM), bay);
        around = others.isEmpty() ? near : Overlay.difference(near, Overlay.union(others));
    }

    EmptySpace space() {
        return space;
    }

    /** How far a tap is from the space; infinite where it tells nothing of it. */
    double distanceMm(Tap tap) {
        Point at = FACTORY.createPoint(tap.spot().coordinate());
        boolean tells = tap.spot().face().equals(space.face()) && (space.area().covers(at) || around.covers(at));
        return tells ? space.area().distance(at) : Double.POSITIVE_INFINITY;
    }

    /** The space, and what lies round those taps that stand outside it. */
    Geometry ground(List<Tap> taps) {
        List<Point> sites = taps.stream()
                .map(t -> FACTORY.createPoint(t.spot().coordinate()))
                .toList();
        double reachMm = TapCells.spacingMm(sites);
        List<Geometry> outside = sites.stream()
                .filter(s -> !space.area().covers(s))
                .map(s -> s.buffer(reachMm))
                .toList();
        return outside.isEmpty()
                ? space.area()
                : Overlay.union(space.area(), Overlay.intersection(Overlay.union(outside), around));
    }
}
