package corewright.bench;

import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A sandwich panel as three-dimensional solids: bricks of twenty nodes with two by two by two integration points on a
 * structured grid, two layers an outer and inner skin's and the core's depth as given. Independent of the panel elements
 * but for the sparse solver. Source of the element: O. C. Zienkiewicz and R. L. Taylor, The Finite Element Method (1989),
 * ch. 7 (serendipity) and 8.
 */
final class SolidPanel {
    /** Corners, then mid-edges, of the brick in natural coordinates. */
    private static final int[][] NODES = {
        {-1, -1, -1}, {1, -1, -1}, {1, 1, -1}, {-1, 1, -1}, {-1, -1, 1}, {1, -1, 1}, {1, 1, 1}, {-1, 1, 1},
        {0, -1, -1}, {1, 0, -1}, {0, 1, -1}, {-1, 0, -1}, {0, -1, 1}, {1, 0, 1}, {0, 1, 1}, {-1, 0, 1},
        {-1, -1, 0}, {1, -1, 0}, {1, 1, 0}, {-1, 1, 0}
    };

    /** What fills a layer of a cell; empty for nothing. */
    interface Filling {
        double[] at(double x, double y, int layer);
    }

    /** Whether a displacement (0 to 2) of a node is held. */
    interface Held {
        boolean at(double x, double y, double z, int component);
    }

    private final double[] gridX;
    private final double[] gridY;
    private final double[] z;
    private final Filling filling;
    private final UnaryOperator<double[]> place;
    private final int wide;
    private final int columns;

    /** Unknown of each column's node and component, within the column; -1 where held or empty. */
    private final int[][] unknown;

    private final BlockMatrix matrix;
    private final Cholesky factor;

    /**
     * @param z depths between layers, from the outer face inward
     * @param place moves a place of the grid, for curved rims
     */
    SolidPanel(double[] gridX, double[] gridY, double[] z, Filling filling, Held held, UnaryOperator<double[]> place) {
        this.gridX = gridX;
        this.gridY = gridY;
        this.z = z;
        this.filling = filling;
        this.place = place;
        wide = 2 * gridX.length - 1;
        columns = wide * (2 * gridY.length - 1);
        unknown = new int[columns][3 * (2 * z.length - 1)];
        int[] sizes = number(held);
        int[][] cliques = new int[(gridX.length - 1) * (gridY.length - 1)][];
        for (int c = 0; c < cliques.length; c++) {
            cliques[c] = columnsOf(c);
        }
        matrix = new BlockMatrix(sizes, cliques);
        for (int c = 0; c < cliques.length; c++) {
            addCell(c);
        }
        double[] px = new double[columns];
        double[] py = new double[columns];
        for (int k = 0; k < columns; k++) {
            px[k] = k % wide;
            py[k] = k / wide;
        }
        factor = Cholesky.factor(matrix, px, py);
    }

    int unknowns() {
        return matrix.size();
    }

    private double along(double[] grid, int half) {
        return half % 2 == 0 ? grid[half / 2] : (grid[half / 2] + grid[half / 2 + 1]) / 2;
    }

    private double[] spot(int column) {
        return new double[] {along(gridX, column % wide), along(gridY, column / wide)};
    }

    private int[] columnsOf(int cell) {
        int i = 2 * (cell % (gridX.length - 1));
        int j = 2 * (cell / (gridX.length - 1));
        int v = j * wide + i;
        return new int[] {v, v + 1, v + 2, v + wide, v + wide + 2, v + 2 * wide, v + 2 * wide + 1, v + 2 * wide + 2};
    }

    private double[] filling(int cell, int layer) {
        int i = cell % (gridX.length - 1);
        int j = cell / (gridX.length - 1);
        return filling.at((gridX[i] + gridX[i + 1]) / 2, (gridY[j] + gridY[j + 1]) / 2, layer);
    }

