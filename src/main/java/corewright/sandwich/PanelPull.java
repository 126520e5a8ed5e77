package corewright.sandwich;

import corewright.linear.Anderson;
import corewright.linear.Cholesky;
import corewright.linear.NotPositiveDefiniteException;
import corewright.linear.SparseVector;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Equilibrium of a whole panel with von Karman's strain in all its skins and with loose skins resting on what is below. What is bonded
 * stiffens as a whole and by little, so its added forces are found by repetition: with F those of displacements x, and h those of the
 * loose areas, each settled by {@link LargeDeflection} on what the rest does to it,
 *
 * <pre>
 *   x = K⁻¹ (load - F(x) + Σ h(x))
 * </pre>
 *
 * <p>from the panel's one linear factor, accelerated ({@link Anderson}). Where that does not settle, Newton's method runs on the
 * whole panel at once, which finds the same at the price of a factor a step. Any number of threads may settle loads at once.
 */
final class PanelPull {
    /** Seen were 1 to 14, the most where a panel keeps less than half of its linear deflection. */
    private static final int REPETITIONS = 30;

    /**
     * What the first step leaves to move, as part of the square of what it moved: 0.01 to 0.04 seen where all is bonded, up to 0.6 where skins are
     * loose.
     */
    private static final double BONDED_SQUARE = 0.1;

    private static final double LOOSE_SQUARE = 1;

    /** Forces out of balance that are left in an area, as part of {@code part}: they weigh more under a foot than over a panel. */
    private static final double INNER = 0.2;

    private final PanelModel model;
    private final BondedSkins bonded;
    private final List<LargeDeflection> areas;

    PanelPull(PanelModel model) {
        this.model = model;
        bonded = new BondedSkins(model);
        areas = model.loose.areas().stream().map(model::large).toList();
    }

    /**
     * Displacements under a load; nothing if no equilibrium is found.
     *
     * @param part how far the displacements may move in the last repetition, as part of them
     */
    Optional<double[]> settle(double[] load, double part) {
        return settle(load, areas.isEmpty() ? model.factor.solve(load) : model.solveLoose(SparseVector.of(load)), part);
    }

    /** @param linear the linear displacements, at the nodes of loose areas at least */
    Optional<double[]> settle(double[] load, double[] linear, double part) {
        return new Repetition(load, linear, part).settle().or(() -> whole(load));
    }

    /** Newton's method on all cells at once. */
    private Optional<double[]> whole(double[] load) {
        LargeDeflection all = new LargeDeflection(
                model, IntStream.range(0, model.mesh.cells.length).toArray());
        return all.settle(model.factor.solve(load), List.of()).map(found -> {
            double[] forces = load.clone();
            all.addForces(found.added(), forces);
            return model.factor.solve(forces);
        });
    }

    /** The repetition for one load. */
    private final class Repetition {
        private final double[] load;
        private final double part;
        private final Anderson mixing = new Anderson();

        /** Displacements; to begin with the linear ones. */
        private double[] x;

        /** What each area adds to the linear solution on its nodes. */
        private final double[][] added = new double[areas.size()][];

        private final @Nullable Cholesky[] tangents = new Cholesky[areas.size()];

        Repetition(double[] load, double[] linear, double part) {
            this.load = load;
            this.part = part;
            x = linear;
            for (int a = 0; a < added.length; a++) {
                added[a] = new double[areas.get(a).stiffness.size()];
            }
        }

        /** Nothing where it does not come to rest. */
        Optional<double[]> settle() {
            try {
                return repeat();
            } catch (NotPositiveDefiniteException astray) {
                return Optional.empty();
            }
        }

