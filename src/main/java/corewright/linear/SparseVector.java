package corewright.linear;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** A vector of which few entries are not zero. */
public final class SparseVector {
    private final int[] index;
    private final double[] value;

    private SparseVector(int[] index, double[] value) {
        this.index = index;
        this.value = value;
    }

    /** From unknown → value; indices are put in ascending order. */
    public static SparseVector of(Map<Integer, Double> entries) {
        TreeMap<Integer, Double> sorted = new TreeMap<>(entries);
        return new SparseVector(
                sorted.keySet().stream().mapToInt(i -> i).toArray(),
                sorted.values().stream().mapToDouble(v -> v).toArray());
    }

    /** From a full vector. */
    public static SparseVector of(double[] full) {
        int[] at = new int[full.length];
        double[] value = new double[full.length];
        int n = 0;
        for (int i = 0; i < full.length; i++) {
            if (full[i] != 0) {
                at[n] = i;
                value[n++] = full[i];
            }
        }
        return new SparseVector(Arrays.copyOf(at, n), Arrays.copyOf(value, n));
    }

    /** Its entries at the unknowns that have no number in a list: a negative one. */
    SparseVector without(int[] numbers) {
        int[] at = new int[index.length];
        double[] left = new double[index.length];
        int n = 0;
        for (int k = 0; k < index.length; k++) {
            if (numbers[index[k]] < 0) {
                at[n] = index[k];
                left[n++] = value[k];
            }
        }
        return new SparseVector(Arrays.copyOf(at, n), Arrays.copyOf(left, n));
    }

    public int length() {
        return index.length;
    }

    public int index(int k) {
        return index[k];
    }

    public double value(int k) {
        return value[k];
    }

    /** Adds it to a full vector. */
    public void addTo(double[] full) {
        for (int k = 0; k < index.length; k++) {
            full[index[k]] += value[k];
        }
    }

    /** The product with a full vector. */
    public double dot(double[] full) {
        double sum = 0;
        for (int k = 0; k < index.length; k++) {
            sum += value[k] * full[index[k]];
        }
        return sum;
    }
}
