package corewright.intake;

import corewright.intake.text.Complaint;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygonal;

/**
 * The section {@code loads}: entries with one name act together. The damage and its repair do not hang on them, so an entry
 * that cannot be understood is left out with a finding.
 */
final class LoadsYaml {
    private static final List<String> AMOUNTS = List.of("force_N", "pressure_kPa", "moment_x_Nmm", "moment_y_Nmm");
    private static final List<String> KNOWN = List.of(
            "name", "face", "area", "line", "fitting", "force_N", "pressure_kPa", "moment_x_Nmm", "moment_y_Nmm");

    /** A thousand tonnes: anything more is a slip of the pen. */
    static final double LARGEST = 1e7;

    static final double LARGEST_MOMENT = 1e10;

    private final List<Face> faces;
    private final LengthUnit unit;

    private LoadsYaml(List<Face> faces, LengthUnit unit) {
        this.faces = faces;
        this.unit = unit;
    }

    /** @param faces those with a usable outline */
    static List<DeckLoad> read(YamlBlock top, List<Face> faces, Declared declared, Notes notes) {
        LoadsYaml yaml = new LoadsYaml(faces, declared.units().length());
        List<String> names =
                declared.faces().stream().map(Declared.DeclaredFace::name).toList();
        List<DeckLoad> loads = new ArrayList<>();
        Shape shape = top.value().at("loads").shape();
        if (shape == Shape.TEXT || shape == Shape.MAP) {
            top.expected("loads", "a list");
            return loads;
        }
        for (YamlValue item : top.list("loads")) {
            Notes own = new Notes(SurveyYaml.NAME);
            DeckLoad load = yaml.load(YamlBlock.of(item, own), names, loads.size() + 1);
            own.listed().stream()
                    .findFirst()
                    .ifPresent(c -> notes.doubt(c.origin(), Subject.LOAD, sentence(c), "That load is left out."));
            if (load != null && !own.anyComplaint()) {
                loads.add(load);
            }
        }
        return loads;
    }

    private static String sentence(Complaint complaint) {
        return complaint.column() + ": " + complaint.problem() + ".";
    }

    private @Nullable DeckLoad load(YamlBlock block, List<String> names, int number) {
        block.only(KNOWN);
        String faceName = names.size() == 1 && !block.has("face") ? names.get(0) : block.text("face");
        if (!names.contains(faceName)) {
            block.expected("face", Words.or(names));
            return null;
        }
        Face face = faces.stream()
                .filter(f -> f.name().equals(faceName))
                .findFirst()
                .orElse(null);
        Geometry area = face == null ? null : area(block, face);
        double force = block.number("force_N", -LARGEST, LARGEST, 0);
        double pressure = block.number("pressure_kPa", -LARGEST, LARGEST, 0);
        double mx = block.number("moment_x_Nmm", -LARGEST_MOMENT, LARGEST_MOMENT, 0);
        double my = block.number("moment_y_Nmm", -LARGEST_MOMENT, LARGEST_MOMENT, 0);
        if (AMOUNTS.stream().noneMatch(block::has)) {
            block.expected("force_N", Words.or(AMOUNTS));
            return null;
        }
        if (area instanceof LineString && (pressure != 0 || mx != 0 || my != 0)) {
            block.complain("line", "a load along a line is a force, expected force_N alone");
            return null;
        }
        String name = block.name("name");
        return area == null
                ? null
                : new DeckLoad(name.isEmpty() ? "load " + number : name, faceName, area, force, pressure, mx, my);
    }

    /** Null after a complaint. */
    private @Nullable Geometry area(YamlBlock block, Face face) {
        if (block.has("line")) {
            return drawn(block, "line", face) instanceof LineString line
                    ? line
                    : refused(block, "line", "a LINESTRING");
        }
        if (block.has("area")) {
            return drawn(block, "area", face) instanceof Polygonal area
                    ? (Geometry) area
                    : refused(block, "area", "a POLYGON");
        }
        if (block.has("fitting")) {
            return fitting(block, face);
        }
        if (block.has("pressure_kPa") && !block.has("force_N")) {
            return face.outline();
        }
        block.expected("area", "what the load presses on: area, line or fitting");
        return null;
    }

    private static @Nullable Geometry refused(YamlBlock block, String key, String expected) {
        if (!block.text(key).isEmpty()) {
            block.expected(key, expected + " in well-known text that lies on the face");
        }
        return null;
    }

    /** Null where it is no geometry or lies off the face. */
    private @Nullable Geometry drawn(YamlBlock block, String key, Face face) {
        Wkt read = Wkt.parse(block.text(key), unit);
        Geometry geometry = read.geometry();
        if (geometry == null) {
            block.complain(key, read.problem());
            return null;
        }
        return geometry.intersects(face.outline()) ? geometry : null;
    }

    private @Nullable Geometry fitting(YamlBlock block, Face face) {
        String name = block.text("fitting");
        List<Feature.Fitting> fittings = face.all(Feature.Fitting.class).stream()
                .filter(f -> f.name().equals(name))
                .toList();
        if (fittings.isEmpty()) {
            block.expected("fitting", "the name of a fitting on " + face.name());
            return null;
        }
        Geometry base = fittings.get(0).geometry();
        if (!(base instanceof Polygonal)) {
            block.complain(
                    "fitting",
                    "\"" + name + "\" is drawn as a " + base.getGeometryType().toLowerCase(Locale.ROOT)
                            + ", expected a fitting drawn as a POLYGON, or the base as area");
            return null;
        }
        return base;
    }
}
