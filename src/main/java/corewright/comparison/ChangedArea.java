package corewright.comparison;

import corewright.comparison.RegionChange.Fate;
import corewright.damage.FaceDamage;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** A part of the map of change. */
public record ChangedArea(Kind kind, Polygon area) {
    /** What the map tells of a place. */
    public enum Kind {
        /** Damaged before, proven not to be now. */
        MENDED,
        /** Damaged in both. */
        REMAINS,
        /** Proven to be damaged now and not before. */
        NEW,
        /** The two maps differ, but the readings do not prove it. */
        NOT_PROVEN,
        /** Damaged in one survey, not read in the other. */
        NOT_READ
    }

    /** Slivers narrower than twice this are left off the map. */
    private static final double SLIVER_MM = 5;

    /** The map of change of a compared face, empty where nothing was or is damaged. */
    public static List<ChangedArea> of(FaceComparison face) {
        List<ChangedArea> areas = new ArrayList<>();
        FaceDamage later = face.after();
        if (!face.compared() || later == null) {
            return areas;
        }
        Geometry now = NewPlaces.damaged(later);
        for (RegionChange change : face.regions()) {
            Polygon was = change.region().likely();
            if (change.fate() == Fate.NOT_READ) {
                areas.add(new ChangedArea(Kind.NOT_READ, was));
            } else {
                boolean proven = change.fate() == Fate.MENDED || change.fate() == Fate.PARTLY;
                add(areas, proven ? Kind.MENDED : Kind.NOT_PROVEN, Overlay.difference(was, now));
                add(areas, Kind.REMAINS, Overlay.intersection(was, now));
            }
        }
        for (NewPlace place : face.news()) {
            Kind kind =
                    switch (place.fate()) {
                        case NEW -> Kind.NEW;
                        case NOT_READ -> Kind.NOT_READ;
                        default -> Kind.NOT_PROVEN;
                    };
            areas.add(new ChangedArea(kind, place.area()));
        }
        return areas;
    }

    private static void add(List<ChangedArea> areas, Kind kind, Geometry part) {
        Geometry wide = Overlay.intersection(part.buffer(-SLIVER_MM).buffer(SLIVER_MM), part);
        Pieces.polygons(wide).forEach(p -> areas.add(new ChangedArea(kind, p)));
    }
}
