package corewright.sandwich;

import corewright.overlay.Overlay;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** Which zone of a panel a point lies in. */
final class Partition {
    static final int OUTSIDE = -1;
    static final int ON_BOUNDARY = -2;

    private final IndexedPointInAreaLocator outline;
    private final List<IndexedPointInAreaLocator> patches = new ArrayList<>();

    Partition(PanelSpec panel) {
        outline = new IndexedPointInAreaLocator(panel.outline());
        for (Patch patch : panel.patches()) {
            patches.add(new IndexedPointInAreaLocator(patch.area()));
        }
    }

    /** Zone number, {@link #OUTSIDE}, or {@link #ON_BOUNDARY} of the outline or of the patch on top. */
    int at(double x, double y) {
        Coordinate p = new Coordinate(x, y);
        int place = outline.locate(p);
        if (place != Location.INTERIOR) {
            return place == Location.EXTERIOR ? OUTSIDE : ON_BOUNDARY;
        }
        for (int k = patches.size() - 1; k >= 0; k--) {
            place = patches.get(k).locate(p);
            if (place != Location.EXTERIOR) {
                return place == Location.INTERIOR ? k + 1 : ON_BOUNDARY;
            }
        }
        return 0;
    }

    /** A zone next to a point on a boundary; {@link #OUTSIDE} where none is. */
    int beside(double x, double y) {
        double step = 1e-6 * (Math.abs(x) + Math.abs(y) + 1);
        for (int k = 0; k < 8; k++) {
            int zone = at(x + step * Math.cos(k * Math.PI / 4 + 0.1), y + step * Math.sin(k * Math.PI / 4 + 0.1));
            if (zone >= 0) {
                return zone;
            }
        }
        return OUTSIDE;
    }

    /** Exact area of each zone, mm². */
    static double[] areas(PanelSpec panel) {
        int n = panel.patches().size();
        double[] areas = new double[n + 1];
        Geometry rest = panel.outline();
        for (int k = n - 1; k >= 0; k--) {
            Geometry taken = Overlay.intersection(rest, panel.patches().get(k).area());
            areas[k + 1] = taken.getArea();
            rest = Overlay.difference(rest, panel.patches().get(k).area());
        }
        areas[0] = rest.getArea();
        return areas;
    }
}
