package corewright.repair.pattern;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Covers with one hole fewer each time: a p-centre descent off the raster.
 *
 * <p>A cover less one hole (each in turn, the least useful first) leaves open cells. Each cell belongs to its
 * nearest hole; each hole is pulled towards its cells beyond the reach, as far as they lie beyond it on average, which
 * shrinks the circle about its cells. When few enough are open the holes are put on allowed cells, shifted cell by cell
 * while that closes more, and counted with the true travel inside the cavity: the descent itself measures in the air. Same
 * input, same result: work is counted, not timed.
 */
final class Relaxation {
    private static final int STARTS = 60;
    private static final int ROUNDS = 250;

    /** Bound on distances computed, about 1 s on a small machine. */
    private static final long WORK = 360_000_000L;

    /** Aim this share of a cell inside the reach: holes stand on whole cells at the end. Tried 0 to 0.6. */
    private static final double AIM_CELLS = 0.25;

    private final Cavity cavity;
    private final DrillPlaces places;
    private final double[] holeReachMm;
    private final Travel travel;
    private final int allowedOpen;
    private final int[] times;
    private long work;

    /** Bins of the holes, about one reach wide. */
    private final double binMm;

    private final int binRows;
    private final int binColumns;
    private final int[][] bins;
    private final int[] binSize;
    /** Middle and bin of each cell of the cavity. */
    private final double[] cellX;

    private final double[] cellY;
    private final int[] binOf;

    private Relaxation(
            Cavity cavity, DrillPlaces places, double[] holeReachMm, Travel travel, double reachMm, int allowedOpen) {
        this.cavity = cavity;
        this.places = places;
        this.holeReachMm = holeReachMm;
        this.travel = travel;
        this.allowedOpen = allowedOpen;
        times = new int[cavity.size()];
        binMm = reachMm;
        binRows = (int) (cavity.rows * cavity.cell / binMm) + 1;
        binColumns = (int) (cavity.columns * cavity.cell / binMm) + 1;
        bins = new int[binRows * binColumns][8];
        binSize = new int[bins.length];
        cellX = Arrays.stream(cavity.cells).mapToDouble(cavity::x).toArray();
        cellY = Arrays.stream(cavity.cells).mapToDouble(cavity::y).toArray();
        binOf = IntStream.range(0, cellX.length)
                .map(k -> bin(cellX[k], cellY[k]))
                .toArray();
    }

    /**
     * A cover no larger than {@code start}, which must be one.
     *
     * @param start cells of the holes
     * @param locked how many of the first ones stay where they are
     */
    static int[] improve(CoverTask task, int[] start, int locked, int allowedOpen) {
        Relaxation r = new Relaxation(
                task.cavity(), task.places(), task.holeReachMm(), task.travel(), task.reachMm(), allowedOpen);
        int[] best = start;
        while (best.length > Math.max(1, locked)) {
            int[] fewer = r.oneFewer(best, locked);
            if (fewer == null) {
                return best;
            }
            best = fewer;
        }
        return best;
    }

    private int @Nullable [] oneFewer(int[] holes, int locked) {
        int[] byUse = byUse(holes, locked);
        for (int start = 0; start < Math.min(STARTS, byUse.length) && work < WORK; start++) {
            int gone = byUse[start];
            double[] x = new double[holes.length - 1];
            double[] y = new double[holes.length - 1];
            int n = 0;
            for (int i = 0; i < holes.length; i++) {
                if (i != gone) {
                    x[n] = cavity.x(holes[i]);
                    y[n++] = cavity.y(holes[i]);
                }
            }
            int[] settled = descend(x, y, locked);
            if (settled != null) {
                return settled;
            }
        }
        return null;
    }

    /** The holes that may go, least useful first. */
    private int[] byUse(int[] holes, int locked) {
        Arrays.fill(times, 0);
        int[][] cells = new int[holes.length][];
        for (int i = 0; i < holes.length; i++) {
            cells[i] = travel.coveredFrom(holes[i], holeReachMm[holes[i]]);
            count(cells[i], 1);
        }
        long[] keyed = new long[holes.length - locked];
        for (int i = locked; i < holes.length; i++) {
            long alone = Arrays.stream(cells[i]).filter(c -> times[c] == 1).count();
            keyed[i - locked] = (alone << 32) + i;
        }
        Arrays.sort(keyed);
        return Arrays.stream(keyed).mapToInt(k -> (int) k).toArray();
    }

    private int @Nullable [] descend(double[] x, double[] y, int locked) {
        double[] pullX = new double[x.length];
        double[] pullY = new double[x.length];
        int[] pulls = new int[x.length];
        for (int round = 0; round < ROUNDS && work < WORK; round++) {
            Arrays.fill(pullX, 0);
            Arrays.fill(pullY, 0);
            Arrays.fill(pulls, 0);
            int open = pull(x, y, pullX, pullY, pulls);
            if (open <= 1.5 * allowedOpen) { // the last ones may close by shifts
                int[] cells = settle(x, y, locked);
                if (cells != null) {
                    return cells;
                }
            }
            for (int i = locked; i < x.length; i++) {
                if (pulls[i] > 0) {
                    moveInside(x, y, i, pullX[i] / pulls[i], pullY[i] / pulls[i]);
                }
            }
        }
        return null;
    }

