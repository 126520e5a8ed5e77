package corewright.field;

import java.util.Arrays;

/** Normal stand-ins for observations: the precision of each and, relative to zero, its shift. */
final class Sites {
    private final double[] precision;
    private final double[] shift;

    private Sites(double[] precision, double[] shift) {
        this.precision = precision;
        this.shift = shift;
    }

    /** Of n observations not yet heard. */
    Sites(int n) {
        this(new double[n], new double[n]);
    }

    double precision(int i) {
        return precision[i];
    }

    double shift(int i) {
        return shift[i];
    }

    boolean same(int i, Sites other, int j) {
        return precision[i] == other.precision[j] && shift[i] == other.shift[j];
    }

    /** Notes one site. */
    void note(int i, double sitePrecision, double siteShift) {
        precision[i] = sitePrecision;
        shift[i] = siteShift;
    }

    /**
     * Notes another's sites under these numbers, but a site that hardly moved stays, so that what was estimated from it stays too.
     *
     * @param tolerance of precision and shift, relative where they exceed one
     */
    void takeMoved(Sites run, int[] members, double tolerance) {
        for (int i = 0; i < members.length; i++) {
            double t = precision[members[i]];
            double v = shift[members[i]];
            if (Math.abs(run.precision(i) - t) > tolerance * (1 + t)
                    || Math.abs(run.shift(i) - v) > tolerance * (1 + Math.abs(v))) {
                copy(run, i, members[i]);
            }
        }
    }

    /** Notes another's site as one's own. */
    void copy(Sites other, int from, int to) {
        precision[to] = other.precision[from];
        shift[to] = other.shift[from];
    }

    Sites only(int[] which) {
        return new Sites(
                Arrays.stream(which).mapToDouble(i -> precision[i]).toArray(),
                Arrays.stream(which).mapToDouble(i -> shift[i]).toArray());
    }
}
