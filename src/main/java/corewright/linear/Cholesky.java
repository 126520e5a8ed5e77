package corewright.linear;

import corewright.linear.Dense.Front;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveTask;
import java.util.stream.IntStream;

/** K = Uᵀ U by the multifrontal method. Immutable once made; any number of threads may solve with it. */
public final class Cholesky {
    /** Subtrees with fewer unknowns than this are not worth a task of their own: about 2 ms of work. */
    private static final int TASK_UNKNOWNS = 2000;

    private final Fronts fronts;

    /** Rows of U of each front, at its pivots and at its boundary. */
    private final double[][][] own;

    private final double[][][] rest;

    private Cholesky(Fronts fronts) {
        this.fronts = fronts;
        this.own = new double[fronts.root + 1][][];
        this.rest = new double[fronts.root + 1][][];
    }

    /**
     * Factors a symmetric positive definite matrix.
     *
     * @param x place of each node, for the elimination order
     * @param y place of each node
     * @throws NotPositiveDefiniteException if it is not
     */
    public static Cholesky factor(BlockMatrix a, double[] x, double[] y) {
        return new Order(a, x, y, new int[0]).factor(a);
    }

    /**
     * The same of a matrix whose nodes' first unknowns hang together with first ones alone, or nearly so.
     *
     * @param lead how many unknowns of each node come first; 0 where they hang together with the rest
     */
    public static Cholesky factor(BlockMatrix a, int[] lead, double[] x, double[] y) {
        Parted parted = Parted.of(a, lead);
        return factor(parted.matrix(), parted.byPart(x), parted.byPart(y));
    }

    /** The order in which the unknowns of matrices of one structure are eliminated, found once for all of them. */
    public static final class Order {
        private final Fronts fronts;

        /**
         * @param a any matrix of the structure
         * @param last nodes that are eliminated last, ascending: those that are all coupled with each other
         */
        public Order(BlockMatrix a, double[] x, double[] y, int[] last) {
            int[] others = others(a, last);
            fronts = new Fronts(a, new Dissection(a, x, y, List.of(others), last));
        }

        /**
         * Factors a matrix of this structure.
         *
         * @throws NotPositiveDefiniteException if it is not positive definite
         */
        public Cholesky factor(BlockMatrix a) {
            Cholesky factor = new Cholesky(fronts);
            factor.eliminate(a, fronts.root);
            return factor;
        }
    }

    /**
     * Factors a symmetric positive definite matrix so that all but some nodes are eliminated first, and hands on what is left on these
     * then: one elimination for both.
     *
     * @param lead how many unknowns of each node hang together with such ones alone, but for the nodes kept
     * @param keep nodes, ascending
     * @throws NotPositiveDefiniteException if it is not
     */
    public static Around around(BlockMatrix a, int[] lead, double[] x, double[] y, int[] keep) {
        Parted parted = Parted.of(a, lead);
        return around(a, parted.matrix(), parted.byPart(x), parted.byPart(y), keep, parted.parts(keep));
    }

    private static Around around(BlockMatrix whole, BlockMatrix a, double[] x, double[] y, int[] nodes, int[] keep) {
        int[] others = others(a, keep);
        int[] rim = Arrays.stream(keep)
                .filter(v -> Arrays.stream(a.neighbours(v)).anyMatch(b -> Arrays.binarySearch(keep, b) < 0))
                .toArray();
        int[] inside =
                Arrays.stream(keep).filter(v -> Arrays.binarySearch(rim, v) < 0).toArray();
        Cholesky factor = new Cholesky(new Fronts(a, new Dissection(a, x, y, List.of(others, inside), rim)));
        int root = factor.fronts.root;
        if (others.length == 0) {
            factor.eliminate(a, root);
            return new Around(factor, new Condensation(whole, nodes, left(factor, Eliminated.NONE, new double[0][])));
        }
        int outside = keep.length == 0 ? root : factor.fronts.children[root][0];
        Elimination first = factor.new Elimination(a, outside);
        double[][] left = first.invoke();
        if (outside != root) {
            factor.new Elimination(a, root, first).invoke();
        }
        return new Around(factor, new Condensation(whole, nodes, left(factor, outside, left)));
    }

