package corewright.sandwich;

import static corewright.sandwich.Partition.ON_OUTLINE;
import static corewright.sandwich.Partition.ON_RIM;
import static corewright.sandwich.Partition.OUTSIDE;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * A grid over a panel whose nodes are moved onto boundaries: the node nearest to each corner, then, where a grid line runs across a
 * boundary, its nearer end, closest first, unless an end has been moved. Counted row by row.
 */
final class MeshGrid {
    /** A boundary that turns by more than this has a corner worth a node; less is a curve. */
    private static final double CORNER_RADIANS = Math.toRadians(25);

    /** A patch cut along the outline has its corners on it but for rounding. */
    private static final double ON_OUTLINE_MM = 1e-6;

    /** Tips are looked for so often on half a grid line. */
    private static final int TIP_STEPS = 5;

    final int columns;

    /** Millimetres. */
    final double[] x;

    final double[] y;

    /** Zone of each node, or what of {@link Partition} it lies on. */
    final int[] label;

    final Partition partition;
    private final BitSet atCorner = new BitSet();
    private final PanelSpec panel;
    private final Geometry outline;
    private final double[] gridX;
    private final double[] gridY;

    MeshGrid(PanelSpec panel, MeshSize size) {
        this.panel = panel;
        outline = panel.outline().getBoundary();
        partition = new Partition(panel);
        gridX = GridLines.of(panel, size, true);
        gridY = GridLines.of(panel, size, false);
        columns = gridX.length;
        x = new double[columns * gridY.length];
        y = new double[x.length];
        label = new int[x.length];
        for (int v = 0; v < x.length; v++) {
            x[v] = gridX(v);
            y[v] = gridY(v);
            label[v] = partition.at(x[v], y[v]);
        }
    }

    /** Where a node stood before it was moved, mm. */
    double gridX(int v) {
        return gridX[v % columns];
    }

    double gridY(int v) {
        return gridY[v / columns];
    }

    /** Thereafter every grid line that leaves the panel does so through a node on its outline. */
    void moveToOutline() {
        corners(panel.outline()).forEach(p -> moveNearest(p, ON_OUTLINE, v -> true));
        int[] tips = atCorner.stream().toArray();
        patchCorners().stream().filter(this::onOutline).forEach(p -> moveNearest(p, ON_OUTLINE, v -> true));
        moveToCrossings((a, b) -> inside(a) != inside(b) && !onOutline(a) && !onOutline(b), ON_OUTLINE, v -> true);
        Arrays.stream(tips).forEach(this::moveOntoTip);
    }

    /** @param fits whether what meets at a node is still sound; if not, the node goes back and the rim runs past it */
    void moveToRims(IntPredicate fits) {
        patchCorners().stream().filter(p -> !onOutline(p)).forEach(p -> moveNearest(p, ON_RIM, fits));
        moveToCrossings((a, b) -> label[a] >= 0 && label[b] >= 0 && label[a] != label[b], ON_RIM, fits);
    }

    /** Whether a node lies within the outline and not on it. */
    boolean inside(int v) {
        return label[v] >= 0 || label[v] == ON_RIM;
    }

    /** Twice the area of a cell over its longest side's square; below nothing where its corners run clockwise. */
    double fullness(int... corners) {
        double twice = 0;
        double longest = 0;
        for (int a = 0; a < corners.length; a++) {
            int from = corners[a];
            int to = corners[(a + 1) % corners.length];
            twice += x[from] * y[to] - x[to] * y[from];
            longest = Math.max(longest, Math.hypot(x[to] - x[from], y[to] - y[from]));
        }
        return twice / (longest * longest);
    }

    /** Sine of the angle at the middle one of three nodes, negative where the corner points inward. */
    double sine(int[] corner) {
        double ux = x[corner[2]] - x[corner[1]];
        double uy = y[corner[2]] - y[corner[1]];
        double vx = x[corner[0]] - x[corner[1]];
        double vy = y[corner[0]] - y[corner[1]];
        return (ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
    }

    Coordinate centre(int... corners) {
        Coordinate centre = new Coordinate(0, 0);
        for (int v : corners) {
            centre.x += x[v] / corners.length;
            centre.y += y[v] / corners.length;
        }
        return centre;
    }

    private List<Coordinate> patchCorners() {
        List<Coordinate> corners = new ArrayList<>();
        for (Patch patch : panel.patches()) {
            corners.addAll(0, corners(patch.area())); // the patch on top first
        }
        return corners;
    }

    /** Corners of an area that are not below a patch. */
    private List<Coordinate> corners(Geometry area) {
        List<Coordinate> corners = new ArrayList<>();
        for (Object ring : LinearComponentExtracter.getLines(area)) {
            Coordinate[] p = ((LineString) ring).getCoordinates();
            for (int k = 0; k + 1 < p.length; k++) {
                Coordinate before = p[k == 0 ? p.length - 2 : k - 1];
                int at = partition.at(p[k].x, p[k].y);
                if (turn(before, p[k], p[k + 1]) > CORNER_RADIANS && (at == ON_OUTLINE || at == ON_RIM)) {
                    corners.add(p[k]);
                }
            }
        }
        return corners;
    }

    private boolean onOutline(Coordinate p) {
        Point point = panel.outline().getFactory().createPoint(p);
        return outline.distance(point) < ON_OUTLINE_MM;
    }

    private static double turn(Coordinate a, Coordinate b, Coordinate c) {
        double turn = Math.abs(Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x));
        return Math.min(turn, 2 * Math.PI - turn);
    }

