package corewright.sandwich;

import corewright.overlay.Overlay;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Random outlines, most of them curved, some with an opening, and patches as they are cut from rasters, with rims in stairs along the
 * outline; the flaws of their meshes. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.sandwich.MeshFuzz -Dexec.args="600"} (that many panels, each in three sizes; four minutes).
 */
public final class MeshFuzz {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final List<MeshSize> SIZES =
            List.of(MeshSize.uniform(42), new MeshSize(42, 16), MeshSize.uniform(21));

    private MeshFuzz() {}

    public static void main(String[] args) {
        int panels = args.length > 0 ? Integer.parseInt(args[0]) : 600;
        TreeMap<String, Integer> counts = new TreeMap<>();
        for (int seed = 0; seed < panels; seed++) {
            for (String flaw : flaws(panel(seed))) {
                System.out.printf("panel %d %s%n", seed, flaw);
                counts.merge(flaw.substring(flaw.indexOf(':') + 2).replaceAll("[0-9.]+", "#"), 1, Integer::sum);
            }
        }
        System.out.printf("%d panels, %d meshes: %s%n", panels, panels * SIZES.size(), counts);
    }

    static PanelSpec panel(long seed) {
        Random random = new Random(0x9E3779B97F4A7C15L * (seed + 1)); // seeds in a row begin alike
        Polygon outline = outline(random);
        List<Patch> patches = new ArrayList<>();
        for (int k = 1 + random.nextInt(5); k > 0; k--) {
            Geometry area = Overlay.intersection(stairs(random, outline), outline);
            if (!area.isEmpty()) {
                patches.add(random.nextBoolean() ? new Patch.Core(area, Panels.FOAM) : new Patch.Loose(area, 4));
            }
        }
        Skin skin = Skin.isotropic(2.8, 10050, 0.3);
        return new PanelSpec(
                outline, List.of(Support.SIMPLE), skin, skin, new PanelSpec.Core(9.5, Panels.BALSA), patches);
    }

    private static Polygon outline(Random random) {
        Polygon outline =
                switch (random.nextInt(4)) {
                    case 0 -> bow(random);
                    case 1 -> Panels.ellipse(0, 0, 400 + 900 * random.nextDouble(), 300 + 500 * random.nextDouble());
                    case 2 -> waves(random);
                    default -> corners(random);
                };
        Polygon turned = random.nextBoolean() ? outline : (Polygon) Panels.turned(outline, 360 * random.nextDouble());
        Geometry hatch = Panels.turned(Panels.rectangle(-150, -120, 150, 120), 90 * random.nextDouble());
        return random.nextInt(3) > 0 || !turned.contains(hatch) ? turned : (Polygon) Overlay.difference(turned, hatch);
    }

    /** A foredeck: two curved sides that meet in a stem, a straight back. */
    private static Polygon bow(Random random) {
        double fullness = 3 + 3 * random.nextDouble();
        List<Coordinate> ring = new ArrayList<>();
        for (int k = -20; k <= 20; k++) {
            ring.add(new Coordinate(fullness * k * k - 1000, 43 * k));
        }
        return closed(ring);
    }

    private static Polygon waves(Random random) {
        double phase = 2 * Math.PI * random.nextDouble();
        double depth = 0.3 * random.nextDouble();
        int waves = 2 + random.nextInt(4);
        List<Coordinate> ring = new ArrayList<>();
        for (int k = 0; k < 96; k++) {
            double t = 2 * Math.PI * k / 96;
            double r = 700 * (1 + depth * Math.cos(waves * t + phase));
            ring.add(new Coordinate(1.4 * r * Math.cos(t), r * Math.sin(t)));
        }
        return closed(ring);
    }

