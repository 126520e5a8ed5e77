package corewright.repair.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Few holes whose reach covers a cavity.
 *
 * <p>Candidates are allowed cells, every second each way and any without such a neighbour; each covers the cells within
 * its reach, measured inside the cavity. Starts are the greedy cover and triangular lattices of spacing {@code sqrt3 R}
 * (the thinnest covering of the plane: Kershner, Amer. J. Math. 61 (1939) 665) over phases and rotations, snapped to
 * candidates, completed greedily, pruned. The best is improved by {@link CoverSearch}.
 */
public final class HolePattern {
    /** Share of the cells that may stay uncovered for the sake of fewer holes: leaves 0.995 with a little to spare. */
    private static final double OPEN_SHARE = 0.0045;

    /** A lattice point moves at most this share of the reach; farther ones are dropped. */
    private static final double SNAP_SHARE = 0.75;

    private static final int ROTATIONS = 6;
    private static final int PHASES = 4;
    private static final double[] SPACINGS = {1.0, 0.94};

    private final Cavity cavity;
    private final int[] candidates;
    /** By flat index: number of the candidate at the cell, or -1. */
    private final int[] candidateAt;

    private final Cover cover;

    private HolePattern(CoverTask task, int[] candidates, int[] open) {
        cavity = task.cavity();
        this.candidates = candidates;
        candidateAt = new int[cavity.size()];
        Arrays.fill(candidateAt, -1);
        int[] number = new int[cavity.size()];
        Arrays.fill(number, -1);
        for (int i = 0; i < open.length; i++) {
            number[open[i]] = i;
        }
        int[][] cellsOf = new int[candidates.length][];
        for (int h = 0; h < candidates.length; h++) {
            candidateAt[candidates[h]] = h;
            int[] covered = task.travel().coveredFrom(candidates[h], task.holeReachMm()[candidates[h]]);
            cellsOf[h] = Arrays.stream(covered)
                    .map(c -> number[c])
                    .filter(i -> i >= 0)
                    .toArray();
        }
        double share =
                OPEN_SHARE * cavity.cells.length / Math.max(1, open.length); // of all cells, not of the open ones
        cover = new Cover(cellsOf, open.length, Math.min(1, share));
    }

    /**
     * Cells for the injection holes, ascending; only the locked ones where no other may stand or is needed.
     *
     * @param locked cells of holes that stay; what they cover is left out of the search
     */
    public static int[] holes(CoverTask task, int[] locked) {
        int[] open = open(task, locked);
        int[] candidates = candidates(task.cavity(), task.places());
        if (candidates.length == 0 || open.length == 0) {
            return Arrays.stream(locked).sorted().toArray();
        }
        HolePattern pattern = new HolePattern(task, candidates, open);
        int[] best = CoverSearch.improve(pattern.cover, pattern.start(task.reachMm()));
        int[] cells = Arrays.copyOf(locked, locked.length + best.length);
        for (int i = 0; i < best.length; i++) {
            cells[locked.length + i] = candidates[best[i]];
        }
        int allowedOpen = pattern.cover.allowedOpen + open.length - pattern.cover.coverable;
        cells = Relaxation.improve(task, cells, locked.length, allowedOpen);
        return Arrays.stream(cells).sorted().distinct().toArray();
    }

    /**
     * What a pattern comes to before any search.
     *
     * @param unreached cells that no hole may be drilled for
     * @param holes besides the locked ones, a little more than {@link #holes} finds
     */
    record Rough(int unreached, int holes) implements Comparable<Rough> {
        @Override
        public int compareTo(Rough o) {
            return unreached != o.unreached ? Integer.compare(unreached, o.unreached) : Integer.compare(holes, o.holes);
        }
    }

    /** Far sooner than {@link #holes}. */
    static Rough roughly(CoverTask task, int[] locked) {
        int[] open = open(task, locked);
        int[] candidates = candidates(task.cavity(), task.places());
        if (candidates.length == 0 || open.length == 0) {
            return new Rough(open.length, 0);
        }
        HolePattern pattern = new HolePattern(task, candidates, open);
        return new Rough(open.length - pattern.cover.coverable, pattern.start(task.reachMm()).length);
    }

    /** The fewest of the greedy cover and the lattices. */
    private int[] start(double reachMm) {
        int[] best = cover.complete(new int[0]);
        for (int[] start : lattices(reachMm)) {
            int[] whole = cover.complete(start);
            best = whole.length < best.length ? whole : best;
        }
        return best;
    }

