package corewright.bench;

import corewright.contour.Band;
import corewright.contour.Contours;
import corewright.contour.Raster;
import corewright.field.Estimates;
import corewright.field.OrdinaryKriging;
import corewright.field.Samples;
import corewright.field.Shape;
import corewright.field.Variogram;
import corewright.linear.Cholesky;
import corewright.linear.RandomGrid;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The engines alone, each over steps of about ten times as much input. Run: see docs/performance.md. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class EngineSpeed {

    /** 100 000 nodes from scattered points, the nearest 24 of them each. */
    @State(Scope.Benchmark)
    public static class Kriging {
        @Param({"500", "2000", "20000"})
        int points;

        private Samples samples = SpeedInput.samples(1);
        private final double[] x = new double[SpeedInput.NODES * SpeedInput.NODES_ACROSS];
        private final double[] y = new double[x.length];

        @Setup
        public void scatter() {
            samples = SpeedInput.samples(points);
            SpeedInput.nodes(x, y);
        }
    }

    @Benchmark
    public Estimates kriging(Kriging in) {
        return new OrdinaryKriging(in.samples, Variogram.isotropic(Shape.SPHERICAL, 0.5, 4, 1500))
                .estimate(in.x, in.y, 24);
    }

    /** A square raster of smooth hills. */
    @State(Scope.Benchmark)
    public static class Contouring {
        @Param({"632", "2000"})
        int side;

        @Param({"1", "5"})
        int levels;

        private Raster raster = SpeedInput.hills(1);

        @Setup
        public void fill() {
            raster = SpeedInput.hills(side);
        }
    }

    @Benchmark
    public List<Band> contours(Contouring in) {
        return Contours.bands(in.raster, SpeedInput.levels(in.levels));
    }

    /** A grid of nodes with ten unknowns each, coupled as a panel's are. */
    @State(Scope.Benchmark)
    public static class Sandwich {
        @Param({"38x27", "120x84"})
        String nodes = "";

        private RandomGrid grid = RandomGrid.regular(2, 2, 10, 1);
        private double[] load = {};

        @Setup
        public void assemble() {
            String[] sides = nodes.split("x", 2);
            grid = RandomGrid.regular(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]), 10, 1);
            load = new Random(3).doubles(grid.matrix.size()).toArray();
        }
    }

    @Benchmark
    public double[] sandwichSolve(Sandwich in) {
        return Cholesky.factor(in.grid.matrix, in.grid.x, in.grid.y).solve(in.load);
    }
}
