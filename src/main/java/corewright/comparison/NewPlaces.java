package corewright.comparison;

import corewright.comparison.RegionChange.Fate;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** What the later survey finds damaged where the earlier one did not. */
final class NewPlaces {
    /** Rims narrower than twice this come and go with every reading; they count in the face's figures and get no name. */
    private static final double RIM_MM = 25;

    private NewPlaces() {}

    /** In no order that means anything, not named yet. */
    static List<NewPlace> of(FaceFigures figures, double smallestMm2) {
        List<NewPlace> places = new ArrayList<>();
        Geometry fresh = Overlay.difference(damaged(figures.after), damaged(figures.before));
        Geometry wide = fresh.buffer(-RIM_MM).buffer(RIM_MM);
        for (Polygon area : Pieces.polygons(Overlay.intersection(wide, fresh))) {
            if (area.getArea() >= smallestMm2) {
                places.add(place(figures, area));
            }
        }
        return places;
    }

    static Geometry damaged(FaceDamage face) {
        return face.regions().isEmpty()
                ? face.face().outline().getFactory().createPolygon()
                : Overlay.union(face.regions().stream().map(Region::likely).toList());
    }

    private static NewPlace place(FaceFigures figures, Polygon area) {
        Set<String> regions = new TreeSet<>();
        Set<Condition> conditions = EnumSet.noneOf(Condition.class);
        for (Region region : figures.after.regions()) {
            if (region.likely().relate(area, "T********")) {
                regions.add(region.id());
                conditions.add(region.condition());
            }
        }
        Change change = figures.of("", Quantity.DAMAGED, area).change();
        Fate fate;
        if (change.rose()) {
            fate = Fate.NEW;
        } else if (change.limits() != null) {
            fate = Fate.NOT_PROVEN;
        } else {
            boolean both = figures.readBefore(Quantity.DAMAGED, area) && figures.readAgain(Quantity.DAMAGED, area);
            fate = both ? Fate.NOT_COMPARABLE : Fate.NOT_READ;
        }
        return new NewPlace("", area, regions, conditions, fate, change);
    }
}
