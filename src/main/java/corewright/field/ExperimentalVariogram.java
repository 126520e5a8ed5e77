package corewright.field;

import java.util.ArrayList;
import java.util.List;

/**
 * The experimental variogram: mean squared half-difference of pairs by their distance. Source: Matheron (1963); classes
 * {@code (lower, upper]} and the defaults (cut-off a third of the bounding box's diagonal, fifteen classes) as in the R
 * package gstat. Pairs at one place are left out: they tell of repeats, not of space.
 */
public final class ExperimentalVariogram {
    private ExperimentalVariogram() {}

    /** All directions, with the usual cut-off and width. */
    public static List<Bin> omni(double[] x, double[] y, double[] value) {
        double cutoff = usualCutoff(Samples.of(x, y, value));
        return cutoff > 0 ? omni(x, y, value, cutoff, cutoff / 15) : List.of();
    }

    /**
     * All directions.
     *
     * @param cutoff longest distance counted, above 0
     * @param width of a class, above 0
     * @return classes that hold a pair, nearest first
     */
    public static List<Bin> omni(double[] x, double[] y, double[] value, double cutoff, double width) {
        return bins(x, y, value, new Classes(cutoff, width, 0, 90));
    }

    /** Distance classes within a sector. Azimuth: degrees from +x towards +y; a pair has no sense, only a direction. */
    public record Classes(double cutoff, double width, double azimuthDeg, double toleranceDeg) {
        public Classes {
            if (!(cutoff > 0) || !(width > 0) || !(cutoff / width < 1e6) || !(toleranceDeg > 0)) {
                throw new IllegalArgumentException("variogram classes of width " + width + " up to " + cutoff
                        + ", tolerance " + toleranceDeg + " degrees");
            }
        }
    }

    /** One direction: pairs within {@code toleranceDeg} of the azimuth, on either side; 90 and more takes every pair. */
    public static List<Bin> directional(double[] x, double[] y, double[] value, Classes classes) {
        return bins(x, y, value, classes);
    }

    /** A third of the bounding box's diagonal; 0 when all samples stand at one place. */
    public static double usualCutoff(Samples samples) {
        return samples.diagonal() / 3;
    }

    private static List<Bin> bins(double[] x, double[] y, double[] value, Classes classes) {
        int size = (int) Math.ceil(classes.cutoff() / classes.width()) + 1;
        int[] pairs = new int[size];
        double[] lag = new double[size];
        double[] squares = new double[size];
        double furthest = classes.cutoff() * classes.cutoff();
        double ux = Math.cos(Math.toRadians(classes.azimuthDeg()));
        double uy = Math.sin(Math.toRadians(classes.azimuthDeg()));
        double least = classes.toleranceDeg() >= 90 ? -1 : Math.cos(Math.toRadians(classes.toleranceDeg()));
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                double dx = x[i] - x[j];
                double dy = y[i] - y[j];
                double squared = dx * dx + dy * dy;
                if (squared > furthest || squared == 0) {
                    continue;
                }
                double h = Math.sqrt(squared);
                if (Math.abs(dx * ux + dy * uy) < least * h) {
                    continue;
                }
                int k = index(h / classes.width());
                pairs[k]++;
                lag[k] += h;
                squares[k] += (value[i] - value[j]) * (value[i] - value[j]);
            }
        }
        List<Bin> bins = new ArrayList<>();
        for (int k = 0; k < size; k++) {
            if (pairs[k] > 0) {
                bins.add(new Bin(pairs[k], lag[k] / pairs[k], squares[k] / pairs[k] / 2));
            }
        }
        return List.copyOf(bins);
    }

    /** Class of a distance measured in widths; an exact multiple belongs to the class below it. */
    private static int index(double widths) {
        double whole = Math.floor(widths);
        return (int) (widths == whole ? whole - 1 : whole);
    }
}