    private int[] number(Held held) {
        for (int[] column : unknown) {
            Arrays.fill(column, -1);
        }
        for (int c = 0; c < (gridX.length - 1) * (gridY.length - 1); c++) {
            for (int layer = 0; layer + 1 < z.length; layer++) {
                if (filling(c, layer).length > 0) {
                    for (int a = 0; a < 20; a++) {
                        for (int k = 0; k < 3; k++) {
                            unknown[column(c, a)][3 * level(layer, a) + k] = 0;
                        }
                    }
                }
            }
        }
        int[] sizes = new int[columns];
        for (int v = 0; v < columns; v++) {
            double[] p = spot(v);
            for (int d = 0; d < unknown[v].length; d++) {
                if (unknown[v][d] == 0) {
                    unknown[v][d] = held.at(p[0], p[1], along(z, d / 3), d % 3) ? -1 : sizes[v]++;
                }
            }
        }
        return sizes;
    }

    private int column(int cell, int node) {
        int i = 2 * (cell % (gridX.length - 1)) + 1 + NODES[node][0];
        int j = 2 * (cell / (gridX.length - 1)) + 1 + NODES[node][1];
        return j * wide + i;
    }

    private static int level(int layer, int node) {
        return 2 * layer + 1 + NODES[node][2];
    }

    /** Adds a stack of bricks: all blocks between its eight columns. */
    private void addCell(int c) {
        int[] own = columnsOf(c);
        double[][][] blocks = new double[8][8][];
        for (int a = 0; a < 8; a++) {
            for (int b = 0; b < 8; b++) {
                blocks[a][b] = new double[matrix.size(own[a]) * matrix.size(own[b])];
            }
        }
        for (int layer = 0; layer + 1 < z.length; layer++) {
            double[] d = filling(c, layer);
            if (d.length > 0) {
                scatter(c, layer, brick(corners(c, layer), d), own, blocks);
            }
        }
        for (int a = 0; a < 8; a++) {
            for (int b = 0; b < 8; b++) {
                matrix.add(own[a], own[b], blocks[a][b]);
            }
        }
    }

    private void scatter(int c, int layer, double[][] k, int[] own, double[][][] blocks) {
        for (int i = 0; i < 60; i++) {
            int ci = column(c, i / 3);
            int ui = unknown[ci][3 * level(layer, i / 3) + i % 3];
            int a = Arrays.binarySearch(own, ci);
            for (int j = 0; ui >= 0 && j < 60; j++) {
                int cj = column(c, j / 3);
                int uj = unknown[cj][3 * level(layer, j / 3) + j % 3];
                if (uj >= 0) {
                    blocks[a][Arrays.binarySearch(own, cj)][ui * matrix.size(cj) + uj] += k[i][j];
                }
            }
        }
    }

    private double[][] corners(int c, int layer) {
        double[][] x = new double[20][];
        for (int a = 0; a < 20; a++) {
            double[] p = place.apply(spot(column(c, a)));
            x[a] = new double[] {p[0], p[1], along(z, level(layer, a))};
        }
        return x;
    }

    /** Stiffness of a brick; d: the six moduli c11 c12 c13 c33 c44 c66 of a material alike along x and y. */
    private static double[][] brick(double[][] x, double[] d) {
        double g = 1 / Math.sqrt(3);
        double[][] k = new double[60][60];
        for (int p = 0; p < 8; p++) {
            double[][] n = slopes((p & 1) == 0 ? -g : g, (p & 2) == 0 ? -g : g, (p & 4) == 0 ? -g : g);
            double det = toSpace(n, x);
            double[][] b = new double[6][60];
            for (int a = 0; a < 20; a++) {
                b[0][3 * a] = b[3][3 * a + 1] = b[5][3 * a + 2] = n[a][0];
                b[1][3 * a + 1] = b[3][3 * a] = b[4][3 * a + 2] = n[a][1];
                b[2][3 * a + 2] = b[4][3 * a + 1] = b[5][3 * a] = n[a][2];
            }
            double[][] s = new double[6][60];
            for (int i = 0; i < 60; i++) {
                s[0][i] = d[0] * b[0][i] + d[1] * b[1][i] + d[2] * b[2][i];
                s[1][i] = d[1] * b[0][i] + d[0] * b[1][i] + d[2] * b[2][i];
                s[2][i] = d[2] * (b[0][i] + b[1][i]) + d[3] * b[2][i];
                s[3][i] = d[5] * b[3][i];
                s[4][i] = d[4] * b[4][i];
                s[5][i] = d[4] * b[5][i];
            }
            for (int i = 0; i < 60; i++) {
                for (int q = 0; q < 6; q++) {
                    double left = det * b[q][i];
                    for (int j = 0; left != 0 && j < 60; j++) {
                        k[i][j] += left * s[q][j];
                    }
                }
            }
        }
        return k;
    }

