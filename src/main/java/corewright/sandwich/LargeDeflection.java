package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import corewright.linear.NotPositiveDefiniteException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Equilibrium with von Karman's strain ({@link Karman}) in the skins of some cells and with loose skins resting on what is
 * below ({@link LooseAreas}). All unknowns outside these cells are eliminated once. With S the stiffness that is left at the
 * cells' nodes, x0 the linear solution there and d what is added to it, Newton's method looks for the least energy
 *
 * <pre>
 *   d'Sd/2 + Σ cells Karman(x0 + d) + Σ nodes k max(0, approach - gap)²/2
 * </pre>
 *
 * <p>A step that does not lower the energy is halved. Where compression in a skin makes the tangent indefinite, the step
 * leaves out what compression takes; the equilibrium found is the same. Any number of threads may settle loads at once.
 */
final class LargeDeflection {
    /** Iterations seen were 3 to 19. */
    private static final int ITERATIONS = 100;

    /** Forces out of balance that are left, as part of those that bend the cells: far below a printed digit. */
    static final double BALANCE = 1e-6;

    /**
     * Times the balance: a step of less than this part of the linear shape, in the root of its work, is the last. Where skins meet, forces stay out of
     * balance long after nothing moves.
     */
    static final double NEAR = 15;

    /** Part of the promised fall in energy that a step must keep (L. Armijo, Pacific J. Math. 16, 1966). */
    private static final double KEPT = 1e-4;

    /** Full steps that may fail to lower the energy before one that must is taken: nodes that come to touch push it up for a while. */
    private static final int FREE = 4;

    private static final int HALVINGS = 30;

    /** A step shorter than this part of the shortest before, in the root of its work, goes on with the tangent it had. */
    private static final double FAST = 0.2;

    /** Parts of a shape that are taken from it, one after the other, as long as its energy falls; so many at most. */
    private static final double LESS = 0.125;

    private static final int MOST_LESS = 7;

    final PanelModel model;
    final CondensedCells on;
    final int[] cells;
    final int[] nodes;
    final Karman[] karman;

    /** Each cell's corners, by their number among the nodes. */
    final int[][] corners;

    /** Nodes at which skins may meet, by their number among the nodes; gap and spring of each. */
    final int[] meeting;

    final double[] gap;
    final double[] spring;

    final BlockMatrix stiffness;
    final Cholesky.Order order;

    /** @param cells those with von Karman's strain, ascending */
    LargeDeflection(PanelModel model, int[] cells) {
        this.model = model;
        this.cells = cells;
        on = new CondensedCells(model, cells);
        nodes = on.nodes;
        karman = Arrays.stream(cells)
                .mapToObj(c -> new Karman(model.panel, model.mesh.shape(c), model.surfaces(c)))
                .toArray(Karman[]::new);
        corners = on.corners;
        LooseAreas loose = model.loose;
        int[] inside = IntStream.range(0, loose.nodes.length)
                .filter(k -> on.number(loose.nodes[k]) >= 0)
                .toArray();
        meeting = Arrays.stream(inside).map(k -> on.number(loose.nodes[k])).toArray();
        gap = Arrays.stream(inside).mapToDouble(k -> loose.gap[k]).toArray();
        spring = Arrays.stream(inside).mapToDouble(k -> loose.spring[k]).toArray();
        stiffness = on.stiffness;
        order = new Cholesky.Order(stiffness, on.x, on.y, on.rim);
    }

    /**
     * What the skins' pull and contact add to the linear solution.
     *
     * @param added at the nodes of the cells: d
     * @param tangent one that led there; none where the first guess was balanced
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    record Settled(double[] added, @Nullable Cholesky tangent) {}

    /** What is added to the linear solution, with the forces S d that it takes, and the step by which it was reached. */
    @SuppressWarnings("ArrayRecordComponent") // handles passed together, never compared
    private record Point(double[] d, double[] pull, double[] last) {
        Point moved(Point change, double step) {
            double[] last = new double[d.length];
            Arrays.setAll(last, i -> step * change.d[i]);
            return new Point(sum(d, last, 1), sum(pull, change.pull, step), last);
        }
    }

    private Point point(double[] d) {
        return new Point(d, stiffness.times(d), new double[d.length]);
    }

