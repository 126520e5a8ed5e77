package corewright.desktop.setup;

import corewright.desktop.state.Typed;
import corewright.survey.EdgeSupport;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The values of a face: as shown, and as an edit of what is typed. */
final class FaceEdits {
    private static final GeometryFactory PLAN = new GeometryFactory();

    /** A sheet to draw on. */
    private static final Envelope SHEET = new Envelope(0, 2000, -500, 500);

    private FaceEdits() {}

    static SetupRow row(Survey survey, Face f) {
        return new SetupRow(
                f.name(),
                List.of(
                        SetupValue.typed(SetupField.NAME, f.name()),
                        SetupValue.typed(SetupField.TILT, SetupText.plain(f.tiltDeg())),
                        SetupValue.typed(SetupField.UPHILL, SetupText.plain(turn(f.uphillDeg()))),
                        new SetupValue(
                                SetupField.EDGE,
                                word(f.edge()),
                                Arrays.stream(EdgeSupport.values())
                                        .map(FaceEdits::word)
                                        .toList()),
                        new SetupValue(
                                SetupField.LAMINATE,
                                f.laminate(),
                                survey.laminates().stream().map(l -> l.name()).toList())));
    }

    private static double turn(double deg) {
        return ((deg % 360) + 360) % 360;
    }

    private static String word(EdgeSupport edge) {
        return edge.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The face with one value as typed. */
    static Face changed(Survey survey, Face f, SetupField field, String text) throws Typed {
        return switch (field) {
            case NAME -> named(survey, f, text);
            case TILT ->
                new Face(
                        f.name(),
                        Typed.number("The tilt", text, 0, 180, "0 flat to 90 a wall and 180 overhead"),
                        f.uphillDeg(),
                        f.outline(),
                        f.edge(),
                        f.laminate(),
                        f.features());
            case UPHILL -> uphill(f, text);
            case EDGE ->
                new Face(
                        f.name(),
                        f.tiltDeg(),
                        f.uphillDeg(),
                        f.outline(),
                        EdgeSupport.valueOf(text.toUpperCase(Locale.ROOT).replace('-', '_')),
                        f.laminate(),
                        f.features());
            case LAMINATE -> new Face(f.name(), f.tiltDeg(), f.uphillDeg(), f.outline(), f.edge(), text, f.features());
            default -> throw new IllegalArgumentException("a face has no " + field);
        };
    }

    private static Face uphill(Face f, String text) throws Typed {
        double deg = Typed.number(
                "Uphill", text, 0, 360, "degrees from 0 to 360: 0 aft, 90 to starboard, 180 to the bow, 270 to port");
        return deg == turn(f.uphillDeg())
                ? f
                : new Face(f.name(), f.tiltDeg(), deg, f.outline(), f.edge(), f.laminate(), f.features());
    }

    /** Everything noted names its face, so a face that holds anything keeps its name. */
    private static Face named(Survey survey, Face f, String text) throws Typed {
        List<String> others = survey.faces().stream()
                .map(Face::name)
                .filter(n -> !n.equals(f.name()))
                .toList();
        String name = Typed.name("face", text, others);
        if (!name.equals(f.name()) && inUse(survey, f.name())) {
            throw new Typed("Face " + f.name() + " keeps its name: readings or decisions belong to it.");
        }
        return new Face(name, f.tiltDeg(), f.uphillDeg(), f.outline(), f.edge(), f.laminate(), f.features());
    }

    private static boolean inUse(Survey s, String face) {
        Stream<Spot> spots = Stream.of(
                        Part.MOISTURE.of(s).stream().map(r -> r.spot()),
                        Part.TAPS.of(s).stream().map(r -> r.spot()),
                        Part.PROBES.of(s).stream().map(r -> r.spot()),
                        Part.FEELERS.of(s).stream().map(r -> r.spot()),
                        Part.PLUGS.of(s).stream().map(r -> r.spot()),
                        Part.TEMPERATURES.of(s).stream().map(r -> r.spot()),
                        Part.CURED_TAPS.of(s).stream().map(r -> r.spot()),
                        Part.PHOTOS.of(s).stream().map(p -> p.spot()),
                        Part.METHODS.of(s).stream().map(m -> m.spot()),
                        Part.DOUBTS.of(s).stream().map(d -> d.spot()),
                        Part.HOLES.of(s).stream().map(h -> h.spot()),
                        Part.PLANNED_HOLES.of(s).stream().map(h -> h.spot()))
                .flatMap(all -> all);
        return spots.anyMatch(spot -> spot.face().equals(face))
                || s.loads().stream().anyMatch(l -> l.face().equals(face))
                || !s.repairPlan().isNone();
    }

    static Face fresh(Survey survey) {
        List<String> taken = survey.faces().stream().map(Face::name).toList();
        Face last = survey.faces().get(survey.faces().size() - 1);
        Polygon sheet = (Polygon) PLAN.toGeometry(SHEET);
        return new Face(
                SetupText.freeName("face", taken), 0, 180, sheet, EdgeSupport.SIMPLE, last.laminate(), List.of());
    }

    /** Takes a face away on which nothing was read or decided; what is drawn on it goes with it. */
    static Edit remove(Survey survey, Face f) throws Typed {
        if (survey.faces().size() == 1) {
            throw new Typed("Face " + f.name() + " stays: a survey needs a face.");
        }
        if (inUse(survey, f.name())) {
            throw new Typed("Face " + f.name() + " stays: readings or decisions belong to it.");
        }
        return Edit.remove(survey, Part.FACES, f);
    }
}
