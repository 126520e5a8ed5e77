package corewright.desktop.sketch;

import corewright.desktop.state.Units;
import corewright.survey.EdgeSupport;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Drawing the plan: points are set by touch or typed, snap to what is there, and become an edit when a thing is finished. Knows
 * no window.
 */
public final class Sketch {
    private static final Origin DRAWN = new Origin("drawn", 0);
    private static final GeometryFactory PLAN = new GeometryFactory();
    private static final Pattern TYPED =
            Pattern.compile("\\s*(-?[0-9]+(?:\\.[0-9]+)?)\\s*[,; ]\\s*(-?[0-9]+(?:\\.[0-9]+)?)\\s*");

    /** Places off any vertex fall on whole centimetres: nobody measures a deck better. */
    private static final double GRID_MM = 10;

    private static final String MOVING = "Touch a point of the outline or of anything drawn, then drag it.";

    /** What is being drawn. */
    public enum Tool {
        MOVE("move points", 0),
        OUTLINE("outline", 3),
        OPENING("opening", 3),
        DIVIDER("divider", 2),
        SUPPORT("support", 2),
        FITTING("fitting", 1),
        METAL_FITTING("metal fitting", 1),
        LOADED_FITTING("load-bearing fitting", 1),
        LAMINATE("laminate area", 3),
        SOLID("solid area", 3),
        ACCESS("access", 1);

        private final String word;
        private final int leastPoints;

        Tool(String word, int leastPoints) {
            this.word = word;
            this.leastPoints = leastPoints;
        }

        public String word() {
            return word;
        }
    }

    /** Where edits go. */
    public interface Edits {
        void edit(String deed, Function<Survey, @Nullable Edit> change);
    }

    /** A vertex of something drawn; {@code feature} is -1 for the outline. */
    public record Vertex(int feature, int point, Coordinate at) {}

    private final String face;
    private final Edits edits;
    private final List<Coordinate> points = new ArrayList<>();
    /** What the last deed was made of, a curve; null after any other. */
    private @Nullable List<Coordinate> beforeCurve;

    private Tool tool = Tool.MOVE;
    private String name = "";
    private String message = "";
    private @Nullable Vertex picked;
    private @Nullable Vertex held;
    private @Nullable Coordinate heldAt;

    public Sketch(String face, Edits edits) {
        this.face = face;
        this.edits = edits;
    }

    /** Takes another tool; points of a thing not finished are let go. */
    public void take(Tool other) {
        tool = other;
        points.clear();
        beforeCurve = null;
        picked = null;
        message = switch (other) {
            case MOVE -> MOVING;
            case FITTING, METAL_FITTING, LOADED_FITTING, ACCESS ->
                "Touch the place of the " + other.word + ", or type it.";
            case DIVIDER, SUPPORT -> "Touch its points one after the other; Finish ends the line.";
            default -> "Touch its corners one after the other; touching the first again closes it.";
        };
    }

    public void name(String text) {
        name = text.strip();
    }

    /**
     * Sets a point.
     *
     * @param reachMm how near counts as on it
     */
    public void touch(Survey survey, double xMm, double yMm, double reachMm) {
        if (tool == Tool.MOVE) {
            pick(survey, xMm, yMm, reachMm);
            return;
        }
        Coordinate at = snapped(survey, xMm, yMm, reachMm);
        boolean closes = points.size() >= tool.leastPoints
                && tool.leastPoints == 3
                && points.get(0).distance(new Coordinate(xMm, yMm)) <= reachMm;
        if (closes) {
            finish();
        } else {
            add(at);
        }
    }

    /** Sets a point by its figures: "1200, -655", millimetres aft and to starboard. */
    public void type(String text, Units units) {
        Matcher m = TYPED.matcher(text);
        if (m.matches()) {
            add(new Coordinate(units.mm(Double.parseDouble(m.group(1))), units.mm(Double.parseDouble(m.group(2)))));
        } else {
            message = "The place reads \"" + text + "\"; two numbers are expected, such as 1200, -655.";
        }
    }

    private void add(Coordinate at) {
        if (tool == Tool.MOVE) {
            message = "Choose what to draw first.";
            return;
        }
        if (!points.isEmpty() && points.get(points.size() - 1).equals2D(at)) {
            return;
        }
        points.add(at);
        beforeCurve = null;
        message = points.size() + (points.size() == 1 ? " point" : " points");
        if (tool.leastPoints == 1) {
            finish();
        }
    }

