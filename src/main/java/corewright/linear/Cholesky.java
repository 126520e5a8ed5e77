package corewright.linear;

import corewright.linear.Dense.Rows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveTask;

/** K = L Lᵀ by the multifrontal method. Immutable once made; any number of threads may solve with it. */
public final class Cholesky {
    /** Subtrees with fewer unknowns than this are not worth a task of their own: about 5 ms of work. */
    private static final int TASK_UNKNOWNS = 2000;

    private final Fronts fronts;

    /** Rows of L of each front, {@code rows × pivots}. */
    private final double[][] l;

    private Cholesky(Fronts fronts) {
        this.fronts = fronts;
        this.l = new double[fronts.root + 1][];
    }

    /**
     * Factors a symmetric positive definite matrix.
     *
     * @param x place of each node, for the elimination order
     * @param y place of each node
     * @throws NotPositiveDefiniteException if it is not
     */
    public static Cholesky factor(BlockMatrix a, double[] x, double[] y) {
        Cholesky factor = new Cholesky(new Fronts(a, new Dissection(a, x, y)));
        factor.new Elimination(a, factor.fronts.root).invoke();
        return factor;
    }

    /** Number of entries of L, zeros inside fronts among them. */
    public long entries() {
        return Arrays.stream(l).mapToLong(p -> p.length).sum();
    }

    /** Eliminates a front after its children; hands on its Schur complement, row-major. */
    private final class Elimination extends RecursiveTask<double[]> {
        private static final long serialVersionUID = 1L;

        private final transient BlockMatrix a;
        private final int front;

        Elimination(BlockMatrix a, int front) {
            this.a = a;
            this.front = front;
        }

        @Override
        protected double[] compute() {
            List<Elimination> branches = new ArrayList<>();
            for (int child : fronts.children[front]) {
                branches.add(new Elimination(a, child));
            }
            if (fronts.subtree[front] > TASK_UNKNOWNS) {
                ForkJoinTask.invokeAll(branches);
            } else {
                branches.forEach(ForkJoinTask::invoke);
            }
            int m = fronts.rows[front].length;
            int p = fronts.pivots[front];
            double[] f = new double[m * m];
            takeEntries(a, front, f);
            for (Elimination branch : branches) {
                takeLeftOver(branch.front, branch.getRawResult(), f, m);
                branch.setRawResult(new double[0]);
            }
            Dense.eliminate(new Rows(f, 0, m, m), p);
            l[front] = corner(f, m, 0, 0, m, p);
            return corner(f, m, p, p, m - p, m - p);
        }
    }

    /** Adds the matrix's own entries in the columns a front eliminates. */
    private void takeEntries(BlockMatrix a, int front, double[] f) {
        int[] rows = fronts.rows[front];
        int m = rows.length;
        for (int v : fronts.ownNodes(front)) {
            if (a.size(v) == 0) {
                continue;
            }
            int column = fronts.rowOf[a.first(v)];
            for (int b : a.neighbours(v)) {
                if (fronts.positionOf(b) >= fronts.positionOf(v) && a.size(b) > 0) {
                    place(a, b, v, f, m, fronts.rowIn(front, a, b), column);
                }
            }
        }
    }

