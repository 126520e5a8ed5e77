package corewright.intake;

import corewright.intake.Declared.DeclaredFace;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Row;
import corewright.intake.text.Table;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feature.Access;
import corewright.survey.Feature.Coaming;
import corewright.survey.Feature.Disturbance;
import corewright.survey.Feature.Divider;
import corewright.survey.Feature.Fitting;
import corewright.survey.Feature.LaminateArea;
import corewright.survey.Feature.Opening;
import corewright.survey.Feature.Solid;
import corewright.survey.Feature.Support;
import corewright.survey.Origin;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Reads the rows of the plan into faces with their features. */
final class PlanReader {
    /** A face's outline as drawn, with the row it stands in. */
    private record Outline(Row row, Polygon polygon, EdgeSupport edge, String laminate) {}

    /** No hole nearer than this to a fitting where the plan does not say; the folder format fixes it. */
    private static final double KEEPOUT_MM = 60;

    private static final String DIAMETER = "diameter_mm";
    private static final double LEAST_DIAMETER_MM = 1;
    private static final double MOST_DIAMETER_MM = 1000;

    /** Of a quarter of a round hole: its width is told to two hundredths. */
    private static final int ROUND_SEGMENTS = 4;

    static final int MOST_FEATURES = 2000;
    static final int MOST_POINTS = 100_000;

    private final Declared declared;
    private final Notes notes;
    private final Map<String, Outline> outlines = new LinkedHashMap<>();
    private final Map<String, List<Feature>> featuresByFace = new LinkedHashMap<>();

    /** Faces with an outline row, usable or complained of; the empty name where a row's face is not known. */
    private final Set<String> attempted = new HashSet<>();

    private boolean wasRead;
    private int features;
    private long points;

    PlanReader(Declared declared, Notes notes) {
        this.declared = declared;
        this.notes = notes;
    }

    void read(Table plan, FileEntry entry) {
        wasRead = true;
        features += plan.rows().size();
        if (features > MOST_FEATURES) {
            notes.complain(
                    new Origin(entry.file(), 0), "", "expected at most " + MOST_FEATURES + " features in the plan");
            attempted.add("");
            return;
        }
        for (Row row : plan.rows()) {
            DrawnKind drawn = row.word("kind", DrawnKind.class);
            String face = Places.face(row, entry.face(), declared.faceNames());
            Wkt wkt = Wkt.parse(row.text("wkt"), declared.units().length());
            if (!wkt.problem().isEmpty()) {
                row.complain("wkt", wkt.problem());
            }
            Geometry geometry = wkt.geometry();
            points += geometry == null ? 0 : geometry.getNumPoints();
            if (points > MOST_POINTS) {
                row.complain("wkt", "expected at most " + MOST_POINTS + " points in the whole plan");
                attempted.add("");
                return;
            }
            if (drawn == DrawnKind.OUTLINE || drawn == null) {
                attempted.add(face == null ? "" : face);
            }
            if (drawn != null && face != null && geometry != null) {
                take(row, drawn, face, geometry);
            }
        }
    }

    /** Takes what a drawing holds; geometry that cannot be used has been said already. */
    void read(List<DrawnFeature> drawing, FileEntry entry) {
        wasRead = true;
        features += drawing.size();
        points += drawing.stream().mapToLong(d -> d.geometry().getNumPoints()).sum();
        if (features > MOST_FEATURES || points > MOST_POINTS) {
            String problem =
                    "expected at most " + MOST_FEATURES + " features and " + MOST_POINTS + " points in the plan";
            notes.complain(new Origin(entry.file(), 0), "", problem);
            attempted.add("");
            return;
        }
        for (DrawnFeature feature : drawing) {
            String face = Places.face(feature.row(), entry.face(), declared.faceNames());
            if (feature.kind() == DrawnKind.OUTLINE) {
                attempted.add(face == null ? "" : face);
            }
            if (face != null) {
                take(feature.row(), feature.kind(), face, feature.geometry());
            }
        }
    }

    private void take(Row row, DrawnKind drawn, String face, Geometry geometry) {
        if (drawn == DrawnKind.OUTLINE) {
            outline(row, face, geometry);
        } else {
            featuresByFace.computeIfAbsent(face, f -> new ArrayList<>()).addAll(features(row, drawn, geometry));
        }
        if (drawn != DrawnKind.OPENING) {
            coaming(row, false);
        }
    }

