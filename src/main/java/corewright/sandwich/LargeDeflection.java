package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import corewright.linear.NotPositiveDefiniteException;
import java.util.Arrays;
import java.util.Optional;

/**
 * Equilibrium with von Karman's strain ({@link Karman}) in the skins of some cells and with loose skins resting on what is
 * below ({@link LooseAreas}), by Newton's method on the energy
 *
 * <pre>
 *   x'Kx/2 - f'x + Σ cells Karman + Σ nodes k max(0, approach - gap)²/2
 * </pre>
 *
 * <p>A step that does not lower the energy is halved. Where compression in a skin makes the tangent indefinite, the step
 * leaves out what compression takes; the equilibrium found is the same. The tangent differs from the linear matrix only in
 * the chosen cells, so only the fronts above these are eliminated anew.
 */
final class LargeDeflection {
    /** Iterations seen were 4 to 30. */
    private static final int ITERATIONS = 120;

    /** Forces out of balance that are left, as part of the load: far below a printed digit. */
    private static final double BALANCE = 1e-6;

    /** Part of the promised fall in energy that a step must keep (Armijo). */
    private static final double KEPT = 1e-4;

    private static final int HALVINGS = 30;

    private final PanelModel model;
    private final LooseAreas loose;
    private final int[] cells;
    private final Karman[] karman;
    private final Factoring factor;

    /** Iterations of the last {@link #settle}. */
    int iterations;

    /** How a tangent is factored. */
    interface Factoring {
        Cholesky of(BlockMatrix tangent);
    }

    /** Von Karman's strain in the loose cells. */
    LargeDeflection(PanelModel model) {
        this(model, model.loose.cells, model.factor::changed);
    }

    /**
     * @param cells those with von Karman's strain
     * @param factor for their tangent
     */
    LargeDeflection(PanelModel model, int[] cells, Factoring factor) {
        this.model = model;
        this.loose = model.loose;
        this.cells = cells;
        this.factor = factor;
        karman = Arrays.stream(cells)
                .mapToObj(c -> new Karman(model.panel, model.mesh.shape(c), model.surfaces(c)))
                .toArray(Karman[]::new);
    }

    /**
     * The solution, or nothing if no equilibrium is found.
     *
     * @param start where to begin: the answer to a load nearby, or zero
     */
    Optional<double[]> settle(double[] load, double[] start) {
        double[] x = start.clone();
        double limit = BALANCE * norm(load);
        for (iterations = 0; iterations < ITERATIONS; iterations++) {
            double[] rest = outOfBalance(x, load);
            if (norm(rest) <= limit) {
                return Optional.of(x);
            }
            double[] change = tangent(x).solve(rest);
            double promised = dot(rest, change);
            double before = energy(x, load);
            double step = 1;
            double[] next = moved(x, change, step);
            for (int k = 0; k < HALVINGS; k++) {
                double fall = before - energy(next, load);
                if (fall >= KEPT * step * promised || step * promised < 1e-11 * Math.abs(before)) {
                    break;
                }
                step /= 2;
                next = moved(x, change, step);
            }
            x = next;
        }
        return Optional.empty();
    }

    private static double[] moved(double[] x, double[] change, double step) {
        double[] next = new double[x.length];
        Arrays.setAll(next, i -> x[i] + step * change[i]);
        return next;
    }

    double energy(double[] x, double[] load) {
        double sum = dot(x, model.matrix.times(x)) / 2 - dot(x, load);
        for (int k = 0; k < cells.length; k++) {
            sum += karman[k].energy(model.cellDisplacements(cells[k], x));
        }
        for (int k = 0; k < loose.nodes.length; k++) {
            double overlap = Math.max(0, model.approach(loose.nodes[k], x) - loose.gap[k]);
            sum += loose.spring[k] * overlap * overlap / 2;
        }
        return sum;
    }

    double[] outOfBalance(double[] x, double[] load) {
        double[] rest = model.matrix.times(x);
        for (int k = 0; k < cells.length; k++) {
            model.addCellForces(cells[k], karman[k].forces(model.cellDisplacements(cells[k], x)), rest);
        }
        for (int k = 0; k < loose.nodes.length; k++) {
            double overlap = model.approach(loose.nodes[k], x) - loose.gap[k];
            if (overlap > 0) {
                model.nodes.addForces(
                        loose.nodes[k], PanelModel.pair(loose.spring[k] * overlap), rest, model.matrix.first(loose.nodes[k]));
            }
        }
        Arrays.setAll(rest, i -> load[i] - rest[i]);
        return rest;
    }

    private Cholesky tangent(double[] x) {
        try {
            return factor.of(tangentMatrix(x, false));
        } catch (NotPositiveDefiniteException compressed) {
            return factor.of(tangentMatrix(x, true));
        }
    }

    BlockMatrix tangentMatrix(double[] x, boolean stiffeningOnly) {
        BlockMatrix k = model.matrix.copy();
        for (int c = 0; c < cells.length; c++) {
            model.addCell(k, cells[c], karman[c].tangent(model.cellDisplacements(cells[c], x), stiffeningOnly));
        }
        for (int n = 0; n < loose.nodes.length; n++) {
            if (model.approach(loose.nodes[n], x) > loose.gap[n]) {
                addSpring(k, loose.nodes[n], loose.spring[n]);
            }
        }
        return k;
    }

    private void addSpring(BlockMatrix k, int v, double stiffness) {
        double[] outer = model.nodes.row(v, 2);
        double[] inner = model.nodes.row(v, CellRows.PER_SURFACE + 2);
        for (int i = 0; i < outer.length; i++) {
            for (int j = 0; j <= i; j++) {
                k.addToDiagonalBlock(v, i, j, stiffness * (outer[i] - inner[i]) * (outer[j] - inner[j]));
            }
        }
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