    private static Polygon corners(Random random) {
        int n = 3 + random.nextInt(5);
        List<Coordinate> ring = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double t = 2 * Math.PI * (k + 0.6 * random.nextDouble()) / n;
            double r = 500 + 700 * random.nextDouble();
            ring.add(new Coordinate(r * Math.cos(t), r * Math.sin(t)));
        }
        return closed(ring);
    }

    private static Polygon closed(List<Coordinate> ring) {
        ring.add(ring.get(0));
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** Cells of a raster about a place on the outline, or within. */
    private static Geometry stairs(Random random, Polygon outline) {
        double cell = new double[] {12.5, 25, 40}[random.nextInt(3)];
        Coordinate[] ring = outline.getCoordinates();
        Coordinate about = ring[random.nextInt(ring.length)];
        double inward = random.nextInt(3) == 0 ? random.nextDouble() : 0.1 * random.nextDouble();
        double cx = about.x * (1 - inward);
        double cy = about.y * (1 - inward);
        double size = 80 + 220 * random.nextDouble();
        double stretch = 0.5 + random.nextDouble();
        List<Polygon> cells = new ArrayList<>();
        for (double x = cell * Math.floor((cx - size) / cell); x < cx + size; x += cell) {
            for (double y = cell * Math.floor((cy - size) / cell); y < cy + size; y += cell) {
                double r = Math.hypot((x - cx) * stretch, (y - cy) / stretch) / size;
                if (r + 0.25 * random.nextDouble() < 0.9) {
                    cells.add(Panels.rectangle(x, y, x + cell, y + cell));
                }
            }
        }
        return Overlay.union(cells);
    }

    static List<String> flaws(PanelSpec panel) {
        List<String> flaws = new ArrayList<>();
        for (MeshSize size : SIZES) {
            Mesh mesh = Mesher.mesh(panel, size);
            for (String flaw : flaws(panel, mesh, size)) {
                flaws.add(String.format(Locale.ROOT, "%.0f/%.0f mm: %s", size.generalMm(), size.rimMm(), flaw));
            }
        }
        return flaws;
    }

    private static List<String> flaws(PanelSpec panel, Mesh mesh, MeshSize size) {
        List<String> flaws = new ArrayList<>();
        Geometry outline = panel.outline().getBoundary();
        double off = mesh.boundary.stream()
                .mapToDouble(e -> outline.distance(FACTORY.createPoint(new Coordinate(mesh.x[e[0]], mesh.y[e[0]]))))
                .max()
                .orElse(0);
        if (off > 1e-6) {
            flaws.add(String.format(Locale.ROOT, "edge node %.4f mm off the outline", off));
        }
        Set<Long> sides = new HashSet<>();
        List<Geometry> cells = new ArrayList<>();
        for (int[] cell : mesh.cells) {
            for (int a = 0; a < cell.length; a++) {
                int b = (a + 1) % cell.length;
                int c = (a + 2) % cell.length;
                if (cross(mesh, cell[a], cell[b], cell[c]) <= 0) {
                    flaws.add("cell with a corner turned in");
                }
                if (!sides.add((long) cell[a] * mesh.nodes() + cell[b])) {
                    flaws.add("side of two cells on one hand");
                }
            }
            cells.add(polygon(mesh, cell));
        }
        double area = cells.stream().mapToDouble(Geometry::getArea).sum();
        Geometry all = Overlay.union(cells);
        if (Math.abs(all.getArea() - area) > 1e-6 * area) {
            flaws.add(String.format(Locale.ROOT, "overlap of %.1f mm2", area - all.getArea()));
        }
        Geometry missed = Overlay.difference(panel.outline(), all);
        double thick = Math.max(thickness(missed), thickness(Overlay.difference(all, panel.outline())));
        if (thick > 0.25 * size.generalMm()) {
            flaws.add(String.format(Locale.ROOT, "outline missed by %.1f mm", thick));
        }
        double lost = 1 - area / panel.outline().getArea();
        if (Math.abs(lost) > 0.002) {
            flaws.add(String.format(Locale.ROOT, "%.2f per cent of the area lost", 100 * lost));
        }
        return flaws;
    }

    private static double cross(Mesh mesh, int a, int b, int c) {
        return (mesh.x[b] - mesh.x[a]) * (mesh.y[c] - mesh.y[b]) - (mesh.y[b] - mesh.y[a]) * (mesh.x[c] - mesh.x[b]);
    }

    private static Polygon polygon(Mesh mesh, int[] cell) {
        List<Coordinate> ring = new ArrayList<>();
        for (int v : cell) {
            ring.add(new Coordinate(mesh.x[v], mesh.y[v]));
        }
        return closed(ring);
    }

    /** Of the widest part, as twice its area over its longest extent. */
    private static double thickness(Geometry strips) {
        double widest = 0;
        for (int k = 0; k < strips.getNumGeometries(); k++) {
            Geometry strip = strips.getGeometryN(k);
            double length = strip.getEnvelopeInternal().getDiameter();
            widest = Math.max(widest, length > 0 ? 2 * strip.getArea() / length : 0);
        }
        return widest;
    }
}