    /** The faces, once every plan file has been read; those without a usable outline are complained of and left out. */
    List<Face> faces() {
        List<Face> faces = new ArrayList<>();
        for (DeclaredFace declaredFace : declared.faces()) {
            String name = declaredFace.name();
            Outline outline = outlines.get(name);
            if (outline == null) {
                if (wasRead && !attempted.contains(name) && !attempted.contains("")) {
                    notes.complain(
                            declaredFace.at().origin(),
                            declaredFace.at().path(),
                            "the plan has no row of kind outline for face \"" + name + "\"");
                }
                continue;
            }
            Face face = new Face(
                    name,
                    declaredFace.tiltDeg(),
                    declaredFace.uphillDeg(),
                    outline.polygon(),
                    outline.edge(),
                    outline.laminate(),
                    featuresByFace.getOrDefault(name, List.of()));
            new PlanCheck(face, outline.row().origin(), notes)
                    .check(declared.settings().numerics().cellMm());
            faces.add(face);
        }
        return faces;
    }

    private void outline(Row row, String face, Geometry geometry) {
        List<Polygon> polygons = parts(row, "outline", geometry, Polygon.class, "POLYGON");
        String laminate = laminate(row, true);
        EdgeSupport edge = edge(row, EdgeSupport.SIMPLE);
        if (polygons.isEmpty() || laminate == null) {
            return;
        }
        Outline before = outlines.get(face);
        if (before != null) {
            row.complain(
                    "kind",
                    "found a second outline of face \"" + face + "\", the first is at "
                            + before.row().origin());
        } else if (polygons.size() > 1) {
            row.complain("wkt", "found " + polygons.size() + " polygons, expected one outline for a face");
        } else if (polygons.get(0).getNumInteriorRing() > 0) {
            row.complain("wkt", "found an outline with a hole, expected the hole in a row of kind opening");
        } else {
            outlines.put(face, new Outline(row, counterClockwise(polygons.get(0)), edge, laminate));
        }
    }

    private List<? extends Feature> features(Row row, DrawnKind drawn, Geometry geometry) {
        Origin origin = row.origin();
        String name = row.name("name");
        if (drawn != DrawnKind.ACCESS && row.has(DIAMETER)) {
            row.expected(DIAMETER, "nothing, as only an access has one");
        }
        return switch (drawn) {
            case OPENING -> {
                OpeningEdge edge = row.has("edge") ? row.word("edge", OpeningEdge.class) : null;
                EdgeSupport held = edge == null ? EdgeSupport.FREE : edge.support;
                Optional<Coaming> coaming = coaming(row, edge == OpeningEdge.COAMING);
                yield areas(row, "opening", geometry, p -> new Opening(origin, name, whole(row, p), held, coaming));
            }
            case SOLID -> areas(row, "solid", geometry, p -> new Solid(origin, name, p));
            case LAMINATE -> {
                String laminate = laminate(row, false);
                yield areas(
                        row,
                        "laminate",
                        geometry,
                        p -> new LaminateArea(origin, name, p, laminate == null ? "" : laminate));
            }
            case DIVIDER -> lines(row, "divider", geometry, l -> new Divider(origin, name, l));
            case SUPPORT -> {
                EdgeSupport edge = edge(row, EdgeSupport.SIMPLE);
                yield lines(row, "support", geometry, l -> new Support(origin, name, l, edge));
            }
            case FITTING -> List.of(fitting(row, name, geometry));
            case DISTURBANCE -> List.of(new Disturbance(origin, name, geometry));
            case ACCESS -> List.of(new Access(origin, name, opened(row, geometry)));
            case OUTLINE -> throw new IllegalArgumentException("an outline is no feature");
        };
    }

