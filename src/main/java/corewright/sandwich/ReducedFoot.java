package corewright.sandwich;

import corewright.linear.Dense;
import corewright.linear.DenseFactor;
import corewright.linear.NotPositiveDefiniteException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Equilibrium of a {@link ReducedArea} under one load, by Newton's method as in {@link LargeDeflection#settle}: full steps, and
 * where a few do not lower the energy one that does, by halving.
 */
final class ReducedFoot {
    private static final int ITERATIONS = 100;
    private static final int FREE = 4;
    private static final int HALVINGS = 30;
    private static final double KEPT = 1e-4;
    private static final double LESS = 0.125;
    private static final int MOST_LESS = 7;

    private final ReducedArea area;

    /** The linear solution's deflections and membrane forces. */
    private final double[] w0;

    private final double[] s;

    /** @param carried what the load leaves on the area */
    ReducedFoot(ReducedArea area, double[] carried) {
        this.area = area;
        w0 = area.deflections(carried);
        s = area.membraneForces(w0, carried);
    }

    /** A shape with all that follows from it. */
    private final class Shape {
        final double[] d;
        final double[] slope;
        final double[] q;

        /** K d. */
        final double[] bending;

        /** Membrane forces s + L'd + M q. */
        final double[] force;

        final double energy;

        Shape(double[] d) {
            this.d = d;
            slope = new double[2 * area.corner.length];
            q = added();
            bending = times(area.bend, d);
            double[] more = timesTransposed(area.couple, d);
            double[] own = times(area.stretch, q);
            force = new double[q.length];
            double sum = dot(d, bending) / 2;
            for (int k = 0; k < q.length; k++) {
                force[k] = s[k] + more[k] + own[k];
                sum += q[k] * (s[k] + more[k] + own[k] / 2);
            }
            for (int m = 0; m < area.meetingOuter.length; m++) {
                double overlap = Math.max(0, overlap(m));
                sum += area.large.spring[m] * overlap * overlap / 2;
            }
            energy = sum;
        }

        private double total(int at) {
            return at < 0 ? 0 : w0[at] + d[at];
        }

        double overlap(int m) {
            return total(area.meetingOuter[m]) - total(area.meetingInner[m]) - area.large.gap[m];
        }

        private double[] added() {
            double[] all = new double[3 * area.corner.length];
            for (int t = 0; t < area.corner.length; t++) {
                Karman cell = area.large.karman[t / 2];
                double wx = 0;
                double wy = 0;
                for (int a = 0; a < area.corner[t].length; a++) {
                    double deflection = total(area.corner[t][a]);
                    wx += cell.nx[a] * deflection;
                    wy += cell.ny[a] * deflection;
                }
                slope[2 * t] = wx;
                slope[2 * t + 1] = wy;
                all[3 * t] = wx * wx / 2;
                all[3 * t + 1] = wy * wy / 2;
                all[3 * t + 2] = wx * wy;
            }
            return all;
        }

        Shape moved(double[] change, double step) {
            return new Shape(LargeDeflection.sum(d, change, step));
        }

        Settled settled() {
            double[] more = Arrays.copyOf(d, d.length + q.length);
            System.arraycopy(q, 0, more, d.length, q.length);
            return new Settled(LargeDeflection.sum(w0, d, 1), more);
        }

        /** Forces out of balance. */
        double[] rest() {
            double[] f = times(area.couple, q);
            for (int i = 0; i < f.length; i++) {
                f[i] += bending[i];
            }
            for (int t = 0; t < area.corner.length; t++) {
                Karman cell = area.large.karman[t / 2];
                double wx = slope[2 * t];
                double wy = slope[2 * t + 1];
                double fx = wx * force[3 * t] + wy * force[3 * t + 2];
                double fy = wy * force[3 * t + 1] + wx * force[3 * t + 2];
                for (int a = 0; a < area.corner[t].length; a++) {
                    if (area.corner[t][a] >= 0) {
                        f[area.corner[t][a]] += cell.nx[a] * fx + cell.ny[a] * fy;
                    }
                }
            }
            for (int m = 0; m < area.meetingOuter.length; m++) {
                double push = area.large.spring[m] * Math.max(0, overlap(m));
                addTo(f, area.meetingOuter[m], push);
                addTo(f, area.meetingInner[m], -push);
            }
            Arrays.setAll(f, i -> -f[i]);
            return f;
        }
    }

