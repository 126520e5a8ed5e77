package corewright.repair.pattern;

import java.util.Arrays;

/**
 * A set-cover problem: which cells each candidate hole covers, and which candidates cover each cell.
 *
 * <p>Cells are numbered from 0; cells that no candidate covers are left out and counted.
 */
final class Cover {
    /** Candidate → its cells. */
    final int[][] cellsOf;
    /** Cell → its candidates. */
    final int[][] holesOf;
    /** Cells that at least one candidate covers. */
    final int coverable;
    /** Cells that may stay open. */
    final int allowedOpen;

    /**
     * @param cellsOf candidate → numbers of the cells it covers
     * @param cells how many cells there are
     * @param openShare share of all cells that may stay uncovered
     */
    Cover(int[][] cellsOf, int cells, double openShare) {
        this.cellsOf = cellsOf;
        int[] counts = new int[cells];
        for (int[] list : cellsOf) {
            for (int c : list) {
                counts[c]++;
            }
        }
        holesOf = new int[cells][];
        int some = 0;
        for (int c = 0; c < cells; c++) {
            holesOf[c] = new int[counts[c]];
            some += counts[c] > 0 ? 1 : 0;
        }
        coverable = some;
        Arrays.fill(counts, 0);
        for (int h = 0; h < cellsOf.length; h++) {
            for (int c : cellsOf[h]) {
                holesOf[c][counts[c]++] = h;
            }
        }
        allowedOpen = Math.max(0, (int) (openShare * cells) - (cells - coverable));
    }

    int candidates() {
        return cellsOf.length;
    }

    int cells() {
        return holesOf.length;
    }

    /** Completes a set greedily, most newly covered cells first (ties: lowest number), then drops what is not needed. */
    int[] complete(int[] start) {
        boolean[] chosen = new boolean[candidates()];
        int[] times = new int[cells()];
        int open = coverable;
        for (int h : start) {
            if (!chosen[h]) {
                chosen[h] = true;
                open -= add(h, times);
            }
        }
        open = addGreedily(chosen, times, open);
        prune(chosen, times, open);
        return numbers(chosen);
    }

    /** Size of the plain greedy cover. */
    int greedy() {
        boolean[] chosen = new boolean[candidates()];
        addGreedily(chosen, new int[cells()], coverable);
        return numbers(chosen).length;
    }

    private int add(int hole, int[] times) {
        int fresh = 0;
        for (int c : cellsOf[hole]) {
            fresh += times[c]++ == 0 ? 1 : 0;
        }
        return fresh;
    }

    private int addGreedily(boolean[] chosen, int[] times, int open) {
        if (open <= allowedOpen) {
            return open;
        }
        int[] gain = new int[candidates()];
        for (int c = 0; c < times.length; c++) {
            if (times[c] == 0) {
                for (int h : holesOf[c]) {
                    gain[h]++;
                }
            }
        }
        int left = open;
        while (left > allowedOpen) {
            int best = 0;
            for (int h = 1; h < gain.length; h++) {
                best = gain[h] > gain[best] ? h : best;
            }
            chosen[best] = true;
            for (int c : cellsOf[best]) {
                if (times[c]++ == 0) {
                    left--;
                    for (int h : holesOf[c]) {
                        gain[h]--;
                    }
                }
            }
        }
        return left;
    }

    private void prune(boolean[] chosen, int[] times, int open) {
        int left = open;
        while (true) {
            int least = -1;
            int leastAlone = Integer.MAX_VALUE;
            for (int h = 0; h < chosen.length; h++) {
                if (chosen[h]) {
                    int alone = alone(h, times, leastAlone);
                    if (alone < leastAlone) {
                        leastAlone = alone;
                        least = h;
                    }
                }
            }
            if (least < 0 || left + leastAlone > allowedOpen) {
                return;
            }
            chosen[least] = false;
            left += leastAlone;
            for (int c : cellsOf[least]) {
                times[c]--;
            }
        }
    }

    private int alone(int hole, int[] times, int enough) {
        int n = 0;
        for (int c : cellsOf[hole]) {
            if (times[c] == 1 && ++n >= enough) {
                return n;
            }
        }
        return n;
    }

    private static int[] numbers(boolean[] chosen) {
        int[] list = new int[chosen.length];
        int n = 0;
        for (int h = 0; h < chosen.length; h++) {
            if (chosen[h]) {
                list[n++] = h;
            }
        }
        return Arrays.copyOf(list, n);
    }
}
