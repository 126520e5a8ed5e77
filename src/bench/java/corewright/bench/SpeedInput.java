package corewright.bench;

import corewright.contour.Raster;
import corewright.field.Samples;
import java.util.Random;
import java.util.stream.IntStream;

/** What the engines are given, here and by {@link SideBySide}. */
final class SpeedInput {
    /** Nodes in each of so many columns: 100 000 in all on 10 x 4 m. */
    static final int NODES = 200;

    static final int NODES_ACROSS = 500;

    private static final double LENGTH_MM = 10_000;
    private static final double BREADTH_MM = 4_000;

    private SpeedInput() {}

    /** Scattered over the deck: hills and a little noise. */
    static Samples samples(int count) {
        Random random = new Random(11);
        double[] x = random.doubles(count, 0, LENGTH_MM).toArray();
        double[] y = random.doubles(count, 0, BREADTH_MM).toArray();
        double[] value = IntStream.range(0, count)
                .mapToDouble(i -> 20 + 3 * Math.sin(x[i] / 700) * Math.cos(y[i] / 500) + 0.7 * random.nextGaussian())
                .toArray();
        return Samples.of(x, y, value);
    }

    static void nodes(double[] x, double[] y) {
        for (int k = 0; k < x.length; k++) {
            x[k] = LENGTH_MM * (k / NODES + 0.5) / NODES_ACROSS;
            y[k] = BREADTH_MM * (k % NODES + 0.5) / NODES;
        }
    }

    /** Smooth hills of 0.1 to 0.9 on cells of 1 mm; noise would measure how polygons find their holes, not contouring. */
    static Raster hills(int side) {
        double[] values = new double[side * side];
        for (int k = 0; k < values.length; k++) {
            double u = 2000.0 * (k % side) / side;
            double v = 2000.0 * (k / side) / side;
            values[k] = 0.5 + 0.4 * Math.sin(u / 90) * Math.cos(v / 70);
        }
        return new Raster(0, 0, 1, side, side, values);
    }

    static double[] levels(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToDouble(k -> (double) k / (count + 1))
                .toArray();
    }
}