    /**
     * What was found.
     *
     * @param shape deflections w
     * @param more w less the linear ones, then the strains q
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    record Settled(double[] shape, double[] more) {
        /**
         * What is added to the linear deflection of a place.
         *
         * @param asked what a unit force there leaves on the area
         */
        double at(double[] asked) {
            return dot(asked, more);
        }
    }

    /**
     * @param shapes deflections w to begin from: that of least energy, or the linear one
     * @param balance forces out of balance that are left, as part of those that bend the area
     */
    Optional<Settled> settle(List<double[]> shapes, double balance) {
        double limit = Math.max(balance * norm(times(area.bend, w0)), 1e-9);
        Shape at = best(shapes);
        Shape lowest = at;
        int free = 0;
        for (int pass = 0; pass < ITERATIONS; pass++) {
            double[] rest = at.rest();
            if (norm(rest) <= limit) {
                return Optional.of(at.settled());
            }
            if (free > FREE) {
                at = stepped(lowest);
                free = 0;
            } else {
                at = at.moved(change(at, rest), 1);
            }
            free = at.energy < lowest.energy ? 0 : free + 1;
            if (at.energy < lowest.energy) {
                lowest = at;
            }
        }
        return Optional.empty();
    }

    private Shape best(List<double[]> shapes) {
        Shape best = new Shape(new double[w0.length]);
        double[] whole = w0;
        for (double[] shape : shapes) {
            Shape at = new Shape(LargeDeflection.sum(shape, w0, -1));
            if (at.energy < best.energy) {
                best = at;
                whole = shape;
            }
        }
        for (int less = 1; less < MOST_LESS; less++) {
            Shape at = best.moved(whole, -LESS);
            if (at.energy >= best.energy) {
                break;
            }
            best = at;
        }
        return best;
    }

    private Shape stepped(Shape from) {
        double[] rest = from.rest();
        double[] change = change(from, rest);
        double promised = dot(rest, change);
        double step = 1;
        Shape next = from.moved(change, step);
        for (int k = 0; k < HALVINGS; k++) {
            if (from.energy - next.energy >= KEPT * step * promised
                    || step * promised < 1e-11 * Math.abs(from.energy)) {
                break;
            }
            step /= 2;
            next = from.moved(change, step);
        }
        return next;
    }

    private double[] change(Shape at, double[] rest) {
        try {
            return DenseFactor.over(tangent(at, false)).solve(rest);
        } catch (NotPositiveDefiniteException compressed) {
            return DenseFactor.over(tangent(at, true)).solve(rest);
        }
    }

    /** {@code K + (L + J'M/2) J + its mirror image + what membrane forces add}, J the growth of q by w; upper triangle. */
    private double[][] tangent(Shape at, boolean stiffeningOnly) {
        int n = w0.length;
        double[][] k = new double[n][];
        double[][] half = new double[n][];
        for (int i = 0; i < n; i++) {
            k[i] = area.bend[i].clone();
            half[i] = area.couple[i].clone();
        }
        int cells = area.corner.length;
        for (int t = 0; t < cells; t++) {
            for (int a = 0; a < area.corner[t].length; a++) {
                if (area.corner[t][a] >= 0) {
                    double[] j = growth(at, t, a);
                    double[] less = {-j[0] / 2, -j[1] / 2, -j[2] / 2};
                    Dense.subtract(half[area.corner[t][a]], area.stretch, less, 3 * t, 0);
                }
            }
        }
        for (int t = 0; t < cells; t++) {
            for (int a = 0; a < area.corner[t].length; a++) {
                int column = area.corner[t][a];
                if (column >= 0) {
                    double[] j = growth(at, t, a);
                    double[] to = k[column];
                    for (int i = 0; i < n; i++) {
                        double[] from = half[i];
                        double sum = from[3 * t] * j[0] + from[3 * t + 1] * j[1] + from[3 * t + 2] * j[2];
                        to[i] += sum;
                        k[i][column] += sum;
                    }
                }
            }
            addForces(k, at, t, stiffeningOnly);
        }
        for (int m = 0; m < area.meetingOuter.length; m++) {
            if (at.overlap(m) > 0) {
                addSpring(k, area.meetingOuter[m], area.meetingInner[m], area.large.spring[m]);
            }
        }
        return k;
    }

    /** Growth of a skin's three added strains in a cell by a corner's deflection. */
    private double[] growth(Shape at, int t, int a) {
        Karman cell = area.large.karman[t / 2];
        double wx = at.slope[2 * t];
        double wy = at.slope[2 * t + 1];
        return new double[] {wx * cell.nx[a], wy * cell.ny[a], wx * cell.ny[a] + wy * cell.nx[a]};
    }

    private void addForces(double[][] k, Shape at, int t, boolean stiffeningOnly) {
        Karman cell = area.large.karman[t / 2];
        double[] force = Arrays.copyOfRange(at.force, 3 * t, 3 * t + 3);
        double[] n = stiffeningOnly ? Karman.pullOnly(force) : force;
        int[] corner = area.corner[t];
        for (int a = 0; a < corner.length; a++) {
            double gx = n[0] * cell.nx[a] + n[2] * cell.ny[a];
            double gy = n[2] * cell.nx[a] + n[1] * cell.ny[a];
            for (int b = 0; b < corner.length; b++) {
                if (corner[a] >= 0 && corner[b] >= 0) {
                    k[corner[a]][corner[b]] += gx * cell.nx[b] + gy * cell.ny[b];
                }
            }
        }
    }

    private static void addSpring(double[][] k, int outer, int inner, double size) {
        if (outer >= 0) {
            k[outer][outer] += size;
        }
        if (inner >= 0) {
            k[inner][inner] += size;
        }
        if (outer >= 0 && inner >= 0) {
            k[outer][inner] -= size;
            k[inner][outer] -= size;
        }
    }

    private static void addTo(double[] f, int at, double amount) {
        if (at >= 0) {
            f[at] += amount;
        }
    }

    private static double[] times(double[][] a, double[] x) {
        double[] y = new double[a.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = Dense.dot(a[i], x, 0);
        }
        return y;
    }

    private static double[] timesTransposed(double[][] a, double[] x) {
        double[] y = new double[a[0].length];
        Dense.subtract(y, a, x, 0, 0);
        Arrays.setAll(y, i -> -y[i]);
        return y;
    }

    private static double dot(double[] a, double[] b) {
        return Dense.dot(a, b, 0);
    }

    private static double norm(double[] v) {
        return Math.sqrt(dot(v, v));
    }
}