    private void moveInside(double[] x, double[] y, int i, double dx, double dy) {
        double step = 1.3; // over-relaxed: open cells on two sides alternate otherwise
        int there = cellAt(x[i] + step * dx, y[i] + step * dy);
        if (there >= 0 && places.allowed[there]) {
            x[i] += step * dx;
            y[i] += step * dy;
        }
    }

    private int cellAt(double x, double y) {
        int row = (int) Math.floor((y - cavity.y0) / cavity.cell);
        int column = (int) Math.floor((x - cavity.x0) / cavity.cell);
        return row < 0 || column < 0 || row >= cavity.rows || column >= cavity.columns
                ? -1
                : row * cavity.columns + column;
    }

    /** Sums the pulls of the cells beyond the reach; how many cells lie beyond it. */
    private int pull(double[] x, double[] y, double[] pullX, double[] pullY, int[] pulls) {
        sort(x, y);
        int open = 0;
        for (int k = 0; k < cavity.cells.length; k++) {
            double cx = cellX[k];
            double cy = cellY[k];
            int nearest = -1;
            double least = Double.POSITIVE_INFINITY;
            int[] near = bins[binOf[k]];
            int many = binSize[binOf[k]];
            for (int n = 0; n < many; n++) {
                int i = near[n];
                double d = (x[i] - cx) * (x[i] - cx) + (y[i] - cy) * (y[i] - cy);
                if (d < least) {
                    least = d;
                    nearest = i;
                }
            }
            work += many;
            if (nearest < 0) {
                open++;
                continue;
            }
            double reach = holeReachMm[cellAt(x[nearest], y[nearest])];
            double beyond = Math.sqrt(least) - reach;
            open += beyond > 0 ? 1 : 0;
            if (beyond > -AIM_CELLS * cavity.cell) {
                double by = (beyond + AIM_CELLS * cavity.cell) / Math.sqrt(least);
                pullX[nearest] += by * (cx - x[nearest]);
                pullY[nearest] += by * (cy - y[nearest]);
                pulls[nearest]++;
            }
        }
        return open;
    }

    private int bin(double x, double y) {
        int row = (int) Math.max(0, Math.min(binRows - 1, (y - cavity.y0) / binMm));
        int column = (int) Math.max(0, Math.min(binColumns - 1, (x - cavity.x0) / binMm));
        return row * binColumns + column;
    }

    /** Sorts the holes into the bins, each into its own and the eight round it. */
    private void sort(double[] x, double[] y) {
        Arrays.fill(binSize, 0);
        for (int i = 0; i < x.length; i++) {
            int at = bin(x[i], y[i]);
            for (int r = Math.max(0, at / binColumns - 1); r <= Math.min(binRows - 1, at / binColumns + 1); r++) {
                for (int c = Math.max(0, at % binColumns - 1);
                        c <= Math.min(binColumns - 1, at % binColumns + 1);
                        c++) {
                    int b = r * binColumns + c;
                    if (binSize[b] == bins[b].length) {
                        bins[b] = Arrays.copyOf(bins[b], 2 * binSize[b]);
                    }
                    bins[b][binSize[b]++] = i;
                }
            }
        }
    }

    /** On whole cells and shifted; null where too many cells stay out of reach. */
    private int @Nullable [] settle(double[] x, double[] y, int locked) {
        int[] cells = new int[x.length];
        int[][] covered = new int[x.length][];
        Arrays.fill(times, 0);
        int open = cavity.cells.length;
        for (int i = 0; i < x.length; i++) {
            cells[i] = cellAt(x[i], y[i]);
            covered[i] = reached(cells[i]);
            open -= count(covered[i], 1);
            work += 10L * covered[i].length;
        }
        for (int pass = 0; pass < 3 && open > allowedOpen && open < 3 * allowedOpen + 20; pass++) {
            int before = open;
            for (int i = locked; i < cells.length && open > allowedOpen; i++) {
                open = shift(cells, covered, i, open);
            }
            if (open == before) {
                break;
            }
        }
        return open <= allowedOpen ? cells : null;
    }

    /** Cells that a hole at a cell covers. */
    private int[] reached(int cell) {
        return travel.coveredFrom(cell, holeReachMm[cell]);
    }

    /** Tries the eight cells round a hole; the open cells that are left. */
    private int shift(int[] cells, int[][] covered, int i, int open) {
        int without = open + count(covered[i], -1);
        int best = cells[i];
        int[] bestCovered = covered[i];
        int least = open;
        for (int k = 0; k < 8; k++) { // rook and bishop steps come first
            int there = cells[i] + cavity.stepOffset(k);
            if (!places.allowed[there]) {
                continue;
            }
            int[] reached = reached(there);
            work += 10L * reached.length;
            int closed = 0;
            for (int c : reached) {
                closed += times[c] == 0 ? 1 : 0;
            }
            if (without - closed < least) {
                least = without - closed;
                best = there;
                bestCovered = reached;
            }
        }
        cells[i] = best;
        covered[i] = bestCovered;
        return without - count(bestCovered, 1);
    }

    /** Adds to the cover counts; how many cells changed between open and covered. */
    private int count(int[] cells, int by) {
        int changed = 0;
        for (int c : cells) {
            changed += times[c] == (by > 0 ? 0 : 1) ? 1 : 0;
            times[c] += by;
        }
        return changed;
    }
}
