package corewright.desktop.touch;

import corewright.drawing.screen.ScreenLayer;
import corewright.survey.Feature;
import corewright.survey.Reading;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tolerances;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/** What lies under a finger. */
final class Nearby {
    /** Half a finger's width on a screen of 96 dpi. */
    static final double REACH_PX = 18;

    private static final GeometryFactory POINTS = new GeometryFactory();

    private Nearby() {}

    /** The reading nearest to a place, of those the plan shows. */
    static Optional<Reading> reading(Survey survey, Spot at, double reachMm, Set<ScreenLayer> shown) {
        return ReadingParts.on(survey, at.face()).stream()
                .filter(r -> shown.contains(layer(r)) && distance(r, at) <= reachMm)
                .min(Comparator.comparingDouble(r -> distance(r, at)));
    }

    /** Readings at the same place, as far as a tape can tell. */
    static List<Reading> readings(Survey survey, Spot at, Set<ScreenLayer> shown) {
        return ReadingParts.on(survey, at.face()).stream()
                .filter(r -> shown.contains(layer(r)) && distance(r, at) <= Tolerances.SAME_PLACE_MM)
                .toList();
    }

    private static double distance(Reading r, Spot at) {
        return r.spot().coordinate().distance(at.coordinate());
    }

    private static ScreenLayer layer(Reading reading) {
        return switch (reading.key().kind()) {
            case TAP -> ScreenLayer.TAPS;
            case PROBE, FEELER -> ScreenLayer.PROBES;
            case MOISTURE, PLUG, TEMPERATURE -> ScreenLayer.READINGS;
        };
    }

    /** What is drawn there: a point or a line within reach before an area that holds the place, a small area before a large. */
    static Optional<Feature> feature(Survey survey, Spot at, double reachMm) {
        Point point = POINTS.createPoint(at.coordinate());
        return survey.face(at.face()).features().stream()
                .filter(f -> f.geometry().distance(point) <= (f.geometry().getDimension() == 2 ? 0 : reachMm))
                .min(Comparator.<Feature>comparingInt(f -> f.geometry().getDimension())
                        .thenComparingDouble(f -> size(f.geometry()))
                        .thenComparingDouble(f -> f.geometry().distance(point)));
    }

    private static double size(Geometry g) {
        return g.getDimension() == 2 ? g.getArea() : 0;
    }
}
