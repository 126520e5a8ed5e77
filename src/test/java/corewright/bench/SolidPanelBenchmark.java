package corewright.bench;

import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Response;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Panels other than those of src/test/resources/sandwich/solids-900x600.csv against 3-D solids of our own ({@link
 * SolidPanel}), which are first compared with that table. Run: {@code mvn -o -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.SolidPanelBenchmark}. The panel's elements choose their
 * mesh by themselves; the solids' element size is the argument, 12.5 mm if left out.
 */
public final class SolidPanelBenchmark {
    /** Balsa: in-plane 60 MPa, along the grain 3900, shear 157, as in the table's head. */
    private static final double[] BALSA = moduli(60, 0.05, 25, 3900, 0.005, 157);

    private static final Envelope NONE = new Envelope();
    private static final double LENGTH = 900;
    private static final double WIDTH = 600;

    private final double size;

    private SolidPanelBenchmark(double size) {
        this.size = size;
    }

    public static void main(String[] args) {
        SolidPanelBenchmark b = new SolidPanelBenchmark(args.length > 0 ? Double.parseDouble(args[0]) : 12.5);
        b.againstTheTable();
        Case plain = new Case("as the table's", 3, 3, 11000, Support.SIMPLE, Support.SIMPLE, NONE, 0);
        Envelope under = new Envelope(250, 650, 175, 425);
        Envelope beside = new Envelope(550, 750, 200, 400);
        Support simple = Support.SIMPLE;
        Support hard = Support.SIMPLE_HARD;
        Support clamped = Support.CLAMPED;
        for (Case c : List.of(
                plain,
                new Case("unequal skins 4 and 2", 4, 2, 11000, simple, simple, NONE, 0),
                new Case("long edges clamped", 3, 3, 11000, clamped, simple, NONE, 0),
                new Case("void under", 3, 3, 11000, simple, simple, under, 12.5),
                new Case("void under, skins 2 and 4", 2, 4, 11000, simple, simple, under, 12.5),
                new Case("void under, skins 4 and 2, long clamped", 4, 2, 15000, clamped, simple, under, 12.5),
                new Case("void beside", 3, 3, 11000, simple, simple, beside, 12.5),
                new Case("void beside, long clamped, skins 2 and 3", 2, 3, 11000, clamped, simple, beside, 12.5),
                new Case("half-depth void under", 3, 3, 11000, simple, simple, under, 6.25),
                new Case("half-depth void under, hard", 3, 3, 11000, hard, hard, under, 6.25),
                new Case("half-depth void beside", 3, 3, 11000, simple, simple, beside, 6.25),
                new Case("quarter-depth void under", 3, 3, 11000, simple, simple, under, 3.125),
                new Case("three-quarter-depth void under", 3, 3, 11000, simple, simple, under, 9.375),
                new Case("merely loose under", 3, 3, 11000, simple, simple, under, 0),
                new Case("merely loose beside", 3, 3, 11000, simple, simple, beside, 0))) {
            b.compare(c);
        }
    }

    /** A panel: skins, what holds the two long and the two short edges, a void and its depth. */
    private record Case(
            String name,
            double outer,
            double inner,
            double e,
            Support longEdges,
            Support shortEdges,
            Envelope hollow,
            double depth) {}

    /** c11 c12 c13 c33 c44 c66 of a material alike along x and y. */
    private static double[] moduli(double e, double nu, double g, double ez, double nuXz, double gz) {
        double nuZx = nuXz * ez / e;
        double d = (1 + nu) * (1 - nu - 2 * nuXz * nuZx);
        double c11 = e * (1 - nuXz * nuZx) / d;
        return new double[] {c11, e * (nu + nuXz * nuZx) / d, e * nuZx * (1 + nu) / d, ez * (1 - nu * nu) / d, gz, g};
    }

    private static double[] skin(double e) {
        return moduli(e, 0.3, e / 2.6, e, 0.3, e / 2.6);
    }