    /** Cells that no locked hole covers. */
    private static int[] open(CoverTask task, int[] locked) {
        boolean[] covered = new boolean[task.cavity().size()];
        for (int hole : locked) {
            for (int c : task.travel().coveredFrom(hole, task.holeReachMm()[hole])) {
                covered[c] = true;
            }
        }
        return Arrays.stream(task.cavity().cells).filter(c -> !covered[c]).toArray();
    }

    /** How many holes a plain greedy cover of the same cells takes, to compare with. */
    public static int greedy(CoverTask task) {
        return new HolePattern(task, candidates(task.cavity(), task.places()), task.cavity().cells).cover.greedy();
    }

    private static int[] candidates(Cavity cavity, DrillPlaces places) {
        boolean[] chosen = new boolean[cavity.size()];
        for (int c : cavity.cells) {
            chosen[c] = places.allowed[c] && c / cavity.columns % 2 == 0 && c % cavity.columns % 2 == 0;
        }
        int n = 0;
        int[] list = new int[cavity.cells.length];
        for (int c : cavity.cells) {
            if (places.allowed[c] && !chosen[c] && !anyNear(cavity, chosen, c)) {
                chosen[c] = true;
            }
            if (chosen[c]) {
                list[n++] = c;
            }
        }
        return Arrays.copyOf(list, n);
    }

    private static boolean anyNear(Cavity cavity, boolean[] chosen, int cell) {
        for (int r = -Cavity.MARGIN; r <= Cavity.MARGIN; r++) {
            for (int c = -Cavity.MARGIN; c <= Cavity.MARGIN; c++) {
                if (chosen[cell + r * cavity.columns + c]) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<int[]> lattices(double reachMm) {
        List<int[]> starts = new ArrayList<>();
        for (double spacing : SPACINGS) {
            double side = Math.sqrt(3) * reachMm * spacing;
            for (int turn = 0; turn < ROTATIONS; turn++) {
                double angle = Math.toRadians(60.0 * turn / ROTATIONS);
                for (int phase = 0; phase < PHASES * PHASES; phase++) {
                    double u = (phase % PHASES) / (double) PHASES;
                    double v = (phase / PHASES) / (double) PHASES;
                    starts.add(lattice(side, angle, u, v, SNAP_SHARE * reachMm));
                }
            }
        }
        return starts;
    }

    /** Candidates nearest to the points of one lattice: {@code (i + u) a + (j + v) b}, a and b at 60 degrees. */
    private int[] lattice(double side, double angle, double u, double v, double snapMm) {
        double width = cavity.columns * cavity.cell;
        double height = cavity.rows * cavity.cell;
        double middleX = cavity.x0 + width / 2;
        double middleY = cavity.y0 + height / 2;
        double ax = side * Math.cos(angle);
        double ay = side * Math.sin(angle);
        double bx = side * Math.cos(angle + Math.PI / 3);
        double by = side * Math.sin(angle + Math.PI / 3);
        int n = (int) Math.ceil((Math.hypot(width, height) / 2 + snapMm) / (side * Math.sqrt(3) / 2)) + 1;
        int[] found = new int[(2 * n + 1) * (2 * n + 1)];
        int count = 0;
        for (int i = -n; i <= n; i++) {
            for (int j = -n; j <= n; j++) {
                double x = middleX + (i + u) * ax + (j + v) * bx;
                double y = middleY + (i + u) * ay + (j + v) * by;
                int h = nearest(x, y, snapMm);
                if (h >= 0) {
                    found[count++] = h;
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The candidate nearest to a place, -1 where none lies within the limit. */
    private int nearest(double x, double y, double limitMm) {
        int row = (int) Math.floor((y - cavity.y0) / cavity.cell);
        int column = (int) Math.floor((x - cavity.x0) / cavity.cell);
        int rings = (int) Math.ceil(limitMm / cavity.cell) + 1;
        int best = -1;
        double bestMm = limitMm;
        for (int ring = 0; ring <= rings && (ring - 1) * cavity.cell <= bestMm; ring++) {
            for (int r = Math.max(0, row - ring); r <= Math.min(cavity.rows - 1, row + ring); r++) {
                boolean side = Math.abs(r - row) == ring;
                int stride = side || ring == 0 ? 1 : 2 * ring;
                for (int c = column - ring; c <= column + ring; c += stride) {
                    int h = c < 0 || c >= cavity.columns ? -1 : candidateAt[r * cavity.columns + c];
                    if (h >= 0) {
                        double d = Math.hypot(cavity.x(candidates[h]) - x, cavity.y(candidates[h]) - y);
                        if (d < bestMm) {
                            bestMm = d;
                            best = h;
                        }
                    }
                }
            }
        }
        return best;
    }
}