    /** Bends the last three points into the arc of a circle. */
    public void curve() {
        int n = points.size();
        if (n < 3 || tool.leastPoints == 1) {
            message =
                    "A curve is drawn through the last three points: set where it begins, one on it, and where it ends.";
            return;
        }
        List<Coordinate> three = points.subList(n - 3, n);
        Arc.through(three.get(0), three.get(1), three.get(2))
                .ifPresentOrElse(
                        arc -> {
                            beforeCurve = List.copyOf(points);
                            three.clear();
                            points.addAll(arc);
                            message = "The last three points are a curve; go on from its end.";
                        },
                        () -> message = "The last three points stand in a line; that is no curve.");
    }

    /** Takes the last point back, or the last curve. */
    public void backOne() {
        List<Coordinate> straight = beforeCurve;
        beforeCurve = null;
        if (straight != null) {
            points.clear();
            points.addAll(straight);
        } else if (!points.isEmpty()) {
            points.remove(points.size() - 1);
        }
    }

    /** Makes a thing of the points, or says what is missing. */
    public void finish() {
        if (points.size() < tool.leastPoints || tool == Tool.MOVE) {
            message = tool == Tool.MOVE
                    ? "Choose what to draw first."
                    : "The " + tool.word + " needs at least " + tool.leastPoints + " points.";
            return;
        }
        Geometry geometry = geometry();
        if (!new IsValidOp(geometry).isValid()) {
            message = "The edge crosses itself; take points back until it does not.";
            return;
        }
        Tool made = tool;
        String called = name;
        edits.edit(
                "drawing the " + made.word,
                s -> made == Tool.OUTLINE ? outline(s, (Polygon) geometry) : feature(s, made, called, geometry));
        points.clear();
        message = "The " + made.word + " is drawn.";
    }