    /** An access as large as it is: a point with a diameter is a round hole. */
    private static Geometry opened(Row row, Geometry geometry) {
        if (!row.has(DIAMETER)) {
            return geometry;
        }
        Double mm = row.length(DIAMETER, LengthUnit.MM);
        if (geometry.getDimension() > 0) {
            row.expected(DIAMETER, "nothing, as the drawn shape has its size");
            return geometry;
        }
        if (mm != null && !(mm >= LEAST_DIAMETER_MM && mm <= MOST_DIAMETER_MM)) {
            row.expected(
                    DIAMETER,
                    "a length from " + Numerals.plain(LEAST_DIAMETER_MM) + " to " + Numerals.plain(MOST_DIAMETER_MM)
                            + " mm");
            return geometry;
        }
        return mm == null ? geometry : geometry.buffer(mm / 2, ROUND_SEGMENTS);
    }

    /** How the edge of an opening is held, and what stands on it. */
    private enum OpeningEdge {
        SIMPLE(EdgeSupport.SIMPLE),
        SIMPLE_HARD(EdgeSupport.SIMPLE_HARD),
        CLAMPED(EdgeSupport.CLAMPED),
        FREE(EdgeSupport.FREE),
        COAMING(EdgeSupport.FREE);

        final EdgeSupport support;

        OpeningEdge(EdgeSupport support) {
            this.support = support;
        }
    }

    private Optional<Coaming> coaming(Row row, boolean has) {
        CoamingCells cells = new CoamingCells(row, declared.materials().skins().keySet());
        return has ? cells.read() : cells.none();
    }

    private static Polygon whole(Row row, Polygon area) {
        if (area.getNumInteriorRing() > 0) {
            row.complain("wkt", "found an opening with deck inside it, expected an area without a hole");
        }
        return area;
    }

    private Fitting fitting(Row row, String name, Geometry geometry) {
        Double keepout =
                row.has("keepout") ? row.depth("keepout", declared.units().length()) : null;
        return new Fitting(
                row.origin(),
                name,
                geometry,
                row.yes("metal"),
                row.yes("load_bearing"),
                keepout == null ? KEEPOUT_MM : keepout);
    }

    private static EdgeSupport edge(Row row, EdgeSupport otherwise) {
        EdgeSupport edge = row.has("edge") ? row.word("edge", EdgeSupport.class) : otherwise;
        return edge == null ? otherwise : edge;
    }

    private @Nullable String laminate(Row row, boolean onlyOneWillDo) {
        List<String> names = declared.laminateNames();
        String name = row.text("laminate");
        if (name.isEmpty() && names.size() == 1 && onlyOneWillDo) {
            return names.get(0);
        }
        if (!names.contains(name)) {
            if (names.isEmpty()) {
                return null; // survey.yaml has been complained of already
            }
            row.expected("laminate", Words.or(names));
            return null;
        }
        return name;
    }

    private static List<Feature> areas(Row row, String kind, Geometry geometry, Function<Polygon, Feature> feature) {
        return parts(row, kind, geometry, Polygon.class, "POLYGON").stream()
                .map(PlanReader::counterClockwise)
                .map(feature)
                .toList();
    }

    private static List<Feature> lines(Row row, String kind, Geometry geometry, Function<LineString, Feature> feature) {
        return parts(row, kind, geometry, LineString.class, "LINESTRING").stream()
                .map(l -> l.getFactory().createLineString(l.getCoordinateSequence()))
                .map(feature)
                .toList();
    }

    /** The single geometries of one type that a row holds; none after a complaint. */
    private static <G extends Geometry> List<G> parts(
            Row row, String kind, Geometry geometry, Class<G> type, String expected) {
        List<G> parts = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (!type.isInstance(part) || part instanceof GeometryCollection) {
                row.complain(
                        "wkt",
                        "found a " + part.getGeometryType().toUpperCase(Locale.ROOT) + ", expected a " + expected
                                + " for kind " + kind);
                return List.of();
            }
            if (!part.isEmpty()) {
                parts.add(type.cast(part));
            }
        }
        return parts;
    }

    /** Seen from the outer skin: the shell counter-clockwise, holes clockwise. */
    private static Polygon counterClockwise(Polygon area) {
        LinearRing shell = turned(area.getExteriorRing(), true);
        LinearRing[] holes = new LinearRing[area.getNumInteriorRing()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = turned(area.getInteriorRingN(i), false);
        }
        return area.getFactory().createPolygon(shell, holes);
    }

    private static LinearRing turned(LinearRing ring, boolean counterClockwise) {
        return Orientation.isCCW(ring.getCoordinateSequence()) == counterClockwise ? ring : ring.reverse();
    }
}
