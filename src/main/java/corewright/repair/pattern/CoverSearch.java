package corewright.repair.pattern;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Takes holes out of a cover one by one: row-weighting local search for the set-cover problem with equal costs (after Gao,
 * Weise and Li 2015, from memory).
 *
 * <p>Every cell has a weight, at first 1. A hole's score is the weight it alone covers (in the set) or would newly cover
 * (out of it). While the set covers, it is kept and its least useful hole dropped. Otherwise the least useful hole but
 * the newest is dropped, the best hole over a random open cell is added, and every cell still open gains weight, so that
 * corners that stay open grow loud. Same input, same result: the seed is fixed and work is counted, not timed.
 */
final class CoverSearch {
    /** Moves without a better set, for each hole of the set, before it gives up; tried 100 to 1000 on ragged areas. */
    private static final int PATIENCE = 200;

    /** Bound on elementary steps, about 0.1 s on a small machine; twice the work saves one hole in a hundred. */
    private static final long WORK = 60_000_000L;

    private static final long SEED = 20260402L;

    private final Cover cover;
    private final boolean[] in;
    private final int[] times;
    private final long[] weight;
    private final long[] score;
    private final long[] changed;
    /** Sum of the numbers of the chosen holes over a cell: with one hole left, its number. */
    private final long[] holeSum;
    /** The open cells, unordered, and where each stands in the list. */
    private final int[] open;

    private final int[] openAt;
    private int openCount;
    private int size;
    private long work;

    private CoverSearch(Cover cover, int[] start) {
        this.cover = cover;
        in = new boolean[cover.candidates()];
        times = new int[cover.cells()];
        weight = new long[cover.cells()];
        score = new long[cover.candidates()];
        changed = new long[cover.candidates()];
        holeSum = new long[cover.cells()];
        open = new int[cover.cells()];
        openAt = new int[cover.cells()];
        Arrays.fill(weight, 1);
        for (int c = 0; c < cover.cells(); c++) {
            if (cover.holesOf[c].length > 0) {
                listOpen(c);
            }
        }
        for (int h = 0; h < score.length; h++) {
            score[h] = cover.cellsOf[h].length;
        }
        for (int h : start) {
            add(h);
        }
    }

    /** A cover no larger than {@code start}, which must be one. */
    static int[] improve(Cover cover, int[] start) {
        return new CoverSearch(cover, start).run(start);
    }

    private int[] run(int[] start) {
        SplittableRandom random = new SplittableRandom(SEED);
        int[] best = start;
        int newest = -1;
        long patience = 0;
        for (long move = 1; work < WORK && patience < (long) PATIENCE * best.length; move++) {
            while (openCount <= cover.allowedOpen && size > 0) {
                if (size < best.length) {
                    best = chosen();
                    patience = 0;
                }
                drop(leastUseful(-1), move);
            }
            if (size == 0 || best.length <= 1) {
                break;
            }
            int gone = leastUseful(newest);
            drop(gone, move);
            newest = bestOver(open[random.nextInt(openCount)], gone);
            changed[newest] = move;
            add(newest);
            louder();
            patience++;
        }
        return best;
    }

    private int[] chosen() {
        int[] list = new int[size];
        int n = 0;
        for (int h = 0; h < in.length; h++) {
            if (in[h]) {
                list[n++] = h;
            }
        }
        return list;
    }

    private int leastUseful(int spared) {
        int least = -1;
        for (int h = 0; h < in.length; h++) {
            if (in[h] && h != spared && (least < 0 || before(h, least, score[least] - score[h]))) {
                least = h;
            }
        }
        work += in.length / 8; // a plain scan, cheaper than a step
        return least < 0 ? spared : least;
    }

    private int bestOver(int cell, int banned) {
        int best = -1;
        for (int h : cover.holesOf[cell]) {
            if (h != banned && (best < 0 || before(h, best, score[h] - score[best]))) {
                best = h;
            }
        }
        return best < 0 ? banned : best;
    }

    /** Better by score, at a tie longest unchanged. */
    private boolean before(int hole, int other, long better) {
        return better > 0 || (better == 0 && changed[hole] < changed[other]);
    }

    private void add(int hole) {
        in[hole] = true;
        size++;
        long mine = 0;
        for (int c : cover.cellsOf[hole]) {
            if (times[c] == 0) {
                unlistOpen(c);
                lower(c);
                mine += weight[c];
            } else if (times[c] == 1) {
                score[(int) holeSum[c]] -= weight[c];
            }
            times[c]++;
            holeSum[c] += hole;
        }
        work += cover.cellsOf[hole].length;
        score[hole] = mine;
    }

    private void drop(int hole, long move) {
        in[hole] = false;
        size--;
        changed[hole] = move;
        long mine = 0;
        for (int c : cover.cellsOf[hole]) {
            times[c]--;
            holeSum[c] -= hole;
            if (times[c] == 0) {
                listOpen(c);
                raise(c, weight[c]);
                mine += weight[c];
            } else if (times[c] == 1) {
                score[(int) holeSum[c]] += weight[c];
            }
        }
        work += cover.cellsOf[hole].length;
        score[hole] = mine;
    }

    private void louder() {
        for (int i = 0; i < openCount; i++) {
            weight[open[i]]++;
            raise(open[i], 1);
        }
    }

    private void raise(int cell, long by) {
        for (int h : cover.holesOf[cell]) {
            score[h] += by;
        }
        work += cover.holesOf[cell].length;
    }

    private void lower(int cell) {
        for (int h : cover.holesOf[cell]) {
            score[h] -= weight[cell];
        }
        work += cover.holesOf[cell].length;
    }

    private void listOpen(int cell) {
        openAt[cell] = openCount;
        open[openCount++] = cell;
    }

    private void unlistOpen(int cell) {
        int last = open[--openCount];
        open[openAt[cell]] = last;
        openAt[last] = openAt[cell];
    }
}
