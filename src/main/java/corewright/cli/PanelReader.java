package corewright.cli;

import corewright.cli.PanelFile.Probe;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Text;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlTree;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Strengths;
import corewright.sandwich.spec.Support;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Reads {@code PANEL.yaml}; every complaint is collected before it is refused. After a complaint a number stands for
 * which the records below can be made: nobody sees it.
 */
public final class PanelReader {
    private static final List<String> KEYS = List.of(
            "outline",
            "edges",
            "openings",
            "outer_skin",
            "inner_skin",
            "core",
            "patches",
            "loads",
            "bond",
            "mesh_mm",
            "probe_points");
    private static final List<String> SKIN =
            List.of("thickness_mm", "E_MPa", "nu", "Ex_MPa", "Ey_MPa", "nu_xy", "Gxy_MPa", "strength_MPa");
    private static final List<String> CORE = List.of(
            "thickness_mm",
            "Gxz_MPa",
            "Gyz_MPa",
            "Ez_MPa",
            "Ex_MPa",
            "Ey_MPa",
            "nu_xy",
            "Gxy_MPa",
            "shear_strength_MPa",
            "compressive_strength_MPa");
    private static final List<String> BOND = List.of("shear_strength_MPa", "peel_strength_MPa");
    private static final List<String> PATCH = List.of("area", "void_depth_mm", "core");
    private static final List<String> LOAD =
            List.of("area", "force_N", "pressure_kPa", "line", "moment_x_Nmm", "moment_y_Nmm");

    /** As far as any number of a file goes. */
    private static final double LARGEST = 1e9;

    /** Of {@code nu² Ey/Ex}, where a sheet's stiffness would lose its meaning at 1. */
    private static final double LARGEST_CONTRACTION = 0.999;

    /** The factor of a mesh of more would take over 10 GB, by the fill of nested dissection; no machine at a boat has them. */
    private static final double MOST_NODES = 250_000;

    private final Notes notes;

    private PanelReader(Notes notes) {
        this.notes = notes;
    }

    /**
     * Reads the text of a file.
     *
     * @param file its name, for complaints
     */
    public static PanelFile read(String file, String text) throws RefusedException {
        Notes notes = new Notes(file);
        YamlValue top = YamlTree.parse(file, text, notes);
        PanelFile panel = top == null ? null : new PanelReader(notes).panel(YamlBlock.of(top, notes));
        notes.refuseIfAnyComplaint();
        return Objects.requireNonNull(panel, "a panel that is none was not complained of");
    }

    /** Reads a file; one that is missing, too large or no text is complained of like its content. */
    public static PanelFile read(Path path) throws IOException {
        String file = String.valueOf(path.getFileName());
        Notes notes = new Notes(file);
        String text = Text.read(path, file, YamlTree.LARGEST_BYTES, notes);
        notes.refuseIfAnyComplaint();
        return read(file, Objects.requireNonNull(text, "a text that is none was not complained of"));
    }

    private @Nullable PanelFile panel(YamlBlock root) {
        root.only(KEYS);
        Geometry outline = geometry(root, "outline", "Polygon");
        List<Support> edges = edges(root, outline);
        Support openings = root.word("openings", Support.class);
        YamlBlock outer = root.block("outer_skin");
        YamlBlock inner = root.block("inner_skin");
        YamlBlock core = root.block("core");
        Skin outerSkin = skin(outer);
        Skin innerSkin = skin(inner);
        CoreMaterial material = core(core);
        double coreMm = positive(core, "thickness_mm");
        List<Patch> patches = new ArrayList<>();
        items(root, "patches").forEach(item -> add(patches, patch(YamlBlock.of(item, notes), coreMm)));
        List<Load> loads = new ArrayList<>();
        items(root, "loads").forEach(item -> add(loads, load(YamlBlock.of(item, notes))));
        if (loads.isEmpty() && !notes.anyComplaint()) {
            root.complain("loads", "is missing, expected at least one load");
        }
        YamlBlock bond = root.block("bond");
        bond.only(BOND);
        Strengths strengths = new Strengths(
                optional(outer, "strength_MPa"),
                optional(inner, "strength_MPa"),
                optional(core, "shear_strength_MPa"),
                optional(core, "compressive_strength_MPa"),
                new Strengths.Bond(optional(bond, "shear_strength_MPa"), optional(bond, "peel_strength_MPa")));
        OptionalDouble meshMm = optional(root, "mesh_mm");
        List<Probe> probes = probes(root);
        if (outline != null && meshMm.isPresent()) {
            double least = Math.sqrt(outline.getEnvelope().getArea() / MOST_NODES);
            if (meshMm.getAsDouble() < least) {
                root.expected("mesh_mm", String.format(Locale.ROOT, "at least %.2f for a panel of this size", least));
            }
        }
        if (!(outline instanceof Polygon polygon) || notes.anyComplaint()) {
            return null;
        }
        PanelSpec panel = new PanelSpec(
                polygon,
                edges,
                openings == null ? Support.FREE : openings,
                outerSkin,
                innerSkin,
                new PanelSpec.Core(coreMm, material),
                patches);
        return new PanelFile(panel, loads, strengths, meshMm, probes);
    }

