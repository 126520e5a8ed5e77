package corewright.sandwich;

import static corewright.sandwich.Partition.ON_BOUNDARY;
import static corewright.sandwich.Partition.OUTSIDE;

import corewright.sandwich.spec.PanelSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Meshes a panel so that no element lies in two zones.
 *
 * <p><b>Steps.</b> (1) a grid over the outline, each node labelled with its zone; (2) the node nearest to each corner is
 * moved onto it; (3) where a grid line runs from one zone into another, the nearer end is moved onto the boundary, closest
 * first, unless an end has been moved; both for the outline first, then for patches, so that a patch's rim beside the outline takes no node
 * from it: the panel would be held where that node is; (4) cells whose corners lie in two zones are split along their moved corners; (5)
 * cells outside are dropped.
 */
final class Mesher {
    /** A boundary that turns by more than this has a corner worth a node; less is a curve. */
    private static final double CORNER_RADIANS = Math.toRadians(25);

    /** Quadrilaterals with an angle whose sine is below this are split: 10 and 170 degrees. */
    private static final double FLAT = Math.sin(Math.toRadians(10));

    /** A patch cut along the outline has its corners on it but for rounding. */
    private static final double ON_OUTLINE_MM = 1e-6;

    private final PanelSpec panel;
    private final Geometry outline;
    private final Partition partition;
    private final double[] gridX;
    private final double[] gridY;
    private final int nx;
    private final double[] x;
    private final double[] y;
    private final int[] label;
    private final List<int[]> cells = new ArrayList<>();
    private final List<Integer> zones = new ArrayList<>();

    private Mesher(PanelSpec panel, MeshSize size) {
        this.panel = panel;
        outline = panel.outline().getBoundary();
        partition = new Partition(panel);
        gridX = GridLines.of(panel, size, true);
        gridY = GridLines.of(panel, size, false);
        nx = gridX.length;
        x = new double[nx * gridY.length];
        y = new double[x.length];
        label = new int[x.length];
        for (int v = 0; v < x.length; v++) {
            x[v] = gridX[v % nx];
            y[v] = gridY[v / nx];
            label[v] = partition.at(x[v], y[v]);
        }
    }

    static Mesh mesh(PanelSpec panel, MeshSize size) {
        Mesher mesher = new Mesher(panel, size);
        mesher.moveToCorners(panel.outline(), false);
        mesher.moveToPatchCorners(true);
        mesher.moveToBoundaries(mesher::outlineCrossing);
        mesher.moveToPatchCorners(false);
        mesher.moveToBoundaries(mesher::crossing);
        for (int j = 0; j + 1 < mesher.gridY.length; j++) {
            for (int i = 0; i + 1 < mesher.nx; i++) {
                int v = j * mesher.nx + i;
                mesher.cut(new int[] {v, v + 1, v + 1 + mesher.nx, v + mesher.nx});
            }
        }
        return mesher.collect();
    }

    /** @param onOutline only those on the outline */
    private void moveToPatchCorners(boolean onOutline) {
        for (int k = panel.patches().size() - 1; k >= 0; k--) {
            moveToCorners(panel.patches().get(k).area(), onOutline);
        }
    }

    private void moveToCorners(Geometry area, boolean onOutline) {
        for (Object ring : LinearComponentExtracter.getLines(area)) {
            Coordinate[] p = ((LineString) ring).getCoordinates();
            for (int k = 0; k + 1 < p.length; k++) {
                Coordinate before = p[k == 0 ? p.length - 2 : k - 1];
                if (turn(before, p[k], p[k + 1]) > CORNER_RADIANS
                        && partition.at(p[k].x, p[k].y) == ON_BOUNDARY
                        && (!onOutline || onOutline(p[k]))) {
                    moveNearest(p[k]);
                }
            }
        }
    }

    private boolean onOutline(Coordinate p) {
        return outline.distance(panel.outline().getFactory().createPoint(p)) < ON_OUTLINE_MM;
    }

