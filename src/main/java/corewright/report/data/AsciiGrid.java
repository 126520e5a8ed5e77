package corewright.report.data;

import corewright.contour.Raster;
import corewright.report.page.Numbers;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A raster as an ESRI ASCII grid: the row at the largest y comes first, -9999 is outside. */
public final class AsciiGrid {
    private static final String OUTSIDE = "-9999";

    private AsciiGrid() {}

    public static void write(Raster raster, Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write("ncols " + raster.columns() + "\n");
            out.write("nrows " + raster.rows() + "\n");
            out.write("xllcorner " + Numbers.full(raster.x0()) + "\n");
            out.write("yllcorner " + Numbers.full(raster.y0()) + "\n");
            out.write("cellsize " + Numbers.full(raster.cell()) + "\n");
            out.write("NODATA_value " + OUTSIDE + "\n");
            for (int row = raster.rows() - 1; row >= 0; row--) {
                for (int column = 0; column < raster.columns(); column++) {
                    double value = raster.at(row, column);
                    out.write(Double.isNaN(value) ? OUTSIDE : Numbers.rounded(value, 6));
                    out.write(column + 1 < raster.columns() ? ' ' : '\n');
                }
            }
        }
    }
}
