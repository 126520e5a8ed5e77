package corewright.intake.drawn;

import corewright.intake.drawn.Drawing.Label;
import corewright.intake.drawn.Drawing.Place;
import corewright.intake.drawn.Drawing.Stroke;
import corewright.intake.drawn.Drawing.Unread;
import corewright.intake.text.Clean;
import corewright.intake.text.Decimals;
import corewright.intake.text.Notes;
import corewright.survey.Origin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * The lines of an ASCII DXF file: LINE, LWPOLYLINE, POLYLINE with its VERTEX entities, ARC, CIRCLE, ELLIPSE and POINT of the
 * section ENTITIES, in the world's plane, and of the blocks that it inserts; TEXT and MTEXT as words. Everything else is noted
 * as unread.
 *
 * <p>Source: Autodesk, DXF Reference (release 12 and later): pairs of lines, a group code and a value; 0 begins an entity,
 * 8 names its layer, 10/20 are x and y, 40 a radius, 50/51 angles in degrees counter-clockwise, 42 a bulge, bit 1 of 70
 * closes a polyline, 230 = -1 is a view from below. Written here because no maintained Java reader has a permissive licence.
 */
public final class Dxf {
    private static final int MOST_ENTITIES = 100_000;
    private static final double LARGEST = 1e9;

    private final String file;
    private final Notes notes;
    private final Arcs arcs;
    private final String[] lines;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final Map<String, Inserted.Block> blocks = new HashMap<>();
    private final List<Unread> unread = new ArrayList<>();
    private int at;
    private int entities;
    private int points;
    private String unit = "";

    /** One entity's groups in file order. */
    private record Entity(String type, long line, List<Group> groups) {
        @Nullable
        String text(int code) {
            return groups.stream()
                    .filter(g -> g.code() == code)
                    .map(Group::value)
                    .findFirst()
                    .orElse(null);
        }
    }

    private record Group(int code, String value, long line) {}

    private Dxf(String file, String text, double tolerance, Notes notes) {
        this.file = file;
        this.notes = notes;
        this.arcs = new Arcs(tolerance);
        this.lines = text.split("\n", -1);
    }

    /**
     * The drawing in a file's text; null after a complaint.
     *
     * @param tolerance of chords, in the drawing's units
     */
    public static @Nullable Drawing parse(String file, String text, double tolerance, Notes notes) {
        Dxf dxf = new Dxf(file, text, tolerance, notes);
        try {
            return dxf.drawing();
        } catch (NotDxf e) {
            notes.complain(new Origin(file, e.line), "", e.problem);
            return null;
        }
    }

    private Drawing drawing() {
        boolean found = false;
        boolean ended = false;
        String section = "";
        for (Entity entity = next(); entity != null; entity = next()) {
            switch (entity.type()) {
                case "SECTION" -> {
                    section = String.valueOf(entity.text(2));
                    found |= section.equals("ENTITIES");
                    header(entity, section);
                }
                case "BLOCK" -> block(entity);
                case "ENDSEC" -> section = "";
                case "EOF" -> {
                    ended = true;
                    at = lines.length;
                }
                default -> {
                    if (section.equals("ENTITIES")) {
                        entity(entity);
                    }
                }
            }
        }
        if (!found) {
            throw new NotDxf(0, "found no section ENTITIES, expected an ASCII DXF drawing");
        }
        if (!ended && !section.isEmpty()) {
            throw new NotDxf(
                    lines.length,
                    "the file ends inside its section " + Clean.line(section, 60)
                            + ": it was cut short, copy it again");
        }
        return new Drawing(strokes, unread, labels, unit, !ended);
    }

    private void header(Entity section, String name) {
        List<Group> groups = section.groups();
        for (int i = 0; name.equals("HEADER") && i + 1 < groups.size(); i++) {
            if (groups.get(i).value().equals("$INSUNITS")) {
                unit = switch (groups.get(i + 1).value()) {
                    case "1" -> "in";
                    case "2" -> "ft";
                    case "4" -> "mm";
                    case "5" -> "cm";
                    case "6" -> "m";
                    default -> "";
                };
            }
        }
    }