    /**
     * Settles a load; nothing if no equilibrium is found.
     *
     * @param x0 the linear solution at the nodes of the cells ({@link CondensedCells#local})
     */
    Optional<Settled> settle(double[] x0, List<double[]> guesses) {
        return settle(x0, guesses, BALANCE, null);
    }

    /**
     * @param guesses at d: the one of least energy is begun with, or the linear solution, or a part of it if that has less
     * @param balance forces out of balance that are left, as part of those that bend the cells
     * @param begun a tangent to begin with, from near by
     */
    Optional<Settled> settle(double[] x0, List<double[]> guesses, double balance, @Nullable Cholesky begun) {
        double[] bending = stiffness.times(x0);
        double limit = Math.max(balance * norm(bending), 1e-9);
        double near = NEAR * NEAR * balance * balance * dot(x0, bending);
        Point at = best(x0, guesses);
        Point lowest = at;
        double least = energy(x0, at);
        int free = 0;
        Cholesky tangent = begun;
        double best = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < ITERATIONS; pass++) {
            double[] rest = outOfBalance(x0, at);
            double left = norm(rest);
            if (left <= limit) {
                return Optional.of(new Settled(at.d, tangent));
            }
            if (free > FREE) {
                at = lowest;
                rest = outOfBalance(x0, at);
                at = stepped(x0, at, rest, tangent(x0, at));
                free = 0;
                tangent = null;
            } else {
                double[] step = tangent == null ? rest : tangent.solve(rest);
                if (tangent == null || dot(rest, step) > FAST * FAST * best) {
                    tangent = tangent(x0, at);
                    step = tangent.solve(rest);
                }
                at = at.moved(point(step), 1);
                double work = dot(rest, step);
                if (work <= near) {
                    return Optional.of(new Settled(at.d, tangent));
                }
                best = Math.min(best, work);
            }
            double energy = energy(x0, at);
            free = energy < least ? 0 : free + 1;
            if (energy < least) {
                least = energy;
                lowest = at;
            }
        }
        return Optional.empty();
    }

    /** Where to begin: the linear shape overshoots where skins stiffen, and steps from far off are short. */
    private Point best(double[] x0, List<double[]> guesses) {
        Point best = point(new double[x0.length]);
        double least = energy(x0, best);
        double[] shape = x0;
        for (double[] guess : guesses) {
            Point at = point(guess);
            double energy = energy(x0, at);
            if (energy < least) {
                best = at;
                least = energy;
                shape = sum(x0, guess, 1);
            }
        }
        Point smaller = point(shape);
        for (double less = 1; less < MOST_LESS; less++) {
            Point at = best.moved(smaller, -LESS);
            double energy = energy(x0, at);
            if (energy >= least) {
                break;
            }
            best = at;
            least = energy;
        }
        return best;
    }

    /** The forces that make the panel's linear calculation give the settled solution, to be added to the load. */
    double[] forces(Settled settled) {
        double[] forces = new double[model.matrix.size()];
        addForces(settled.added, forces);
        return forces;
    }

    /** @param added to the linear solution on the area */
    void addForces(double[] added, double[] forces) {
        double[] local = stiffness.times(added);
        for (int k = 0; k < nodes.length; k++) {
            int from = stiffness.first(k);
            int to = model.matrix.first(nodes[k]);
            for (int i = 0; i < stiffness.size(k); i++) {
                forces[to + i] += local[from + i];
            }
        }
    }

    private Point stepped(double[] x0, Point at, double[] rest, Cholesky tangent) {
        Point change = point(tangent.solve(rest));
        double promised = dot(rest, change.d);
        double before = energy(x0, at);
        double step = 1;
        Point next = at.moved(change, step);
        for (int k = 0; k < HALVINGS; k++) {
            double fall = before - energy(x0, next);
            // a fall that rounding hides is as good as kept
            if (fall >= KEPT * step * promised || step * promised < 1e-11 * Math.abs(before)) {
                break;
            }
            step /= 2;
            next = at.moved(change, step);
        }
        return next;
    }

    private double energy(double[] x0, Point at) {
        double sum = dot(at.d, at.pull) / 2;
        double[] all = sum(x0, at.d, 1);
        for (int c = 0; c < cells.length; c++) {
            sum += karman[c].energy(displacements(c, all));
        }
        for (int k = 0; k < meeting.length; k++) {
            double overlap = Math.max(0, approach(k, all) - gap[k]);
            sum += spring[k] * overlap * overlap / 2;
        }
        return sum;
    }

    private double[] outOfBalance(double[] x0, Point at) {
        double[] forces = at.pull.clone();
        double[] all = sum(x0, at.d, 1);
        for (int c = 0; c < cells.length; c++) {
            addForces(c, karman[c].forces(displacements(c, all)), forces);
        }
        for (int k = 0; k < meeting.length; k++) {
            double overlap = approach(k, all) - gap[k];
            if (overlap > 0) {
                int node = meeting[k];
                model.nodes.addForces(nodes[node], PanelModel.pair(spring[k] * overlap), forces, stiffness.first(node));
            }
        }
        Arrays.setAll(forces, i -> -forces[i]);
        return forces;
    }

    private Cholesky tangent(double[] x0, Point at) {
        double[] all = sum(x0, at.d, 1);
        try {
            return order.factor(tangentMatrix(all, at.last, false));
        } catch (NotPositiveDefiniteException compressed) {
            return order.factor(tangentMatrix(all, at.last, true));
        }
    }

    private BlockMatrix tangentMatrix(double[] all, double[] last, boolean stiffeningOnly) {
        BlockMatrix k = stiffness.copy();
        for (int c = 0; c < cells.length; c++) {
            addCell(k, c, karman[c].tangent(displacements(c, all), displacements(c, last), stiffeningOnly));
        }
        for (int m = 0; m < meeting.length; m++) {
            if (approach(m, all) > gap[m]) {
                addSpring(k, meeting[m], spring[m]);
            }
        }
        return k;
    }

    private void addCell(BlockMatrix k, int c, double[] tangent) {
        int[] at = model.mesh.cells[cells[c]];
        int stride = CellRows.PER_SURFACE * model.surfaces(cells[c]);
        int n = at.length * stride;
        for (int a = 0; a < at.length; a++) {
            for (int b = 0; b < at.length; b++) {
                if (at[a] >= at[b]) {
                    k.add(corners[c][a], corners[c][b], model.nodes.project(tangent, n, a, at[a], b, at[b], stride));
                }
            }
        }
    }

    private void addSpring(BlockMatrix k, int node, double size) {
        double[] outer = model.nodes.row(nodes[node], 2);
        double[] inner = model.nodes.row(nodes[node], CellRows.PER_SURFACE + 2);
        for (int i = 0; i < outer.length; i++) {
            for (int j = 0; j <= i; j++) {
                k.addToDiagonalBlock(node, i, j, size * (outer[i] - inner[i]) * (outer[j] - inner[j]));
            }
        }
    }

    private double[] displacements(int c, double[] all) {
        int stride = CellRows.PER_SURFACE * model.surfaces(cells[c]);
        double[] q = new double[corners[c].length * stride];
        for (int a = 0; a < corners[c].length; a++) {
            int node = corners[c][a];
            double[] own = model.nodes.displacements(nodes[node], all, stiffness.first(node));
            System.arraycopy(own, 0, q, a * stride, stride);
        }
        return q;
    }

    private void addForces(int c, double[] forces, double[] to) {
        int stride = CellRows.PER_SURFACE * model.surfaces(cells[c]);
        for (int a = 0; a < corners[c].length; a++) {
            double[] own = new double[Nodes.PER_NODE];
            System.arraycopy(forces, a * stride, own, 0, stride);
            model.nodes.addForces(nodes[corners[c][a]], own, to, stiffness.first(corners[c][a]));
        }
    }

    private double approach(int k, double[] all) {
        double[] q = model.nodes.displacements(nodes[meeting[k]], all, stiffness.first(meeting[k]));
        return q[2] - q[CellRows.PER_SURFACE + 2];
    }

    static double[] sum(double[] a, double[] b, double factor) {
        double[] sum = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            sum[i] = a[i] + factor * b[i];
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double norm(double[] v) {
        return Math.sqrt(dot(v, v));
    }
}
