package corewright.bench;

import com.sun.management.OperatingSystemMXBean;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Response;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.util.GeometricShapeFactory;

/**
 * Times feet: maps of a panel of 0.9 x 0.6 m at 25 mm and of a deck of 10 x 3.5 m at 50 mm, linear and with contact, and one
 * foot on a loose skin by the whole theory. Run all or one of {@code panel foot deck}: {@code mvn -o -q
 * test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.FootLoadBenchmark -Dexec.args=deck}.
 */
public final class FootLoadBenchmark {
    private static final CoreMaterial BALSA =
            new CoreMaterial(157, 157, 3900, Optional.of(new CoreMaterial.InPlane(60, 60, 0.05, 25)));

    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private static long processor;

    private FootLoadBenchmark() {}

    public static void main(String[] args) {
        Set<String> parts = args.length > 0 ? Set.of(args) : Set.of("panel", "foot", "deck");
        PanelSpec panel = panel(900, 600);
        for (int run = 0; parts.contains("panel") && run < 12; run++) {
            panel(panel);
        }
        for (int run = 0; parts.contains("foot") && run < 6; run++) {
            foot(panel);
        }
        for (int run = 0; parts.contains("deck") && run < 2; run++) {
            deck(panel(10_000, 3_500));
        }
    }

    private static void panel(PanelSpec panel) {
        long start = start();
        for (PanelSpec state : states(panel, circle(450, 300, 150))) {
            map(state, 25, 25);
        }
        report("panel 0.9 x 0.6 m, 25 mm, four states, a foot every 25 mm", start);
    }

    private static void foot(PanelSpec panel) {
        for (double depth : new double[] {0, 6.25, 12.5}) {
            PanelSpec loose = panel.with(List.of(new Patch.Loose(rectangle(250, 175, 650, 425), depth)));
            long start = start();
            PanelModel model = PanelModel.of(loose, MeshSize.uniform(25));
            Response.Deflection d = model.solve(List.of(Load.foot(new Coordinate(450, 300), 100, 1000)))
                    .largeDeflection()
                    .flatMap(r -> r.at(450, 300))
                    .orElseThrow();
            report(
                    String.format(
                            Locale.ROOT,
                            "one foot with contact and large displacements, void %.2f mm: %.3f mm",
                            depth,
                            d.outerMm()),
                    start);
            start = start();
            FootLoadMap.of(model, 100, Theory.LARGE);
            report("  a foot every 100 mm of it, the same theory", start);
        }
    }

    private static void deck(PanelSpec deck) {
        long start = start();
        for (PanelSpec state : states(deck, circle(5000, 1700, 400))) {
            FootLoadMap.of(PanelModel.forDeflections(state, MeshSize.uniform(50)), 100, Theory.CONTACT);
        }
        report("deck 10 x 3.5 m, 50 mm, four states, a foot every 100 mm, with contact", start);
        start = start();
        for (PanelSpec state : states(deck, circle(5000, 1700, 400))) {
            map(state, 50, 100);
        }
        report("the same linear, all of each core's doing", start);
        start = start();
        String size = map(deck, 50, 50);
        report("one state of it, linear, a foot every 50 mm, " + size, start);
    }

    private static String map(PanelSpec panel, double mesh, double step) {
        PanelModel model = PanelModel.of(panel, MeshSize.uniform(mesh));
        FootLoadMap map = FootLoadMap.of(model, step);
        return map.places().size() + " places, " + model.unknowns() + " unknowns";
    }

    /** As built, as found, filled with foam, with a new core. */
    private static List<PanelSpec> states(PanelSpec panel, Polygon area) {
        return List.of(
                panel,
                panel.with(List.of(new Patch.Loose(area, 12.5))),
                panel.with(List.of(new Patch.Core(area, new CoreMaterial(58, 58, 202)))),
                panel.with(List.of(new Patch.Core(area, BALSA))));
    }

    private static PanelSpec panel(double length, double width) {
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        Polygon outline = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, length, 0, width));
        return new PanelSpec(outline, List.of(Support.SIMPLE), skin, skin, new PanelSpec.Core(12.5, BALSA), List.of());
    }

    private static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return (Polygon) new GeometryFactory().toGeometry(new Envelope(x0, x1, y0, y1));
    }

    private static Polygon circle(double x, double y, double radius) {
        GeometricShapeFactory shape = new GeometricShapeFactory();
        shape.setCentre(new Coordinate(x, y));
        shape.setSize(2 * radius);
        return shape.createCircle();
    }

    private static long start() {
        processor = PROCESS.getProcessCpuTime();
        return System.nanoTime();
    }

    private static void report(String what, long start) {
        Runtime memory = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%s: %.2f s, processor %.2f s, heap in use %d MB of %d%n",
                what,
                (System.nanoTime() - start) * 1e-9,
                (PROCESS.getProcessCpuTime() - processor) * 1e-9,
                (memory.totalMemory() - memory.freeMemory()) >> 20,
                memory.maxMemory() >> 20);
    }
}
