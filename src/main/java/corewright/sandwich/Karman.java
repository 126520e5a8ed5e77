package corewright.sandwich;

import java.util.Arrays;

/**
 * What moderately large slopes add to a cell: each skin's membrane strain grows by
 *
 * <pre>
 *   q = (w,x²/2   w,y²/2   w,x w,y)
 * </pre>
 *
 * <p>taken at the cell's centre with the deflection linear between corners. With e the linear strain there, D t the skin's
 * membrane stiffness and N = D t (e + q), the energy grows by {@code A (e'Dt q + q'Dt q/2)}; forces and tangent are its
 * derivatives. Source: T. von Karman (1910), as in S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells
 * (1959), ch. 13.
 */
final class Karman {
    private final PanelModel model;
    private final int cell;
    private final CellRows rows;
    private final double[] centre;
    private final double area;
    private final double[] q;

    /** @param x solution of the model */
    Karman(PanelModel model, int cell, double[] x) {
        this.model = model;
        this.cell = cell;
        CellShape shape = model.mesh.shape(cell);
        rows = new CellRows(shape);
        centre = shape.centre();
        area = shape.area();
        q = model.cellDisplacements(cell, x);
    }

    /** Extra strain of a skin. */
    static double[] strain(double wx, double wy) {
        return new double[] {wx * wx / 2, wy * wy / 2, wx * wy};
    }

    /** Forces on the cell's displacements beyond the linear ones. */
    double[] forces() {
        double[] f = new double[q.length];
        for (int s = 0; s < 2; s++) {
            Part part = new Part(s);
            double[] pull = part.stretch.stress(strain(part.wx, part.wy));
            for (int k = 0; k < 3; k++) {
                add(f, part.e[k], area * pull[k]);
                add(f, part.h[k], area * part.n[k]);
            }
        }
        return f;
    }

    /**
     * The tangent beyond the linear one, row-major.
     *
     * @param stiffeningOnly whether to leave out what compression in a skin takes from it
     */
    double[] tangent(boolean stiffeningOnly) {
        int size = q.length;
        double[] k = new double[size * size];
        for (int s = 0; s < 2; s++) {
            Part part = new Part(s);
            Elastic d = part.stretch.times(area);
            for (int i = 0; i < size; i++) {
                double[] he = d.stress(new double[] {part.h[0][i], part.h[1][i], part.h[2][i]});
                double[] all = d.stress(new double[] {
                    part.e[0][i] + part.h[0][i], part.e[1][i] + part.h[1][i], part.e[2][i] + part.h[2][i]
                });
                double[] n = stiffeningOnly ? pullOnly(part.n) : part.n;
                double gx = area * (n[0] * part.g[0][i] + n[2] * part.g[1][i]);
                double gy = area * (n[2] * part.g[0][i] + n[1] * part.g[1][i]);
                for (int j = 0; j < size; j++) {
                    double sum = gx * part.g[0][j] + gy * part.g[1][j];
                    for (int c = 0; c < 3; c++) {
                        sum += he[c] * part.e[c][j] + all[c] * part.h[c][j];
                    }
                    k[i * size + j] += sum;
                }
            }
        }
        return k;
    }

    private static void add(double[] to, double[] row, double factor) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * row[i];
        }
    }

    /** A membrane force without its compressive principal part. */
    private static double[] pullOnly(double[] n) {
        double mean = (n[0] + n[1]) / 2;
        double radius = Math.hypot((n[0] - n[1]) / 2, n[2]);
        double high = Math.max(0, mean + radius);
        double low = Math.max(0, mean - radius);
        double angle = Math.atan2(n[2], (n[0] - n[1]) / 2) / 2;
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[] {high * c * c + low * s * s, high * s * s + low * c * c, (high - low) * c * s};
    }

    /** One skin: rows of linear strain e and slope g, their mix h (how q grows), and N. */
    private final class Part {
        final Elastic stretch;
        final double[][] e;
        final double[][] g;
        final double[][] h = new double[3][];
        final double wx;
        final double wy;
        final double[] n;

        Part(int surface) {
            Skin skin = surface == CellStiffness.OUTER ? model.panel.outer() : model.panel.inner();
            stretch = skin.elastic().times(skin.thicknessMm());
            e = spread(rows.membrane(centre[0], centre[1]), surface);
            g = spread(rows.slope(centre[0], centre[1]), surface);
            wx = dot(g[0]);
            wy = dot(g[1]);
            h[0] = CellStiffness.sum(g[0], wx, g[1], 0);
            h[1] = CellStiffness.sum(g[0], 0, g[1], wy);
            h[2] = CellStiffness.sum(g[0], wy, g[1], wx);
            double[] total = strain(wx, wy);
            Arrays.setAll(total, k -> total[k] + dot(e[k]));
            n = stretch.stress(total);
        }

        private double[][] spread(double[][] list, int surface) {
            int surfaces = model.surfaces(cell);
            return Arrays.stream(list)
                    .map(row -> CellStiffness.spread(row, surface, surfaces))
                    .toArray(double[][]::new);
        }

        private double dot(double[] row) {
            double sum = 0;
            for (int i = 0; i < row.length; i++) {
                sum += row[i] * q[i];
            }
            return sum;
        }
    }
}