        private Optional<double[]> repeat() {
            double[] forces = load.clone();
            if (!areas.isEmpty()) {
                if (!addAreas(forces, x, model.solveLoose(SparseVector.of(model.withContact(load))))) {
                    return Optional.empty();
                }
                x = model.factor.solve(forces);
            }
            double square = areas.isEmpty() ? BONDED_SQUARE : LOOSE_SQUARE;
            for (int k = 0; k < REPETITIONS; k++) {
                double[] before = joined(x);
                double[] stretched = forces.clone();
                bonded.subtractStretch(x, stretched);
                double[] further = load.clone();
                bonded.subtractStretch(x, further);
                bonded.subtractPull(x, model.factor.solve(stretched), further);
                double s = share(further);
                if (!areas.isEmpty()
                        && !addAreas(further, model.solveLoose(SparseVector.of(withAreas(further))), null)) {
                    return Optional.empty();
                }
                double[] next = model.factor.solve(further);
                double moved = norm(LargeDeflection.sum(next, x, -1));
                double most = norm(next);
                if (moved <= part * most) {
                    return Optional.of(next);
                }
                if (k == 0) {
                    x = between(x, next, s);
                    if (square * moved * moved < part * most * most) {
                        return Optional.of(x);
                    }
                } else {
                    apart(mixing.next(before, joined(next)));
                }
                forces = withAreas(load);
            }
            return Optional.empty();
        }

        /**
         * How far to go from x to what the forces of its pull make of it: these grow with the third power of the deflections, so they balance
         * at the part s³ of them with s + s³ x'F/x'load = 1.
         */
        private double share(double[] pulled) {
            double pull = 0;
            double work = 0;
            for (int i = 0; i < x.length; i++) {
                work += x[i] * load[i];
                pull += x[i] * (load[i] - pulled[i]);
            }
            double ratio = work == 0 ? 0 : Math.max(0, pull / work);
            double s = Karman.stiffened(1, ratio);
            return s * s * s;
        }

        private static double[] between(double[] from, double[] to, double s) {
            return LargeDeflection.sum(from, LargeDeflection.sum(to, from, -1), s);
        }

        /**
         * Settles each loose area on the displacements that the rest gives it, and adds the forces it takes.
         *
         * @param all displacements by the forces and the areas as they are, right at the areas' nodes at least
         * @param resting displacements with contact alone, to begin with; else it is begun where the area is
         */
        private boolean addAreas(double[] forces, double[] all, double @Nullable [] resting) {
            for (int a = 0; a < added.length; a++) {
                LargeDeflection area = areas.get(a);
                double[] rest = LargeDeflection.sum(area.on.local(all), added[a], -1);
                double[] guess = resting == null ? added[a] : LargeDeflection.sum(area.on.local(resting), rest, -1);
                Optional<LargeDeflection.Settled> found =
                        area.settle(rest, List.of(guess), Math.max(INNER * part, LargeDeflection.BALANCE), tangents[a]);
                if (found.isEmpty()) {
                    return false;
                }
                tangents[a] = found.get().tangent();
                added[a] = found.get().added();
                area.addForces(added[a], forces);
            }
            return true;
        }

        /** The same forces, and with them what the areas add as they are. */
        private double[] withAreas(double[] forces) {
            double[] all = forces.clone();
            for (int a = 0; a < added.length; a++) {
                areas.get(a).addForces(added[a], all);
            }
            return all;
        }

        private double[] joined(double[] displacements) {
            int size = displacements.length;
            for (double[] one : added) {
                size += one.length;
            }
            double[] all = Arrays.copyOf(displacements, size);
            int at = displacements.length;
            for (double[] one : added) {
                System.arraycopy(one, 0, all, at, one.length);
                at += one.length;
            }
            return all;
        }

        private void apart(double[] all) {
            x = Arrays.copyOf(all, x.length);
            int at = x.length;
            for (int a = 0; a < added.length; a++) {
                added[a] = Arrays.copyOfRange(all, at, at + added[a].length);
                at += added[a].length;
            }
        }
    }

    private static double norm(double[] v) {
        return Math.sqrt(Arrays.stream(v).map(a -> a * a).sum());
    }
}
