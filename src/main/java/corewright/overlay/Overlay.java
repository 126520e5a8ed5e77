package corewright.overlay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Overlays that do not fail where lines nearly touch. What is given stays as it is. */
public final class Overlay {
    private Overlay() {}

    /** What both have in common. */
    public static Geometry intersection(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(pure(a), pure(b), OverlayNG.INTERSECTION);
    }

    /** Both together; of lines, cut where they cross. */
    public static Geometry union(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(pure(a), pure(b), OverlayNG.UNION);
    }

    /** All together. */
    public static Geometry union(Collection<? extends Geometry> all) {
        return OverlayNGRobust.union(all.stream().<Geometry>map(g -> g).toList());
    }

    /** The first without the second. */
    public static Geometry difference(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(pure(a), pure(b), OverlayNG.DIFFERENCE);
    }

    /** All together, with every corner on a grid; of lines, cut where they cross. */
    public static Geometry unionOnGrid(Collection<? extends Geometry> all, PrecisionModel grid) {
        return UnaryUnionNG.union(all.stream().<Geometry>map(g -> g).toList(), grid);
    }

    /** What both have in common, with every corner on a grid. */
    public static Geometry intersectionOnGrid(Geometry a, Geometry b, PrecisionModel grid) {
        return OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, grid);
    }

    /** Of a mixed collection, as one overlay leaves it where areas also touch, what has its dimension; overlays refuse the rest. */
    private static Geometry pure(Geometry geometry) {
        if (geometry.getClass() != GeometryCollection.class) {
            return geometry;
        }
        List<Geometry> parts = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part.getDimension() == geometry.getDimension()) {
                parts.add(part);
            }
        }
        return geometry.getFactory().buildGeometry(parts);
    }
}