    private Geometry geometry() {
        Coordinate[] all = points.toArray(Coordinate[]::new);
        if (tool.leastPoints == 1) {
            return PLAN.createPoint(all[0]);
        }
        if (tool.leastPoints == 2) {
            return PLAN.createLineString(all);
        }
        List<Coordinate> ring = new ArrayList<>(points);
        ring.add(points.get(0).copy());
        return PLAN.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private Edit outline(Survey survey, Polygon polygon) {
        Face old = survey.face(face);
        Face drawn = new Face(
                old.name(), old.tiltDeg(), old.uphillDeg(), polygon, old.edge(), old.laminate(), old.features());
        return Edit.replace(survey, Part.FACES, old, drawn);
    }

    private Edit feature(Survey survey, Tool made, String called, Geometry geometry) {
        Feature drawn =
                switch (made) {
                    case OPENING -> new Feature.Opening(DRAWN, called, (Polygon) geometry, EdgeSupport.FREE);
                    case SOLID -> new Feature.Solid(DRAWN, called, (Polygon) geometry);
                    case LAMINATE ->
                        new Feature.LaminateArea(
                                DRAWN,
                                called,
                                (Polygon) geometry,
                                survey.face(face).laminate());
                    case DIVIDER -> new Feature.Divider(DRAWN, called, (org.locationtech.jts.geom.LineString) geometry);
                    case SUPPORT ->
                        new Feature.Support(
                                DRAWN, called, (org.locationtech.jts.geom.LineString) geometry, EdgeSupport.SIMPLE);
                    case ACCESS -> new Feature.Access(DRAWN, called, geometry);
                    default ->
                        new Feature.Fitting(
                                DRAWN,
                                called,
                                geometry,
                                made != Tool.FITTING,
                                made == Tool.LOADED_FITTING,
                                KEEP_OUT_MM);
                };
        return Edit.add(survey, Part.features(face), drawn);
    }

    /** No hole nearer to a fitting than this: the survey folder's own default. */
    private static final double KEEP_OUT_MM = 60;

    // --- moving ------------------------------------------------------------------------------------------------------

    private void pick(Survey survey, double xMm, double yMm, double reachMm) {
        picked = nearest(survey, xMm, yMm, reachMm).orElse(null);
        message = picked == null
                ? MOVING
                : "This point is picked: now drag it. A drag from anywhere else moves the plan.";
    }

    /** Takes the vertex that was picked before, where it lies under the hand; false where it does not. */
    public boolean grasp(double xMm, double yMm, double reachMm) {
        Vertex vertex = picked;
        boolean under = vertex != null && vertex.at().distance(new Coordinate(xMm, yMm)) <= reachMm;
        held = under && tool == Tool.MOVE ? vertex : null;
        heldAt = held == null ? null : held.at();
        return held != null;
    }

    public void drag(Survey survey, double xMm, double yMm, double reachMm) {
        if (held != null) {
            heldAt = snapped(survey, xMm, yMm, reachMm);
        }
    }

    /** Leaves the vertex where it was dragged. */
    public void release() {
        Vertex vertex = held;
        Coordinate to = heldAt;
        held = null;
        picked = null;
        if (vertex == null || to == null || to.equals2D(vertex.at())) {
            return;
        }
        edits.edit("moving a point", s -> moved(s, vertex, to));
    }

    private @Nullable Edit moved(Survey survey, Vertex vertex, Coordinate to) {
        Face old = survey.face(face);
        Geometry before = vertex.feature() < 0
                ? old.outline()
                : old.features().get(vertex.feature()).geometry();
        Geometry after = moved(before, vertex.at(), to);
        if (!new IsValidOp(after).isValid()) {
            message = "There the edge would cross itself; the point stays where it was.";
            return null;
        }
        if (vertex.feature() < 0) {
            return outline(survey, (Polygon) after);
        }
        Feature f = old.features().get(vertex.feature());
        return new Edit.Replace<>(Part.features(face), vertex.feature(), FeatureShape.with(f, after));
    }

    /** All points at one place move together, as the first and last of a ring do. */
    private static Geometry moved(Geometry before, Coordinate from, Coordinate to) {
        Geometry after = before.copy();
        for (Coordinate c : after.getCoordinates()) {
            if (c.equals2D(from)) {
                c.x = to.x;
                c.y = to.y;
            }
        }
        after.geometryChanged();
        return after;
    }

    // --- snapping ----------------------------------------------------------------------------------------------------

    /** To a vertex within reach, else to the centreline, else to whole centimetres. */
    public Coordinate snapped(Survey survey, double xMm, double yMm, double reachMm) {
        Coordinate at = new Coordinate(xMm, yMm);
        for (Coordinate own : points) {
            if (own.distance(at) <= reachMm) {
                return own.copy();
            }
        }
        Optional<Vertex> vertex = nearest(survey, xMm, yMm, reachMm).filter(v -> !v.equals(held));
        if (vertex.isPresent()) {
            return vertex.get().at().copy();
        }
        double y = Math.abs(yMm) <= reachMm ? 0 : Math.rint(yMm / GRID_MM) * GRID_MM;
        return new Coordinate(Math.rint(xMm / GRID_MM) * GRID_MM, y);
    }

    private Optional<Vertex> nearest(Survey survey, double xMm, double yMm, double reachMm) {
        Coordinate at = new Coordinate(xMm, yMm);
        return vertices(survey).stream()
                .filter(v -> v.at().distance(at) <= reachMm)
                .min(java.util.Comparator.comparingDouble(v -> v.at().distance(at)));
    }

    /** Every vertex of the face. */
    public List<Vertex> vertices(Survey survey) {
        Face f = survey.face(face);
        List<Vertex> all = new ArrayList<>();
        addAll(all, -1, f.outline());
        for (int i = 0; i < f.features().size(); i++) {
            addAll(all, i, f.features().get(i).geometry());
        }
        return all;
    }

    private static void addAll(List<Vertex> all, int feature, Geometry geometry) {
        Coordinate[] cs = geometry.getCoordinates();
        int n = geometry instanceof Polygon ? cs.length - 1 : cs.length;
        for (int i = 0; i < n; i++) {
            all.add(new Vertex(feature, i, cs[i]));
        }
    }

    // --- what there is -----------------------------------------------------------------------------------------------

    public Tool tool() {
        return tool;
    }

    public List<Coordinate> points() {
        return List.copyOf(points);
    }

    /** Where the vertex is that the next drag moves; null where none is picked. */
    public @Nullable Coordinate pickedAt() {
        return picked == null ? null : picked.at();
    }

    /** Where the vertex in hand is; null where none is held. */
    public @Nullable Coordinate heldAt() {
        return held == null ? null : heldAt;
    }

    public String message() {
        return message;
    }

    public String face() {
        return face;
    }
}
