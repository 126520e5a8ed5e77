package corewright.repair.fill;

/**
 * Pressure between two plates: {@code div(h^3 / (12 mu) grad p)} on a raster, by finite volumes (Hele-Shaw 1898).
 *
 * <p>Conductances of the faces are held for a viscosity of 1 Pa s, so that pressures are in pascal, flows in cubic
 * millimetres a second. The equations of a set of cells are solved by conjugate gradients with an incomplete Cholesky
 * preconditioner in natural order, modified to keep row sums (Meijerink and van der Vorst, Math. Comp. 31 (1977) 148; Gustafsson): the set changes with every
 * step of the front and the last pressures are a good start, which a direct factor cannot use. The factor's rows are scaled to a
 * diagonal of 1 and differ from those of the matrix on the diagonal alone, so that an iteration costs its two substitutions and no
 * product with the matrix (Eisenstat, SIAM J. Sci. Stat. Comput. 2 (1981) 1).
 */
final class PressureField {
    private static final int MOST_ITERATIONS = 2000;

    /** Of the fill left out, what is kept on the diagonal (I. Gustafsson, BIT 18 (1978) 142); all of it can break down. */
    private static final double MODIFIED = 0.97;

    final int columns;
    /** By flat index: conductance to the cell at + 1 and at + columns; 0 where closed. */
    final double[] east;

    final double[] north;

    /** By flat index: the row of a cell in the equations, from 1; 0 where it is not in them. Row 0 and the row after the last hold zeros. */
    private final int[] row;

    /** By row: those at + columns and - columns. */
    private int[] above = {};

    private int[] below = {};

    /** By row: conductance to the cell at - 1 and at - columns; scaled like the factor once that is made. */
    private double[] west = {};

    private double[] south = {};
    private double[] diagonal = {};

    /** Of the pivots of the incomplete factor. */
    private double[] root = {};

    private double[] residual = {};
    private double[] direction = {};
    private double[] backward = {};
    private double[] forward = {};
    private double[] image = {};

    PressureField(int columns, double[] east, double[] north) {
        this.columns = columns;
        this.east = east;
        this.north = north;
        row = new int[east.length];
    }

    /** Conductance of the face between two cells: harmonic mean of the cells, {@code h^3 / 12} each. */
    static double conductance(double gapMm, double otherMm) {
        double a = gapMm * gapMm * gapMm;
        double b = otherMm * otherMm * otherMm;
        return a + b > 0 ? 2 * a * b / (a + b) / 12 : 0;
    }

    /**
     * Solves {@code sum T (p_i - p_j) + extra_i p_i = source_i} over some cells; faces to other cells are closed.
     *
     * @param cells flat indices, ascending
     * @param extra by flat index, conductance to places of fixed pressure; at least one in each connected patch
     * @param pressure by flat index: the start on the way in, the solution on the way out
     * @param tolerance of the residual's norm against that of the source
     */
    void solve(int[] cells, double[] extra, double[] source, double[] pressure, double tolerance) {
        int n = cells.length;
        gather(cells, extra);
        double norm = 0;
        double left = 0;
        for (int i = 1; i <= n; i++) {
            int c = cells[i - 1];
            residual[i] = source[c] - product(c, i, pressure);
            norm += source[c] * source[c];
            left += residual[i] * residual[i];
        }
        for (int c : cells) {
            row[c] = 0;
        }
        double wanted = tolerance * tolerance * norm;
        if (left <= wanted) {
            return;
        }
        if (norm == 0) {
            for (int c : cells) {
                pressure[c] = 0;
            }
            return;
        }
        factor(n);
        double rho = scaled(n);
        double beta = 0;
        for (int k = 0; k < MOST_ITERATIONS && left > wanted; k++) {
            double alpha = rho / advance(n, beta);
            double next = 0;
            left = 0;
            for (int i = 1; i <= n; i++) {
                pressure[cells[i - 1]] += alpha * backward[i] / root[i];
                residual[i] -= alpha * image[i];
                next += residual[i] * residual[i];
                double unscaled = root[i] * (residual[i] - west[i] * residual[i - 1] - south[i] * residual[below[i]]);
                left += unscaled * unscaled;
            }
            beta = next / rho;
            rho = next;
        }
    }

