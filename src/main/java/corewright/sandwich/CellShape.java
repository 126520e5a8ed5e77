package corewright.sandwich;

/**
 * A triangle or a quadrilateral and its shape functions. Everything in this package is built from two sets of them: N, one
 * a corner, linear or bilinear; and M, one an edge, the quadratic bubble that is 1 at mid-side and 0 on the other edges.
 * With N and M together the serendipity interpolation of eight (or six) nodes is hierarchical. Natural coordinates (r, s)
 * are -1 .. 1 for quadrilaterals; for triangles they are the second and third area coordinate.
 *
 * <p>Source: O. C. Zienkiewicz and R. L. Taylor, The Finite Element Method (1989), ch. 8.
 */
final class CellShape {
    private static final double[] R = {-1, 1, 1, -1};
    private static final double[] S = {-1, -1, 1, 1};
    private static final double[][] TWO = {{-1 / Math.sqrt(3), 1}, {1 / Math.sqrt(3), 1}};
    private static final double[][] THREE = {{-Math.sqrt(0.6), 5 / 9.0}, {0, 8 / 9.0}, {Math.sqrt(0.6), 5 / 9.0}};
    private static final double[][] FOUR = {
        {-0.861136311594053, 0.347854845137454},
        {-0.339981043584856, 0.652145154862546},
        {0.339981043584856, 0.652145154862546},
        {0.861136311594053, 0.347854845137454}
    };

    final int n;
    final double[] x;
    final double[] y;

    CellShape(double[] x, double[] y) {
        this.n = x.length;
        this.x = x;
        this.y = y;
    }

    int next(int corner) {
        return (corner + 1) % n;
    }

    /** Edge vector of the edge from a corner to the next. */
    double ex(int edge) {
        return x[next(edge)] - x[edge];
    }

    double ey(int edge) {
        return y[next(edge)] - y[edge];
    }

    /** Whether it is a rectangle with sides along x and y that begins at its lower left corner. */
    boolean upright() {
        return n == 4 && y[0] == y[1] && y[2] == y[3] && x[0] == x[3] && x[1] == x[2] && x[1] > x[0] && y[3] > y[0];
    }

    /** N at (r, s). */
    double[] corner(double r, double s) {
        if (n == 3) {
            return new double[] {1 - r - s, r, s};
        }
        double[] value = new double[4];
        for (int a = 0; a < 4; a++) {
            value[a] = (1 + R[a] * r) * (1 + S[a] * s) / 4;
        }
        return value;
    }

    /** Derivatives of N to r, then to s. */
    double[][] cornerSlopes(double r, double s) {
        if (n == 3) {
            return new double[][] {{-1, 1, 0}, {-1, 0, 1}};
        }
        double[][] slope = new double[2][4];
        for (int a = 0; a < 4; a++) {
            slope[0][a] = R[a] * (1 + S[a] * s) / 4;
            slope[1][a] = S[a] * (1 + R[a] * r) / 4;
        }
        return slope;
    }

    /** M at (r, s). */
    double[] bubble(double r, double s) {
        if (n == 3) {
            double t = 1 - r - s;
            return new double[] {4 * t * r, 4 * r * s, 4 * s * t};
        }
        return new double[] {
            (1 - r * r) * (1 - s) / 2, (1 - s * s) * (1 + r) / 2, (1 - r * r) * (1 + s) / 2, (1 - s * s) * (1 - r) / 2
        };
    }

    /** Derivatives of M to r, then to s. */
    double[][] bubbleSlopes(double r, double s) {
        if (n == 3) {
            double t = 1 - r - s;
            return new double[][] {{4 * (t - r), 4 * s, -4 * s}, {-4 * r, 4 * r, 4 * (t - s)}};
        }
        return new double[][] {
            {-r * (1 - s), (1 - s * s) / 2, -r * (1 + s), -(1 - s * s) / 2},
            {-(1 - r * r) / 2, -s * (1 + r), (1 - r * r) / 2, -s * (1 - r)}
        };
    }

