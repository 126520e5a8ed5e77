package corewright.sandwich;

import static corewright.sandwich.Partition.ON_OUTLINE;
import static corewright.sandwich.Partition.OUTSIDE;

import corewright.sandwich.spec.PanelSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;

/**
 * Meshes a panel so that it is covered and no element lies in two zones. Where both cannot be had, as where a rim runs nearer to the
 * outline than an element, the panel is covered: it is held where its mesh ends.
 *
 * <p><b>Steps.</b> (1) a grid over the outline, its nodes moved onto the outline; (2) of each cell of the grid the piece within: all of
 * it, a triangle, or nothing; no piece is dropped or added thereafter, so the mesh ends on the outline whatever the patches; (3)
 * nodes inside moved onto the rims of patches, unless a piece would be turned over; (4) pieces that a rim crosses cut in two.
 */
final class Mesher {
    /** Quadrilaterals with an angle whose sine is below this are split: 10 and 170 degrees. */
    private static final double FLAT = Math.sin(Math.toRadians(10));

    /** A triangle as flat as this has no area, as three nodes moved onto one straight line have. */
    private static final double NOTHING = 2e-6;

    private static final int[] NONE = {};

    private final PanelSpec panel;
    private final MeshGrid grid;

    /** Corners of each cell's piece, three or four, counter-clockwise, or none. */
    private final int[][] pieces;

    private final List<int[]> cells = new ArrayList<>();
    private final List<Integer> zones = new ArrayList<>();

    private Mesher(PanelSpec panel, MeshSize size) {
        this.panel = panel;
        grid = new MeshGrid(panel, size);
        grid.moveToOutline();
        pieces = new int[grid.x.length][];
        for (int v = 0; v < pieces.length; v++) {
            pieces[v] = grid.isCell(v) ? within(new int[] {v, v + 1, v + 1 + grid.columns, v + grid.columns}) : NONE;
        }
    }

    static Mesh mesh(PanelSpec panel, MeshSize size) {
        Mesher mesher = new Mesher(panel, size);
        mesher.grid.moveToRims(mesher::fits);
        for (int[] piece : mesher.pieces) {
            mesher.cut(piece);
        }
        return mesher.collect();
    }

    /** What of a cell lies within the outline; none of its corners inside is next to one outside. */
    private int[] within(int[] q) {
        int inside = find(q, grid::inside);
        int outside = find(q, v -> grid.label[v] == OUTSIDE);
        if (inside < 0) {
            return outside < 0 ? betweenOutlines(q) : held(triangle(q, outside + 2));
        }
        int[] far = triangle(q, inside + 2);
        boolean cutOff = outside >= 0 || onOutline(far) && sound(far) && !holds(far);
        return cutOff ? triangle(q, inside) : q;
    }

    /** Of a cell with all corners on the outline: at the diagonal that parts inside from outside, if one does. */
    private int[] betweenOutlines(int[] q) {
        int[] within = NONE;
        for (int k : new int[] {1, 0}) {
            if (parts(q, k)) {
                boolean here = holds(triangle(q, k));
                boolean there = holds(triangle(q, k + 2));
                if (here != there) {
                    return triangle(q, here ? k : k + 2);
                }
                within = here ? q : NONE;
            }
        }
        return within;
    }

    /** A triangle on the outline if it lies inside. */
    private int[] held(int[] triangle) {
        return onOutline(triangle) && sound(triangle) && holds(triangle) ? triangle : NONE;
    }

    private boolean onOutline(int[] corners) {
        return Arrays.stream(corners).allMatch(v -> grid.label[v] == ON_OUTLINE);
    }

    private boolean holds(int[] triangle) {
        Coordinate centre = grid.centre(triangle);
        return grid.partition.at(centre.x, centre.y) != OUTSIDE;
    }

    /** Of the two triangles at a diagonal that one at a corner; the other one is at the corner across. */
    private static int[] triangle(int[] q, int corner) {
        return new int[] {q[(corner + 3) % 4], q[corner % 4], q[(corner + 1) % 4]};
    }

