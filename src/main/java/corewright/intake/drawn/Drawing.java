package corewright.intake.drawn;

import corewright.intake.text.Clean;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The lines of a drawing as they stand in its file, before anything is known of a deck.
 *
 * @param strokes in file order
 * @param unread things that are not lines, such as hatches
 * @param labels words on the drawing, which may name what they stand in
 * @param unit the length unit the file itself names, empty where it names none
 * @param cutShort the file lacks the mark of its end
 */
public record Drawing(List<Stroke> strokes, List<Unread> unread, List<Label> labels, String unit, boolean cutShort) {
    /** So many points in all strokes of a file; beyond any plan, and it bounds the joining. */
    static final int MOST_POINTS = 200_000;

    public Drawing {
        strokes = List.copyOf(strokes);
        unread = List.copyOf(unread);
        labels = List.copyOf(labels);
    }

    /** Without words. */
    public Drawing(List<Stroke> strokes, List<Unread> unread, String unit) {
        this(strokes, unread, List.of(), unit, false);
    }

    /**
     * Where something stands in a drawing.
     *
     * @param number of the entity or element, from 1, in file order
     * @param line in the file
     */
    public record Place(String layer, int number, long line) {
        @Override
        public String toString() {
            return "layer " + (layer.isEmpty() ? "without a name" : "\"" + Clean.line(layer, 60) + "\"") + ", entity "
                    + number;
        }
    }

    /**
     * A point, an open line or a closed one.
     *
     * @param name what the drawing calls it, an attribute of the block in a DXF file, else empty there
     * @param points in the drawing's units, y upwards; one is a point; a closed line does not repeat its first
     */
    public record Stroke(Place place, String name, List<Coordinate> points, boolean closed) {
        public Stroke {
            points = List.copyOf(points);
        }
    }

    /** Words, and where they begin. */
    public record Label(Place place, String text, Coordinate at) {}

    /** What is not a line, and what it is. */
    public record Unread(Place place, String what) {}
}
