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
    static final int ON_OUTLINE = -2;
    static final int ON_RIM = -3;

    private final IndexedPointInAreaLocator outline;
    private final List<IndexedPointInAreaLocator> patches = new ArrayList<>();

    Partition(PanelSpec panel) {
        outline = new IndexedPointInAreaLocator(panel.outline());
        for (Patch patch : panel.patches()) {
            patches.add(new IndexedPointInAreaLocator(patch.area()));
        }
    }

    /** Zone number, {@link #OUTSIDE}, {@link #ON_OUTLINE}, or {@link #ON_RIM} of the patch on top. */
    int at(double x, double y) {
        int place = outline.locate(new Coordinate(x, y));
        if (place == Location.INTERIOR) {
            return patchAt(x, y);
        }
        return place == Location.EXTERIOR ? OUTSIDE : ON_OUTLINE;
    }

    /** Zone number or {@link #ON_RIM}, whether the outline holds the point or not. */
    private int patchAt(double x, double y) {
        Coordinate p = new Coordinate(x, y);
        for (int k = patches.size() - 1; k >= 0; k--) {
            int place = patches.get(k).locate(p);
            if (place != Location.EXTERIOR) {
                return place == Location.INTERIOR ? k + 1 : ON_RIM;
            }
        }
        return 0;
    }

    /** The zone of a point, or one next to it where it lies on a rim. A chord of the outline may leave it outside: no matter. */
    int near(double x, double y) {
        int zone = patchAt(x, y);
        double step = 1e-6 * (Math.abs(x) + Math.abs(y) + 1);
        for (int k = 0; k < 8 && zone < 0; k++) {
            zone = patchAt(x + step * Math.cos(k * Math.PI / 4 + 0.1), y + step * Math.sin(k * Math.PI / 4 + 0.1));
        }
        return Math.max(zone, 0);
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