    /** Whether the diagonal beside a corner leaves two triangles that have an area. */
    private boolean parts(int[] q, int corner) {
        return sound(triangle(q, corner)) && sound(triangle(q, corner + 2));
    }

    private boolean sound(int[] piece) {
        return piece.length == 3 ? grid.fullness(piece) > NOTHING : parts(piece, 0) || parts(piece, 1);
    }

    /** Whether no piece at a node is turned over. */
    private boolean fits(int v) {
        return IntStream.of(v, v - 1, v - grid.columns, v - grid.columns - 1)
                .filter(grid::isCell)
                .mapToObj(cell -> pieces[cell])
                .allMatch(piece -> piece.length == 0 || sound(piece));
    }

    private void cut(int[] piece) {
        if (piece.length == 3) {
            add(piece, zoneOf(piece));
        } else if (piece.length == 4) {
            cutQuad(piece);
        }
    }

    /** Adds a quadrilateral, whole or in two triangles along the rim through it. */
    private void cutQuad(int[] q) {
        int[] apart =
                Arrays.stream(q).map(v -> grid.label[v]).filter(z -> z >= 0).toArray();
        boolean mixed = Arrays.stream(apart).distinct().count() > 1;
        if (apart.length >= 2 && !mixed) {
            addQuad(q, apart[0]);
            return;
        }
        int corner = mixed || apart.length == 1
                ? find(q, v -> grid.label[v] >= 0)
                : zoneOf(triangle(q, 1)) == zoneOf(triangle(q, 3)) ? 0 : 1;
        if (!parts(q, corner)) {
            corner++;
        }
        int[] here = triangle(q, corner);
        int[] there = triangle(q, corner + 2);
        if (zoneOf(here) == zoneOf(there)) {
            addQuad(q, zoneOf(here));
        } else {
            add(here, zoneOf(here));
            add(there, zoneOf(there));
        }
    }

    private static int find(int[] q, IntPredicate what) {
        return IntStream.range(0, q.length)
                .filter(k -> what.test(q[k]))
                .findFirst()
                .orElse(-1);
    }

    /** That of the corners within a zone; of their centre where they are in none or in several. */
    private int zoneOf(int[] corners) {
        int[] zone = Arrays.stream(corners)
                .map(v -> grid.label[v])
                .filter(z -> z >= 0)
                .distinct()
                .toArray();
        Coordinate centre = grid.centre(corners);
        return zone.length == 1 ? zone[0] : grid.partition.near(centre.x, centre.y);
    }

    private void addQuad(int[] q, int zone) {
        double worst = IntStream.range(0, 4)
                .mapToDouble(k -> grid.sine(triangle(q, k)))
                .min()
                .orElseThrow();
        if (worst >= FLAT) {
            add(q, zone);
        } else {
            int corner = flattest(q, 0) > flattest(q, 1) ? 0 : 1;
            add(triangle(q, corner), zone);
            add(triangle(q, corner + 2), zone);
        }
    }

    private double flattest(int[] q, int corner) {
        return Math.min(grid.fullness(triangle(q, corner)), grid.fullness(triangle(q, corner + 2)));
    }

    private void add(int[] corners, int zone) {
        cells.add(corners);
        zones.add(zone);
    }

    private Mesh collect() {
        int[] used =
                cells.stream().flatMapToInt(Arrays::stream).sorted().distinct().toArray();
        double[][] nodes = {
            Arrays.stream(used).mapToDouble(v -> grid.x[v]).toArray(),
            Arrays.stream(used).mapToDouble(v -> grid.y[v]).toArray(),
            Arrays.stream(used).mapToDouble(grid::gridX).toArray(),
            Arrays.stream(used).mapToDouble(grid::gridY).toArray()
        };
        int[][] numbered = cells.stream()
                .map(c ->
                        Arrays.stream(c).map(v -> Arrays.binarySearch(used, v)).toArray())
                .toArray(int[][]::new);
        int[] zone = zones.stream().mapToInt(z -> z).toArray();
        return new Mesh(nodes, numbered, zone, Zone.of(panel));
    }
}
