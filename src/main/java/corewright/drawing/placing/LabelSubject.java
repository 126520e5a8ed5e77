package corewright.drawing.placing;

import corewright.damage.Region;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.PlanView;
import corewright.overlay.Overlay;
import corewright.repair.plan.SecondShot;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Something on the map that a label with a leader speaks of: a region, or on a fill check a filled space or a place still
 * hollow.
 *
 * @param area on paper, where its leader may begin
 * @param others on paper, what its leader should not pass through
 * @param at on paper, where its id stands if there is no room outside
 */
record LabelSubject(
        String id, Geometry area, List<Geometry> others, Coordinate at, List<String> full, List<String> brief) {
    LabelSubject {
        others = List.copyOf(others);
        full = List.copyOf(full);
        brief = List.copyOf(brief);
    }

    static List<LabelSubject> of(MapSpec spec, PlanView view, FilledSpaces filled) {
        if (!spec.shows(Layer.REGION_LABELS)) {
            return List.of();
        }
        return spec.shows(Layer.FILL_CHECK) ? filled(spec, view, filled) : regions(spec, view);
    }

    private static List<LabelSubject> regions(MapSpec spec, PlanView view) {
        RegionWords words = new RegionWords(spec);
        List<Region> regions = spec.damage().regions();
        List<Polygon> areas =
                regions.stream().map(r -> view.onPaper(r.likely())).toList();
        List<LabelSubject> subjects = new ArrayList<>();
        for (int i = 0; i < regions.size(); i++) {
            Region region = regions.get(i);
            Polygon area = areas.get(i);
            subjects.add(new LabelSubject(
                    region.id(),
                    Pattern.drawn(area),
                    areas.stream().filter(a -> a != area).<Geometry>map(a -> a).toList(),
                    view.onPaper(region.label()).getCoordinate(),
                    words.full(region),
                    words.brief(region)));
        }
        return subjects;
    }

    private static List<LabelSubject> filled(MapSpec spec, PlanView view, FilledSpaces filled) {
        FillWords words = new FillWords(spec.measure());
        List<LabelSubject> subjects = new ArrayList<>();
        for (FilledSpaces.Space space : filled.spaces()) {
            Polygon area = view.onPaper(space.area());
            List<Geometry> hollow = space.shots().stream()
                    .<Geometry>map(s -> Pattern.drawn(view.onPaper(s.area())))
                    .toList();
            Geometry rest = Pattern.drawn(area);
            for (Geometry shot : hollow) {
                rest = Overlay.difference(rest, shot); // a leader that begins in a hollow place speaks of that place
            }
            subjects.add(new LabelSubject(
                    space.region(),
                    rest.isEmpty() ? area : rest,
                    hollow,
                    area.getInteriorPoint().getCoordinate(),
                    words.full(space),
                    words.brief(space)));
            for (int i = 0; i < hollow.size(); i++) {
                SecondShot shot = space.shots().get(i);
                Geometry own = hollow.get(i);
                subjects.add(new LabelSubject(
                        shot.id(),
                        own,
                        hollow.stream().filter(h -> h != own).toList(),
                        own.getInteriorPoint().getCoordinate(),
                        words.full(shot),
                        words.brief(shot)));
            }
        }
        return subjects;
    }
}
