package corewright.sandwich;

import corewright.linear.Dense;
import java.util.Arrays;

/** The tangent of a {@link ReducedArea} at a shape, in its deflections. */
final class ReducedTangent {
    /** Numbers in a line of the processor's cache: so many rows are turned into columns together. */
    private static final int LINE = 8;

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
        double[][] growth = growth();
        double[][] half = new double[3 * growth.length][n]; // L' + MJ/2
        for (int from = 0; from < n; from += LINE) {
            double[][] rows = new double[Math.min(LINE, n - from)][];
            for (int i = 0; i < rows.length; i++) {
                rows[i] = area.couple[from + i].clone();
                addGrown(rows[i], from + i, growth, area.stretch, 0.5);
            }
            for (int r = 0; r < half.length; r++) {
                for (int i = 0; i < rows.length; i++) {
                    half[r][from + i] = rows[i][r];
                }
            }
        }
        double[][] part = new double[n][n]; // J' (L' + MJ/2)
        for (int i = 0; i < n; i++) {
            addGrown(part[i], i, growth, half, 1);
        }
        double[][] k = new double[n][];
        for (int i = 0; i < n; i++) {
            k[i] = area.bend[i].clone();
            for (int j = i; j < n; j++) {
                k[i][j] += part[i][j] + part[j][i];
            }
        }
        for (int t = 0; t < growth.length; t++) {
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

    /** Adds row i of J' times a matrix and a factor: the rows of the strains that this deflection makes grow. */
    private void addGrown(double[] to, int i, double[][] growth, double[][] matrix, double times) {
        int[] at = area.cornersOf[i];
        double[][] rows = new double[3 * at.length / 2][];
        double[] factor = new double[rows.length];
        for (int c = 0; c < at.length; c += 2) {
            for (int e = 0; e < 3; e++) {
                rows[3 * c / 2 + e] = matrix[3 * at[c] + e];
                factor[3 * c / 2 + e] = -times * growth[at[c]][3 * at[c + 1] + e];
            }
        }
        Dense.subtract(to, rows, factor, 0, 0);
    }

    /** Growth of each skin's three added strains in a cell by its corners' deflections. */
    private double[][] growth() {
        double[][] all = new double[area.corner.length][];
        for (int t = 0; t < all.length; t++) {
            Karman cell = area.large.karman[t / 2];
            double wx = slope[2 * t];
            double wy = slope[2 * t + 1];
            all[t] = new double[3 * area.corner[t].length];
            for (int a = 0; a < area.corner[t].length; a++) {
                all[t][3 * a] = wx * cell.nx[a];
                all[t][3 * a + 1] = wy * cell.ny[a];
                all[t][3 * a + 2] = wx * cell.ny[a] + wy * cell.nx[a];
            }
        }
        return all;
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
