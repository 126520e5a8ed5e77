package corewright.contour;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Envelope;

/**
 * A grid of square cells with one value each. Immutable; row-major, row 0 at the smallest y; NaN is outside.
 *
 * <p>Cell (row, column) covers {@code [x0 + column * cell, x0 + (column + 1) * cell)} and likewise in y; its value stands
 * at its centre.
 */
public final class Raster {
    private final double x0;
    private final double y0;
    private final double cell;
    private final int rows;
    private final int columns;
    private final double[] values;

    /**
     * @param x0 left edge of column 0
     * @param y0 lower edge of row 0
     * @param cell side of a cell, in the unit of x0 and y0
     * @param values length rows x columns, row-major; copied
     */
    public Raster(double x0, double y0, double cell, int rows, int columns, double[] values) {
        if (rows < 1 || columns < 1 || values.length != rows * columns) {
            throw new IllegalArgumentException(
                    "raster of " + rows + " x " + columns + " cells got " + values.length + " values");
        }
        if (!(cell > 0) || !Double.isFinite(x0) || !Double.isFinite(y0)) {
            throw new IllegalArgumentException("raster needs a finite origin and a positive cell, got " + cell);
        }
        this.x0 = x0;
        this.y0 = y0;
        this.cell = cell;
        this.rows = rows;
        this.columns = columns;
        this.values = values.clone();
    }

    /** A raster of the same cells with other values. */
    public Raster with(double[] other) {
        return new Raster(x0, y0, cell, rows, columns, other);
    }

    /** Every value that is not NaN put through {@code function}. */
    public Raster map(DoubleUnaryOperator function) {
        double[] mapped = values.clone();
        for (int i = 0; i < mapped.length; i++) {
            if (!Double.isNaN(mapped[i])) {
                mapped[i] = function.applyAsDouble(mapped[i]);
            }
        }
        return with(mapped);
    }

    public double x0() {
        return x0;
    }

    public double y0() {
        return y0;
    }

    public double cell() {
        return cell;
    }

    public int rows() {
        return rows;
    }

    public int columns() {
        return columns;
    }

    public int size() {
        return values.length;
    }

    public double at(int row, int column) {
        return values[row * columns + column];
    }

    /** The value at a flat index, row-major. */
    public double at(int index) {
        return values[index];
    }

    /** A copy of all values, row-major. */
    public double[] values() {
        return values.clone();
    }

    public double centreX(int column) {
        return x0 + (column + 0.5) * cell;
    }

    public double centreY(int row) {
        return y0 + (row + 0.5) * cell;
    }

    /** The value of the cell that holds the place, NaN outside the raster. */
    public double cellAt(double x, double y) {
        int column = (int) Math.floor((x - x0) / cell);
        int row = (int) Math.floor((y - y0) / cell);
        return column < 0 || row < 0 || column >= columns || row >= rows ? Double.NaN : at(row, column);
    }

    /** What its cells cover. */
    Envelope extent() {
        return new Envelope(x0, x0 + columns * cell, y0, y0 + rows * cell);
    }

    /** Whether the other raster has the same cells. */
    public boolean sameCells(Raster other) {
        return x0 == other.x0 && y0 == other.y0 && cell == other.cell && rows == other.rows && columns == other.columns;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Raster other && sameCells(other) && Arrays.equals(values, other.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(values) + rows;
    }

    @Override
    public String toString() {
        return "Raster " + rows + " x " + columns + " cells of " + cell + " from (" + x0 + ", " + y0 + ")";
    }
}