    private static <T> void add(List<T> list, @Nullable T item) {
        if (item != null) {
            list.add(item);
        }
    }

    private List<Support> edges(YamlBlock root, @Nullable Geometry outline) {
        YamlValue edges = root.value().at("edges");
        if (edges.shape() != Shape.LIST) {
            Support all = root.word("edges", Support.class);
            return List.of(all == null ? Support.SIMPLE : all);
        }
        List<Support> each = new ArrayList<>();
        for (YamlValue edge : edges.items()) {
            Support support = Words.pick(Support.class, edge.text());
            if (support == null) {
                notes.expected(edge.origin(), edge.path(), edge.found(), Words.choices(Support.class));
            }
            add(each, support);
        }
        if (outline instanceof Polygon polygon) {
            int sides = polygon.getExteriorRing().getNumPoints() - 1;
            int given = edges.items().size();
            if (given != sides) {
                root.complain(
                        "edges",
                        "found " + given + " edges, expected one for each of the " + sides
                                + " sides of the outline, or a single word");
            }
        }
        return each;
    }

    private Skin skin(YamlBlock skin) {
        skin.only(SKIN);
        double thickness = positive(skin, "thickness_mm");
        boolean woven = skin.has("Ex_MPa");
        double ex = positive(skin, woven ? "Ex_MPa" : "E_MPa");
        double ey = woven ? positive(skin, "Ey_MPa") : ex;
        double nu = number(skin, woven ? "nu_xy" : "nu");
        double g = woven ? positive(skin, "Gxy_MPa") : ex / (2 * (1 + nu));
        if (!woven && (nu <= -1 || nu >= 0.5)) {
            skin.complain("nu", "found " + nu + ", expected less than 0.5 and more than -1");
        } else if (nu * nu * ey / ex > LARGEST_CONTRACTION) {
            skin.complain(woven ? "nu_xy" : "nu", "found " + nu + ", expected less than the root of Ex/Ey");
        }
        return notes.anyComplaint() ? Skin.isotropic(1, 1, 0) : new Skin(thickness, ex, ey, nu, g);
    }

    private CoreMaterial core(YamlBlock core) {
        core.only(CORE);
        Optional<CoreMaterial.InPlane> inPlane = Optional.empty();
        if (core.has("Ex_MPa")) {
            inPlane = Optional.of(new CoreMaterial.InPlane(
                    positive(core, "Ex_MPa"),
                    positive(core, "Ey_MPa"),
                    number(core, "nu_xy"),
                    positive(core, "Gxy_MPa")));
        }
        return new CoreMaterial(
                positive(core, "Gxz_MPa"), positive(core, "Gyz_MPa"), positive(core, "Ez_MPa"), inPlane);
    }

