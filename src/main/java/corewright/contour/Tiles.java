package corewright.contour;

import corewright.contour.Quad.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.locationtech.jts.geom.Coordinate;

/**
 * A raster's data as quadrilaterals that meet side to side and fill exactly the squares of the cells with data.
 *
 * <p>A tile stands between four cell centres. With data at all four it is one quadrilateral. Elsewhere only the quarters
 * of cells with data count, and a value continues unchanged from its centre to the edge towards no data: two neighbours
 * make a strip, three an L (the inner corner has their mean), one or two opposite ones lone quarters. So every side
 * between two centres is whole, and tiles on both sides of it see the same crossing.
 */
final class Tiles {
    private final Raster raster;

    Tiles(Raster raster) {
        this.raster = raster;
    }

    /** Passes on the closed boundary of everything at or above the level: level lines and edges towards no data. */
    void boundaryAbove(double level, BiConsumer<Coordinate, Coordinate> line) {
        Runs edges = new Runs();
        for (int row = -1; row < raster.rows(); row++) {
            for (int column = -1; column < raster.columns(); column++) {
                if (isAwayFromAnyLine(row, column, level)) {
                    continue;
                }
                for (Tile tile : tiles(row, column)) {
                    tile.quad.lines(level, line);
                    tile.edges.forEach(edge -> partAbove(edge, level, edges::add));
                }
            }
        }
        edges.forEach(line);
    }

    /** Four centres with data on one side of the level: most tiles, and nothing to see there. */
    private boolean isAwayFromAnyLine(int row, int column, double level) {
        if (row < 0 || column < 0 || row + 1 >= raster.rows() || column + 1 >= raster.columns()) {
            return false;
        }
        double a = raster.at(row, column);
        double b = raster.at(row, column + 1);
        double c = raster.at(row + 1, column);
        double d = raster.at(row + 1, column + 1);
        return (a >= level && b >= level && c >= level && d >= level)
                || (a < level && b < level && c < level && d < level);
    }

    /** Whether the value at a place is at least the level; false where there is no data. */
    boolean isAbove(double level, Coordinate place) {
        if (Double.isNaN(raster.cellAt(place.x, place.y))) {
            return false;
        }
        int column = (int) Math.floor((place.x - raster.x0()) / raster.cell() - 0.5);
        int row = (int) Math.floor((place.y - raster.y0()) / raster.cell() - 0.5);
        List<Tile> tiles = tiles(row, column);
        Tile tile = tiles.stream().filter(t -> t.holds(place)).findFirst().orElse(tiles.get(tiles.size() - 1));
        return tile.quad.isAbove(level, place);
    }

    private static void partAbove(Edge edge, double level, BiConsumer<Coordinate, Coordinate> line) {
        boolean fromAbove = edge.from.isAbove(level);
        boolean toAbove = edge.to.isAbove(level);
        if (fromAbove || toAbove) {
            Coordinate start = fromAbove ? at(edge.from) : Quad.crossing(edge.from, edge.to, level);
            Coordinate end = toAbove ? at(edge.to) : Quad.crossing(edge.from, edge.to, level);
            line.accept(start, end);
        }
    }

    private static Coordinate at(Node node) {
        return new Coordinate(node.x(), node.y());
    }

    /** A piece of the data's edge, the data on its left. */
    record Edge(Node from, Node to) {}

    /** A quadrilateral, and its sides beyond which there is no data. */
    record Tile(Quad quad, List<Edge> edges) {
        boolean holds(Coordinate place) {
            return isLeft(quad.a(), quad.b(), place)
                    && isLeft(quad.b(), quad.c(), place)
                    && isLeft(quad.c(), quad.d(), place)
                    && isLeft(quad.d(), quad.a(), place);
        }

        private static boolean isLeft(Node p, Node q, Coordinate place) {
            return (q.x() - p.x()) * (place.y - p.y()) - (q.y() - p.y()) * (place.x - p.x()) >= 0;
        }
    }

