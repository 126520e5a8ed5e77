package corewright.drawing.kit;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * Where damage cannot be ruled out, as lines on paper: one for all damage and one for void, never more, and none within 1
 * mm of a likely edge, along the deck's edge or along a divider.
 */
public final class Extents {
    private static final double NEAR_LIKELY = 1.0;
    private static final double NEAR_EDGE = 0.7;

    /** One dash: anything shorter says nothing. */
    private static final double SHORTEST = 2.4;

    private Extents() {}

    public static List<LineString> possible(FaceDamage damage, PlanView view) {
        List<Region> all = damage.regions();
        List<Region> voids =
                all.stream().filter(r -> r.condition() == Condition.VOID).toList();
        Geometry hide = hidden(damage, view);
        List<LineString> lines = new ArrayList<>(lines(all, view, hide));
        if (!voids.isEmpty() && voids.size() < all.size()) {
            lines.addAll(lines(voids, view, hide));
        }
        return lines;
    }

    private static Geometry hidden(FaceDamage damage, PlanView view) {
        List<Geometry> near = new ArrayList<>();
        for (Region region : damage.regions()) {
            near.add(view.onPaper(region.likely()).getBoundary().buffer(NEAR_LIKELY));
        }
        near.add(view.onPaper(damage.face().outline()).getBoundary().buffer(NEAR_EDGE));
        for (Feature.Divider divider : damage.face().all(Feature.Divider.class)) {
            near.add(view.onPaper(divider.geometry()).buffer(NEAR_EDGE));
        }
        for (Feature.Opening opening : damage.face().all(Feature.Opening.class)) {
            near.add(view.onPaper(opening.geometry()).buffer(NEAR_EDGE));
        }
        return Overlay.union(near);
    }

    private static List<LineString> lines(List<Region> regions, PlanView view, Geometry hide) {
        if (regions.isEmpty()) {
            return List.of();
        }
        Geometry all = Overlay.union(
                regions.stream().map(r -> view.onPaper(r.possible())).toList());
        LineMerger merger = new LineMerger();
        merger.add(Overlay.difference(all.getBoundary(), hide));
        List<LineString> lines = new ArrayList<>();
        for (Object line : merger.getMergedLineStrings()) {
            if (line instanceof LineString string && string.getLength() >= SHORTEST) {
                lines.add(string);
            }
        }
        return lines;
    }
}
