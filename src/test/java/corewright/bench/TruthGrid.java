package corewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/** An ESRI ASCII grid: first row at the largest y, -9999 outside the deck. */
public final class TruthGrid {
    private static final double OUTSIDE = -9999;

    private final double x0;
    private final double y0;
    public final double cell;
    private final int rows;
    private final int columns;
    private final double[] values;

    private TruthGrid(double x0, double y0, double cell, int rows, int columns, double[] values) {
        this.x0 = x0;
        this.y0 = y0;
        this.cell = cell;
        this.rows = rows;
        this.columns = columns;
        this.values = values;
    }

    static TruthGrid read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        int columns = (int) header(lines, 0, "ncols");
        int rows = (int) header(lines, 1, "nrows");
        double[] values = new double[rows * columns];
        for (int r = 0; r < rows; r++) {
            String[] cells = lines.get(6 + r).trim().split("\\s+");
            for (int c = 0; c < columns; c++) {
                values[r * columns + c] = Double.parseDouble(cells[c]);
            }
        }
        double cell = header(lines, 4, "cellsize");
        return new TruthGrid(header(lines, 2, "xllcorner"), header(lines, 3, "yllcorner"), cell, rows, columns, values);
    }

    /** Over a deck of the given extent from the origin, values by place; NaN stands for outside the deck. */
    static TruthGrid over(double lengthMm, double widthMm, double cell, DoubleBinaryOperator value) {
        int columns = (int) Math.ceil(lengthMm / cell);
        int rows = (int) Math.ceil(widthMm / cell);
        TruthGrid grid = new TruthGrid(0, 0, cell, rows, columns, new double[rows * columns]);
        for (int i = 0; i < grid.values.length; i++) {
            double v = value.applyAsDouble(grid.x(i), grid.y(i));
            grid.values[i] = Double.isNaN(v) ? OUTSIDE : v;
        }
        return grid;
    }

    private static double header(List<String> lines, int line, String key) throws IOException {
        String[] words = lines.get(line).trim().split("\\s+");
        if (!words[0].equals(key)) {
            throw new IOException("line " + (line + 1) + ": expected " + key + ", found " + words[0]);
        }
        return Double.parseDouble(words[1]);
    }

    public int size() {
        return values.length;
    }

    public boolean onDeck(int i) {
        return values[i] != OUTSIDE;
    }

    public double at(int i) {
        return values[i];
    }

    public double x(int i) {
        return x0 + (i % columns + 0.5) * cell;
    }

    public double y(int i) {
        return y0 + (rows - i / columns - 0.5) * cell;
    }
}
