package corewright.contour;

import corewright.contour.Quad.Node;
import corewright.contour.Tiles.Edge;
import corewright.contour.Tiles.Tile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * The sides of the polygons of each band of one raster, found in one pass over its tiles. Band k lies between levels k - 1 and k. In a
 * tile the lines of two levels may touch but never cross, and neighbours see the same crossings on their common side, so that every
 * side ends where others end.
 */
final class BandSides {
    /** Rows that one thread takes at a time. */
    private static final int ROWS = 128;

    private final Raster raster;
    private final Tiles tiles;
    private final double[] levels;
    private final PrecisionModel grid;
    /** Level lines, by band: one line is a side of the band above it, and the other way round of the band below. */
    private final List<Sides> lines = new ArrayList<>();
    /** Pieces of the data's edge, by band. */
    private final List<Sides> rims = new ArrayList<>();

    private BandSides(Raster raster, double[] levels, PrecisionModel grid) {
        this.raster = raster;
        this.tiles = new Tiles(raster);
        this.levels = levels;
        this.grid = grid;
        for (int band = 0; band <= levels.length; band++) {
            lines.add(new Sides());
            rims.add(new Sides());
        }
    }

    /** @param levels from low to high, each once */
    static BandSides of(Raster raster, double[] levels, PrecisionModel grid) {
        List<BandSides> parts = IntStream.rangeClosed(0, raster.rows() / ROWS)
                .parallel()
                .mapToObj(part -> {
                    BandSides sides = new BandSides(raster, levels, grid);
                    sides.march(part * ROWS - 1, Math.min(raster.rows(), (part + 1) * ROWS - 1));
                    return sides;
                })
                .toList();
        BandSides all = new BandSides(raster, levels, grid);
        for (int k = 0; k <= levels.length; k++) {
            int band = k;
            all.lines.set(
                    k,
                    Sides.joined(
                            parts.stream().map(part -> part.lines.get(band)).toList()));
            all.rims.set(
                    k,
                    Sides.joined(parts.stream().map(part -> part.rims.get(band)).toList()));
        }
        return all;
    }

    Sides lines(int band) {
        return lines.get(band);
    }

    Sides rims(int band) {
        return rims.get(band);
    }

    /** Tiles of rows {@code first} to before {@code end}; row -1 lies half outside the raster, as does the last one. */
    private void march(int first, int end) {
        int[] below = bandsOf(first);
        for (int row = first; row < end; row++) {
            int[] above = bandsOf(row + 1);
            for (int column = -1; column < raster.columns(); column++) {
                int band = below[column + 1];
                if (below[column + 2] != band || above[column + 1] != band || above[column + 2] != band) {
                    tiles.tiles(row, column).forEach(this::addTile);
                }
            }
            below = above;
        }
    }

    /** The band of each cell of a row, -1 without data, with one more cell at each end. */
    private int[] bandsOf(int row) {
        int[] bands = new int[raster.columns() + 2];
        Arrays.fill(bands, -1);
        for (int column = 0; column < raster.columns() && row >= 0 && row < raster.rows(); column++) {
            double value = raster.at(row, column);
            bands[column + 1] = Double.isNaN(value) ? -1 : band(value);
        }
        return bands;
    }

    private int band(double value) {
        int band = 0;
        while (band < levels.length && value >= levels[band]) {
            band++;
        }
        return band;
    }

    private void addTile(Tile tile) {
        Quad quad = tile.quad();
        int lowest = levels.length;
        int highest = 0;
        for (int corner = 0; corner < 4; corner++) {
            int band = band(quad.node(corner).value());
            lowest = Math.min(lowest, band);
            highest = Math.max(highest, band);
        }
        List<List<Coordinate>> stops = highest - lowest > 1 ? stops(quad) : List.of();
        for (int k = lowest; k < highest; k++) {
            int level = k;
            quad.lines(levels[k], (p, q) -> addLine(level, onGrid(p), onGrid(q), stops));
        }
        for (Edge edge : tile.edges()) {
            addRim(edge);
        }
    }

    private List<List<Coordinate>> stops(Quad quad) {
        List<List<Coordinate>> stops = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            stops.add(stops(quad.node(corner), quad.node(corner + 1)));
        }
        return stops;
    }

    /** From one node to the next, by where the levels between them cross. */
    private List<Coordinate> stops(Node from, Node to) {
        List<Coordinate> stops = new ArrayList<>();
        stops.add(onGrid(new Coordinate(from.x(), from.y())));
        int last = band(to.value());
        for (int band = band(from.value()); band != last; band += band < last ? 1 : -1) {
            double level = levels[band < last ? band : band - 1];
            stops.add(onGrid(Quad.crossing(from, to, level)));
        }
        stops.add(onGrid(new Coordinate(to.x(), to.y())));
        return stops;
    }

    /** A line that runs along a side of its tile, as beside a cliff, stops where lines of other levels end on that side. */
    private void addLine(int level, Coordinate from, Coordinate to, List<List<Coordinate>> stops) {
        Coordinate at = from;
        for (List<Coordinate> side : stops) {
            int first = side.indexOf(from);
            int last = side.indexOf(to);
            for (int i = first; first >= 0 && last >= 0 && i != last; i += first < last ? 1 : -1) {
                addPiece(level, at, side.get(i));
                at = side.get(i);
            }
        }
        addPiece(level, at, to);
    }

    private void addPiece(int level, Coordinate from, Coordinate to) {
        lines.get(level + 1).add(from, to);
        lines.get(level).add(to, from);
    }

    private void addRim(Edge edge) {
        List<Coordinate> stops = stops(edge.from(), edge.to());
        int band = band(edge.from().value());
        int step = Integer.signum(band(edge.to().value()) - band);
        for (int i = 1; i < stops.size(); i++) {
            rims.get(band).add(stops.get(i - 1), stops.get(i));
            band += step;
        }
    }

    private Coordinate onGrid(Coordinate place) {
        grid.makePrecise(place);
        return place;
    }
}