    /** The equations of some cells, row by row. */
    private void gather(int[] cells, double[] extra) {
        int n = cells.length;
        if (west.length < n + 2) {
            enlarge(n + 2 + n / 2);
        }
        for (int i = 1; i <= n; i++) {
            row[cells[i - 1]] = i;
        }
        for (int i = 1; i <= n; i++) {
            int c = cells[i - 1];
            above[i] = row[c + columns];
            below[i] = row[c - columns];
            west[i] = row[c - 1] > 0 ? east[c - 1] : 0;
            south[i] = below[i] > 0 ? north[c - columns] : 0;
            double toEast = row[c + 1] > 0 ? east[c] : 0;
            double toNorth = above[i] > 0 ? north[c] : 0;
            diagonal[i] = extra[c] + west[i] + south[i] + toEast + toNorth;
        }
        west[n + 1] = 0;
        backward[n + 1] = 0;
    }

    private void enlarge(int rows) {
        above = new int[rows];
        below = new int[rows];
        west = new double[rows];
        south = new double[rows];
        diagonal = new double[rows];
        root = new double[rows];
        residual = new double[rows];
        direction = new double[rows];
        backward = new double[rows];
        forward = new double[rows];
        image = new double[rows];
    }

    /** A row of the matrix times the pressures. */
    private double product(int c, int i, double[] pressure) {
        double sum = diagonal[i] * pressure[c];
        sum -= west[i] * pressure[c - 1] + south[i] * pressure[c - columns];
        sum -= row[c + 1] > 0 ? east[c] * pressure[c + 1] : 0;
        sum -= above[i] > 0 ? north[c] * pressure[c + columns] : 0;
        return sum;
    }

    /** Makes the factor and scales the matrix by it: to the left and below, and on its diagonal what is more than 2. */
    private void factor(int n) {
        for (int i = 1; i <= n; i++) {
            int b = below[i];
            double d = diagonal[i];
            // what the rows before have no place for is kept on their diagonal
            d -= west[i] > 0 ? west[i] * (west[i] + MODIFIED * south[above[i - 1]]) / (root[i - 1] * root[i - 1]) : 0;
            d -= b > 0 ? south[i] * (south[i] + MODIFIED * west[b + 1]) / (root[b] * root[b]) : 0;
            root[i] = Math.sqrt(Math.max(d, 1e-3 * diagonal[i])); // positive where rounding eats it up
        }
        for (int i = 1; i <= n; i++) {
            west[i] = i > 1 ? west[i] / (root[i] * root[i - 1]) : 0;
            south[i] = below[i] > 0 ? south[i] / (root[i] * root[below[i]]) : 0;
            diagonal[i] = diagonal[i] / (root[i] * root[i]) - 2;
        }
    }

    /** The residual as the scaled equations have it; the square of its norm. */
    private double scaled(int n) {
        double sum = 0;
        for (int i = 1; i <= n; i++) {
            residual[i] = residual[i] / root[i] + west[i] * residual[i - 1] + south[i] * residual[below[i]];
            sum += residual[i] * residual[i];
        }
        return sum;
    }

    /** The next direction and its image; the product of both. */
    private double advance(int n, double beta) {
        for (int i = n; i > 0; i--) {
            direction[i] = residual[i] + beta * direction[i];
            int a = above[i];
            backward[i] = direction[i] + west[i + 1] * backward[i + 1] + south[a] * backward[a];
        }
        double product = 0;
        double before = 0;
        for (int i = 1; i <= n; i++) {
            int b = below[i];
            before = direction[i] + diagonal[i] * backward[i] + west[i] * before + south[i] * forward[b];
            forward[i] = before;
            image[i] = backward[i] + before;
            product += direction[i] * image[i];
        }
        return product;
    }

    /** All faces closed. */
    static PressureField closed(int rows, int columns) {
        return new PressureField(columns, new double[rows * columns], new double[rows * columns]);
    }
}