    private void againstTheTable() {
        for (Support edge : List.of(Support.SIMPLE, Support.SIMPLE_HARD)) {
            Case c = new Case("table", 3, 3, 11000, edge, edge, NONE, 0);
            double[] w = solids(c, new Envelope(0, 450, 0, 300), p -> p, new double[] {3, 6.25, 6.25, 3}, true);
            double wanted = edge == Support.SIMPLE ? 1.38718 : 1.32309;
            print("table a " + edge, w, new double[] {wanted, wanted});
        }
        Case c = new Case("table", 3, 3, 11000, Support.SIMPLE, Support.SIMPLE, new Envelope(250, 650, 170, 430), 12.5);
        double[] w = solids(
                c,
                new Envelope(0, 450, 0, 300),
                SolidPanelBenchmark::toEllipse,
                new double[] {3, 6.25, 6.25, 3},
                false);
        print("table b, 2 kPa", w, new double[] {1.17838, 0.51556});
    }

    /** Moves the lower left quarter's grid so that the rectangle 200 x 130 about the centre becomes an ellipse. */
    private static double[] toEllipse(double[] p) {
        double x = 450 - p[0];
        double y = 300 - p[1];
        double u = x / 200;
        double v = y / 130;
        double far = Math.max(u, v);
        double cu = far > 1 ? u / far : u;
        double cv = far > 1 ? v / far : v;
        double ex = 200 * cu * Math.sqrt(1 - cv * cv / 2);
        double ey = 130 * cv * Math.sqrt(1 - cu * cu / 2);
        double reach = far <= 1 ? 0 : Math.max((x - 200) / 250, (y - 130) / 170);
        return new double[] {450 - (ex + reach * (x - ex)), 300 - (ey + reach * (y - ey))};
    }

    private void compare(Case c) {
        boolean symmetric = c.hollow.isNull() || c.hollow.centre().x == 450;
        double gap = c.depth == 0 ? 0.05 : c.depth; // no void of no height
        double[] z = c.hollow.isNull() || gap > 6 && gap != 9.375
                ? new double[] {c.outer, 6.25, 6.25, c.inner}
                : gap < 6.25
                        ? new double[] {c.outer, gap, 6.25 - gap, 6.25, c.inner}
                        : new double[] {c.outer, 6.25, gap - 6.25, 12.5 - gap, c.inner};
        Envelope part = new Envelope(0, symmetric ? 450 : 900, 0, 300);
        double[] wanted = solids(c, part, p -> p, z, true);
        Response.Deflection d = ours(c).at(450, 300).orElseThrow();
        print(c.name + ", foot", new double[] {d.outerMm(), d.innerMm()}, wanted);
    }

    private static void print(String what, double[] w, double[] wanted) {
        System.out.printf(
                Locale.ROOT,
                "%-45s outer %.4f, solids %.4f (%+.2f %%); inner %.4f, %.4f (%+.2f %%)%n",
                what,
                w[0],
                wanted[0],
                100 * (w[0] / wanted[0] - 1),
                w[1],
                wanted[1],
                100 * (w[1] / wanted[1] - 1));
    }

