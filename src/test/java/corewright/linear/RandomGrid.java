package corewright.linear;

import java.util.Random;

/** A grid of four-node cells with random positive definite cell matrices, seeded. */
public final class RandomGrid {
    public final BlockMatrix matrix;
    public final double[] x;
    public final double[] y;
    private final Random random;

    private RandomGrid(int nx, int ny, int[] sizes, Random random) {
        this.random = random;
        x = new double[nx * ny];
        y = new double[nx * ny];
        for (int v = 0; v < nx * ny; v++) {
            x[v] = v % nx;
            y[v] = v / nx;
        }
        int[][] cells = new int[(nx - 1) * (ny - 1)][];
        for (int c = 0; c < cells.length; c++) {
            int v = c / (nx - 1) * nx + c % (nx - 1);
            cells[c] = new int[] {v, v + 1, v + nx + 1, v + nx};
        }
        matrix = new BlockMatrix(sizes, cells);
        for (int[] cell : cells) {
            addCell(cell);
        }
    }

    /** Every node with the same number of unknowns. */
    public static RandomGrid regular(int nx, int ny, int unknowns, long seed) {
        int[] sizes = new int[nx * ny];
        java.util.Arrays.fill(sizes, unknowns);
        return new RandomGrid(nx, ny, sizes, new Random(seed));
    }

    /** Nodes with 0 to 7 unknowns on a grid of random shape. */
    static RandomGrid withUnequalNodes(long seed) {
        Random random = new Random(seed);
        int nx = 4 + random.nextInt(25);
        int ny = 4 + random.nextInt(25);
        int[] sizes = random.ints((long) nx * ny, 0, 8).toArray();
        sizes[0] = 3;
        return new RandomGrid(nx, ny, sizes, random);
    }

    public double[] vector() {
        return random.doubles(matrix.size(), -1, 1).toArray();
    }

    /** Adds M M' + I for a random M with as many rows as the cell has unknowns and eight columns. */
    private void addCell(int[] cell) {
        double[][] rows = new double[4][];
        for (int a = 0; a < 4; a++) {
            rows[a] = random.doubles(8L * matrix.size(cell[a]), -1, 1).toArray();
        }
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                matrix.add(cell[a], cell[b], block(rows[a], rows[b], a == b));
            }
        }
    }

    private static double[] block(double[] p, double[] q, boolean diagonal) {
        int n = p.length / 8;
        int m = q.length / 8;
        double[] block = new double[n * m];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < m; j++) {
                double sum = diagonal && i == j ? 1 : 0;
                for (int k = 0; k < 8; k++) {
                    sum += p[i * 8 + k] * q[j * 8 + k];
                }
                block[i * m + j] = sum;
            }
        }
        return block;
    }
}
