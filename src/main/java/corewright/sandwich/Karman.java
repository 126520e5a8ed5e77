package corewright.sandwich;

import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.PanelSpec;
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
 *
 * <p>Displacements of a cell are those of {@link CellStiffness} with the given number of surfaces.
 */
final class Karman {
    /** Newton's steps on a cubic: converged to rounding up to a hundredfold stiffening. */
    private static final int CUBIC = 30;

    private final int corners;
    private final int surfaces;
    final double area;

    /** Membrane stiffness D t of each skin. */
    final Elastic[] stretch;

    /** Derivatives of N to x and y at the centre. */
    final double[] nx;

    final double[] ny;

    Karman(PanelSpec panel, CellShape shape, int surfaces) {
        this.surfaces = surfaces;
        corners = shape.n;
        area = shape.area();
        double[] centre = shape.centre();
        double[][] slopes = shape.cornerSlopes(centre[0], centre[1]);
        CellShape.toPlane(shape.jacobian(centre[0], centre[1]), slopes[0], slopes[1]);
        nx = slopes[0];
        ny = slopes[1];
        stretch = new Elastic[] {
            panel.outer().elastic().times(panel.outer().thicknessMm()),
            panel.inner().elastic().times(panel.inner().thicknessMm())
        };
    }

    /** The w of {@code w + A w³ = m}: skins stiffen with the square of the deflection. */
    static double stiffened(double m, double a) {
        double w = m;
        for (int pass = 0; pass < CUBIC; pass++) {
            w -= (w + a * w * w * w - m) / (1 + 3 * a * w * w); // from above: falls monotonically
        }
        return w;
    }

    /** Extra strain of a skin. */
    static double[] strain(double wx, double wy) {
        return new double[] {wx * wx / 2, wy * wy / 2, wx * wy};
    }

    private int at(int corner, int surface) {
        return (corner * surfaces + surface) * CellRows.PER_SURFACE;
    }

    /** Energy beyond the linear one, N mm. */
    double energy(double[] q) {
        double sum = 0;
        for (int s = 0; s < 2; s++) {
            Skins skin = new Skins(s, q);
            double[] extra = strain(skin.wx, skin.wy);
            double[] linear = stretch[s].stress(skin.e);
            double[] more = stretch[s].stress(extra);
            for (int k = 0; k < 3; k++) {
                sum += area * extra[k] * (linear[k] + more[k] / 2);
            }
        }
        return sum;
    }

    /** Forces on the cell's displacements beyond the linear ones. */
    double[] forces(double[] q) {
        double[] f = new double[q.length];
        for (int s = 0; s < 2; s++) {
            Skins skin = new Skins(s, q);
            double[] pull = stretch[s].stress(strain(skin.wx, skin.wy));
            double[] n = skin.n();
            for (int a = 0; a < corners; a++) {
                int i = at(a, s);
                f[i] += area * (nx[a] * pull[0] + ny[a] * pull[2]);
                f[i + 1] += area * (ny[a] * pull[1] + nx[a] * pull[2]);
                f[i + 2] +=
                        area * (nx[a] * (skin.wx * n[0] + skin.wy * n[2]) + ny[a] * (skin.wy * n[1] + skin.wx * n[2]));
            }
        }
        return f;
    }

    /**
     * The tangent beyond the linear one, row-major.
     *
     * @param step by which the displacements were reached: its slopes' own strain is left out of the membrane forces, as in {@link
     *     ReducedFoot}
     * @param stiffeningOnly whether to leave out what compression in a skin takes from it
     */
    double[] tangent(double[] q, double[] step, boolean stiffeningOnly) {
        int size = q.length;
        double[] k = new double[size * size];
        for (int s = 0; s < 2; s++) {
            Skins skin = new Skins(s, q);
            Skins last = new Skins(s, step);
            double[] own = stretch[s].stress(strain(last.wx, last.wy));
            double[] n = skin.n();
            Arrays.setAll(n, i -> n[i] - own[i]);
            addTangent(k, size, s, skin, stiffeningOnly ? pullOnly(n) : n);
        }
        return k;
    }

    /** With h the growth of q by w, {@code h'Dt e + e'Dt h + h'Dt h + g'N g}. */
    private void addTangent(double[] k, int size, int s, Skins skin, double[] n) {
        for (int a = 0; a < corners; a++) {
            int i = at(a, s);
            double[] turn = {nx[a] * skin.wx, ny[a] * skin.wy, ny[a] * skin.wx + nx[a] * skin.wy};
            double[] stress = stretch[s].times(area).stress(turn);
            double gx = area * (n[0] * nx[a] + n[2] * ny[a]);
            double gy = area * (n[2] * nx[a] + n[1] * ny[a]);
            for (int b = 0; b < corners; b++) {
                int j = at(b, s);
                double u = stress[0] * nx[b] + stress[2] * ny[b];
                double v = stress[1] * ny[b] + stress[2] * nx[b];
                k[(i + 2) * size + j] += u;
                k[(i + 2) * size + j + 1] += v;
                k[j * size + i + 2] += u;
                k[(j + 1) * size + i + 2] += v;
                k[(i + 2) * size + j + 2] += skin.wx * u + skin.wy * v + gx * nx[b] + gy * ny[b];
            }
        }
    }

    /** A membrane force without its compressive principal part. */
    static double[] pullOnly(double[] n) {
        double mean = (n[0] + n[1]) / 2;
        double radius = Math.hypot((n[0] - n[1]) / 2, n[2]);
        double high = Math.max(0, mean + radius);
        double low = Math.max(0, mean - radius);
        double angle = Math.atan2(n[2], (n[0] - n[1]) / 2) / 2;
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[] {high * c * c + low * s * s, high * s * s + low * c * c, (high - low) * c * s};
    }

    /** One skin's linear strain and slopes. */
    private final class Skins {
        final double[] e = new double[3];
        final double wx;
        final double wy;
        private final int surface;

        Skins(int surface, double[] q) {
            this.surface = surface;
            double sx = 0;
            double sy = 0;
            for (int a = 0; a < corners; a++) {
                int i = at(a, surface);
                e[0] += nx[a] * q[i];
                e[1] += ny[a] * q[i + 1];
                e[2] += ny[a] * q[i] + nx[a] * q[i + 1];
                sx += nx[a] * q[i + 2];
                sy += ny[a] * q[i + 2];
            }
            wx = sx;
            wy = sy;
        }

        double[] n() {
            double[] total = strain(wx, wy);
            Arrays.setAll(total, k -> total[k] + e[k]);
            return stretch[surface].stress(total);
        }
    }
}