    /** Where (r, s) lies along an edge's direction, -1 at its first corner, 1 at its second. */
    double along(int edge, double r, double s) {
        if (n == 3) {
            double[] area = corner(r, s);
            return area[next(edge)] - area[edge];
        }
        return switch (edge) {
            case 0 -> r;
            case 1 -> s;
            case 2 -> -r;
            default -> -s;
        };
    }

    /** {@code x,r  y,r  x,s  y,s} at (r, s). */
    double[] jacobian(double r, double s) {
        double[][] d = cornerSlopes(r, s);
        double[] j = new double[4];
        for (int a = 0; a < n; a++) {
            j[0] += d[0][a] * x[a];
            j[1] += d[0][a] * y[a];
            j[2] += d[1][a] * x[a];
            j[3] += d[1][a] * y[a];
        }
        return j;
    }

    static double determinant(double[] j) {
        return j[0] * j[3] - j[1] * j[2];
    }

    /** Turns natural derivatives (to r, to s) into derivatives to x and y, in place. */
    static void toPlane(double[] j, double[] byR, double[] byS) {
        double det = determinant(j);
        for (int k = 0; k < byR.length; k++) {
            double dr = byR[k];
            double ds = byS[k];
            byR[k] = (j[3] * dr - j[1] * ds) / det;
            byS[k] = (j[0] * ds - j[2] * dr) / det;
        }
    }

    /** Integration points {r, s, weight}; exact weights of the reference cell, without the Jacobian. */
    double[][] points(int perSide) {
        double[][] line = gauss(perSide);
        double[][] points = new double[perSide * perSide][];
        for (int i = 0; i < perSide; i++) {
            for (int k = 0; k < perSide; k++) {
                double r = line[i][0];
                double s = line[k][0];
                double w = line[i][1] * line[k][1];
                // triangles: the square collapsed onto one corner
                points[i * perSide + k] = n == 4
                        ? new double[] {r, s, w}
                        : new double[] {(1 + r) / 2, (1 + s) / 2 * (1 - r) / 2, w * (1 - r) / 8};
            }
        }
        return points;
    }

    /** The three points that integrate quadratics over a triangle; two by two points of a quadrilateral. */
    double[][] fewPoints() {
        double a = 1 / 6.0;
        return n == 4 ? points(2) : new double[][] {{a, a, a}, {4 * a, a, a}, {a, 4 * a, a}};
    }

    double[] centre() {
        return n == 4 ? new double[] {0, 0} : new double[] {1 / 3.0, 1 / 3.0};
    }

    double area() {
        double twice = 0;
        for (int a = 0; a < n; a++) {
            twice += x[a] * y[next(a)] - x[next(a)] * y[a];
        }
        return twice / 2;
    }

    /** Natural coordinates of a point, by Newton's method; may lie outside the cell. */
    double[] locate(double px, double py) {
        double[] at = centre();
        for (int pass = 0; pass < 12; pass++) {
            double[] shape = corner(at[0], at[1]);
            double dx = px;
            double dy = py;
            for (int a = 0; a < n; a++) {
                dx -= shape[a] * x[a];
                dy -= shape[a] * y[a];
            }
            double[] j = jacobian(at[0], at[1]);
            double det = determinant(j);
            double dr = (j[3] * dx - j[2] * dy) / det;
            double ds = (j[0] * dy - j[1] * dx) / det;
            at[0] += dr;
            at[1] += ds;
            if (Math.abs(dr) + Math.abs(ds) < 1e-13) {
                break;
            }
        }
        return at;
    }

    /** How far natural coordinates lie outside the cell, 0 if inside. */
    double outside(double[] at) {
        double worst = n == 4
                ? Math.max(Math.abs(at[0]), Math.abs(at[1])) - 1
                : Math.max(-Math.min(at[0], at[1]), at[0] + at[1] - 1);
        return Math.max(0, worst);
    }

    /** Gauss points on -1 .. 1 as {place, weight}. Source: M. Abramowitz and I. A. Stegun (1964), table 25.4. */
    static double[][] gauss(int points) {
        return switch (points) {
            case 2 -> TWO;
            case 3 -> THREE;
            case 4 -> FOUR;
            default -> throw new IllegalArgumentException("no rule of " + points + " points");
        };
    }
}
