package corewright.intake;

import corewright.intake.drawn.Drawing;
import corewright.intake.drawn.Drawing.Label;
import corewright.intake.drawn.Drawing.Place;
import corewright.intake.drawn.Drawing.Stroke;
import corewright.intake.drawn.Drawing.Unread;
import corewright.intake.drawn.Dxf;
import corewright.intake.drawn.Joined;
import corewright.intake.drawn.Svg;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Numerals.Decimal;
import corewright.intake.text.Row;
import corewright.intake.text.SheetLine;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.survey.Origin;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * A yard's drawing as features of the plan: (1) the file's lines; (2) to survey millimetres, x aft from the datum; (3) the
 * lines of each layer joined end to end; (4) areas, lines and points as the layer's kind wants them. What cannot be used
 * is a finding each, with layer and entity.
 */
final class DrawnPlan {
    /** Chords of curves lie no farther from the curve: half the width of a pencil line, well below any reading's place. */
    private static final double SAGITTA_MM = 0.5;

    /** Of a feature's row: its name, and what its layer gives besides the kind. */
    private static final List<String> CELLS = Stream.concat(
                    Stream.of("name"), DrawingEntry.COLUMNS.stream().skip(1))
            .toList();

    private static final Map<String, Integer> COLUMNS =
            CELLS.stream().collect(Collectors.toUnmodifiableMap(c -> c, CELLS::indexOf));

    private final FileEntry entry;
    private final DrawingEntry how;
    private final Declared declared;
    private final Notes notes;
    private final GeometryFactory factory = new GeometryFactory();

    private DrawnPlan(FileEntry entry, DrawingEntry how, Declared declared, Notes notes) {
        this.entry = entry;
        this.how = how;
        this.declared = declared;
        this.notes = notes;
    }

    /** The features of a drawing; none after a complaint. */
    static List<DrawnFeature> read(
            FileEntry entry, DrawingEntry how, @Nullable String text, Declared declared, Notes notes) {
        return text == null ? List.of() : new DrawnPlan(entry, how, declared, notes).features(text);
    }

    private List<DrawnFeature> features(String text) {
        LengthUnit asked = how.unit() != null ? how.unit() : declared.units().length();
        double tolerance = SAGITTA_MM / asked.mm;
        boolean dxf = entry.file().toLowerCase(java.util.Locale.ROOT).endsWith(".dxf");
        Drawing drawing = dxf
                ? Dxf.parse(entry.file(), text, tolerance, notes)
                : Svg.parse(entry.file(), text, tolerance, id -> how.columns(id) != null, notes);
        if (drawing == null) {
            return List.of();
        }
        LengthUnit unit = unit(drawing, asked);
        Map<String, List<Stroke>> byLayer = drawing.strokes().stream()
                .collect(Collectors.groupingBy(s -> s.place().layer(), LinkedHashMap::new, Collectors.toList()));
        List<DrawnFeature> features = new ArrayList<>();
        DrawnWords words = new DrawnWords(drawing.labels().stream()
                .filter(l -> leftOut(l.place()).isEmpty())
                .map(l -> inSurvey(l, unit))
                .toList());
        byLayer.forEach((layer, strokes) -> layer(layer, strokes, unit, words, features));
        drawing.unread().forEach(this::noteUnread);
        noteUnreadOfUnknownLayers(drawing.unread());
        noteUnused(words.unused().toList());
        if (drawing.cutShort()) {
            notes.doubt(
                    new Origin(entry.file(), 0),
                    Subject.DRAWING,
                    entry.file() + " ends without the mark EOF: it may have been cut short.",
                    "What stands before the end is used.");
        }
        return features;
    }

    private LengthUnit unit(Drawing drawing, LengthUnit asked) {
        LengthUnit own = LengthUnit.named(drawing.unit());
        if (how.unit() == null && own != null) {
            return own;
        }
        if (own != null && own != asked) {
            String message = entry.file() + " says that it is drawn in " + own + ", survey.yaml in " + asked + ".";
            notes.doubt(new Origin(entry.file(), 0), Subject.PLAN, message, asked + " is taken.");
        }
        return asked;
    }