    private void entity(Entity entity) {
        if (++entities > MOST_ENTITIES || points > Drawing.MOST_POINTS) {
            throw new NotDxf(
                    entity.line(),
                    "expected at most " + MOST_ENTITIES + " entities and " + Drawing.MOST_POINTS + " points");
        }
        String layer = entity.text(8);
        Place place = new Place(layer == null ? "" : layer, entities, entity.line());
        List<Coordinate> line = new ArrayList<>();
        boolean closed = false;
        switch (entity.type()) {
            case "LINE" -> {
                line.add(point(entity, 10));
                line.add(point(entity, 11));
            }
            case "POINT" -> line.add(point(entity, 10));
            case "CIRCLE" -> {
                arcs.circle(point(entity, 10), radius(entity), line);
                closed = true;
            }
            case "ARC" -> arc(entity, line);
            case "ELLIPSE" -> closed = arcs.ellipse(ellipse(entity), line);
            case "INSERT" -> {
                insert(entity, place);
                return;
            }
            case "TEXT", "MTEXT" -> {
                if (entity.groups().stream().anyMatch(g -> g.code() == 10)) {
                    labels.add(new Label(place, plain(entity.text(1)), point(entity, 10)));
                } else {
                    unread.add(new Unread(place, entity.type())); // words without a place name nothing
                }
                return;
            }
            case "LWPOLYLINE" -> closed = polyline(entity, vertices(entity), line);
            case "POLYLINE" -> closed = polyline(entity, vertexEntities(), line);
            default -> {
                unread.add(new Unread(place, entity.type()));
                return;
            }
        }
        points += line.size();
        boolean own =
                !entity.type().equals("LINE") && !entity.type().equals("POINT"); // those two have no plane of their own
        boolean below = own && number(entity, 230, 1) < 0;
        line.replaceAll(p -> new Coordinate(below ? -p.x : p.x, p.y));
        strokes.add(new Stroke(place, "", line, closed));
    }

    private Arcs.Ellipse ellipse(Entity entity) {
        double to = number(entity, 42, 2 * Math.PI);
        return new Arcs.Ellipse(
                point(entity, 10), point(entity, 11), number(entity, 40, Double.NaN), number(entity, 41, 0), to);
    }

    /** What a block holds is kept until it is inserted; blocks are defined before they are used. */
    private void block(Entity begin) {
        int strokesBefore = strokes.size();
        int labelsBefore = labels.size();
        for (Entity entity = next(); entity != null && !entity.type().equals("ENDBLK"); entity = next()) {
            entity(entity);
        }
        List<Stroke> own = strokes.subList(strokesBefore, strokes.size());
        List<Label> words = labels.subList(labelsBefore, labels.size());
        String name = String.valueOf(begin.text(2));
        blocks.put(name, new Inserted.Block(point(begin, 10), List.copyOf(own), List.copyOf(words)));
        own.clear();
        words.clear();
    }

    private void insert(Entity entity, Place place) {
        String name = number(entity, 66, 0) == 1 ? attribute() : "";
        Inserted.Block block = blocks.get(String.valueOf(entity.text(2)));
        if (block == null || number(entity, 70, 1) > 1 || number(entity, 71, 1) > 1) {
            unread.add(new Unread(place, block == null ? "INSERT of a block that the file lacks" : "INSERT in rows"));
            return;
        }
        Inserted at = new Inserted(
                place,
                name,
                point(entity, 10),
                number(entity, 41, 1) * (number(entity, 230, 1) < 0 ? -1 : 1),
                number(entity, 42, 1),
                Math.toRadians(number(entity, 50, 0)));
        strokes.addAll(at.strokes(block));
        labels.addAll(at.labels(block));
        points += block.points();
    }

    /** Of the attributes that follow up to SEQEND the one called NAME, else the first that says anything. */
    private String attribute() {
        String first = "";
        String named = "";
        for (Entity entity = next(); entity != null; entity = next()) {
            if (entity.type().equals("SEQEND")) {
                return named.isEmpty() ? first : named;
            }
            String text = plain(entity.text(1));
            boolean name = "NAME".equalsIgnoreCase(String.valueOf(entity.text(2)));
            named = name ? text : named;
            first = first.isEmpty() ? text : first;
        }
        throw new NotDxf(lines.length, "an INSERT has no SEQEND");
    }

    /** A text without the marks of its formatting. */
    private static String plain(@Nullable String text) {
        return text == null
                ? ""
                : Clean.line(
                        text.replaceAll("\\\\P", " ")
                                .replaceAll("\\\\[A-Za-z][^;\\\\]*;", "")
                                .replaceAll("[{}]", ""),
                        60);
    }

    private void arc(Entity entity, List<Coordinate> into) {
        double from = Math.toRadians(number(entity, 50, Double.NaN) % 360);
        double to = Math.toRadians(number(entity, 51, Double.NaN) % 360);
        double sweep = to - from;
        while (sweep <= 0) {
            sweep += 2 * Math.PI;
        }
        arcs.arc(point(entity, 10), radius(entity), from, sweep, into);
    }