    private double[] solids(Case c, Envelope part, UnaryOperator<double[]> place, double[] layers, boolean foot) {
        double[] z = new double[layers.length + 1];
        for (int k = 0; k < layers.length; k++) {
            z[k + 1] = z[k] + layers[k];
        }
        double middle = c.outer + 6.25;
        SolidPanel solids = new SolidPanel(
                grid(part.getMinX(), part.getMaxX(), rims(c.hollow, true), 450),
                grid(part.getMinY(), part.getMaxY(), rims(c.hollow, false), 300),
                z,
                (x, y, layer) -> {
                    if (layer == 0 || layer == layers.length - 1) {
                        return skin(c.e);
                    }
                    double bottom = z[layer + 1] - c.outer;
                    double gap = c.depth == 0 ? 0.05 : c.depth;
                    boolean empty = !c.hollow.isNull() && c.hollow.contains(x, y) && bottom <= gap + 1e-9;
                    return empty ? new double[0] : BALSA;
                },
                (x, y, depth, k) -> {
                    if (k == 0 && x == 450 && part.getMaxX() == 450 || k == 1 && y == 300) {
                        return true; // symmetry
                    }
                    if (k == 0 && part.getMaxX() == LENGTH && x == 450 && y == 300 && depth == z[0]) {
                        return true; // no drift; no force acts along x
                    }
                    boolean shortEdge = x == 0 || x == LENGTH;
                    return y == 0 && holds(c.longEdges, depth == middle, k, 0)
                            || shortEdge && holds(c.shortEdges, depth == middle, k, 1);
                },
                place);
        double[] x = foot ? solids.press(400, 500, 250, 350, 0.1) : solids.press(0, LENGTH, 0, WIDTH, 0.002);
        return solids.deflections(x, 450, 300);
    }

    private static boolean holds(Support edge, boolean middle, int k, int tangent) {
        return switch (edge) {
            case SIMPLE -> middle && k == 2;
            case SIMPLE_HARD -> k == 2 || k == tangent;
            case CLAMPED -> true;
            case FREE -> false;
        };
    }

    private static double[] rims(Envelope hollow, boolean alongX) {
        if (hollow.isNull()) {
            return new double[0];
        }
        return alongX
                ? new double[] {hollow.getMinX(), hollow.getMaxX()}
                : new double[] {hollow.getMinY(), hollow.getMaxY()};
    }

    /** Lines at rims and the foot's edges, cells of the given size, half of it next to rims, up to twice elsewhere. */
    private double[] grid(double from, double to, double[] rims, double centre) {
        TreeSet<Double> fixed = new TreeSet<>(List.of(from, to, centre, centre - 50));
        if (to > centre) {
            fixed.add(centre + 50);
        }
        List<Double> marks = new ArrayList<>();
        for (double r : rims) {
            if (r > from && r < to) {
                marks.add(r);
                fixed.addAll(List.of(r, r - size, r + size));
            }
        }
        fixed.removeIf(v -> v > to || v < from);
        List<Double> lines = new ArrayList<>(List.of(from));
        double last = from;
        for (double next : fixed.tailSet(from, false)) {
            double m = (last + next) / 2;
            boolean rim = marks.stream().anyMatch(r -> Math.abs(r - m) < size);
            boolean far = marks.stream().allMatch(r -> Math.abs(r - m) > 5 * size) && Math.abs(m - centre) > 50;
            int parts = (int) Math.max(1, Math.round((next - last) / (rim ? size / 2 : far ? 2 * size : size)));
            for (int k = 1; k <= parts; k++) {
                lines.add(k == parts ? next : last + (next - last) * k / parts);
            }
            last = next;
        }
        return lines.stream().mapToDouble(v -> v).toArray();
    }

    private static Response ours(Case c) {
        CoreMaterial balsa = new CoreMaterial(157, 157, 3900, Optional.of(new CoreMaterial.InPlane(60, 60, 0.05, 25)));
        PanelSpec panel = new PanelSpec(
                rectangle(new Envelope(0, LENGTH, 0, WIDTH)),
                List.of(c.shortEdges, c.longEdges, c.shortEdges, c.longEdges),
                Skin.isotropic(c.outer, c.e, 0.3),
                Skin.isotropic(c.inner, c.e, 0.3),
                new PanelSpec.Core(12.5, balsa),
                c.hollow.isNull() ? List.of() : List.of(new Patch.Loose(rectangle(c.hollow), c.depth)));
        Load foot = Load.foot(new org.locationtech.jts.geom.Coordinate(450, 300), 100, 1000);
        return PanelModel.of(panel, MeshSize.automatic(panel)).solve(List.of(foot));
    }

    private static Polygon rectangle(Envelope box) {
        return (Polygon) new GeometryFactory().toGeometry(box);
    }
}