    private void layer(
            String layer, List<Stroke> strokes, LengthUnit unit, DrawnWords words, List<DrawnFeature> features) {
        Map<String, String> columns = how.columns(layer);
        DrawnKind kind = columns == null ? null : Words.pick(DrawnKind.class, columns.getOrDefault("kind", ""));
        if (columns == null) {
            Place first = strokes.get(0).place();
            note(first, strokes.size() + " lines or points of " + first + " on, are of no known kind");
        }
        if (columns == null || kind == null) {
            return;
        }
        List<Stroke> placed = strokes.stream().map(s -> inSurvey(s, unit)).toList();
        List<Stroke> joined = Joined.of(placed, how.joinMm());
        if (features.size() + joined.size() > PlanReader.MOST_FEATURES) {
            notes.complain(
                    new Origin(entry.file(), strokes.get(0).place().line()),
                    "",
                    "expected at most " + PlanReader.MOST_FEATURES + " features in the plan");
            return;
        }
        String called = layer.isBlank() ? kind.name().toLowerCase(java.util.Locale.ROOT) : layer.strip();
        for (int i = 0; i < joined.size(); i++) {
            Stroke stroke = joined.get(i);
            Geometry geometry = geometry(stroke, kind);
            if (geometry != null) {
                String count = joined.size() > 1 ? called + " " + (i + 1) : called;
                String word = named(kind) ? words.of(geometry).orElse(count) : count;
                String name = stroke.name().isBlank() ? word : stroke.name();
                features.add(new DrawnFeature(row(stroke, name, columns), kind, geometry));
            }
        }
    }

    /** Whether words in a thing's area are its name; an outline and its like hold everybody's. */
    private static boolean named(DrawnKind kind) {
        return kind != DrawnKind.OUTLINE && kind != DrawnKind.LAMINATE && kind != DrawnKind.SOLID;
    }

    /** The layer's name where the survey says that nothing of it is wanted. */
    private Optional<String> leftOut(Place place) {
        Map<String, String> columns = how.columns(place.layer());
        boolean none = columns != null && columns.getOrDefault("kind", "").isEmpty();
        return none ? Optional.of(place.layer()) : Optional.empty();
    }

    private Label inSurvey(Label label, LengthUnit unit) {
        return new Label(label.place(), label.text(), inSurvey(label.at(), unit));
    }

    private Coordinate inSurvey(Coordinate p, LengthUnit unit) {
        double cos = rounded(Math.cos(Math.toRadians(how.aftDeg())));
        double sin = rounded(Math.sin(Math.toRadians(how.aftDeg())));
        double dx = (p.x - how.originX()) * unit.mm;
        double dy = (p.y - how.originY()) * unit.mm;
        return new Coordinate(cos * dx + sin * dy, cos * dy - sin * dx);
    }

    private Stroke inSurvey(Stroke stroke, LengthUnit unit) {
        List<Coordinate> moved = new ArrayList<>();
        for (Coordinate p : stroke.points()) {
            Coordinate place = inSurvey(p, unit);
            if (moved.isEmpty() || !moved.get(moved.size() - 1).equals2D(place)) {
                moved.add(place);
            }
        }
        return new Stroke(stroke.place(), stroke.name(), moved, stroke.closed());
    }

    /** A quarter turn leaves coordinates as they were drawn. */
    private static double rounded(double ratio) {
        return Math.rint(ratio * 1e15) / 1e15;
    }

