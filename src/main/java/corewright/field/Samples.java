package corewright.field;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Values at places, each with the variance of its error. Immutable. */
public final class Samples {
    /**
     * Places closer than this part of the bounding box's diagonal are one place (0.001 mm on 10 m): rounding, not distance.
     * Without nugget a smooth variogram would read a slope into such a pair and throw it across the field.
     */
    static final double SAME_PLACE = 1e-7;

    private final double[] x;
    private final double[] y;
    private final double[] value;
    private final double[] errorVariance;

    private Samples(double[] x, double[] y, double[] value, double[] errorVariance) {
        this.x = x;
        this.y = y;
        this.value = value;
        this.errorVariance = errorVariance;
    }

    /** Without error. Arrays are copied. */
    public static Samples of(double[] x, double[] y, double[] value) {
        return of(x, y, value, new double[x.length]);
    }

    /**
     * Arrays of equal length, copied.
     *
     * @param errorVariance value unit squared, 0 or more
     */
    public static Samples of(double[] x, double[] y, double[] value, double[] errorVariance) {
        int n = x.length;
        if (y.length != n || value.length != n || errorVariance.length != n) {
            throw new IllegalArgumentException("samples: arrays of lengths " + n + ", " + y.length + ", " + value.length
                    + " and " + errorVariance.length);
        }
        for (int i = 0; i < n; i++) {
            if (!Double.isFinite(x[i] + y[i] + value[i] + errorVariance[i]) || errorVariance[i] < 0) {
                throw new IllegalArgumentException("sample " + i + " is not usable: x " + x[i] + ", y " + y[i]
                        + ", value " + value[i] + ", error variance " + errorVariance[i]);
            }
        }
        return new Samples(x.clone(), y.clone(), value.clone(), errorVariance.clone());
    }

    public int size() {
        return x.length;
    }

    public double x(int i) {
        return x[i];
    }

    public double y(int i) {
        return y[i];
    }

    public double value(int i) {
        return value[i];
    }

    public double errorVariance(int i) {
        return errorVariance[i];
    }

    /**
     * One sample a place: repeats become their mean, and their scatter its error. Two samples at one place make every
     * kriging matrix singular, so each entry of this package calls this first.
     *
     * <p>The error variance of a mean of k repeats is the larger of the stated one (mean stated variance over k) and the
     * observed one (sample variance over k). Order: first appearance.
     */
    public Samples merged() {
        int n = size();
        int[] group = new int[n];
        int groups = group(group);
        if (groups == n) {
            return this;
        }
        double[] gx = new double[groups];
        double[] gy = new double[groups];
        double[] mean = new double[groups];
        double[] stated = new double[groups];
        int[] count = new int[groups];
        for (int i = 0; i < n; i++) {
            int g = group[i];
            if (count[g]++ == 0) {
                gx[g] = x[i];
                gy[g] = y[i];
            }
            mean[g] += (value[i] - mean[g]) / count[g];
            stated[g] += errorVariance[i];
        }
        double[] squares = new double[groups];
        for (int i = 0; i < n; i++) {
            squares[group[i]] += (value[i] - mean[group[i]]) * (value[i] - mean[group[i]]);
        }
        double[] error = new double[groups];
        for (int g = 0; g < groups; g++) {
            double k = count[g];
            double observed = k > 1 ? squares[g] / (k - 1) / k : 0;
            error[g] = Math.max(stated[g] / k / k, observed);
        }
        return new Samples(gx, gy, mean, error);
    }

    /** Numbers the places in order of first appearance; returns how many. */
    private int group(int[] group) {
        double step = Math.max(diagonal() * SAME_PLACE, Double.MIN_NORMAL);
        double left = least(x);
        double low = least(y);
        Map<Cell, Integer> places = new HashMap<>();
        int groups = 0;
        for (int i = 0; i < size(); i++) {
            long column = (long) ((x[i] - left) / step);
            long row = (long) ((y[i] - low) / step);
            Integer found = null;
            for (int k = 0; k < 9 && found == null; k++) {
                found = places.get(new Cell(column + k % 3 - 1, row + k / 3 - 1));
            }
            if (found == null) {
                found = groups++;
                places.put(new Cell(column, row), found);
            }
            group[i] = found;
        }
        return groups;
    }

    private record Cell(long column, long row) {}

    /** Diagonal of the bounding box; 0 for none or one place. */
    double diagonal() {
        return size() == 0 ? 0 : Math.hypot(greatest(x) - least(x), greatest(y) - least(y));
    }

    private static double least(double[] a) {
        return Arrays.stream(a).min().orElse(0);
    }

    private static double greatest(double[] a) {
        return Arrays.stream(a).max().orElse(0);
    }

    /** Copies for the calls that take arrays. */
    double[] xs() {
        return x.clone();
    }

    double[] ys() {
        return y.clone();
    }

    double[] values() {
        return value.clone();
    }

    /** These of them, in this order. */
    Samples only(int[] chosen) {
        int n = chosen.length;
        double[] cx = new double[n];
        double[] cy = new double[n];
        double[] cv = new double[n];
        double[] ce = new double[n];
        for (int i = 0; i < n; i++) {
            cx[i] = x[chosen[i]];
            cy[i] = y[chosen[i]];
            cv[i] = value[chosen[i]];
            ce[i] = errorVariance[chosen[i]];
        }
        return new Samples(cx, cy, cv, ce);
    }
}
