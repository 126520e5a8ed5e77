package corewright.repair.pattern;

import corewright.contour.Raster;
import corewright.damage.FaceDamage;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * An empty space on a fine raster, with the steps the mix may take in it.
 *
 * <p>Row-major, row 0 at the smallest y, a margin of {@link #MARGIN} cells all round so that no step leaves the arrays. A
 * cell belongs to the cavity where its centre lies in the area. A divider that ends inside it is a wall: its
 * cells are reached but never passed.
 */
public final class Cavity {
    /** Longest step in cells; also the empty margin. */
    static final int MARGIN = 2;

    private static final double LEAST_LEFT = 0.1;

    /** The 16 steps: rook, bishop, knight. Worst error of a path's length in the open 2.7 per cent. */
    static final int[][] STEPS = {
        {0, 1}, {1, 0}, {0, -1}, {-1, 0}, {1, 1}, {1, -1}, {-1, -1}, {-1, 1},
        {1, 2}, {2, 1}, {2, -1}, {1, -2}, {-1, -2}, {-2, -1}, {-2, 1}, {-1, 2}
    };

    public final double x0;
    public final double y0;
    public final double cell;
    public final int rows;
    public final int columns;
    /** Flat indices of the cavity's cells, ascending. */
    public final int[] cells;
    /** Empty height, millimetres; 0 outside the cavity. */
    public final double[] gapMm;
    /** Bit k set: step k is open from this cell. */
    public final int[] open;

    private final boolean[] inside;

    private Cavity(Polygon area, double cell) {
        Envelope box = area.getEnvelopeInternal();
        this.cell = cell;
        columns = (int) Math.ceil(box.getWidth() / cell) + 1 + 2 * MARGIN;
        rows = (int) Math.ceil(box.getHeight() / cell) + 1 + 2 * MARGIN;
        x0 = box.getMinX() - MARGIN * cell;
        y0 = box.getMinY() - MARGIN * cell;
        inside = new boolean[rows * columns];
        gapMm = new double[rows * columns];
        open = new int[rows * columns];
        cells = fill(area);
    }

    private Cavity(Cavity other, double[] gaps) {
        x0 = other.x0;
        y0 = other.y0;
        cell = other.cell;
        rows = other.rows;
        columns = other.columns;
        cells = other.cells;
        open = other.open;
        inside = other.inside;
        gapMm = gaps;
    }

    /** The same space, every gap made so much higher that it holds this volume. */
    public Cavity holding(double mm3) {
        double whole = mm3();
        return whole > 0
                ? new Cavity(
                        this, Arrays.stream(gapMm).map(g -> g * mm3 / whole).toArray())
                : this;
    }

    /** What is left over layers of hard mix; nowhere less than a tenth, as no such layer is even. */
    public Cavity above(IntToDoubleFunction layerMm) {
        double[] gaps = new double[gapMm.length];
        for (int c : cells) {
            gaps[c] = Math.max(LEAST_LEFT * gapMm[c], gapMm[c] - layerMm.applyAsDouble(c));
        }
        return new Cavity(this, gaps);
    }

    /** What it holds. */
    public double mm3() {
        double gap = 0;
        for (int c : cells) {
            gap += gapMm[c];
        }
        return gap * cell * cell;
    }

    /**
     * The cavity under an area.
     *
     * @param cellMm side of a cell
     * @param looseGapMm least height under a loose skin
     */
    public static Cavity of(Polygon area, FaceDamage damage, double cellMm, double looseGapMm) {
        return of(area, damage.face(), damage.surfaces().voidDepthMm(), cellMm, looseGapMm);
    }

    /** The cavity under an area of a space. */
    public static Cavity of(SpaceTask task, Polygon area, double cellMm) {
        double looseGapMm = task.settings().thresholds().looseGapMm();
        return of(area, task.face(), task.voidDepthMm(), cellMm, looseGapMm);
    }

    /** The cavity under an area of a face, of any surface of void depth. */
    public static Cavity of(Polygon area, Face face, Raster voidDepthMm, double cellMm, double looseGapMm) {
        Cavity cavity = new Cavity(area, cellMm);
        for (int c : cavity.cells) {
            cavity.gapMm[c] = Math.max(looseGapMm, depthAt(voidDepthMm, cavity.x(c), cavity.y(c)));
        }
        cavity.openSteps(cavity.walls(face.all(Feature.Divider.class), area));
        return cavity;
    }

    /** A cell that gives the reach at least eight steps and the region a few hundred cells, at most 12.5 mm. */
    public static double cellFor(Polygon area, double reachMm) {
        double fine = Math.min(Math.min(12.5, reachMm / 8), Math.sqrt(area.getArea()) / 16);
        return Math.min(12.5, Math.max(fine, Math.sqrt(area.getArea() / 40_000))); // memory and time, not accuracy
    }

    public double x(int index) {
        return x0 + (index % columns + 0.5) * cell;
    }

    public double y(int index) {
        return y0 + (index / columns + 0.5) * cell;
    }

    public Coordinate centre(int index) {
        return new Coordinate(x(index), y(index));
    }

    public boolean inside(int index) {
        return inside[index];
    }

    public int size() {
        return rows * columns;
    }

    /** Void depth between the cell centres of the damage raster; cells off the core are left out, 0 where all are. */
    public static double depthAt(Raster depth, double x, double y) {
        double column = (x - depth.x0()) / depth.cell() - 0.5;
        double row = (y - depth.y0()) / depth.cell() - 0.5;
        int c = (int) Math.floor(column);
        int r = (int) Math.floor(row);
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < 4; i++) {
            int ci = c + i % 2;
            int ri = r + i / 2;
            if (ci >= 0 && ri >= 0 && ci < depth.columns() && ri < depth.rows() && !Double.isNaN(depth.at(ri, ci))) {
                double w = (1 - Math.abs(column - ci)) * (1 - Math.abs(row - ri)) + 1e-9; // never all zero
                sum += w * depth.at(ri, ci);
                weights += w;
            }
        }
        return weights > 0 ? sum / weights : 0;
    }

    private int[] fill(Polygon area) {
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        int[] found = new int[inside.length];
        int n = 0;
        for (int i = 0; i < inside.length; i++) {
            if (onMargin(i)) {
                continue;
            }
            inside[i] = locator.locate(centre(i)) == Location.INTERIOR;
            if (inside[i]) {
                found[n++] = i;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private boolean onMargin(int index) {
        int row = index / columns;
        int column = index % columns;
        return row < MARGIN || column < MARGIN || row >= rows - MARGIN || column >= columns - MARGIN;
    }

    private boolean[] walls(List<Feature.Divider> dividers, Polygon area) {
        boolean[] wall = new boolean[size()];
        for (Feature.Divider divider : dividers) {
            Geometry thick = divider.geometry().buffer(0.75 * cell); // no step passes a band of 1.5 cells unnoticed
            if (!thick.intersects(area)) {
                continue;
            }
            IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(thick);
            for (int i : cells) {
                wall[i] |= locator.locate(centre(i)) != Location.EXTERIOR;
            }
        }
        return wall;
    }

    private void openSteps(boolean[] wall) {
        for (int i : cells) {
            if (wall[i]) {
                continue; // reached, never passed
            }
            for (int k = 0; k < STEPS.length; k++) {
                if (clear(i, STEPS[k], wall)) {
                    open[i] |= 1 << k;
                }
            }
        }
    }

    /** A step is open where its end is cavity and the cells it crosses are; a diagonal needs one open side. */
    private boolean clear(int from, int[] step, boolean[] wall) {
        int dr = step[0];
        int dc = step[1];
        if (!inside[from + dr * columns + dc]) {
            return false;
        }
        if (Math.abs(dr) + Math.abs(dc) == 1) {
            return true;
        }
        if (Math.abs(dr) == Math.abs(dc)) {
            return passable(from + dr * columns, wall) || passable(from + dc, wall);
        }
        int straight = Math.abs(dr) > Math.abs(dc) ? Integer.signum(dr) * columns : Integer.signum(dc);
        int diagonal = Integer.signum(dr) * columns + Integer.signum(dc);
        return passable(from + straight, wall) && passable(from + diagonal, wall);
    }

    private boolean passable(int index, boolean[] wall) {
        return inside[index] && !wall[index];
    }

    /** Length of step k, millimetres. */
    double stepMm(int k) {
        return cell * Math.hypot(STEPS[k][0], STEPS[k][1]);
    }

    /** What step k adds to a flat index. */
    public int stepOffset(int k) {
        return STEPS[k][0] * columns + STEPS[k][1];
    }

    /** Of the first so many steps. */
    public int[] stepOffsets(int n) {
        return IntStream.range(0, n).map(this::stepOffset).toArray();
    }
}