    private static int[] others(BlockMatrix a, int[] nodes) {
        return IntStream.range(0, a.nodes())
                .filter(v -> Arrays.binarySearch(nodes, v) < 0)
                .toArray();
    }

    /** Eliminates all nodes but some, in ascending order. */
    static Eliminated.Left eliminated(BlockMatrix a, double[] x, double[] y, int[] keep) {
        int[] others = others(a, keep);
        Cholesky factor = new Cholesky(new Fronts(a, new Dissection(a, x, y, List.of(others), keep)));
        if (others.length == 0) {
            return left(factor, Eliminated.NONE, new double[0][]);
        }
        int root = factor.fronts.root;
        int outside = keep.length == 0 ? root : factor.fronts.children[root][0];
        return left(factor, outside, factor.eliminate(a, outside));
    }

    private static Eliminated.Left left(Cholesky factor, int front, double[][] lower) {
        return new Eliminated.Left(new Eliminated(factor, front), lower);
    }

    private double[][] eliminate(BlockMatrix a, int front) {
        return new Elimination(a, front).invoke();
    }

    Fronts fronts() {
        return fronts;
    }

    /** Number of entries of U, zeros inside fronts among them. */
    public long entries() {
        long sum = 0;
        for (int f = 0; f < own.length; f++) {
            sum += (long) fronts.pivots[f] * fronts.rows[f].length;
        }
        return sum;
    }

    /** Eliminates a front after its children; hands on its Schur complement, lower triangle by rows. */
    private final class Elimination extends RecursiveTask<double[][]> {
        private static final long serialVersionUID = 1L;

        private final transient BlockMatrix a;
        private final int front;
        private final List<Elimination> done;

        /** @param done branches that are eliminated already */
        Elimination(BlockMatrix a, int front, Elimination... done) {
            this.a = a;
            this.front = front;
            this.done = List.of(done);
        }

        @Override
        protected double[][] compute() {
            List<Elimination> branches = new ArrayList<>();
            for (int child : fronts.children[front]) {
                if (done.stream().noneMatch(d -> d.front == child)) {
                    branches.add(new Elimination(a, child));
                }
            }
            if (fronts.subtree[front] > TASK_UNKNOWNS) {
                ForkJoinTask.invokeAll(branches);
            } else {
                branches.forEach(ForkJoinTask::invoke);
            }
            branches.addAll(0, done);
            int p = fronts.pivots[front];
            Front f = Front.zero(p, fronts.rows[front].length - p);
            takeEntries(a, front, f);
            for (Elimination branch : branches) {
                takeLeftOver(branch.front, branch.getRawResult(), f);
                branch.setRawResult(new double[0][]);
            }
            Dense.eliminate(f);
            own[front] = f.own();
            rest[front] = f.rest();
            return f.left();
        }
    }

    /** Adds the matrix's own entries in the rows a front eliminates. */
    private void takeEntries(BlockMatrix a, int front, Front f) {
        for (int v : fronts.ownNodes(front)) {
            if (a.size(v) == 0) {
                continue;
            }
            int row = fronts.rowOf[a.first(v)];
            for (int b : a.neighbours(v)) {
                if (fronts.positionOf(b) >= fronts.positionOf(v) && a.size(b) > 0) {
                    place(a, v, b, f, row, fronts.rowIn(front, a, b));
                }
            }
        }
    }

    /** Puts the block (v, b) at a row and column of a front; the matrix keeps it as (v, b) or as (b, v). */
    private static void place(BlockMatrix a, int v, int b, Front f, int row, int column) {
        int rows = a.size(v);
        int columns = a.size(b);
        int at = a.blockAt(Math.max(b, v), Math.min(b, v));
        int p = f.own().length;
        for (int i = 0; i < rows; i++) {
            double[] to = column < p ? f.own()[row + i] : f.rest()[row + i];
            for (int j = 0; j < columns; j++) {
                to[(column < p ? column : column - p) + j] =
                        a.values()[v >= b ? at + i * columns + j : at + j * rows + i];
            }
        }
    }