    /** Derivatives of the twenty shape functions to the natural coordinates. */
    private static double[][] slopes(double r, double s, double t) {
        double[] at = {r, s, t};
        double[][] n = new double[20][3];
        for (int a = 0; a < 20; a++) {
            for (int k = 0; k < 3; k++) {
                double factor = a < 8 ? 0.125 : 0.25;
                double sum = -2;
                for (int m = 0; m < 3; m++) {
                    sum += at[m] * NODES[a][m];
                    if (m != k) {
                        factor *= NODES[a][m] == 0 ? 1 - at[m] * at[m] : 1 + at[m] * NODES[a][m];
                    }
                }
                double own = 1 + at[k] * NODES[a][k];
                if (a < 8) {
                    n[a][k] = factor * NODES[a][k] * (sum + own);
                } else {
                    n[a][k] = factor * (NODES[a][k] == 0 ? -2 * at[k] : NODES[a][k]);
                }
            }
        }
        return n;
    }

    /** Turns natural into space derivatives in place; gives the volume factor. */
    private static double toSpace(double[][] n, double[][] x) {
        double[][] j = new double[3][3];
        for (int a = 0; a < 20; a++) {
            for (int p = 0; p < 3; p++) {
                for (int q = 0; q < 3; q++) {
                    j[p][q] += n[a][p] * x[a][q];
                }
            }
        }
        double[][] c = new double[3][3];
        for (int p = 0; p < 3; p++) {
            for (int q = 0; q < 3; q++) {
                int p1 = (p + 1) % 3, p2 = (p + 2) % 3, q1 = (q + 1) % 3, q2 = (q + 2) % 3;
                c[p][q] = j[p1][q1] * j[p2][q2] - j[p1][q2] * j[p2][q1];
            }
        }
        double det = j[0][0] * c[0][0] + j[0][1] * c[0][1] + j[0][2] * c[0][2];
        for (double[] row : n) {
            double[] d = row.clone();
            for (int q = 0; q < 3; q++) {
                row[q] = (c[0][q] * d[0] + c[1][q] * d[1] + c[2][q] * d[2]) / det;
            }
        }
        return det;
    }

    /** Solution under a pressure in MPa on a rectangle of the outer face that follows grid lines. */
    double[] press(double x0, double x1, double y0, double y1, double pressure) {
        double[] b = new double[matrix.size()];
        for (int c = 0; c < (gridX.length - 1) * (gridY.length - 1); c++) {
            int i = c % (gridX.length - 1);
            int j = c / (gridX.length - 1);
            double mx = (gridX[i] + gridX[i + 1]) / 2;
            double my = (gridY[j] + gridY[j + 1]) / 2;
            if (mx > x0 && mx < x1 && my > y0 && my < y1) {
                double[][] p = corners(c, 0);
                double area =
                        ((p[2][0] - p[0][0]) * (p[3][1] - p[1][1]) - (p[3][0] - p[1][0]) * (p[2][1] - p[0][1])) / 2;
                for (int a : new int[] {0, 1, 2, 3, 8, 9, 10, 11}) {
                    int v = column(c, a);
                    if (unknown[v][2] >= 0) {
                        b[matrix.first(v) + unknown[v][2]] += pressure * area * (a < 8 ? -1 / 12.0 : 1 / 3.0);
                    }
                }
            }
        }
        return factor.solveRefined(matrix, b);
    }

    /** Deflection at a grid place (unmoved) of the middle of the outer and of the inner skin. */
    double[] deflections(double[] solution, double x, double y) {
        int i = 2 * Arrays.binarySearch(gridX, x);
        int v = 2 * Arrays.binarySearch(gridY, y) * wide + i;
        double[] w = new double[2];
        int k = 0;
        for (int level : List.of(1, 2 * z.length - 3)) {
            w[k++] = solution[matrix.first(v) + unknown[v][3 * level + 2]];
        }
        return w;
    }
}