    private void moveNearest(Coordinate p, int to, IntPredicate fits) {
        int v = nearest(gridY, p.y) * columns + nearest(gridX, p.x);
        if (!atCorner.get(v) && (to == ON_OUTLINE || inside(v))) {
            atCorner.set(v, move(v, p.x, p.y, to, fits));
        }
    }

    private static int nearest(double[] lines, double at) {
        int k = Arrays.binarySearch(lines, at);
        if (k >= 0) {
            return k;
        }
        int above = Math.min(-k - 1, lines.length - 1);
        int below = Math.max(above - 1, 0);
        return at - lines[below] < lines[above] - at ? below : above;
    }

    private boolean move(int v, double toX, double toY, int to, IntPredicate fits) {
        double fromX = x[v];
        double fromY = y[v];
        x[v] = toX;
        y[v] = toY;
        if (fits.test(v)) {
            label[v] = to;
            return true;
        }
        x[v] = fromX;
        y[v] = fromY;
        return false;
    }

    /**
     * Where the tip of a corner of the outline reaches between two nodes that lie on one side of it, the grid line between them runs
     * through the tip: they go onto the corner's sides.
     */
    private void moveOntoTip(int corner) {
        for (int v : new int[] {corner - columns - 1, corner - columns, corner - 1, corner}) {
            if (isCell(v)) {
                int[] ring = {v, v + 1, v + 1 + columns, v + columns};
                for (int k = 0; k < 4; k++) {
                    moveOntoTip(ring[k], ring[(k + 1) % 4]);
                    moveOntoTip(ring[(k + 1) % 4], ring[k]);
                }
            }
        }
    }

    /** Whether a node is the lower left one of a cell. */
    boolean isCell(int v) {
        return v >= 0 && v % columns + 1 < columns && v + columns < x.length;
    }

    /** Moves a node to where its way to another of its side, or on the outline, crosses the outline, if it does before the middle. */
    private void moveOntoTip(int a, int b) {
        for (int k = 1; k <= TIP_STEPS && !onOutline(a) && (onOutline(b) || inside(a) == inside(b)); k++) {
            double part = 0.5 * k / TIP_STEPS;
            double px = x[a] + part * (x[b] - x[a]);
            double py = y[a] + part * (y[b] - y[a]);
            if (inside(a) == (partition.at(px, py) == OUTSIDE)) {
                double t = leaves(x[a], y[a], px, py, ON_OUTLINE);
                move(a, x[a] + t * (px - x[a]), y[a] + t * (py - y[a]), ON_OUTLINE, v -> true);
            }
        }
    }

    private boolean onOutline(int v) {
        return label[v] == ON_OUTLINE;
    }

    /** A grid line that crosses a boundary: the end to move, where to, and how far. */
    private record Crossing(int move, int other, double x, double y, double distance) {}

    /** Whether a boundary of some kind runs between two neighbours. */
    @FunctionalInterface
    private interface Parted {
        boolean test(int a, int b);
    }

    private void moveToCrossings(Parted parted, int to, IntPredicate fits) {
        List<Crossing> crossings = new ArrayList<>();
        for (int v = 0; v < x.length; v++) {
            if (v % columns + 1 < columns && parted.test(v, v + 1)) {
                crossings.add(crossing(v, v + 1, to));
            }
            if (v + columns < x.length && parted.test(v, v + columns)) {
                crossings.add(crossing(v, v + columns, to));
            }
        }
        crossings.sort(Comparator.comparingDouble(Crossing::distance)
                .thenComparingInt(Crossing::move)
                .thenComparingInt(Crossing::other));
        for (Crossing c : crossings) {
            if (parted.test(c.move, c.other)) {
                move(c.move, c.x, c.y, to, fits);
            }
        }
    }

    private Crossing crossing(int a, int b, int kind) {
        double part = leaves(x[a], y[a], x[b], y[b], kind);
        double px = x[a] + part * (x[b] - x[a]);
        double py = y[a] + part * (y[b] - y[a]);
        double length = Math.hypot(x[b] - x[a], y[b] - y[a]);
        return part <= 0.5
                ? new Crossing(a, b, px, py, part * length)
                : new Crossing(b, a, px, py, (1 - part) * length);
    }

    /** At what part of a straight way a boundary of some kind is met. */
    private double leaves(double fromX, double fromY, double toX, double toY, int kind) {
        int here = side(partition.at(fromX, fromY), kind);
        double low = 0;
        double high = 1;
        for (int pass = 0; pass < 50; pass++) { // to the last bit
            double t = (low + high) / 2;
            if (side(partition.at(fromX + t * (toX - fromX), fromY + t * (toY - fromY)), kind) == here) {
                low = t;
            } else {
                high = t;
            }
        }
        return high;
    }

    /** What a boundary of a kind tells apart. */
    private static int side(int label, int kind) {
        return kind == ON_RIM || label == OUTSIDE || label == ON_OUTLINE ? label : 0;
    }
}
