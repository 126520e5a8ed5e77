package corewright.sandwich;

/**
 * Strains of a cell as rows that multiply its displacements. A surface (a skin, or the surface inside the core) has five
 * at each corner: {@code u v w bx by}, in this order, corner after corner. Inside a surface's thickness {@code u(z') = u +
 * z' b}; a thin skin has {@code b = -grad w} along its edges (discrete Kirchhoff).
 *
 * <p>Along an edge from i to j with vector e, length L, the deflection is the cubic
 *
 * <pre>
 *   w(t) = linear + (1 - t²)(c1 + c2 t),   -1 ≤ t ≤ 1
 *   c1 = -(bi - bj)·e/8,   c2 = (wj - wi)/4 + (bi + bj)·e/8
 * </pre>
 *
 * <p>Sources: J.-L. Batoz and M. Ben Tahar, Evaluation of a new quadrilateral thin plate bending element, Int. J. Numer.
 * Meth. Engng 18 (1982), for the bending; K.-J. Bathe and E. N. Dvorkin, ibid. 21 (1985), for tying shear to the edges; the
 * cubic in the core's shear and normal strain is ours, so that a loose skin is clamped where the core begins.
 */
final class CellRows {
    static final int PER_SURFACE = 5;
    private static final int U = 0;
    private static final int V = 1;
    private static final int W = 2;
    private static final int BX = 3;
    private static final int BY = 4;

    private final CellShape cell;
    private final int length;

    CellRows(CellShape cell) {
        this.cell = cell;
        this.length = PER_SURFACE * cell.n;
    }

    /** Strains {@code εx, εy, γxy} of the surface itself. */
    double[][] membrane(double r, double s) {
        double[][] slope = cell.cornerSlopes(r, s);
        CellShape.toPlane(cell.jacobian(r, s), slope[0], slope[1]);
        double[][] rows = new double[3][length];
        for (int a = 0; a < cell.n; a++) {
            gradient(rows, a * PER_SURFACE + U, a * PER_SURFACE + V, slope[0][a], slope[1][a]);
        }
        return rows;
    }

    /** {@code bx,x  by,y  bx,y + by,x}: strain per unit of z'. */
    double[][] curvature(double r, double s) {
        double[] j = cell.jacobian(r, s);
        double[][] slope = cell.cornerSlopes(r, s);
        double[][] bubble = cell.bubbleSlopes(r, s);
        CellShape.toPlane(j, slope[0], slope[1]);
        CellShape.toPlane(j, bubble[0], bubble[1]);
        double[][] rows = new double[3][length];
        for (int a = 0; a < cell.n; a++) {
            gradient(rows, a * PER_SURFACE + BX, a * PER_SURFACE + BY, slope[0][a], slope[1][a]);
            double[] bend = edgeBend(a);
            double ex = cell.ex(a);
            double ey = cell.ey(a);
            for (int k = 0; k < length; k++) {
                rows[0][k] += bubble[0][a] * ex * bend[k];
                rows[1][k] += bubble[1][a] * ey * bend[k];
                rows[2][k] += (bubble[1][a] * ex + bubble[0][a] * ey) * bend[k];
            }
        }
        return rows;
    }

    /** Strains of a vector field whose components stand at two places of the row. */
    private static void gradient(double[][] rows, int first, int second, double byX, double byY) {
        rows[0][first] += byX;
        rows[1][second] += byY;
        rows[2][first] += byY;
        rows[2][second] += byX;
    }

    /** What the mid-side rotation exceeds the mean of the corners' by, divided by e: -3/2 ((wj - wi) + (bi + bj)·e/2)/L². */
    private double[] edgeBend(int edge) {
        double ex = cell.ex(edge);
        double ey = cell.ey(edge);
        double factor = -1.5 / (ex * ex + ey * ey);
        double[] row = new double[length];
        addDifference(row, edge, factor);
        addSum(row, edge, factor / 2);
        return row;
    }

