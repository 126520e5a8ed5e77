package corewright.repair.plan;

import corewright.damage.Condition;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * What is filled as one: a loose region alone, or a void with the loose rims that open into it.
 *
 * @param regions the one that leads first; its mix and its name are the plan's
 * @param area of all of them
 */
public record EmptySpace(List<Region> regions, Polygon area) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Spread of the height under a loose skin without measured void: P10 and P90 over the middle. Practice. */
    private static final Quantiles LOOSE_SPREAD = new Quantiles(0.5, 1, 1.7);

    /** A rim lies in reach of the void's mix when this share of it does. */
    private static final double IN_REACH_SHARE = 0.9;

    public EmptySpace {
        regions = List.copyOf(regions);
    }

    public static EmptySpace of(Region region) {
        return new EmptySpace(List.of(region), region.likely());
    }

    /** That of a plan made before. */
    public static EmptySpace of(DamageMap damage, InjectionPlan plan) {
        List<Region> regions = new ArrayList<>();
        for (InjectionPlan.Part part : plan.parts()) {
            damage.regions().stream().filter(r -> r.id().equals(part.region())).forEach(regions::add);
        }
        Geometry all =
                Overlay.union(regions.stream().<Geometry>map(Region::likely).toList());
        // regions are only planned together where they make one polygon
        return new EmptySpace(
                regions, all instanceof Polygon area ? area : regions.get(0).likely());
    }

    /**
     * Voids with the rims that are filled from them. A rim is a loose region without void that shares an edge with a void
     * of its bay and lies, but for a tenth, no farther from it than the void's mix gets under a loose skin. A rim of
     * several voids makes one space of them all.
     *
     * @param regions to be filled, all of one face, the gravest first
     * @param rimReachMm how far the mix of a void gets under a loose skin
     * @return spaces of several regions only
     */
    public static List<EmptySpace> joined(List<Region> regions, ToDoubleFunction<Region> rimReachMm) {
        List<EmptySpace> spaces = new ArrayList<>();
        for (Region rim : regions) {
            if (rim.condition() == Condition.VOID) {
                continue;
            }
            List<Region> voids = regions.stream()
                    .filter(v -> v.condition() == Condition.VOID && opens(rim, v))
                    .toList();
            if (inReach(rim, voids, rimReachMm)) {
                add(spaces, rim, voids, regions);
            }
        }
        return spaces;
    }

    private static boolean opens(Region rim, Region into) {
        return rim.bay().equals(into.bay()) && rim.likely().relate(into.likely(), "****1****");
    }

    private static boolean inReach(Region rim, List<Region> voids, ToDoubleFunction<Region> rimReachMm) {
        List<Geometry> near = voids.stream()
                .map(v -> v.likely().buffer(rimReachMm.applyAsDouble(v)))
                .toList();
        double reached = near.isEmpty()
                ? 0
                : Overlay.intersection(Overlay.union(near), rim.likely()).getArea();
        return reached >= IN_REACH_SHARE * rim.likely().getArea();
    }

    /** Joins a rim, its voids and every space that holds one of these, where they make one polygon. */
    private static void add(List<EmptySpace> spaces, Region rim, List<Region> voids, List<Region> all) {
        List<EmptySpace> met = spaces.stream()
                .filter(s -> s.regions.stream().anyMatch(voids::contains))
                .toList();
        List<Region> members = all.stream()
                .filter(r -> r == rim || voids.contains(r) || met.stream().anyMatch(s -> s.regions.contains(r)))
                .toList();
        Region lead = members.stream()
                .filter(r -> r.condition() == Condition.VOID)
                .findFirst()
                .orElseThrow();
        List<Region> ordered = new ArrayList<>(List.of(lead));
        members.stream().filter(r -> r != lead).forEach(ordered::add);
        Geometry union =
                Overlay.union(ordered.stream().<Geometry>map(Region::likely).toList());
        if (union instanceof Polygon area) {
            spaces.removeAll(met);
            spaces.add(new EmptySpace(ordered, area));
        }
    }

    public Region lead() {
        return regions.get(0);
    }

    public String face() {
        return lead().face();
    }

    /** The region in which a place of the space lies. */
    public Region at(Coordinate place) {
        Geometry point = FACTORY.createPoint(place);
        Region nearest = lead();
        for (Region region : regions) {
            nearest = region.likely().distance(point) < nearest.likely().distance(point) ? region : nearest;
        }
        return nearest;
    }

    /** To be filled; of several regions the sums, as if they were large or small together. */
    public Quantiles mm3(double looseGapMm) {
        return regions.stream()
                .map(r -> mm3(r, looseGapMm))
                .reduce(Quantiles::plus)
                .orElseThrow();
    }

    /** Its void; for a skin that is loose without one at least the area times the height of a loose skin. */
    private static Quantiles mm3(Region region, double looseGapMm) {
        Quantiles loose = LOOSE_SPREAD.times(region.likely().getArea() * looseGapMm);
        Quantiles found = region.voidMm3();
        if (region.condition() == Condition.VOID && found.p50() > 0) {
            return found;
        }
        return new Quantiles(
                Math.max(found.p10(), loose.p10()),
                Math.max(found.p50(), loose.p50()),
                Math.max(found.p90(), loose.p90()));
    }
}