    /** A corner and the bulge of the side that follows it. */
    private record Vertex(Coordinate place, double bulge) {}

    private boolean polyline(Entity entity, List<Vertex> vertices, List<Coordinate> into) {
        int flags = (int) number(entity, 70, 0);
        boolean closed = (flags & 1) != 0;
        int n = vertices.size();
        for (int i = 0; i < n; i++) {
            Vertex vertex = vertices.get(i);
            into.add(vertex.place());
            if (i + 1 < n || closed) {
                arcs.bulge(vertex.place(), vertices.get((i + 1) % n).place(), vertex.bulge(), into);
            }
        }
        return closed;
    }

    /** Of an LWPOLYLINE: each 10 begins a corner, 20 and 42 belong to it. */
    private List<Vertex> vertices(Entity entity) {
        List<Vertex> vertices = new ArrayList<>();
        List<Group> own = new ArrayList<>();
        for (Group group : entity.groups()) {
            if (group.code() == 10 && !own.isEmpty()) {
                vertices.add(vertex(new Entity(entity.type(), own.get(0).line(), own)));
                own = new ArrayList<>();
            }
            if (group.code() == 10 || (!own.isEmpty() && (group.code() == 20 || group.code() == 42))) {
                own.add(group);
            }
        }
        if (!own.isEmpty()) {
            vertices.add(vertex(new Entity(entity.type(), own.get(0).line(), own)));
        }
        return vertices;
    }

    /** Of a POLYLINE: the VERTEX entities that follow, up to SEQEND; corners of a spline's frame are left out. */
    private List<Vertex> vertexEntities() {
        List<Vertex> vertices = new ArrayList<>();
        for (Entity entity = next(); entity != null; entity = next()) {
            if (entity.type().equals("SEQEND")) {
                return vertices;
            }
            if (!entity.type().equals("VERTEX")) {
                throw new NotDxf(entity.line(), "found " + entity.type() + ", expected VERTEX or SEQEND");
            }
            if (((int) number(entity, 70, 0) & 16) == 0) {
                vertices.add(vertex(entity));
            }
        }
        throw new NotDxf(lines.length, "a POLYLINE has no SEQEND");
    }

    private Vertex vertex(Entity entity) {
        return new Vertex(point(entity, 10), number(entity, 42, 0));
    }

    private Coordinate point(Entity entity, int code) {
        return new Coordinate(number(entity, code, Double.NaN), number(entity, code + 10, Double.NaN));
    }

    private double radius(Entity entity) {
        double radius = number(entity, 40, Double.NaN);
        if (radius <= 0) {
            throw new NotDxf(entity.line(), "found a radius of " + radius + ", expected more than 0");
        }
        return radius;
    }

    /** The number of a group; {@code otherwise} where there is none, unless that is NaN. */
    private static double number(Entity entity, int code, double otherwise) {
        for (Group group : entity.groups()) {
            if (group.code() == code) {
                Double number = Decimals.parse(group.value(), LARGEST);
                if (number == null) {
                    throw new NotDxf(
                            group.line(),
                            "found \"" + Clean.line(group.value(), 60) + "\", expected a number within 1e9");
                }
                return number;
            }
        }
        if (Double.isNaN(otherwise)) {
            throw new NotDxf(entity.line(), "a " + entity.type() + " has no group " + code);
        }
        return otherwise;
    }

    /** The next entity or marker, with everything up to the one after it; null at the end. */
    private @Nullable Entity next() {
        Group first = group();
        while (first != null && first.code() != 0) {
            first = group();
        }
        if (first == null) {
            return null;
        }
        List<Group> groups = new ArrayList<>();
        int before = at;
        for (Group group = group(); group != null && group.code() != 0; group = group()) {
            groups.add(group);
            before = at;
        }
        at = before;
        return new Entity(first.value(), first.line(), groups);
    }

    private @Nullable Group group() {
        while (at < lines.length && lines[at].isBlank() && at + 1 >= lines.length) {
            at++;
        }
        if (at + 1 >= lines.length) {
            at = lines.length;
            return null;
        }
        String code = lines[at].strip();
        if (!code.matches("-?[0-9]{1,5}")) {
            throw new NotDxf(at + 1, "found \"" + Clean.line(code, 60) + "\", expected a group code, a whole number");
        }
        Group group = new Group(Integer.parseInt(code), lines[at + 1].strip(), at + 2);
        at += 2;
        return group;
    }

    /** Ends the reading of a file that is no DXF. */
    private static final class NotDxf extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final long line;
        private final String problem;

        NotDxf(long line, String problem) {
            super(problem);
            this.line = line;
            this.problem = problem;
        }
    }
}
