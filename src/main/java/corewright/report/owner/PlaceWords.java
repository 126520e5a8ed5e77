package corewright.report.owner;

import corewright.drawing.kit.Figures;
import corewright.report.page.Wording;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Where a thing lies, in words: by the nearest fitting or opening, else by its distance from the datum. */
public final class PlaceWords {
    /** Touching or nearly so: a hand's breadth. */
    private static final double AT_MM = 100;

    /** Still beside it for somebody standing on deck: half an arm. */
    private static final double BESIDE_MM = 350;

    private static final double STEEP_DEG = 45;

    private PlaceWords() {}

    /** {@code forward of the hatch}, {@code at the mooring bollard}, {@code at 2.20 m aft and 0.60 m to starboard}. */
    public static String of(Face face, Geometry area) {
        return nearest(face, area)
                .filter(f -> distance(f, area) <= BESIDE_MM)
                .map(f -> side(face, f, area) + named(f.name()))
                .orElseGet(() -> "at " + byFigures(face, area.getInteriorPoint()));
    }

    /** Which side of the landmark; on a steep face, where aft and starboard mean little, merely beside it. */
    private static String side(Face face, Feature landmark, Geometry area) {
        boolean fitting = landmark instanceof Feature.Fitting;
        if (fitting && distance(landmark, area) <= AT_MM) {
            return "at ";
        }
        if (face.tiltDeg() > STEEP_DEG && face.tiltDeg() < 180 - STEEP_DEG) {
            return "beside ";
        }
        Point from = landmark.geometry().getCentroid();
        Point to = area.getInteriorPoint();
        double aft = to.getX() - from.getX();
        double starboard = to.getY() - from.getY();
        if (Math.abs(aft) > Math.abs(starboard)) {
            return aft < 0 ? "forward of " : "aft of ";
        }
        return starboard < 0 ? "to port of " : "to starboard of ";
    }

    /** The load-bearing fitting in or next to the area, if there is one. */
    static Optional<Feature.Fitting> load(Face face, Geometry area) {
        return face.all(Feature.Fitting.class).stream()
                .filter(Feature.Fitting::loadBearing)
                .min(Comparator.comparingDouble(f -> distance(f, area)))
                .filter(f -> distance(f, area) <= BESIDE_MM);
    }

    /** {@code the hatch}; a proper name or a numbered one takes no article. */
    public static String named(String name) {
        if (name.isEmpty()) {
            return "a fitting";
        }
        boolean bare = Character.isUpperCase(name.charAt(0))
                || Character.isDigit(name.charAt(name.length() - 1))
                || name.toLowerCase(Locale.ROOT).startsWith("the ");
        return bare ? name : "the " + name;
    }

    /** {@code 2.25 m aft and 0.60 m to starboard}. */
    static String byFigures(Face face, Point place) {
        String aft = metres(place.getX()) + (place.getX() < 0 ? " forward" : " aft");
        if (Math.abs(place.getY()) < 5) {
            return aft + " of the datum";
        }
        boolean plus = place.getY() >= 0;
        String side = face.wall() ? plus == face.risesWithY() ? " up" : " down" : plus ? " to starboard" : " to port";
        return aft + " and " + metres(place.getY()) + side;
    }

    private static String metres(double mm) {
        return Figures.fixed(Math.abs(mm) / 1000, 2) + Wording.TIED + "m";
    }

    private static Optional<Feature> nearest(Face face, Geometry area) {
        List<Feature> landmarks = Stream.<Feature>concat(
                        face.all(Feature.Fitting.class).stream(), face.all(Feature.Opening.class).stream())
                .filter(f -> !f.name().isEmpty())
                .toList();
        return landmarks.stream().min(Comparator.comparingDouble(f -> distance(f, area)));
    }

    private static double distance(Feature feature, Geometry area) {
        return feature.geometry().distance(area);
    }
}
