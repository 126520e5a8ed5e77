package corewright.mutation;

import corewright.mutation.Judge.Verdict;
import corewright.mutation.Judge.Verdict.Outcome;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads mutants one by one and counts what comes of them; a defect is shrunk by halving and saved. */
public final class Mutants {
    /** Processor seconds a reader may take: on a machine that does other things too, wall time says little. */
    private static final double LONGEST_S = 5;

    private final Path work;
    private final Path failures;
    private final List<Input> inputs;
    private final Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
    private double longestS;
    private long longestSeed;
    private String firstDefect = "";

    /**
     * @param work scratch folder
     * @param failures where failing inputs are saved
     */
    public Mutants(Path work, Path failures) {
        this.work = work;
        this.failures = failures;
        this.inputs = Input.all(work.resolve("originals"));
        for (Input input : inputs) {
            Verdict verdict = judge(input.kind(), input.files());
            if (verdict.outcome() != Outcome.READ) {
                throw new IllegalStateException("an original is not read: " + input.kind() + " " + verdict);
            }
        }
    }

    /** Makes and reads the mutant of one seed. */
    public void read(long seed) {
        Input input = inputs.get((int) Math.floorMod(seed, inputs.size()));
        Map<String, byte[]> files = new Mutator(seed).mutated(input.files());
        double start = cpuS();
        Verdict verdict = judge(input.kind(), files);
        double seconds = cpuS() - start;
        if (seconds > longestS) {
            longestS = seconds;
            longestSeed = seed;
        }
        if (seconds > LONGEST_S) {
            verdict = new Verdict(Outcome.DEFECT, "took " + seconds + " s");
        }
        counts.merge(verdict.outcome(), 1, Integer::sum);
        if (verdict.outcome() == Outcome.DEFECT) {
            Map<String, byte[]> small = seconds > LONGEST_S ? files : shrunk(input.kind(), files);
            Input.write(small, failures.resolve("seed-" + seed));
            firstDefect = firstDefect.isEmpty() ? "seed " + seed + ": " + verdict.defect() : firstDefect;
        }
    }

    public int refused() {
        return counts.getOrDefault(Outcome.REFUSED, 0);
    }

    public int accepted() {
        return counts.getOrDefault(Outcome.READ, 0);
    }

    /** The first defect with its seed, empty where there is none. */
    public String firstDefect() {
        return firstDefect;
    }

    /** Counts and the longest time. */
    @Override
    public String toString() {
        return counts + ", longest " + String.format(java.util.Locale.ROOT, "%.2f", longestS)
                + " s of processor time (seed " + longestSeed + ")"
                + (firstDefect.isEmpty() ? "" : ", first defect: " + firstDefect);
    }

    private Verdict judge(Input.Kind kind, Map<String, byte[]> files) {
        Path folder = work.resolve("mutant");
        Input.write(files, folder);
        return Judge.judge(kind, folder, files);
    }

    /** Takes ever smaller pieces out of each file while the input stays a defect. */
    private Map<String, byte[]> shrunk(Input.Kind kind, Map<String, byte[]> files) {
        Map<String, byte[]> small = new TreeMap<>(files);
        for (String name : List.copyOf(small.keySet())) {
            for (int piece = length(small, name) / 2; piece > 0; piece /= 2) {
                for (int at = 0; at < length(small, name); at += piece) {
                    byte[] bytes = small.getOrDefault(name, new byte[0]);
                    byte[] less = without(bytes, at, Math.min(bytes.length, at + piece));
                    small.put(name, less);
                    if (judge(kind, small).outcome() != Outcome.DEFECT) {
                        small.put(name, bytes);
                    }
                }
            }
        }
        return small;
    }

    private static int length(Map<String, byte[]> files, String name) {
        return files.getOrDefault(name, new byte[0]).length;
    }

    private static byte[] without(byte[] bytes, int from, int to) {
        byte[] less = Arrays.copyOf(bytes, bytes.length - (to - from));
        System.arraycopy(bytes, to, less, from, bytes.length - to);
        return less;
    }

    private static double cpuS() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
    }
}
