package corewright.sandwich;
import corewright.sandwich.spec.*;
import java.util.*;
import org.locationtech.jts.geom.Coordinate;
public final class PullScratch {
    public static void main(String[] a) {
        for (double size : new double[] {900}) {
            for (Support edge : new Support[] {Support.SIMPLE, Support.CLAMPED}) {
            for (int v = 0; v < 2; v++) {
            List<Patch> patches = v == 0 ? List.of() : List.of(new Patch.Loose(Panels.ellipse(size*0.4, size*0.45, 200, 130), v == 1 ? 0 : 9.5));
            PanelSpec panel = new PanelSpec(Panels.rectangle(0, 0, size, size), List.of(edge), Skin.isotropic(3, 11000, 0.3), Skin.isotropic(2.5, 11000, 0.3), new PanelSpec.Core(9.5, Panels.BALSA), patches);
            long t0 = System.nanoTime();
            PanelModel m = PanelModel.forDeflections(panel, MeshSize.uniform(42));
            long t1 = System.nanoTime();
            for (double f : new double[] {1000, 5000}) {
            double[] load = m.rightHandSide(List.of(Load.foot(new Coordinate(size*0.5, size*0.45), 100, f)));
            double[] lin = m.factor.solve(load);
            SparseP p = new SparseP(m, new Coordinate(size*0.5, size*0.45));
            for (int rep = 0; rep < 1; rep++) {
            long t2 = System.nanoTime();
            var got = m.pull().settle(load, lin, 1e-4);
            long t3 = System.nanoTime();
            var tight = m.pull().settle(load, lin, 1e-7);
            long t4 = System.nanoTime();
            double full = Double.NaN;
            if (rep == 0 && true) { LargeDeflection all = new LargeDeflection(m, java.util.stream.IntStream.range(0, m.mesh.cells.length).toArray());
            var w = all.settle(lin, List.of(), 1e-6, null);
            double[] forces = load.clone(); all.addForces(w.orElseThrow().added(), forces); full = p.at(m.factor.solve(forces)); }
            long t5 = System.nanoTime();
            System.out.printf("%.0f %s v%d n=%d f=%.0f linear %.4f got %.4f tight %.4f full %.4f; model %.0f ms, got %.1f, tight %.1f, full %.1f; its %d%n", size, edge, v, m.matrix.size(), f, p.at(lin), got.map(g -> p.at(g.x())).orElse(Double.NaN), tight.map(g -> p.at(g.x())).orElse(Double.NaN), full, 1e-6*(t1-t0), 1e-6*(t3-t2), 1e-6*(t4-t3), 1e-6*(t5-t4), 0);
            }}
        }}}
    }
    record SparseP(PanelModel m, Coordinate c) { double at(double[] x) { return Foot.at(m, c).orElseThrow().ask().dot(x); } }
}
