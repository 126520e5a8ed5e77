package corewright.sandwich;

import corewright.linear.Dense;
import corewright.linear.DenseFactor;
import corewright.linear.NotPositiveDefiniteException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Equilibrium of a {@link ReducedArea} under one load, by Newton's method as in {@link LargeDeflection#settle}: full steps, and
 * where a few do not lower the energy one that does, by halving.
 */
final class ReducedFoot {
    private static final int ITERATIONS = 100;
    private static final int FREE = 4;
    private static final int HALVINGS = 30;
    private static final double KEPT = 1e-4;

    /** A step shorter than this part of the shortest before, in the root of its work, goes on with the tangent it had. */
    private static final double FAST = 0.1;

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

        /**
         * What the step to here had in strains of its own slopes; a tangent with the membrane forces without these finds the
         * equilibrium in few steps, as the skins' stretching does not fight each of them.
         */
        private final double[] own;

        final double energy;

        Shape(double[] d) {
            this(d, null);
        }

        private Shape(double[] d, @Nullable Shape from) {
            this.d = d;
            slope = new double[2 * area.corner.length];
            q = added();
            bending = area.times(area.bend, d);
            double[] more = area.times(area.couple, d);
            double[] stretched = area.times(area.stretch, q);
            force = new double[q.length];
            double sum = dot(d, bending) / 2;
            for (int k = 0; k < q.length; k++) {
                force[k] = s[k] + more[k] + stretched[k];
                sum += q[k] * (s[k] + more[k] + stretched[k] / 2);
            }
            for (int m = 0; m < area.meetingOuter.length; m++) {
                double overlap = Math.max(0, overlap(m));
                sum += area.large.spring[m] * overlap * overlap / 2;
            }
            energy = sum;
            own = from == null ? new double[0] : strains(from);
        }

        private double total(int at) {
            return at < 0 ? 0 : w0[at] + d[at];
        }

        double overlap(int m) {
            return total(area.meetingOuter[m]) - total(area.meetingInner[m]) - area.large.gap[m];
        }

        /** Which of the nodes that may meet do. */
        boolean[] meeting() {
            boolean[] all = new boolean[area.meetingOuter.length];
            for (int m = 0; m < all.length; m++) {
                all[m] = overlap(m) > 0;
            }
            return all;
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
            return new Shape(LargeDeflection.sum(d, change, step), this);
        }

        /** Strains of the slopes by which this shape differs from another. */
        private double[] strains(Shape from) {
            double[] strain = new double[q.length];
            for (int t = 0; t < area.corner.length; t++) {
                double dx = slope[2 * t] - from.slope[2 * t];
                double dy = slope[2 * t + 1] - from.slope[2 * t + 1];
                strain[3 * t] = dx * dx / 2;
                strain[3 * t + 1] = dy * dy / 2;
                strain[3 * t + 2] = dx * dy;
            }
            return strain;
        }

        /** Membrane forces as the step to here foresaw them. */
        double[] foreseen() {
            return own.length == 0 ? force : LargeDeflection.sum(force, area.times(area.stretch, own), -1);
        }

        Settled settled(@Nullable DenseFactor tangent) {
            double[] more = Arrays.copyOf(d, d.length + q.length);
            System.arraycopy(q, 0, more, d.length, q.length);
            return new Settled(LargeDeflection.sum(w0, d, 1), more, tangent);
        }

        /** Forces out of balance. */
        double[] rest() {
            double[] f = area.times(area.across, q);
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
     * @param tangent one that led there; null where there was none, or it was let go
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    record Settled(double[] shape, double[] more, @Nullable DenseFactor tangent) {
        Settled withoutTangent() {
            return new Settled(shape, more, null);
        }

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
     * @param alike where feet most alike came to rest: of these the shape of least energy is begun with, and its tangent
     * @param resting the deflections w with contact alone; none where nothing meets
     * @param balance forces out of balance that are left, as part of those that bend the area
     */
    Optional<Settled> settle(List<Settled> alike, Optional<double[]> resting, double balance) {
        double[] bending = area.times(area.bend, w0);
        double limit = Math.max(balance * norm(bending), 1e-9);
        double near = LargeDeflection.NEAR * LargeDeflection.NEAR * balance * balance * dot(w0, bending);
        Shape at = new Shape(new double[w0.length]);
        DenseFactor tangent = null;
        for (Settled like : alike) {
            Shape begun = new Shape(LargeDeflection.sum(like.shape, w0, -1));
            if (begun.energy < at.energy) {
                at = begun;
                tangent = like.tangent;
            }
        }
        if (tangent == null) {
            at = smaller(at, resting);
        }
        Shape lowest = at;
        int free = 0;
        double best = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < ITERATIONS; pass++) {
            double[] rest = at.rest();
            double left = norm(rest);
            if (left <= limit) {
                return Optional.of(at.settled(tangent));
            }
            if (free > FREE) {
                at = stepped(lowest);
                free = 0;
                tangent = null;
            } else {
                double[] step = tangent == null ? rest : tangent.solve(rest);
                if (tangent == null || dot(rest, step) > FAST * FAST * best) {
                    tangent = tangent(at);
                    step = tangent.solve(rest);
                }
                at = at.moved(step, 1);
                double work = dot(rest, step);
                if (work <= near) {
                    return Optional.of(at.settled(tangent));
                }
                best = Math.min(best, work);
            }
            free = at.energy < lowest.energy ? 0 : free + 1;
            if (at.energy < lowest.energy) {
                lowest = at;
            }
        }
        return Optional.empty();
    }

    /** The linear shape, or the one with contact alone, or of the better a part: both overshoot where skins stiffen. */
    private Shape smaller(Shape linear, Optional<double[]> resting) {
        Shape best = linear;
        double[] whole = w0;
        if (resting.isPresent()) {
            Shape at = new Shape(LargeDeflection.sum(resting.get(), w0, -1));
            if (at.energy < best.energy) {
                best = at;
                whole = resting.get();
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
        double[] change = tangent(from).solve(rest);
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

    private DenseFactor tangent(Shape at) {
        ReducedTangent tangent = new ReducedTangent(area, at.slope, at.foreseen(), at.meeting());
        try {
            return DenseFactor.over(tangent.matrix(false));
        } catch (NotPositiveDefiniteException compressed) {
            return DenseFactor.over(tangent.matrix(true));
        }
    }

    private static void addTo(double[] f, int at, double amount) {
        if (at >= 0) {
            f[at] += amount;
        }
    }

    private static double dot(double[] a, double[] b) {
        return Dense.dot(a, b, 0);
    }

    private static double norm(double[] v) {
        return Math.sqrt(dot(v, v));
    }
}
