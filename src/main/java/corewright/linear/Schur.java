package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is left of a matrix, bordered by further columns, once most of its unknowns are eliminated. With the matrix A parted into
 * kept unknowns w and the others p, and columns B that touch only others:
 *
 * <pre>
 *   [ A_ww   0 ]   [ A_wp ]          [ A_wp ]ᵀ
 *   [  0     0 ] - [ B_pᵀ ] A_pp⁻¹   [ B_pᵀ ]
 * </pre>
 *
 * <p>and of forces {@code [ f_w ; 0 ] - [ A_wp ; B_pᵀ ] A_pp⁻¹ f_p}.
 */
public final class Schur {
    private final Eliminated others;

    /** Of each unknown of A, its number in the bordered matrix. */
    private final int[] place;

    /** Of each unknown of the bordered matrix, its number among those kept, then the columns; -1 if it is eliminated. */
    private final int[] kept;

    private final int size;

    /**
     * An elimination, and what it leaves: apart, as that is large and wanted once.
     *
     * @param matrix first the kept unknowns, then the columns
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    public record Left(Schur others, double[][] matrix) {}

    private Schur(Eliminated others, int[] place, int[] kept, int size) {
        this.others = others;
        this.place = place;
        this.kept = kept;
        this.size = size;
    }

    /**
     * @param x place of each node, for the elimination order
     * @param y place of each node
     * @param keep unknowns w, ascending
     * @param columns B
     * @throws NotPositiveDefiniteException if A_pp is not positive definite
     */
    public static Left of(BlockMatrix a, double[] x, double[] y, int[] keep, List<SparseVector> columns) {
        int n = a.nodes();
        Split split = new Split(a, keep);
        BlockMatrix bordered = bordered(a, split, columns);
        int[] place = new int[a.size()];
        int[] kept = new int[bordered.size()];
        Arrays.fill(kept, -1);
        for (int i = 0; i < place.length; i++) {
            place[i] = bordered.first(split.node[i]) + split.within[i];
        }
        for (int k = 0; k < keep.length; k++) {
            kept[place[keep[k]]] = k;
        }
        for (int c = 0; c < columns.size(); c++) {
            kept[bordered.first(2 * n + c)] = keep.length + c;
        }
        double[] px = Arrays.copyOf(x, bordered.nodes());
        double[] py = Arrays.copyOf(y, bordered.nodes());
        Eliminated.Left found = Cholesky.eliminated(
                bordered, px, py, IntStream.range(n, bordered.nodes()).toArray());
        double[][] left = new double[keep.length + columns.size()][keep.length + columns.size()];
        bordered.forEach((i, j, value) -> {
            if (kept[i] >= 0 && kept[j] >= 0) {
                left[kept[i]][kept[j]] = value;
                left[kept[j]][kept[i]] = value;
            }
        });
        int[] rows = found.others().rows();
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j <= i; j++) {
                double value = found.lower()[i][j];
                left[kept[rows[i]]][kept[rows[j]]] += value;
                if (j < i) {
                    left[kept[rows[j]]][kept[rows[i]]] += value;
                }
            }
        }
        return new Left(new Schur(found.others(), place, kept, left.length), left);
    }

    /** Each node parted in two, the second of what is kept. */
    private static final class Split {
        final int[] sizes;
        final int[] node;
        final int[] within;

        Split(BlockMatrix a, int[] keep) {
            int n = a.nodes();
            sizes = new int[2 * n];
            node = new int[a.size()];
            within = new int[a.size()];
            for (int v = 0; v < n; v++) {
                for (int i = a.first(v); i < a.first(v) + a.size(v); i++) {
                    node[i] = Arrays.binarySearch(keep, i) >= 0 ? n + v : v;
                    within[i] = sizes[node[i]]++;
                }
            }
        }
    }

    private static BlockMatrix bordered(BlockMatrix a, Split split, List<SparseVector> columns) {
        int n = a.nodes();
        List<int[]> cliques = new ArrayList<>();
        for (int v = 0; v < n; v++) {
            for (int b : a.neighbours(v)) {
                if (b <= v) {
                    cliques.add(new int[] {v, n + v, b, n + b});
                }
            }
        }
        int[] sizes = Arrays.copyOf(split.sizes, 2 * n + columns.size());
        for (int c = 0; c < columns.size(); c++) {
            sizes[2 * n + c] = 1;
            SparseVector column = columns.get(c);
            for (int k = 0; k < column.length(); k++) {
                cliques.add(new int[] {2 * n + c, split.node[column.index(k)]});
            }
        }
        BlockMatrix bordered = new BlockMatrix(sizes, cliques.toArray(int[][]::new));
        a.forEach((i, j, value) -> {
            boolean swap = split.node[i] < split.node[j];
            int row = swap ? j : i;
            int column = swap ? i : j;
            bordered.set(split.node[row], split.within[row], split.node[column], split.within[column], value);
        });
        for (int c = 0; c < columns.size(); c++) {
            SparseVector column = columns.get(c);
            for (int k = 0; k < column.length(); k++) {
                int i = column.index(k);
                bordered.set(2 * n + c, 0, split.node[i], split.within[i], column.value(k));
            }
        }
        return bordered;
    }

    /** What is left of forces, by rows. */
    public double[][] carried(double[][] forces) {
        List<SparseVector> all = new ArrayList<>();
        for (double[] force : forces) {
            double[] here = new double[kept.length];
            for (int i = 0; i < force.length; i++) {
                here[place[i]] = force[i];
            }
            all.add(SparseVector.of(here));
        }
        return others.carried(all, kept, size);
    }
}