    /** The tile whose lower left centre is (row, column), in parts; row and column may be -1. */
    List<Tile> tiles(int row, int column) {
        // Counter-clockwise from the lower left: cells 0 to 3, with data where their bit is set.
        double[] v = {value(row, column), value(row, column + 1), value(row + 1, column + 1), value(row + 1, column)};
        int data = 0;
        for (int i = 0; i < 4; i++) {
            data |= Double.isNaN(v[i]) ? 0 : 1 << i;
        }
        Frame frame = new Frame(raster, row, column, v);
        List<Tile> tiles = new ArrayList<>(2);
        if (data == 15) {
            tiles.add(
                    new Tile(new Quad(frame.centre(0), frame.centre(1), frame.centre(2), frame.centre(3)), List.of()));
        } else if (Integer.bitCount(data) == 3) {
            inL(frame, (Integer.numberOfTrailingZeros(~data) + 2) & 3, tiles);
        } else {
            for (int i = 0; i < 4; i++) {
                boolean here = (data >> i & 1) == 1;
                boolean next = (data >> ((i + 1) & 3) & 1) == 1;
                boolean last = (data >> ((i + 3) & 3) & 1) == 1;
                if (here && next) {
                    strip(frame, i, tiles);
                } else if (here && !last) {
                    quarter(frame, i, tiles);
                }
            }
        }
        return tiles;
    }

    /** Data at i - 1, i, i + 1 and none opposite i. */
    private static void inL(Frame frame, int i, List<Tile> tiles) {
        Node corner = frame.middle((frame.value(i) + frame.value(i + 1) + frame.value(i + 3)) / 3);
        Node next = frame.between(i + 1, i + 2);
        Node last = frame.between(i + 3, i + 2);
        tiles.add(new Tile(
                new Quad(frame.centre(i), frame.centre(i + 1), next, corner), List.of(new Edge(next, corner))));
        tiles.add(new Tile(
                new Quad(frame.centre(i), corner, last, frame.centre(i + 3)), List.of(new Edge(corner, last))));
    }

    private static void strip(Frame frame, int i, List<Tile> tiles) {
        Node next = frame.between(i + 1, i + 2);
        Node here = frame.between(i, i + 3);
        tiles.add(new Tile(new Quad(frame.centre(i), frame.centre(i + 1), next, here), List.of(new Edge(next, here))));
    }

    private static void quarter(Frame frame, int i, List<Tile> tiles) {
        Node next = frame.between(i, i + 1);
        Node corner = frame.middle(frame.value(i));
        Node last = frame.between(i, i + 3);
        tiles.add(new Tile(
                new Quad(frame.centre(i), next, corner, last),
                List.of(new Edge(next, corner), new Edge(corner, last))));
    }

    private double value(int row, int column) {
        boolean inside = row >= 0 && column >= 0 && row < raster.rows() && column < raster.columns();
        return inside ? raster.at(row, column) : Double.NaN;
    }

    /** Places in the square between four centres; 0 to 3 counter-clockwise from the lower left, taken modulo 4. */
    private static final class Frame {
        private final Raster raster;
        private final int row;
        private final int column;
        private final double[] values;

        Frame(Raster raster, int row, int column, double[] values) {
            this.raster = raster;
            this.row = row;
            this.column = column;
            this.values = values;
        }

        double value(int i) {
            return values[i & 3];
        }

        Node centre(int i) {
            return new Node(raster.centreX(column + right(i)), raster.centreY(row + up(i)), value(i));
        }

        /** Half way from centre i to its neighbour, on the cell edge, with the value of i. */
        Node between(int i, int neighbour) {
            double x = right(i) == right(neighbour) ? raster.centreX(column + right(i)) : edgeX();
            double y = up(i) == up(neighbour) ? raster.centreY(row + up(i)) : edgeY();
            return new Node(x, y, value(i));
        }

        Node middle(double value) {
            return new Node(edgeX(), edgeY(), value);
        }

        private double edgeX() {
            return raster.x0() + (column + 1) * raster.cell();
        }

        private double edgeY() {
            return raster.y0() + (row + 1) * raster.cell();
        }

        private static int right(int i) {
            int k = i & 3;
            return k == 1 || k == 2 ? 1 : 0;
        }

        private static int up(int i) {
            return (i & 3) >= 2 ? 1 : 0;
        }
    }
}
