package corewright.sandwich;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Von Karman's strain ({@link Karman}) in the skins of all bonded cells of a panel, on the panel's unknowns. Of each cell's outer, then
 * inner skin five rows give the linear membrane strain and the slopes {@code w,x w,y} at the centre.
 */
final class BondedSkins {
    private static final int ROWS = 5;

    /** The rows: of each the first of its entries, then the unknown and the factor of each entry. */
    private final int[] first;

    private final int[] unknown;
    private final double[] factor;

    private final Karman[] karman;

    BondedSkins(PanelModel model) {
        int[] cells = IntStream.range(0, model.mesh.cells.length)
                .filter(c -> model.zones.get(model.mesh.zone[c]).bonded())
                .toArray();
        karman = Arrays.stream(cells)
                .mapToObj(c -> new Karman(model.panel, model.mesh.shape(c), model.surfaces(c)))
                .toArray(Karman[]::new);
        Rows rows = new Rows(model, cells);
        first = rows.first;
        unknown = Arrays.copyOf(rows.unknown, rows.n);
        factor = Arrays.copyOf(rows.factor, rows.n);
    }

    boolean none() {
        return karman.length == 0;
    }

    /** Puts the rows together. */
    private final class Rows {
        private final PanelModel model;
        private final int[] first;
        private int[] unknown = new int[1024];
        private double[] factor = new double[1024];
        private int n;

        Rows(PanelModel model, int[] cells) {
            this.model = model;
            first = new int[2 * ROWS * cells.length + 1];
            int row = 0;
            for (int c = 0; c < cells.length; c++) {
                for (int skin = 0; skin < 2; skin++) {
                    int at = skin * CellRows.PER_SURFACE;
                    double[] nx = karman[c].nx;
                    double[] ny = karman[c].ny;
                    int[] corners = model.mesh.cells[cells[c]];
                    add(corners, at, nx);
                    first[++row] = n;
                    add(corners, at + 1, ny);
                    first[++row] = n;
                    add(corners, at, ny);
                    add(corners, at + 1, nx);
                    first[++row] = n;
                    add(corners, at + 2, nx);
                    first[++row] = n;
                    add(corners, at + 2, ny);
                    first[++row] = n;
                }
            }
        }

        /** Adds a displacement of each corner times a number. */
        private void add(int[] corners, int displacement, double[] times) {
            for (int a = 0; a < corners.length; a++) {
                double[] of = model.nodes.row(corners[a], displacement);
                for (int c = 0; c < of.length; c++) {
                    if (of[c] != 0) {
                        if (n == unknown.length) {
                            unknown = Arrays.copyOf(unknown, 2 * n);
                            factor = Arrays.copyOf(factor, 2 * n);
                        }
                        unknown[n] = model.matrix.first(corners[a]) + c;
                        factor[n++] = times[a] * of[c];
                    }
                }
            }
        }
    }

    /** Takes the forces in the plane by which the strain that slopes add stretches the skins from a right-hand side. */
    void subtractStretch(double[] x, double[] rightHandSide) {
        for (int t = 0; t < 2 * karman.length; t++) {
            int row = ROWS * t;
            double[] q = Karman.strain(times(row + 3, x), times(row + 4, x));
            double[] added = karman[t / 2].stretch[t % 2].stress(q);
            for (int k = 0; k < 3; k++) {
                subtract(row + k, karman[t / 2].area * added[k], rightHandSide);
            }
        }
    }

    /**
     * Takes the forces square to the plane of skins that are pulled from a right-hand side.
     *
     * @param x displacements that give the slopes
     * @param plane displacements that give the linear part of the membrane forces
     */
    void subtractPull(double[] x, double[] plane, double[] rightHandSide) {
        double[] e = new double[3];
        for (int t = 0; t < 2 * karman.length; t++) {
            int row = ROWS * t;
            double wx = times(row + 3, x);
            double wy = times(row + 4, x);
            double[] q = Karman.strain(wx, wy);
            for (int k = 0; k < 3; k++) {
                e[k] = times(row + k, plane) + q[k];
            }
            Karman cell = karman[t / 2];
            double[] n = cell.stretch[t % 2].stress(e);
            subtract(row + 3, cell.area * (wx * n[0] + wy * n[2]), rightHandSide);
            subtract(row + 4, cell.area * (wy * n[1] + wx * n[2]), rightHandSide);
        }
    }

    private double times(int row, double[] x) {
        double sum = 0;
        for (int k = first[row]; k < first[row + 1]; k++) {
            sum += factor[k] * x[unknown[k]];
        }
        return sum;
    }

    private void subtract(int row, double amount, double[] from) {
        for (int k = first[row]; k < first[row + 1]; k++) {
            from[unknown[k]] -= amount * factor[k];
        }
    }
}
