package corewright.damage;

import corewright.contour.Raster;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** The cells every surface of a face stands on. */
final class Frame {
    private final Raster empty;

    private Frame(Raster empty) {
        this.empty = empty;
    }

    /** Whole cells over the outline's bounding box, with a cell to spare all round, on multiples of the cell. */
    static Frame over(Geometry outline, double cellMm) {
        Envelope box = outline.getEnvelopeInternal();
        double x0 = (Math.floor(box.getMinX() / cellMm) - 1) * cellMm;
        double y0 = (Math.floor(box.getMinY() / cellMm) - 1) * cellMm;
        int columns = (int) Math.ceil((box.getMaxX() - x0) / cellMm) + 1;
        int rows = (int) Math.ceil((box.getMaxY() - y0) / cellMm) + 1;
        double[] nothing = new double[rows * columns];
        Arrays.fill(nothing, Double.NaN);
        return new Frame(new Raster(x0, y0, cellMm, rows, columns, nothing));
    }

    /** A raster of NaN. */
    Raster empty() {
        return empty;
    }

    double cellMm() {
        return empty.cell();
    }

    double cellMm2() {
        return empty.cell() * empty.cell();
    }

    int size() {
        return empty.size();
    }

    double x(int cell) {
        return empty.centreX(cell % empty.columns());
    }

    double y(int cell) {
        return empty.centreY(cell / empty.columns());
    }

    /** Flat index of the cell that holds a place, the nearest one for a place off the frame. */
    int cellOf(double x, double y) {
        int column = (int) Math.floor((x - empty.x0()) / empty.cell());
        int row = (int) Math.floor((y - empty.y0()) / empty.cell());
        return Math.max(0, Math.min(empty.rows() - 1, row)) * empty.columns()
                + Math.max(0, Math.min(empty.columns() - 1, column));
    }

    /** Flat indices, ascending, of the cells whose centres lie in the area. */
    int[] cellsIn(Geometry area) {
        return IntStream.range(0, size()).filter(in(area)).toArray();
    }

    /** Whether a cell, by its flat index, has its centre in the area or on its edge. */
    IntPredicate in(Geometry area) {
        Envelope box = area.getEnvelopeInternal();
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        return cell -> {
            Coordinate centre = new Coordinate(x(cell), y(cell));
            return box.contains(centre) && locator.locate(centre) != Location.EXTERIOR;
        };
    }

    /** The cells an exact partition of the bay needs values for: those within a cell and a half of it. */
    int[] cellsAround(Polygon bay) {
        return cellsIn(bay.buffer(1.5 * cellMm()));
    }

    /** A raster with values at some cells. */
    Raster raster(int[] cells, double[] values) {
        double[] all = empty.values();
        for (int i = 0; i < cells.length; i++) {
            all[cells[i]] = values[i];
        }
        return empty.with(all);
    }
}
