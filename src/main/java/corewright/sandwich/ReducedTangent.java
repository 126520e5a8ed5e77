package corewright.sandwich;

import corewright.linear.Dense;
import java.util.Arrays;

/** The tangent of a {@link ReducedArea} at a shape, in its deflections. */
final class ReducedTangent {
    private final ReducedArea area;
    private final double[] slope;
    private final double[] force;
    private final boolean[] meeting;

    /**
     * @param slope of each skin's cell, by x and by y
     * @param force membrane forces of each skin's cell, three each
     * @param meeting which of the nodes that may meet do
     */
    ReducedTangent(ReducedArea area, double[] slope, double[] force, boolean[] meeting) {
        this.area = area;
        this.slope = slope;
        this.force = force;
        this.meeting = meeting;
    }

    /**
     * {@code K + (L + J'M/2) J + its mirror image + what membrane forces add}, J the growth of q by w; upper triangle.
     *
     * @param stiffeningOnly without the pull that pushes together
     */
    double[][] matrix(boolean stiffeningOnly) {
        int n = area.bend.length;
        double[][] part = new double[n][]; // (L + J'M/2) J
        for (int i = 0; i < n; i++) {
            part[i] = timesGrowth(halfway(i));
        }
        double[][] k = new double[n][];
        for (int i = 0; i < n; i++) {
            k[i] = area.bend[i].clone();
            for (int j = i; j < n; j++) {
                k[i][j] += part[i][j] + part[j][i];
            }
        }
        for (int t = 0; t < area.corner.length; t++) {
            double[] own = Arrays.copyOfRange(force, 3 * t, 3 * t + 3);
            addForces(k, t, stiffeningOnly ? Karman.pullOnly(own) : own);
        }
        for (int m = 0; m < area.meetingOuter.length; m++) {
            if (meeting[m]) {
                addSpring(k, area.meetingOuter[m], area.meetingInner[m], area.large.spring[m]);
            }
        }
        return k;
    }

    /** Row i of {@code L + J'M/2}. */
    private double[] halfway(int i) {
        int[] at = area.cornersOf[i];
        double[][] rows = new double[3 * at.length / 2][];
        double[] factor = new double[rows.length];
        for (int c = 0; c < at.length; c += 2) {
            Karman cell = area.large.karman[at[c] / 2];
            double nx = cell.nx[at[c + 1]] / 2;
            double ny = cell.ny[at[c + 1]] / 2;
            double wx = slope[2 * at[c]];
            double wy = slope[2 * at[c] + 1];
            double[] grown = {wx * nx, wy * ny, wx * ny + wy * nx};
            for (int e = 0; e < 3; e++) {
                rows[3 * c / 2 + e] = area.stretch[3 * at[c] + e];
                factor[3 * c / 2 + e] = -grown[e];
            }
        }
        double[] row = area.couple[i].clone();
        Dense.subtract(row, rows, factor, 0, 0);
        return row;
    }

    /** A row times J. */
    private double[] timesGrowth(double[] row) {
        double[] product = new double[area.bend.length];
        for (int t = 0; t < area.corner.length; t++) {
            Karman cell = area.large.karman[t / 2];
            double wx = slope[2 * t];
            double wy = slope[2 * t + 1];
            double byX = row[3 * t] * wx + row[3 * t + 2] * wy;
            double byY = row[3 * t + 1] * wy + row[3 * t + 2] * wx;
            int[] corner = area.corner[t];
            for (int a = 0; a < corner.length; a++) {
                if (corner[a] >= 0) {
                    product[corner[a]] += byX * cell.nx[a] + byY * cell.ny[a];
                }
            }
        }
        return product;
    }

    private void addForces(double[][] k, int t, double[] n) {
        Karman cell = area.large.karman[t / 2];
        int[] corner = area.corner[t];
        for (int a = 0; a < corner.length; a++) {
            double gx = n[0] * cell.nx[a] + n[2] * cell.ny[a];
            double gy = n[2] * cell.nx[a] + n[1] * cell.ny[a];
            for (int b = 0; b < corner.length; b++) {
                if (corner[a] >= 0 && corner[b] >= 0) {
                    k[corner[a]][corner[b]] += gx * cell.nx[b] + gy * cell.ny[b];
                }
            }
        }
    }

    private static void addSpring(double[][] k, int outer, int inner, double size) {
        if (outer >= 0) {
            k[outer][outer] += size;
        }
        if (inner >= 0) {
            k[inner][inner] += size;
        }
        if (outer >= 0 && inner >= 0) {
            k[outer][inner] -= size;
            k[inner][outer] -= size;
        }
    }
}