    private static double turn(Coordinate a, Coordinate b, Coordinate c) {
        double turn = Math.abs(Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x));
        return Math.min(turn, 2 * Math.PI - turn);
    }

    private void moveNearest(Coordinate p) {
        int i = nearest(gridX, p.x);
        int j = nearest(gridY, p.y);
        int v = j * nx + i;
        boolean untouched = x[v] == gridX[i] && y[v] == gridY[j];
        if (untouched) {
            x[v] = p.x;
            y[v] = p.y;
            label[v] = ON_BOUNDARY;
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

    /** A grid line that crosses a boundary: the end to move, where to, and how far. */
    private record Crossing(int move, int other, double x, double y, double distance) {}

    /** Of two neighbours, where the grid line between them crosses a boundary of some kind. */
    @FunctionalInterface
    private interface Crossings {
        Optional<Crossing> between(int a, int b);
    }

    private void moveToBoundaries(Crossings kind) {
        List<Crossing> crossings = new ArrayList<>();
        for (int v = 0; v < x.length; v++) {
            if (v % nx + 1 < nx) {
                kind.between(v, v + 1).ifPresent(crossings::add);
            }
            if (v + nx < x.length) {
                kind.between(v, v + nx).ifPresent(crossings::add);
            }
        }
        crossings.sort(Comparator.comparingDouble(Crossing::distance)
                .thenComparingInt(Crossing::move)
                .thenComparingInt(Crossing::other));
        for (Crossing c : crossings) {
            if (label[c.move] != ON_BOUNDARY && label[c.other] != ON_BOUNDARY) {
                x[c.move] = c.x;
                y[c.move] = c.y;
                label[c.move] = ON_BOUNDARY;
            }
        }
    }

    private Optional<Crossing> outlineCrossing(int a, int b) {
        boolean outside = label[a] == OUTSIDE;
        return outside == (label[b] == OUTSIDE)
                ? Optional.empty()
                : crossing(a, b, zone -> (zone == OUTSIDE) == outside);
    }

    private Optional<Crossing> crossing(int a, int b) {
        return label[a] == label[b] ? Optional.empty() : crossing(a, b, zone -> zone == label[a]);
    }

    /** @param same whether a zone is still on the side of a */
    private Optional<Crossing> crossing(int a, int b, IntPredicate same) {
        if (label[a] == ON_BOUNDARY || label[b] == ON_BOUNDARY) {
            return Optional.empty();
        }
        double low = 0;
        double high = 1;
        for (int pass = 0; pass < 50; pass++) { // to the last bit
            double t = (low + high) / 2;
            if (same.test(partition.at(x[a] + t * (x[b] - x[a]), y[a] + t * (y[b] - y[a])))) {
                low = t;
            } else {
                high = t;
            }
        }
        double px = x[a] + high * (x[b] - x[a]);
        double py = y[a] + high * (y[b] - y[a]);
        double length = Math.hypot(x[b] - x[a], y[b] - y[a]);
        return Optional.of(
                high <= 0.5
                        ? new Crossing(a, b, px, py, high * length)
                        : new Crossing(b, a, px, py, (1 - high) * length));
    }

    /** Adds a grid cell, whole or in two triangles. */
    private void cut(int[] q) {
        int moved = 0;
        int zone = ON_BOUNDARY;
        boolean mixed = false;
        for (int v : q) {
            if (label[v] == ON_BOUNDARY) {
                moved++;
            } else if (zone == ON_BOUNDARY) {
                zone = label[v];
            } else {
                mixed |= zone != label[v];
            }
        }
        if (mixed) {
            split(q, label[q[0]] == ON_BOUNDARY ? 0 : 1);
        } else if (moved <= 2) {
            addQuad(q, zone);
        } else {
            cutByCentres(q, moved);
        }
    }

    /** Three or four corners lie on boundaries: the triangles' centres decide. */
    private void cutByCentres(int[] q, int moved) {
        int first = 0;
        if (moved == 3) {
            int lone = 0;
            while (label[q[lone]] == ON_BOUNDARY) {
                lone++;
            }
            first = (lone + 1) % 2;
        } else if (halves(q, 0)[0] == halves(q, 0)[1]) {
            first = 1;
        }
        if (thin(q, first)) {
            first = 1 - first;
        }
        int[] zone = halves(q, first);
        if (zone[0] == zone[1]) {
            addQuad(q, zone[0]);
        } else {
            split(q, first);
        }
    }

    /**
     * Whether one of the triangles at the diagonal from corner {@code first} has no area, as three corners moved to one straight
     * boundary have. Dropped, it would leave a crack between its neighbours; at the other diagonal it does not arise.
     */
    private boolean thin(int[] q, int first) {
        return nothing(new int[] {q[first], q[first + 1], q[first + 2]})
                || nothing(new int[] {q[first + 2], q[(first + 3) % 4], q[first]});
    }

    /** Zones of the two triangles on either side of the diagonal from corner {@code first}. */
    private int[] halves(int[] q, int first) {
        return new int[] {
            zoneOf(new int[] {q[first], q[first + 1], q[first + 2]}),
            zoneOf(new int[] {q[first + 2], q[(first + 3) % 4], q[first]})
        };
    }

    private int zoneOf(int[] corners) {
        double cx = 0;
        double cy = 0;
        for (int v : corners) {
            if (label[v] != ON_BOUNDARY) {
                return label[v];
            }
            cx += x[v] / corners.length;
            cy += y[v] / corners.length;
        }
        int zone = partition.at(cx, cy);
        return zone == ON_BOUNDARY ? partition.beside(cx, cy) : zone;
    }

    private void split(int[] q, int first) {
        addTriangle(new int[] {q[first], q[first + 1], q[first + 2]});
        addTriangle(new int[] {q[first + 2], q[(first + 3) % 4], q[first]});
    }

    private void addTriangle(int[] t) {
        add(t, zoneOf(t));
    }

    private void add(int[] corners, int zone) {
        if (zone != OUTSIDE && !nothing(corners)) {
            cells.add(corners);
            zones.add(zone);
        }
    }

    private boolean nothing(int[] corners) {
        double longest = 0;
        for (int a = 0; a < corners.length; a++) {
            int b = (a + 1) % corners.length;
            longest = Math.max(longest, Math.hypot(x[corners[b]] - x[corners[a]], y[corners[b]] - y[corners[a]]));
        }
        return area(corners) <= 1e-6 * longest * longest;
    }

    private void addQuad(int[] q, int zone) {
        if (zone == OUTSIDE) {
            return;
        }
        double worst = 1;
        int at = 0;
        for (int a = 0; a < 4; a++) {
            double sine = sine(q[(a + 3) % 4], q[a], q[(a + 1) % 4]);
            if (sine < worst) {
                worst = sine;
                at = a;
            }
        }
        if (worst >= FLAT) {
            add(q, zone);
        } else {
            int first = at % 2; // the diagonal through the flattest corner
            add(new int[] {q[first], q[first + 1], q[first + 2]}, zone);
            add(new int[] {q[first + 2], q[(first + 3) % 4], q[first]}, zone);
        }
    }

    /** Sine of the angle at b, negative where the corner points inward. */
    private double sine(int a, int b, int c) {
        double ux = x[c] - x[b];
        double uy = y[c] - y[b];
        double vx = x[a] - x[b];
        double vy = y[a] - y[b];
        return (ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
    }

    private double area(int[] corners) {
        double twice = 0;
        for (int a = 0; a < corners.length; a++) {
            int b = (a + 1) % corners.length;
            twice += x[corners[a]] * y[corners[b]] - x[corners[b]] * y[corners[a]];
        }
        return twice / 2;
    }

    private Mesh collect() {
        int[] number = new int[x.length];
        Arrays.fill(number, -1);
        cells.forEach(c -> Arrays.stream(c).forEach(v -> number[v] = 0));
        int[] used = java.util.stream.IntStream.range(0, x.length)
                .filter(v -> number[v] == 0)
                .toArray();
        double[][] nodes = new double[4][used.length];
        for (int k = 0; k < used.length; k++) {
            int v = used[k];
            number[v] = k;
            nodes[0][k] = x[v];
            nodes[1][k] = y[v];
            nodes[2][k] = gridX[v % nx];
            nodes[3][k] = gridY[v / nx];
        }
        int[][] renumbered = cells.stream()
                .map(c -> Arrays.stream(c).map(v -> number[v]).toArray())
                .toArray(int[][]::new);
        int[] zone = zones.stream().mapToInt(z -> z).toArray();
        return new Mesh(nodes, renumbered, zone, Zone.of(panel));
    }
}
