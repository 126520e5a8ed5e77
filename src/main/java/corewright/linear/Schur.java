package corewright.linear;

import corewright.linear.Dense.Front;
import java.util.Arrays;
import java.util.List;

/** What is left of a matrix, bordered by further columns, once most of its unknowns are eliminated. */
public final class Schur {
    private Schur() {}

    /**
     * With the matrix A parted into kept unknowns w and the others p, and columns B that touch only others:
     *
     * <pre>
     *   [ A_ww   0 ]   [ A_wp ]          [ A_wp ]ᵀ
     *   [  0     0 ] - [ B_pᵀ ] A_pp⁻¹   [ B_pᵀ ]
     * </pre>
     *
     * @param keep unknowns w, ascending
     * @param columns B
     * @return all of it, first the kept unknowns, then the columns
     * @throws NotPositiveDefiniteException if A_pp is not positive definite
     */
    public static double[][] on(BlockMatrix a, int[] keep, List<SparseVector> columns) {
        int[] place = new int[a.size()];
        int others = 0;
        for (int i = 0; i < place.length; i++) {
            int kept = Arrays.binarySearch(keep, i);
            place[i] = kept >= 0 ? -1 - kept : others++;
        }
        Front f = Front.zero(others, keep.length + columns.size());
        a.forEach((i, j, value) -> put(f, place[i], place[j], value));
        for (int c = 0; c < columns.size(); c++) {
            SparseVector column = columns.get(c);
            for (int k = 0; k < column.length(); k++) {
                put(f, place[column.index(k)], -1 - keep.length - c, column.value(k));
            }
        }
        Dense.eliminate(f);
        double[][] left = f.left();
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < i; j++) {
                left[i][j] = left[j][i];
            }
        }
        return left;
    }

    /** Sets an entry of the upper triangle; places below 0 are those of what is left, from -1 down. */
    private static void put(Front f, int i, int j, double value) {
        if (i >= 0 && j >= 0) {
            f.own()[Math.min(i, j)][Math.max(i, j)] = value;
        } else if (i >= 0) {
            f.rest()[i][-1 - j] = value;
        } else if (j >= 0) {
            f.rest()[j][-1 - i] = value;
        } else {
            f.left()[Math.min(-1 - i, -1 - j)][Math.max(-1 - i, -1 - j)] = value;
        }
    }
}
