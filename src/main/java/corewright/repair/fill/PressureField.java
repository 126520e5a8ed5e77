package corewright.repair.fill;

/**
 * Pressure between two plates: {@code div(h^3 / (12 mu) grad p)} on a raster, by finite volumes (Hele-Shaw 1898).
 *
 * <p>Conductances of the faces are held for a viscosity of 1 Pa s, so that pressures are in pascal, flows in cubic
 * millimetres a second. The equations of a set of cells are solved by conjugate gradients with an incomplete Cholesky
 * preconditioner in natural order, modified to keep row sums (Meijerink and van der Vorst, Math. Comp. 31 (1977) 148; Gustafsson): the set changes with every
 * step of the front and the last pressures are a good start, which a direct factor cannot use.
 */
final class PressureField {
    private static final int MOST_ITERATIONS = 2000;

    /** Of the fill left out, what is kept on the diagonal (I. Gustafsson, BIT 18 (1978) 142); all of it can break down. */
    private static final double MODIFIED = 0.97;

    final int columns;
    /** By flat index: conductance to the cell at + 1 and at + columns; 0 where closed. */
    final double[] east;

    final double[] north;

    private final boolean[] in;
    /** Of the pivots of the incomplete factor. */
    private final double[] inverse;

    private final double[] residual;
    private final double[] preconditioned;
    private final double[] direction;
    private final double[] image;

    PressureField(int columns, double[] east, double[] north) {
        this.columns = columns;
        this.east = east;
        this.north = north;
        int size = east.length;
        in = new boolean[size];
        inverse = new double[size];
        residual = new double[size];
        preconditioned = new double[size];
        direction = new double[size];
        image = new double[size];
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
        for (int c : cells) {
            in[c] = true;
        }
        factor(cells, extra);
        double norm = 0;
        for (int c : cells) {
            direction[c] = pressure[c];
        }
        multiply(cells, extra);
        double left = 0;
        for (int c : cells) {
            residual[c] = source[c] - image[c];
            norm += source[c] * source[c];
            left += residual[c] * residual[c];
        }
        double wanted = tolerance * tolerance * norm;
        double rho = 0;
        for (int i = 0; i < MOST_ITERATIONS && left > wanted; i++) {
            double next = precondition(cells);
            double beta = i == 0 ? 0 : next / rho;
            rho = next;
            for (int c : cells) {
                direction[c] = preconditioned[c] + beta * direction[c];
            }
            double alpha = rho / multiply(cells, extra);
            left = 0;
            for (int c : cells) {
                pressure[c] += alpha * direction[c];
                residual[c] -= alpha * image[c];
                left += residual[c] * residual[c];
            }
        }
        for (int c : cells) {
            in[c] = false;
        }
    }

    /** Image = A direction; the product of both. */
    private double multiply(int[] cells, double[] extra) {
        double product = 0;
        for (int c : cells) {
            double p = direction[c];
            double sum = extra[c] * p;
            sum += in[c + 1] ? east[c] * (p - direction[c + 1]) : 0;
            sum += in[c - 1] ? east[c - 1] * (p - direction[c - 1]) : 0;
            sum += in[c + columns] ? north[c] * (p - direction[c + columns]) : 0;
            sum += in[c - columns] ? north[c - columns] * (p - direction[c - columns]) : 0;
            image[c] = sum;
            product += p * sum;
        }
        return product;
    }

    private void factor(int[] cells, double[] extra) {
        for (int c : cells) {
            double d = extra[c];
            d += in[c + 1] ? east[c] : 0;
            d += in[c + columns] ? north[c] : 0;
            double whole = d;
            if (in[c - 1]) {
                whole += east[c - 1];
                d += east[c - 1] - east[c - 1] * inverse[c - 1] * (east[c - 1] + left(c - 1, north, columns));
            }
            if (in[c - columns]) {
                int s = c - columns;
                whole += north[s];
                d += north[s] - north[s] * inverse[s] * (north[s] + left(s, east, 1));
            }
            inverse[c] = 1 / Math.max(d, 1e-3 * whole); // keeps the preconditioner positive where rounding eats it up
        }
    }

    /** What of a cell's other face the factor has no place for and keeps on its diagonal. */
    private double left(int cell, double[] face, int step) {
        return in[cell + step] ? MODIFIED * face[cell] : 0;
    }

    /** Solves with the incomplete factor; the product with the residual. */
    private double precondition(int[] cells) {
        for (int c : cells) {
            double sum = residual[c];
            sum += in[c - 1] ? east[c - 1] * preconditioned[c - 1] : 0;
            sum += in[c - columns] ? north[c - columns] * preconditioned[c - columns] : 0;
            preconditioned[c] = sum * inverse[c];
        }
        double product = 0;
        for (int i = cells.length - 1; i >= 0; i--) {
            int c = cells[i];
            double sum = 0;
            sum += in[c + 1] ? east[c] * preconditioned[c + 1] : 0;
            sum += in[c + columns] ? north[c] * preconditioned[c + columns] : 0;
            preconditioned[c] += sum * inverse[c];
            product += preconditioned[c] * residual[c];
        }
        return product;
    }

    /** All faces closed. */
    static PressureField closed(int rows, int columns) {
        return new PressureField(columns, new double[rows * columns], new double[rows * columns]);
    }
}
