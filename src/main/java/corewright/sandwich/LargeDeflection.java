package corewright.sandwich;

import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import corewright.linear.NotPositiveDefiniteException;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Equilibrium with von Karman's strain in the skins ({@link Karman}) and with loose skins resting on what is below, by
 * Newton's method in steps of the load. Where compression in a skin makes the tangent indefinite, the step leaves out what
 * compression takes; the equilibrium found is the same.
 */
final class LargeDeflection {
    /** Load steps tried first; a step that does not settle is halved. */
    private static final double FIRST_STEP = 1;

    private static final double LEAST_STEP = 1 / 64.0;

    /** Iterations seen were 4 to 9 a step. */
    private static final int ITERATIONS = 20;

    /** Forces out of balance that are left, as part of the load: far below a printed digit. */
    private static final double BALANCE = 1e-7;

    private final PanelModel model;
    private final double[] load;
    private final Contact contact;

    private LargeDeflection(PanelModel model, double[] load) {
        this.model = model;
        this.load = load;
        this.contact = new Contact(model, new double[load.length]);
    }

    /** The solution, or nothing if no equilibrium is found. */
    static Optional<double[]> solve(PanelModel model, double[] load) {
        return new LargeDeflection(model, load).inSteps();
    }

    private Optional<double[]> inSteps() {
        double[] x = new double[load.length];
        double reached = 0;
        double step = FIRST_STEP;
        while (reached < 1) {
            double next = Math.min(1, reached + step);
            Optional<double[]> found = settle(x, next);
            if (found.isPresent()) {
                x = found.get();
                reached = next;
            } else if (step / 2 < LEAST_STEP) {
                return Optional.empty();
            } else {
                step /= 2;
            }
        }
        return Optional.of(x);
    }

    private Optional<double[]> settle(double[] start, double part) {
        double[] x = start.clone();
        double limit = BALANCE * norm(load) * part;
        for (int pass = 0; pass < ITERATIONS; pass++) {
            double[] rest = outOfBalance(x, part);
            if (norm(rest) <= limit) {
                return Optional.of(x);
            }
            double[] change = tangent(x).solve(rest);
            for (int i = 0; i < x.length; i++) {
                x[i] += change[i];
            }
        }
        return Optional.empty();
    }

    private double[] outOfBalance(double[] x, double part) {
        double[] rest = model.matrix.times(x);
        double[][] forces = IntStream.range(0, model.mesh.cells.length)
                .parallel()
                .mapToObj(c -> new Karman(model, c, x).forces())
                .toArray(double[][]::new);
        for (int c = 0; c < forces.length; c++) {
            model.addCellForces(c, forces[c], rest);
        }
        for (int v = 0; v < model.mesh.nodes(); v++) {
            double overlap = contact.overlap(v, x);
            if (overlap > 0) {
                double push = contact.stiffness[v] * overlap;
                model.nodes.addForces(v, Contact.pair(push), rest, model.matrix.first(v));
            }
        }
        for (int i = 0; i < rest.length; i++) {
            rest[i] = part * load[i] - rest[i];
        }
        return rest;
    }

    private Cholesky tangent(double[] x) {
        try {
            return model.factor.sameOrder(tangentMatrix(x, false));
        } catch (NotPositiveDefiniteException compressed) {
            return model.factor.sameOrder(tangentMatrix(x, true));
        }
    }

    private BlockMatrix tangentMatrix(double[] x, boolean stiffeningOnly) {
        BlockMatrix k = model.matrix.copy();
        model.addCells(k, c -> new Karman(model, c, x).tangent(stiffeningOnly));
        for (int v = 0; v < model.mesh.nodes(); v++) {
            if (contact.overlap(v, x) > 0) {
                addSpring(k, v);
            }
        }
        return k;
    }

    private void addSpring(BlockMatrix k, int v) {
        double[] outer = model.nodes.row(v, 2);
        double[] inner = model.nodes.row(v, CellRows.PER_SURFACE + 2);
        for (int i = 0; i < outer.length; i++) {
            for (int j = 0; j <= i; j++) {
                k.addToDiagonalBlock(v, i, j, contact.stiffness[v] * (outer[i] - inner[i]) * (outer[j] - inner[j]));
            }
        }
    }

    private static double norm(double[] v) {
        return Math.sqrt(Arrays.stream(v).map(a -> a * a).sum());
    }
}
