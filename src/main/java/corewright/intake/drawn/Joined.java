package corewright.intake.drawn;

import corewright.intake.drawn.Drawing.Stroke;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** Joins the open lines of one layer end to end, where two ends and no third lie within a tolerance. */
public final class Joined {
    private final double tolerance;
    private final List<Stroke> strokes;

    /** Ends by cell of a grid as wide as the tolerance; end 2 i begins stroke i, 2 i + 1 ends it. */
    private final Map<Long, List<Integer>> cells = new HashMap<>();

    private final boolean[] used;

    private Joined(List<Stroke> strokes, double tolerance) {
        this.strokes = strokes;
        this.tolerance = Math.max(tolerance, 1e-9);
        this.used = new boolean[strokes.size()];
    }

    /** The lines joined; each keeps the place and name of its first stroke, and a closed one does not repeat a point. */
    public static List<Stroke> of(List<Stroke> strokes, double tolerance) {
        return new Joined(strokes, tolerance).joined();
    }

    private List<Stroke> joined() {
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            if (!stroke.closed() && stroke.points().size() > 1) {
                for (int end = 2 * i; end <= 2 * i + 1; end++) {
                    cells.computeIfAbsent(cell(at(end), 0, 0), c -> new ArrayList<>())
                            .add(end);
                }
            }
        }
        List<Stroke> joined = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            if (!used[i]) {
                used[i] = true;
                Stroke stroke = strokes.get(i);
                joined.add(stroke.closed() || stroke.points().size() < 2 ? stroke : chain(i));
            }
        }
        return joined;
    }

    private Stroke chain(int first) {
        List<Coordinate> line = new ArrayList<>(strokes.get(first).points());
        int tail = extend(line, 2 * first + 1);
        int head = 2 * first;
        boolean closed = line.size() > 2 && partner(tail) == head;
        if (!closed) {
            List<Coordinate> turned = new ArrayList<>(line);
            java.util.Collections.reverse(turned);
            extend(turned, head);
            java.util.Collections.reverse(turned);
            line = turned;
        } else {
            line.remove(line.size() - 1);
        }
        Stroke stroke = strokes.get(first);
        return new Stroke(stroke.place(), stroke.name(), line, closed);
    }

    /** Adds strokes behind an end of the line while there is exactly one to add; the end it stops at. */
    private int extend(List<Coordinate> line, int end) {
        int last = end;
        for (int next = partner(last); next >= 0 && !used[next / 2]; next = partner(last)) {
            used[next / 2] = true;
            List<Coordinate> points = strokes.get(next / 2).points();
            boolean forward = next % 2 == 0;
            for (int k = 1; k < points.size(); k++) {
                line.add(points.get(forward ? k : points.size() - 1 - k));
            }
            last = next ^ 1;
        }
        return last;
    }

    /** The one other end at an end's place; -1 where there is none, or more than one. */
    private int partner(int end) {
        Coordinate place = at(end);
        int found = -1;
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (int other : cells.getOrDefault(cell(place, dx, dy), List.of())) {
                    if (other != end && at(other).distance(place) <= tolerance) {
                        if (found >= 0) {
                            return -1;
                        }
                        found = other;
                    }
                }
            }
        }
        return found;
    }

    private Coordinate at(int end) {
        List<Coordinate> points = strokes.get(end / 2).points();
        return points.get(end % 2 == 0 ? 0 : points.size() - 1);
    }

    private long cell(Coordinate place, int dx, int dy) {
        long column = (long) Math.floor(place.x / tolerance) + dx;
        long row = (long) Math.floor(place.y / tolerance) + dy;
        return column * 1_000_003L + row;
    }
}
