package corewright.contour;

import java.util.Random;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Seeded rasters and areas for the properties. */
final class Fields {
    private Fields() {}

    /** A sum of bumps, with a little noise where {@code noise} is not 0. */
    static Raster smooth(long seed, int rows, int columns, double cell, double noise) {
        Random random = new Random(seed);
        double[] values = new double[rows * columns];
        for (int bump = 0; bump < 10; bump++) {
            double row = random.nextDouble() * rows;
            double column = random.nextDouble() * columns;
            double width = (0.05 + 0.1 * random.nextDouble()) * Math.max(rows, columns);
            for (int i = 0; i < values.length; i++) {
                double distance = Math.hypot(i / columns - row, i % columns - column) / width;
                values[i] += Math.exp(-distance * distance / 2);
            }
        }
        for (int i = 0; i < values.length; i++) {
            values[i] += noise * random.nextGaussian();
        }
        return new Raster(-137.3, 41.9, cell, rows, columns, values);
    }

    /** Whole numbers 0 to 3: plateaus, saddles and values equal to levels everywhere; {@code holes} is the share of NaN. */
    static Raster steps(long seed, int rows, int columns, double holes) {
        Random random = new Random(seed);
        double[] values = new double[rows * columns];
        for (int i = 0; i < values.length; i++) {
            values[i] = random.nextDouble() < holes ? Double.NaN : random.nextInt(4);
        }
        return new Raster(1000.1, -500.7, 0.1 + random.nextInt(50), rows, columns, values);
    }

    static Raster checkerboard(int rows, int columns, double low, double high) {
        double[] values = new double[rows * columns];
        for (int i = 0; i < values.length; i++) {
            values[i] = (i / columns + i % columns) % 2 == 0 ? low : high;
        }
        return new Raster(0, 0, 1, rows, columns, values);
    }

    static Raster of(double cell, double[]... topRowLast) {
        int columns = topRowLast[0].length;
        double[] values = new double[topRowLast.length * columns];
        for (int row = 0; row < topRowLast.length; row++) {
            System.arraycopy(topRowLast[row], 0, values, row * columns, columns);
        }
        return new Raster(0, 0, cell, topRowLast.length, columns, values);
    }

    /** Area of the cells with data. */
    static double dataArea(Raster raster) {
        int cells = 0;
        for (int i = 0; i < raster.size(); i++) {
            cells += Double.isNaN(raster.at(i)) ? 0 : 1;
        }
        return cells * raster.cell() * raster.cell();
    }

    static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
