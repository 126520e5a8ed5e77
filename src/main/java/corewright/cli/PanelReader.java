package corewright.cli;

import corewright.cli.PanelFile.Bond;
import corewright.cli.PanelFile.Build;
import corewright.cli.PanelFile.CoreEntry;
import corewright.cli.PanelFile.InPlane;
import corewright.cli.PanelFile.LoadEntry;
import corewright.cli.PanelFile.LoadEntry.Kind;
import corewright.cli.PanelFile.PatchEntry;
import corewright.cli.PanelFile.SkinEntry;
import corewright.cli.PanelFile.Spot;
import corewright.cli.PanelFile.Strength;
import corewright.cli.PanelFile.Study;
import corewright.cli.PanelTree.Item;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Text;
import corewright.intake.yaml.YamlTree;
import corewright.intake.yaml.YamlValue;
import corewright.survey.EdgeSupport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Reads {@code PANEL.yaml}; every complaint is collected before it is refused. */
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

    private final PanelTree tree;

    private PanelReader(PanelTree tree) {
        this.tree = tree;
    }

    /**
     * Reads the text of a file.
     *
     * @param file its name, for complaints
     */
    public static PanelFile read(String file, String text) throws RefusedException {
        Notes notes = new Notes(file);
        YamlValue top = YamlTree.parse(file, text, notes);
        PanelFile panel = top == null ? null : new PanelReader(new PanelTree(notes)).panel(new Item(top));
        notes.refuseIfAnyComplaint();
        return Objects.requireNonNull(panel, "a panel that is none was not complained of");
    }

    /**
     * Reads a file.
     *
     * @throws RefusedException with every complaint, also where there is no such file or it is no text
     * @throws IOException where the disk fails
     */
    public static PanelFile read(Path path) throws IOException {
        String file = String.valueOf(path.getFileName());
        Notes notes = new Notes(file);
        String text = Text.read(path, file, YamlTree.LARGEST_BYTES, notes);
        notes.refuseIfAnyComplaint();
        return read(file, Objects.requireNonNull(text, "a text that is none was not complained of"));
    }

    private @Nullable PanelFile panel(Item root) {
        if (!tree.isMap(root, KEYS)) {
            return null;
        }
        Geometry outline = tree.geometry(root.child("outline"), "Polygon");
        List<EdgeSupport> edges = edges(root.child("edges"), outline);
        Item openingsItem = root.child("openings");
        EdgeSupport openings = openingsItem.given() ? tree.choice(openingsItem, EdgeSupport.class) : EdgeSupport.FREE;
        Item coreItem = root.child("core");
        SkinEntry outer = skin(root.child("outer_skin"));
        SkinEntry inner = skin(root.child("inner_skin"));
        CoreEntry core = core(coreItem);
        double coreMm = tree.positive(coreItem.child("thickness_mm"));
        List<PatchEntry> patches = new ArrayList<>();
        tree.list(root.child("patches")).forEach(item -> add(patches, patch(item, coreMm)));
        List<LoadEntry> loads = new ArrayList<>();
        tree.list(root.child("loads")).forEach(item -> add(loads, load(item)));
        if (loads.isEmpty() && !tree.anyComplaint()) {
            tree.complain(root.child("loads"), "is missing, expected at least one load");
        }
        Bond bond = bond(root.child("bond"));
        Study study = new Study(tree.optionalPositive(root.child("mesh_mm")), spots(root.child("probe_points")));
        if (!(outline instanceof Polygon polygon) || openings == null) {
            return null;
        }
        return new PanelFile(
                polygon, edges, openings, new Build(outer, inner, coreMm, core), patches, loads, bond, study);
    }

    private static <T> void add(List<T> list, @Nullable T item) {
        if (item != null) {
            list.add(item);
        }
    }

    private Bond bond(Item item) {
        if (!item.given() || !tree.isMap(item, BOND)) {
            return new Bond(OptionalDouble.empty(), OptionalDouble.empty());
        }
        return new Bond(
                tree.optionalPositive(item.child("shear_strength_MPa")),
                tree.optionalPositive(item.child("peel_strength_MPa")));
    }

    private List<EdgeSupport> edges(Item item, @Nullable Geometry outline) {
        List<EdgeSupport> edges = new ArrayList<>();
        if (!item.isList()) {
            add(edges, item.given() ? tree.choice(item, EdgeSupport.class) : EdgeSupport.SIMPLE);
            return edges;
        }
        tree.list(item).forEach(each -> add(edges, tree.choice(each, EdgeSupport.class)));
        if (outline instanceof Polygon polygon) {
            int sides = polygon.getExteriorRing().getNumPoints() - 1;
            int edgesGiven = item.value().items().size();
            if (edgesGiven != sides) {
                tree.complain(
                        item,
                        "found " + edgesGiven + " edges, expected one for each of the " + sides
                                + " sides of the outline, or a single word");
            }
        }
        return edges;
    }

    private SkinEntry skin(Item item) {
        if (!tree.isMap(item, SKIN)) {
            return new SkinEntry(0, 0, 0, 0, 0, OptionalDouble.empty());
        }
        double thickness = tree.positive(item.child("thickness_mm"));
        OptionalDouble strength = tree.optionalPositive(item.child("strength_MPa"));
        if (item.child("Ex_MPa").given()) {
            double ex = tree.positive(item.child("Ex_MPa"));
            double ey = tree.positive(item.child("Ey_MPa"));
            double nu = tree.number(item.child("nu_xy"));
            if (nu * nu * ey / ex >= 1) {
                tree.complain(item.child("nu_xy"), "found " + nu + ", expected less than the root of Ex/Ey");
            }
            return new SkinEntry(thickness, ex, ey, nu, tree.positive(item.child("Gxy_MPa")), strength);
        }
        double e = tree.positive(item.child("E_MPa"));
        double nu = tree.number(item.child("nu"));
        if (nu <= -1 || nu >= 0.5) {
            tree.complain(item.child("nu"), "found " + nu + ", expected less than 0.5 and more than -1");
        }
        return new SkinEntry(thickness, e, e, nu, e / (2 * (1 + nu)), strength);
    }

    private CoreEntry core(Item item) {
        Strength unknown = new Strength(OptionalDouble.empty(), OptionalDouble.empty());
        if (!tree.isMap(item, CORE)) {
            return new CoreEntry(0, 0, 0, Optional.empty(), unknown);
        }
        Optional<InPlane> inPlane = Optional.empty();
        if (item.child("Ex_MPa").given()) {
            inPlane = Optional.of(new InPlane(
                    tree.positive(item.child("Ex_MPa")),
                    tree.positive(item.child("Ey_MPa")),
                    tree.number(item.child("nu_xy")),
                    tree.positive(item.child("Gxy_MPa"))));
        }
        Strength strength = new Strength(
                tree.optionalPositive(item.child("shear_strength_MPa")),
                tree.optionalPositive(item.child("compressive_strength_MPa")));
        return new CoreEntry(
                tree.positive(item.child("Gxz_MPa")),
                tree.positive(item.child("Gyz_MPa")),
                tree.positive(item.child("Ez_MPa")),
                inPlane,
                strength);
    }

    private @Nullable PatchEntry patch(Item item, double coreMm) {
        if (!tree.isMap(item, PATCH)) {
            return null;
        }
        Geometry area = tree.geometry(item.child("area"), "Polygon", "MultiPolygon");
        Item depthItem = item.child("void_depth_mm");
        Item coreItem = item.child("core");
        if (depthItem.given() == coreItem.given()) {
            tree.complain(item, "expected either void_depth_mm or core");
            return null;
        }
        if (area == null) {
            return null;
        }
        if (coreItem.given()) {
            Item thickness = coreItem.child("thickness_mm");
            if (thickness.given() && tree.number(thickness) != coreMm) {
                tree.complain(thickness, "expected the panel's own core thickness, or nothing");
            }
            return new PatchEntry(area, Optional.of(core(coreItem)), OptionalDouble.empty());
        }
        double depth = tree.number(depthItem);
        if (depth < 0 || depth > coreMm) {
            tree.complain(depthItem, "found " + depth + ", expected 0 to the core's thickness, " + coreMm);
        }
        return new PatchEntry(area, Optional.empty(), OptionalDouble.of(depth));
    }

    private @Nullable LoadEntry load(Item item) {
        if (!tree.isMap(item, LOAD)) {
            return null;
        }
        if (item.child("pressure_kPa").given()) {
            return new LoadEntry(Kind.PRESSURE, Optional.empty(), tree.number(item.child("pressure_kPa")), 0);
        }
        if (item.child("line").given()) {
            Geometry line = tree.geometry(item.child("line"), "LineString");
            double force = tree.number(item.child("force_N"));
            return line == null ? null : new LoadEntry(Kind.LINE, Optional.of(line), force, 0);
        }
        Geometry area = tree.geometry(item.child("area"), "Polygon", "MultiPolygon");
        Item mx = item.child("moment_x_Nmm");
        Item my = item.child("moment_y_Nmm");
        if (mx.given() || my.given()) {
            double x = mx.given() ? tree.number(mx) : 0;
            double y = my.given() ? tree.number(my) : 0;
            return area == null ? null : new LoadEntry(Kind.MOMENT, Optional.of(area), x, y);
        }
        double force = tree.number(item.child("force_N"));
        return area == null ? null : new LoadEntry(Kind.FORCE, Optional.of(area), force, 0);
    }

    private List<Spot> spots(Item item) {
        List<Spot> spots = new ArrayList<>();
        for (Item each : tree.list(item)) {
            List<Item> pair = tree.list(each);
            if (pair.size() == 2) {
                spots.add(new Spot(tree.number(pair.get(0)), tree.number(pair.get(1))));
            } else {
                tree.complain(each, "expected two numbers, x and y");
            }
        }
        return spots;
    }
}
