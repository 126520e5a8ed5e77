package corewright.overlay;

import java.util.Collection;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Overlays that do not fail where lines nearly touch. What is given stays as it is. */
public final class Overlay {
    private Overlay() {}

    /** What both have in common. */
    public static Geometry intersection(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
    }

    /** Both together; of lines, cut where they cross. */
    public static Geometry union(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
    }

    /** All together. */
    public static Geometry union(Collection<? extends Geometry> all) {
        return OverlayNGRobust.union(all.stream().<Geometry>map(g -> g).toList());
    }

    /** The first without the second. */
    public static Geometry difference(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
    }

    /** All together, with every corner on a grid; of lines, cut where they cross. */
    public static Geometry unionOnGrid(Collection<? extends Geometry> all, PrecisionModel grid) {
        return UnaryUnionNG.union(all.stream().<Geometry>map(g -> g).toList(), grid);
    }

    /** What both have in common, with every corner on a grid. */
    public static Geometry intersectionOnGrid(Geometry a, Geometry b, PrecisionModel grid) {
        return OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, grid);
    }
}