    /** Puts the block (b, v) at a row and column of a front; the matrix keeps it as (b, v) or as (v, b). */
    private static void place(BlockMatrix a, int b, int v, double[] f, int m, int row, int column) {
        int rows = a.size(b);
        int columns = a.size(v);
        int at = a.blockAt(Math.max(b, v), Math.min(b, v));
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                f[(row + i) * m + column + j] = a.values()[b >= v ? at + i * columns + j : at + j * rows + i];
            }
        }
    }

    private void takeLeftOver(int child, double[] part, double[] f, int m) {
        int[] map = fronts.rowInParent[child];
        int n = map.length;
        for (int i = 0; i < n; i++) {
            int to = map[i] * m;
            for (int j = 0; j <= i; j++) {
                f[to + map[j]] += part[i * n + j];
            }
        }
    }

    private static double[] corner(double[] f, int stride, int row, int column, int rows, int columns) {
        double[] part = new double[rows * columns];
        for (int i = 0; i < rows; i++) {
            System.arraycopy(f, (row + i) * stride + column, part, i * columns, columns);
        }
        return part;
    }

    /** Solves K x = b. */
    public double[] solve(double[] b) {
        double[] x = b.clone();
        for (int f = 0; f < l.length; f++) {
            forward(f, x);
        }
        for (int f = l.length - 1; f >= 0; f--) {
            backward(f, x);
        }
        return x;
    }

    /** Solves, then corrects the solution once from its own residual. */
    public double[] solveRefined(BlockMatrix a, double[] b) {
        double[] x = solve(b);
        double[] product = a.times(x);
        double[] residual = new double[b.length];
        Arrays.setAll(residual, i -> b[i] - product[i]);
        double[] correction = solve(residual);
        Arrays.setAll(x, i -> x[i] + correction[i]);
        return x;
    }

    private void forward(int f, double[] x) {
        int[] rows = fronts.rows[f];
        int p = fronts.pivots[f];
        double[] own = new double[p];
        for (int j = 0; j < p; j++) {
            own[j] = (x[rows[j]] - Dense.dot(l[f], j * p, own, 0, j)) / l[f][j * p + j];
            x[rows[j]] = own[j];
        }
        for (int i = p; i < rows.length; i++) {
            x[rows[i]] -= Dense.dot(l[f], i * p, own, 0, p);
        }
    }

    private void backward(int f, double[] x) {
        int[] rows = fronts.rows[f];
        int p = fronts.pivots[f];
        double[] own = new double[p];
        Arrays.setAll(own, j -> x[rows[j]]);
        for (int i = rows.length - 1; i >= p; i--) {
            subtractRow(l[f], i * p, x[rows[i]], own, p);
        }
        for (int j = p - 1; j >= 0; j--) {
            own[j] /= l[f][j * p + j];
            subtractRow(l[f], j * p, own[j], own, j);
            x[rows[j]] = own[j];
        }
    }

    private static void subtractRow(double[] l, int at, double factor, double[] own, int length) {
        for (int j = 0; j < length; j++) {
            own[j] -= l[at + j] * factor;
        }
    }

    /**
     * The products {@code g_k' K⁻¹ f_k} for sparse vectors, by forward substitution alone: (L⁻¹ g)·(L⁻¹ f). Only the
     * fronts between the unknowns touched and the root are visited, so vectors that lie close together belong in one call.
     *
     * @param f right-hand sides
     * @param g as many vectors, what is asked of each solution
     */
    public double[] products(List<SparseVector> f, List<SparseVector> g) {
        List<SparseVector> both = new ArrayList<>(f);
        both.addAll(g);
        boolean[] visited = new boolean[l.length];
        both.forEach(v -> markPath(v, visited));
        double[][] leftOver = new double[l.length][];
        double[] result = new double[f.size()];
        for (int front = 0; front < l.length; front++) {
            if (visited[front]) {
                passUp(front, both, leftOver, result);
            }
        }
        return result;
    }

    private void markPath(SparseVector v, boolean[] visited) {
        for (int k = 0; k < v.length(); k++) {
            for (int f = fronts.frontOf[v.index(k)]; f >= 0 && !visited[f]; f = fronts.parent[f]) {
                visited[f] = true;
            }
        }
    }

    /** One front of {@link #products}: gathers, eliminates, adds to the products, leaves the rest to the parent. */
    private void passUp(int f, List<SparseVector> vectors, double[][] leftOver, double[] result) {
        int n = vectors.size();
        int m = fronts.rows[f].length;
        int p = fronts.pivots[f];
        double[] x = new double[n * m];
        for (int r = 0; r < n; r++) {
            takeOwn(f, vectors.get(r), x, r * m);
        }
        for (int child : fronts.children[f]) {
            if (leftOver[child] != null) {
                int[] map = fronts.rowInParent[child];
                for (int r = 0; r < n; r++) {
                    for (int i = 0; i < map.length; i++) {
                        x[r * m + map[i]] += leftOver[child][r * map.length + i];
                    }
                }
                leftOver[child] = new double[0];
            }
        }
        Rows all = new Rows(x, 0, m, n);
        Rows factor = new Rows(l[f], 0, p, p);
        Dense.forward(all, factor);
        for (int k = 0; k < result.length; k++) {
            result[k] += Dense.dot(x, k * m, x, (result.length + k) * m, p);
        }
        Dense.subtractProducts(all.from(0, p, n), all, factor.from(p, 0, m - p), p, false);
        leftOver[f] = corner(x, m, 0, p, n, m - p);
    }

    private void takeOwn(int f, SparseVector v, double[] x, int at) {
        for (int k = 0; k < v.length(); k++) {
            if (fronts.frontOf[v.index(k)] == f) {
                x[at + fronts.rowOf[v.index(k)]] += v.value(k);
            }
        }
    }
}
