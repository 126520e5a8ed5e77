package corewright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The boat's two faces, millimetres: x aft and y to starboard; on the wheelhouse side x aft and y up. */
final class Plan {
    static final String DECK = "boat deck";
    static final String FRONT = "wheelhouse side";

    /** The boat deck ends at the after bulkhead of the saloon. */
    static final double DECK_LENGTH = 3120;

    /** A rib of solid glass under the deck: no water passes. */
    static final double DIVIDER_X = 2320;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Bolted through. */
    record Fitting(String face, String name, double x, double y, boolean metal, boolean loadBearing, int keepout) {}

    static final List<Fitting> FITTINGS = List.of(
            new Fitting(DECK, "grab rail foot, port", 180, -340, true, true, 50),
            new Fitting(DECK, "grab rail foot, starboard", 180, 340, true, true, 50),
            new Fitting(DECK, "signal mast step", 2080, 20, true, true, 90),
            new Fitting(DECK, "tender chock", 1400, 660, true, true, 60),
            new Fitting(DECK, "davit foot, port", 2640, -560, true, true, 80),
            new Fitting(DECK, "davit foot, starboard", 2640, 560, true, true, 80),
            new Fitting(DECK, "mushroom ventilator", 1910, 600, false, false, 70),
            new Fitting(FRONT, "shore-power inlet", 230, 470, true, false, 40));

    static final Polygon SKYLIGHT = box(520, -260, 1040, 260);
    static final Polygon GRILLE = box(1210, 220, 1490, 380);

    private Plan() {}

    static Polygon outline(String face) {
        if (face.equals(FRONT)) {
            return polygon(List.of(at(0, 0), at(1840, 0), at(1770, 560), at(70, 560), at(0, 0)));
        }
        double[][] stations = { // x and half the width: square aft, rounded forward, a little wider amidships
            {0, 500},
            {25, 570},
            {70, 640},
            {140, 705},
            {240, 755},
            {380, 795},
            {600, 832},
            {900, 866},
            {1250, 892},
            {1650, 906},
            {2050, 908},
            {2450, 898},
            {2850, 876},
            {DECK_LENGTH, 852}
        };
        List<Coordinate> ring = new ArrayList<>();
        for (double[] s : stations) {
            ring.add(at(s[0], -s[1]));
        }
        for (int i = stations.length - 1; i >= 0; i--) {
            ring.add(at(stations[i][0], stations[i][1]));
        }
        ring.add(ring.get(0));
        return polygon(ring);
    }

    /** The face's core: the outline less openings. */
    static Geometry core(String face) {
        return outline(face).difference(face.equals(DECK) ? SKYLIGHT : GRILLE);
    }

    static String csv() {
        StringBuilder csv = new StringBuilder("face,kind,name,wkt,metal,load_bearing,keepout,edge,laminate\n");
        row(csv, DECK, "outline", "deck edge", wkt(outline(DECK)), ",,,,deck");
        row(csv, DECK, "opening", "skylight", wkt(SKYLIGHT), ",,,,");
        line(csv, DECK, "divider", "solid glass rib", DIVIDER_X, 905);
        line(csv, DECK, "support", "galley bulkhead", 1180, 892);
        line(csv, DECK, "support", "davit frame", DIVIDER_X, 905);
        line(csv, DECK, "support", "saloon bulkhead", DECK_LENGTH, 852);
        row(csv, DECK, "access", "gland of a former aerial", "POINT(1790 -490)", ",,,,");
        row(csv, DECK, "access", "hole of a former lashing eye", "POINT(1290 -350)", ",,,,");
        row(csv, FRONT, "outline", "wheelhouse side", wkt(outline(FRONT)), ",,,,wheelhouse");
        row(csv, FRONT, "opening", "ventilation grille", wkt(GRILLE), ",,,,");
        row(csv, FRONT, "support", "locker partition", "LINESTRING(920 0,920 560)", ",,,simple,");
        for (Fitting f : FITTINGS) {
            String place = String.format(Locale.ROOT, "POINT(%.0f %.0f)", f.x(), f.y());
            String flags = "," + yes(f.metal()) + "," + yes(f.loadBearing()) + "," + f.keepout() + ",,";
            row(csv, f.face(), "fitting", f.name(), place, flags.substring(1));
        }
        return csv.toString();
    }

    private static void line(StringBuilder csv, String face, String kind, String name, double x, double halfWidth) {
        String wkt = String.format(Locale.ROOT, "LINESTRING(%.0f %.0f,%.0f %.0f)", x, -halfWidth, x, halfWidth);
        row(csv, face, kind, name, wkt, kind.equals("support") ? ",,,simple," : ",,,,");
    }

    private static void row(StringBuilder csv, String face, String kind, String name, String wkt, String rest) {
        csv.append(face)
                .append(',')
                .append(kind)
                .append(",\"")
                .append(name)
                .append("\",\"")
                .append(wkt)
                .append("\",");
        csv.append(rest).append('\n');
    }

    private static String yes(boolean value) {
        return value ? "yes" : "no";
    }

    private static String wkt(Polygon polygon) {
        return polygon.toText().replace("POLYGON ((", "POLYGON((").replace(", ", ",");
    }

    private static Polygon box(double x0, double y0, double x1, double y1) {
        return polygon(List.of(at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)));
    }

    private static Polygon polygon(List<Coordinate> ring) {
        return GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
    }

    private static Coordinate at(double x, double y) {
        return new Coordinate(x, y);
    }
}
