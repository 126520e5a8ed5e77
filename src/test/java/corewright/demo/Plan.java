package corewright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The boat's two faces, millimetres; x aft (on the cabin front: up), y to starboard. */
final class Plan {
    static final String DECK = "foredeck";
    static final String FRONT = "cabin front";

    /** The foredeck ends at the main bulkhead. */
    static final double DECK_LENGTH = 3400;

    static final double HALF_BEAM = 1250;

    /** A web of solid glass under the deck: no water passes. */
    static final double DIVIDER_X = 900;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Bolted through. */
    record Fitting(String face, String name, double x, double y, boolean metal, boolean loadBearing, int keepout) {}

    static final List<Fitting> FITTINGS = List.of(
            new Fitting(DECK, "bow cleat, port", 610, -220, true, true, 60),
            new Fitting(DECK, "bow cleat, starboard", 610, 220, true, true, 60),
            new Fitting(DECK, "inner forestay plate", 1100, 0, true, true, 90),
            new Fitting(DECK, "stanchion base, port", 1920, -770, true, true, 60),
            new Fitting(DECK, "stanchion base, starboard", 1920, 770, true, true, 60),
            new Fitting(DECK, "stanchion base, aft starboard", 3050, 1080, true, true, 60),
            new Fitting(DECK, "ventilator", 2180, 430, false, false, 70),
            new Fitting(FRONT, "handrail foot", 470, 720, true, false, 40));

    static final Polygon HATCH = box(2400, -280, 2960, 280);
    static final Polygon PORTLIGHT = box(230, -660, 390, -380);

    private Plan() {}

    /** Half the deck's width: a full bow. */
    static double halfWidth(double x) {
        return HALF_BEAM * StrictMath.pow(x / DECK_LENGTH, 0.62);
    }

    static Polygon outline(String face) {
        List<Coordinate> ring = new ArrayList<>();
        if (face.equals(FRONT)) {
            return polygon(List.of(at(0, -930), at(560, -850), at(560, 850), at(0, 930), at(0, -930)));
        }
        double[] stations = {
            0, 25, 60, 120, 200, 300, 450, 650, 900, 1200, 1500, 1800, 2100, 2400, 2700, 3000, 3200, 3400
        };
        for (double x : stations) {
            ring.add(at(x, 0 - StrictMath.rint(halfWidth(x))));
        }
        for (int i = stations.length - 1; i >= 0; i--) {
            if (stations[i] > 0) {
                ring.add(at(stations[i], StrictMath.rint(halfWidth(stations[i]))));
            }
        }
        ring.add(ring.get(0));
        return polygon(ring);
    }

    /** The face's core: the outline less openings. */
    static Geometry core(String face) {
        return outline(face).difference(face.equals(DECK) ? HATCH : PORTLIGHT);
    }

    static String csv() {
        StringBuilder csv = new StringBuilder("face,kind,name,wkt,metal,load_bearing,keepout,edge,laminate\n");
        row(csv, DECK, "outline", "deck edge", wkt(outline(DECK)), ",,,,deck");
        row(csv, DECK, "opening", "fore hatch", wkt(HATCH), ",,,,");
        line(csv, DECK, "divider", "solid glass web", DIVIDER_X, 560);
        line(csv, DECK, "support", "chain locker bulkhead", DIVIDER_X, 560);
        line(csv, DECK, "support", "deck beam", 2050, 930);
        line(csv, DECK, "support", "main bulkhead", DECK_LENGTH, HALF_BEAM);
        row(csv, DECK, "access", "old core-drilled hole", "POINT(1840 430)", ",,,,");
        row(csv, DECK, "access", "hole of an old pad eye", "POINT(1450 330)", ",,,,");
        row(csv, FRONT, "outline", "cabin front", wkt(outline(FRONT)), ",,,,cabin");
        row(csv, FRONT, "opening", "portlight", wkt(PORTLIGHT), ",,,,");
        row(csv, FRONT, "support", "mast web", "LINESTRING(0 0,560 0)", ",,,simple,");
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