    /** Deflection inside the cell: the edges' cubics blended linearly across. */
    double[] deflection(double r, double s) {
        double[] shape = cell.corner(r, s);
        double[] bubble = cell.bubble(r, s);
        double[] row = new double[length];
        for (int a = 0; a < cell.n; a++) {
            double t = cell.along(a, r, s);
            row[a * PER_SURFACE + W] += shape[a];
            addC1(row, a, bubble[a]);
            addC2(row, a, bubble[a] * t);
        }
        return row;
    }

    /** Slopes {@code w,x  w,y} at (r, s) of the deflection between corners, without the edges' cubics. */
    double[][] slope(double r, double s) {
        double[][] slope = cell.cornerSlopes(r, s);
        CellShape.toPlane(cell.jacobian(r, s), slope[0], slope[1]);
        double[][] rows = new double[2][length];
        for (int a = 0; a < cell.n; a++) {
            rows[0][a * PER_SURFACE + W] = slope[0][a];
            rows[1][a * PER_SURFACE + W] = slope[1][a];
        }
        return rows;
    }

    /**
     * What one surface adds to the core's shear slip {@code u_B - u_A + hA grad wA + hB grad wB}, components x and y.
     *
     * @param sign 1 for the inner surface B, -1 for the outer surface A
     * @param arm h, from the surface's middle to the core layer's middle
     */
    double[][] slip(double r, double s, int sign, double arm) {
        double[][] weight = edgeWeights(r, s);
        double[][] rows = new double[2][length];
        for (int edge = 0; edge < cell.n; edge++) {
            double[] row = edgeSlip(edge, cell.along(edge, r, s), sign, arm);
            for (int k = 0; k < length; k++) {
                rows[0][k] += weight[0][edge] * row[k];
                rows[1][k] += weight[1][edge] * row[k];
            }
        }
        CellShape.toPlane(cell.jacobian(r, s), rows[0], rows[1]);
        return rows;
    }

    /** How the slips along the edges make the covariant components to r and s. */
    private double[][] edgeWeights(double r, double s) {
        return cell.n == 4
                ? new double[][] {{(1 - s) / 4, 0, -(1 + s) / 4, 0}, {0, (1 + r) / 4, 0, -(1 - r) / 4}}
                : new double[][] {{1 - s, -s, -s}, {r, r, -(1 - r)}};
    }

    /** Slip along an edge times its length; triangles leave out c2, with which they come out too soft. */
    private double[] edgeSlip(int edge, double t, int sign, double arm) {
        double[] row = new double[length];
        int i = edge * PER_SURFACE;
        int j = cell.next(edge) * PER_SURFACE;
        row[i + U] += sign * (1 - t) / 2 * cell.ex(edge);
        row[i + V] += sign * (1 - t) / 2 * cell.ey(edge);
        row[j + U] += sign * (1 + t) / 2 * cell.ex(edge);
        row[j + V] += sign * (1 + t) / 2 * cell.ey(edge);
        addDifference(row, edge, arm);
        addC1(row, edge, -4 * arm * t);
        if (cell.n == 4) {
            addC2(row, edge, 2 * arm * (1 - 3 * t * t));
        }
        return row;
    }

    private void addDifference(double[] row, int edge, double factor) {
        row[edge * PER_SURFACE + W] -= factor;
        row[cell.next(edge) * PER_SURFACE + W] += factor;
    }

    private void addSum(double[] row, int edge, double factor) {
        addRotation(row, edge, edge, factor);
        addRotation(row, edge, cell.next(edge), factor);
    }

    private void addC1(double[] row, int edge, double factor) {
        addRotation(row, edge, edge, -factor / 8);
        addRotation(row, edge, cell.next(edge), factor / 8);
    }

    private void addC2(double[] row, int edge, double factor) {
        addDifference(row, edge, factor / 4);
        addSum(row, edge, factor / 8);
    }

    /** Adds factor times b·e of a corner. */
    private void addRotation(double[] row, int edge, int corner, double factor) {
        row[corner * PER_SURFACE + BX] += factor * cell.ex(edge);
        row[corner * PER_SURFACE + BY] += factor * cell.ey(edge);
    }
}
