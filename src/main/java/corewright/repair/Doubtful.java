package corewright.repair;

import corewright.contour.Raster;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

/**
 * Core beside a wet region that is mapped as sound and may be wet all the same: cells from a probability on that hang together with
 * the region. Who cuts it out goes that far, so that no wet core is left against new core.
 */
final class Doubtful {
    /** No farther from the region than this: what lies beyond is another question. Practice. */
    private static final double FARTHEST_MM = 100;

    private Doubtful() {}

    /**
     * Squares of the raster, in no other region; empty beside a region that is more probably dry.
     *
     * @param fromProbability of wet
     */
    static Geometry beside(FaceDamage damage, Region region, double fromProbability) {
        GeometryFactory factory = region.likely().getFactory();
        if (!region.wet()) {
            return factory.createPolygon();
        }
        Raster wet = damage.surfaces().pWet();
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(region.likely());
        Geometry near = region.likely().buffer(FARTHEST_MM, 2);
        IndexedPointInAreaLocator reach = new IndexedPointInAreaLocator(near);
        Envelope box = near.getEnvelopeInternal();
        Set<Integer> own = new HashSet<>();
        Set<Integer> open = new HashSet<>();
        for (int i = 0; i < wet.size(); i++) {
            double x = wet.centreX(i % wet.columns());
            double y = wet.centreY(i / wet.columns());
            if (!box.contains(x, y)) {
                continue;
            }
            Coordinate at = new Coordinate(x, y);
            if (inside.locate(at) != Location.EXTERIOR) {
                own.add(i);
            } else if (wet.at(i) >= fromProbability && reach.locate(at) != Location.EXTERIOR) {
                open.add(i);
            }
        }
        List<Geometry> squares = new ArrayList<>();
        double half = wet.cell() / 2;
        for (int i : joined(own, open, wet.columns())) {
            double x = wet.centreX(i % wet.columns());
            double y = wet.centreY(i / wet.columns());
            squares.add(factory.toGeometry(new Envelope(x - half, x + half, y - half, y + half)));
        }
        if (squares.isEmpty()) {
            return factory.createPolygon();
        }
        Geometry all = Overlay.union(squares);
        for (Region other : damage.regions()) {
            if (other != region && other.likely().intersects(all)) {
                all = Overlay.difference(all, other.likely());
            }
        }
        return all;
    }

    /** Open cells that hang together with the region's own by their sides. */
    private static List<Integer> joined(Set<Integer> own, Set<Integer> open, int columns) {
        List<Integer> joined = new ArrayList<>();
        ArrayDeque<Integer> border = new ArrayDeque<>(own);
        Set<Integer> left = new HashSet<>(open);
        while (!border.isEmpty()) {
            int i = border.remove();
            int column = i % columns;
            for (int next :
                    new int[] {i - columns, i + columns, column > 0 ? i - 1 : -1, column < columns - 1 ? i + 1 : -1}) {
                if (left.remove(next)) {
                    joined.add(next);
                    border.add(next);
                }
            }
        }
        joined.sort(null);
        return joined;
    }
}
