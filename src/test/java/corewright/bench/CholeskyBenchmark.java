package corewright.bench;

import corewright.linear.Cholesky;
import corewright.linear.RandomGrid;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * Times the sparse solver. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.bench.CholeskyBenchmark}; one thread: add {@code
 * -Djava.util.concurrent.ForkJoinPool.common.parallelism=0}; the processor's time is then that of the main thread, which a
 * busy machine does not change much.
 */
public final class CholeskyBenchmark {
    private CholeskyBenchmark() {}

    public static void main(String[] args) {
        time(80, 60);
        time(120, 84);
    }

    private static void time(int nx, int ny) {
        RandomGrid grid = RandomGrid.regular(nx, ny, 10, 1);
        double[] wanted = grid.vector();
        double[] b = grid.matrix.times(wanted);
        for (int run = 0; run < 10; run++) {
            long start = System.nanoTime();
            long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Cholesky factor = Cholesky.factor(grid.matrix, grid.x, grid.y);
            long factored = System.nanoTime();
            cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu;
            double[] x = factor.solve(b);
            long solved = System.nanoTime();
            double worst = 0;
            for (int i = 0; i < x.length; i++) {
                worst = Math.max(worst, Math.abs(x[i] - wanted[i]));
            }
            System.out.printf(
                    Locale.ROOT,
                    "%d unknowns: factor %.2f s (this thread's processor time %.2f s), solve %.3f s, %.1f M entries, largest error %.1e%n",
                    x.length,
                    (factored - start) * 1e-9,
                    cpu * 1e-9,
                    (solved - factored) * 1e-9,
                    factor.entries() * 1e-6,
                    worst);
        }
    }
}
