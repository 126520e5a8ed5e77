package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;

/**
 * A coaming as a beam along an edge: it bends upright with the deck, {@code E t h³/12} about its own middle, and is stretched at
 * its middle by the outer skin's stretch and turn, {@code u,s - (to + h)/2 b,s}, with {@code E t h}. Twist and sideways
 * bending are left out. Source of the cubic bending element: O. C. Zienkiewicz and R. L. Taylor, The Finite Element Method
 * (1989), ch. 1.
 */
final class CoamingBeam {
    private final double bending;
    private final double stretch;
    private final double arm;

    CoamingBeam(PanelSpec panel, PanelSpec.Coaming coaming) {
        double h = coaming.heightMm();
        stretch = coaming.eMPa() * coaming.thicknessMm() * h;
        bending = stretch * h * h / 12;
        arm = (panel.outer().thicknessMm() + h) / 2;
    }

    /** Stiffness of an edge on the displacements of its ends, 2 x 10, row-major, in the order of {@link CellRows}. */
    double[] of(double dx, double dy) {
        int stride = 2 * CellRows.PER_SURFACE;
        double length = Math.hypot(dx, dy);
        double sx = dx / length;
        double sy = dy / length;
        double[] k = new double[4 * stride * stride];
        double[] pull = new double[2 * stride];
        for (int end = 0; end < 2; end++) {
            double sign = (end == 0 ? -1 : 1) / length;
            int at = end * stride;
            pull[at] = sign * sx;
            pull[at + 1] = sign * sy;
            pull[at + 3] = -sign * arm * sx;
            pull[at + 4] = -sign * arm * sy;
        }
        add(k, pull, stretch * length);
        for (double[] point : CellShape.gauss(2)) {
            add(k, curvature(point[0], length, sx, sy, stride), bending * point[1] * length / 2);
        }
        return k;
    }

    /** w,ss of the cubic through deflections and slopes -b·s of the outer skin's ends. */
    private static double[] curvature(double t, double length, double sx, double sy, int stride) {
        double[] row = new double[2 * stride];
        row[2] = 6 * t / (length * length);
        row[stride + 2] = -row[2];
        double first = (3 * t - 1) / length;
        double second = (3 * t + 1) / length;
        row[3] = -first * sx;
        row[4] = -first * sy;
        row[stride + 3] = -second * sx;
        row[stride + 4] = -second * sy;
        return row;
    }

    private static void add(double[] k, double[] row, double factor) {
        int n = row.length;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] += factor * row[i] * row[j];
            }
        }
    }
}