    private @Nullable Patch patch(YamlBlock patch, double coreMm) {
        patch.only(PATCH);
        Geometry area = geometry(patch, "area", "Polygon", "MultiPolygon");
        if (patch.has("void_depth_mm") == patch.has("core")) {
            notes.complain(patch.origin(), patch.value().path(), "expected either void_depth_mm or core");
            return null;
        }
        if (area == null) {
            return null;
        }
        if (patch.has("core")) {
            YamlBlock core = patch.block("core");
            if (core.has("thickness_mm") && number(core, "thickness_mm") != coreMm) {
                core.complain("thickness_mm", "expected the panel's own core thickness, or nothing");
            }
            OptionalDouble shear = optional(core, "shear_strength_MPa");
            OptionalDouble crush = optional(core, "compressive_strength_MPa");
            CoreMaterial material = core(core);
            return new Patch.Core(
                    area,
                    shear.isEmpty() && crush.isEmpty()
                            ? material
                            : material.with(
                                    new Strengths.OfCore("patch", shear, crush, Strengths.Bond.UNKNOWN, "input")));
        }
        double depth = number(patch, "void_depth_mm");
        if (depth < 0 || depth > coreMm) {
            patch.complain("void_depth_mm", "found " + depth + ", expected 0 to the core's thickness, " + coreMm);
        }
        return new Patch.Loose(area, depth);
    }

    private @Nullable Load load(YamlBlock load) {
        load.only(LOAD);
        if (load.has("pressure_kPa")) {
            return new Load.Pressure(number(load, "pressure_kPa"));
        }
        if (load.has("line")) {
            Geometry line = geometry(load, "line", "LineString");
            double force = number(load, "force_N");
            return line == null ? null : new Load.Line((LineString) line, force);
        }
        Geometry area = geometry(load, "area", "Polygon", "MultiPolygon");
        if (load.has("moment_x_Nmm") || load.has("moment_y_Nmm")) {
            double x = load.number("moment_x_Nmm", -LARGEST, LARGEST, 0);
            double y = load.number("moment_y_Nmm", -LARGEST, LARGEST, 0);
            return area == null ? null : new Load.Moment(area, x, y);
        }
        double force = number(load, "force_N");
        return area == null ? null : new Load.Force(area, force);
    }

    private List<Probe> probes(YamlBlock root) {
        List<Probe> probes = new ArrayList<>();
        for (YamlValue each : items(root, "probe_points")) {
            List<Double> pair = each.items().stream()
                    .map(YamlBlock::number)
                    .filter(Objects::nonNull)
                    .toList();
            if (pair.size() == 2 && each.items().size() == 2) {
                probes.add(new Probe(pair.get(0), pair.get(1)));
            } else {
                notes.complain(each.origin(), each.path(), "expected two numbers, x and y");
            }
        }
        return probes;
    }

    private static List<YamlValue> items(YamlBlock block, String key) {
        YamlValue list = block.value().at(key);
        if (!list.isMissing() && list.shape() != Shape.LIST) {
            block.expected(key, "a list");
        }
        return list.items();
    }

    /** A number that must be there; NaN after a complaint. */
    private static double number(YamlBlock block, String key) {
        Double number = block.number(key, -LARGEST, LARGEST);
        if (!block.has(key)) {
            block.expected(key, "a number");
        }
        return number == null ? Double.NaN : number;
    }

    private static double positive(YamlBlock block, String key) {
        double value = number(block, key);
        if (value <= 0) {
            block.expected(key, "a number above 0");
        }
        return value > 0 ? value : LARGEST;
    }

    private static OptionalDouble optional(YamlBlock block, String key) {
        return block.has(key) ? OptionalDouble.of(positive(block, key)) : OptionalDouble.empty();
    }

    /** A valid geometry in millimetres, not empty, of one of the kinds named; null after a complaint. */
    private static @Nullable Geometry geometry(YamlBlock block, String key, String... kinds) {
        String what = "well-known text of a " + String.join(" or ", kinds);
        if (block.value().at(key).shape() != Shape.TEXT) {
            block.expected(key, what);
            return null;
        }
        Wkt wkt = Wkt.parse(block.value().at(key).text(), LengthUnit.MM);
        Geometry geometry = wkt.geometry();
        if (geometry == null) {
            block.complain(key, wkt.problem());
        } else if (!List.of(kinds).contains(geometry.getGeometryType())) {
            block.expected(key, what);
            return null;
        }
        return geometry;
    }
}