    /** The geometry of a kind; null after a finding. */
    private @Nullable Geometry geometry(Stroke stroke, DrawnKind kind) {
        boolean area = kind == DrawnKind.OUTLINE
                || kind == DrawnKind.OPENING
                || kind == DrawnKind.SOLID
                || kind == DrawnKind.LAMINATE;
        boolean line = kind == DrawnKind.DIVIDER || kind == DrawnKind.SUPPORT;
        List<Coordinate> points = new ArrayList<>(stroke.points());
        if (stroke.closed() && !points.isEmpty() && !points.get(0).equals2D(points.get(points.size() - 1))) {
            points.add(points.get(0));
        }
        int corners = !points.isEmpty() && stroke.closed() ? points.size() - 1 : points.size();
        Coordinate far = points.stream()
                .filter(p -> !(Math.abs(p.x) <= Lengths.LARGEST_MM && Math.abs(p.y) <= Lengths.LARGEST_MM))
                .findFirst()
                .orElse(null);
        if (far != null || points.size() > Wkt.MOST_VERTICES) {
            String why = far != null ? "lies farther than 1 km from the datum" : "has more than 20000 points";
            return refused(stroke, why + ": check the units and the origin");
        }
        if (area && !stroke.closed() && points.size() > 1) {
            Coordinate a = points.get(0);
            Coordinate b = points.get(points.size() - 1);
            String gap = Numerals.plain(a.distance(b));
            String where = "(" + Numerals.plain(b.x) + ", " + Numerals.plain(b.y) + ") mm";
            return refused(stroke, "is not closed: " + gap + " mm from end to end, the last at " + where);
        }
        if (corners < (area ? 3 : line ? 2 : 1)) {
            return refused(stroke, "has only " + corners + (corners == 1 ? " point" : " points"));
        }
        Coordinate[] all = points.toArray(Coordinate[]::new);
        Geometry geometry = corners == 1
                ? factory.createPoint(all[0])
                : stroke.closed() && !line && corners > 2 ? factory.createPolygon(all) : factory.createLineString(all);
        return new IsValidOp(geometry).isValid() ? geometry : refused(stroke, "crosses or touches itself");
    }

    private @Nullable Geometry refused(Stroke stroke, String why) {
        note(stroke.place(), "A line of " + stroke.place() + " " + why);
        return null;
    }

    private void noteUnread(Unread unread) {
        if (how.columns(unread.place().layer()) != null
                && leftOut(unread.place()).isEmpty()) {
            note(unread.place(), "In " + unread.place() + " stands a " + unread.what());
        }
    }

    private void noteUnused(List<Label> words) {
        if (!words.isEmpty()) {
            Label first = words.get(0);
            String which = " name no feature, the first \"" + first.text() + "\" in " + first.place();
            note(
                    first.place(),
                    words.size() == 1 ? "Words" + which.replace(", the first", ":") : words.size() + " texts" + which,
                    words.size() > 1);
        }
    }

    /** One finding a layer: a yard's drawing has thousands of them. */
    private void noteUnreadOfUnknownLayers(List<Unread> unread) {
        unread.stream()
                .filter(u -> how.columns(u.place().layer()) == null)
                .collect(Collectors.groupingBy(u -> u.place().layer(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .forEach(same -> {
                    Unread first = same.get(0);
                    String what = first.place() + " (" + first.what() + ")";
                    note(
                            first.place(),
                            same.size() == 1
                                    ? "What stands in " + what + " is of no known kind"
                                    : same.size() + " things, from " + what + " on, are of no known kind",
                            same.size() > 1);
                });
    }

    private void note(Place place, String what) {
        note(place, what, false);
    }

    private void note(Place place, String what, boolean many) {
        String message = entry.file() + ": " + what + ".";
        notes.doubt(
                new Origin(entry.file(), place.line()),
                Subject.DRAWING,
                message,
                (many ? "They are" : "It is") + " left out of the plan.");
    }

    private Row row(Stroke stroke, String name, Map<String, String> columns) {
        List<String> cells = new ArrayList<>(
                CELLS.stream().map(c -> columns.getOrDefault(c, "")).toList());
        cells.set(0, name);
        boolean outline = "outline".equalsIgnoreCase(columns.get("kind"));
        if (outline && cells.get(5).isEmpty()) {
            cells.set(5, how.laminate());
        }
        Place place = stroke.place();
        return new DrawnRow(new SheetLine(place.line(), cells), place);
    }

    /** A row whose complaints name layer and entity, as there are no columns. */
    private final class DrawnRow extends Row {
        private final Place place;

        DrawnRow(SheetLine line, Place place) {
            super(line, new Origin(entry.file(), place.line()), COLUMNS, Decimal.DOT, notes);
            this.place = place;
        }

        @Override
        protected String shown(String column) {
            return place + (COLUMNS.containsKey(column) ? ", " + column : "");
        }
    }
}