    /** @param part what a child leaves, lower triangle by rows; its rows ascend in the parent too */
    private void takeLeftOver(int child, double[][] part, Front f) {
        int[] map = fronts.rowInParent[child];
        int n = map.length;
        int p = f.own().length;
        int inside = 0; // boundary rows that the parent eliminates come first
        while (inside < n && map[inside] < p) {
            inside++;
        }
        for (int i = 0; i < n; i++) {
            double[] from = part[i];
            int row = map[i];
            for (int j = 0; j < Math.min(inside, i + 1); j++) {
                if (i < inside) {
                    f.own()[map[j]][row] += from[j];
                } else {
                    f.rest()[map[j]][row - p] += from[j];
                }
            }
            for (int j = inside; j <= i; j++) {
                f.left()[row - p][map[j] - p] += from[j];
            }
        }
    }

    /** Solves K x = b. */
    public double[] solve(double[] b) {
        double[] x = b.clone();
        solveAfter(Eliminated.NONE, x);
        return x;
    }

    /** Solves for what fronts after a given one eliminate. */
    void solveAfter(int last, double[] x) {
        for (int f = last + 1; f < own.length; f++) {
            forward(f, x);
        }
        for (int f = own.length - 1; f > last; f--) {
            backward(f, x);
        }
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
        double[] mine = new double[p];
        boolean none = true;
        for (int j = 0; j < p; j++) {
            mine[j] = x[rows[j]];
            none &= mine[j] == 0;
        }
        if (none) {
            return; // as under a foot elsewhere
        }
        double[] further = new double[rows.length - p];
        Dense.forward(new double[][] {mine}, new double[][] {further}, own[f], rest[f]);
        for (int j = 0; j < p; j++) {
            x[rows[j]] = mine[j];
        }
        for (int i = p; i < rows.length; i++) {
            x[rows[i]] += further[i - p];
        }
    }

    private void backward(int f, double[] x) {
        int[] rows = fronts.rows[f];
        int p = fronts.pivots[f];
        double[] mine = new double[p];
        double[] further = new double[rows.length - p];
        for (int j = 0; j < p; j++) {
            mine[j] = x[rows[j]];
        }
        for (int i = p; i < rows.length; i++) {
            further[i - p] = x[rows[i]];
        }
        Dense.subtractRows(mine, rest[f], further);
        for (int j = p - 1; j >= 0; j--) {
            mine[j] = (mine[j] - Dense.dot(own[f][j], mine, j + 1)) / own[f][j][j];
            x[rows[j]] = mine[j];
        }
    }

    /**
     * The products {@code g_k' K⁻¹ f_k} for sparse vectors that touch unknowns close together. They go up to the root by forward
     * substitution alone, as {@code (U⁻ᵀ g)·(U⁻ᵀ f)}; so many that it would be more work share a {@link SelectedInverse}.
     *
     * @param f right-hand sides
     * @param g as many vectors, what is asked of each solution
     */
    public double[] products(List<SparseVector> f, List<SparseVector> g) {
        PairProducts climb = new PairProducts(this, fronts, f, g);
        return climb.work() < SelectedInverse.work(fronts)
                ? climb.products()
                : SelectedInverse.products(this, fronts, f, g);
    }

    /**
     * The products {@code v_i' K⁻¹ v_j} of the first few of a list of sparse vectors with all of them, by rows: the compliance
     * between the places the vectors touch. Takes forward substitution alone, with the vectors that meet at a front side by
     * side.
     *
     * @param first how many rows
     */
    public double[][] compliance(List<SparseVector> vectors, int first) {
        return new Compliance(this, fronts, vectors, first).rows();
    }

    /**
     * Forward substitution in the subtree under a front and with it.
     *
     * @param vectors the f, then the g, that touch nothing outside the subtree
     * @param products grow by what the subtree adds to each
     * @return what is left of each vector on the front's boundary
     */
    double[][] eliminate(List<SparseVector> vectors, int top, double[] products) {
        return new Paths(this, fronts).eliminate(vectors, top, products);
    }

    double[][] own(int front) {
        return own[front];
    }

    double[][] rest(int front) {
        return rest[front];
    }
}
