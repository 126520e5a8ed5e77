package corewright.survey;

import corewright.survey.settings.Check;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * One flattened surface being surveyed.
 *
 * @param tiltDeg 0 flat, 90 wall, 180 overhead
 * @param uphillDeg direction of the high side, degrees from +x (aft) towards +y (starboard)
 * @param outline the deck edge, without holes
 * @param edge how the outline is held
 * @param laminate name of the laminate where no laminate area says otherwise
 */
public record Face(
        String name,
        double tiltDeg,
        double uphillDeg,
        Polygon outline,
        EdgeSupport edge,
        String laminate,
        List<Feature> features) {
    private static final double OVERHEAD_ABOVE_DEG = 90;
    private static final double WALL_FROM_DEG = 60;

    /** A slope within 45 degrees of an axis is along it. */
    private static final double ALONG = 0.7;

    public Face {
        Check.within("tiltDeg", tiltDeg, 0, 180);
        Check.finite("uphillDeg", uphillDeg);
        features = List.copyOf(features);
    }

    /** Against the level, 0 to 90 degrees, from above and from below alike. */
    public double slopeDeg() {
        return Math.min(tiltDeg, 180 - tiltDeg);
    }

    /** How one works at it. */
    public Posture posture() {
        return Posture.of(tiltDeg);
    }

    /** So steep, with y along the slope, that y is a height and not a side. */
    public boolean wall() {
        return tiltDeg >= WALL_FROM_DEG
                && tiltDeg <= 180 - WALL_FROM_DEG
                && Math.abs(Math.sin(Math.toRadians(uphillDeg))) > ALONG;
    }

    /** Towards +y it rises, or is level. */
    public boolean risesWithY() {
        return Math.sin(Math.toRadians(uphillDeg)) >= 0;
    }

    /**
     * Whether +y points down for the person who works there and has the bow at the left: overhead, where port is at the top, and
     * on a wall whose y was measured downwards.
     */
    public boolean plusYPointsDown() {
        return wall() ? !risesWithY() : tiltDeg > OVERHEAD_ABOVE_DEG;
    }

    /** The features of one kind, in the order of the plan. */
    public <F extends Feature> List<F> all(Class<F> kind) {
        return features.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Name of the laminate at a place: that of the laminate area which holds it, else the face's own. */
    public String laminateAt(Spot spot) {
        var point = outline.getFactory().createPoint(spot.coordinate());
        return all(Feature.LaminateArea.class).stream()
                .filter(a -> a.geometry().covers(point))
                .reduce((first, last) -> last)
                .map(Feature.LaminateArea::laminate)
                .orElse(laminate);
    }

    /** The same face with other things drawn on it. */
    public Face with(List<Feature> drawn) {
        return new Face(name, tiltDeg, uphillDeg, outline, edge, laminate, drawn);
    }

    /**
     * How one works at a face: standing over it, before it, or under it. What holds a skin, where mix runs and which words are true
     * follow from it.
     */
    public enum Posture {
        /** Weights lie, people walk, mix stays in a hole. */
        DECK,
        /** Nothing lies by itself; liquid mix presses on what is below it. */
        WALL,
        /** What is loose falls, and mix runs out of every open hole onto whoever works there. */
        OVERHEAD;

        /** Steeper than this nobody stands on and no weight stays on. Practice. */
        private static final double DECK_TO_DEG = 45;

        /** A wall may lean over by a third of a right angle before its holes drain downwards rather than along it. Practice. */
        private static final double WALL_TO_DEG = 120;

        /** @param tiltDeg 0 flat, 90 wall, 180 overhead */
        static Posture of(double tiltDeg) {
            return tiltDeg <= DECK_TO_DEG ? DECK : tiltDeg <= WALL_TO_DEG ? WALL : OVERHEAD;
        }
    }
}
