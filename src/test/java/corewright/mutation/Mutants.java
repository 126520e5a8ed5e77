package corewright.mutation;

import corewright.mutation.Judge.Verdict;
import corewright.mutation.Judge.Verdict.Outcome;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads mutants one by one and counts what comes of them; a defect is shrunk by halving and saved. */
public final class Mutants {
    /** Processor seconds a reader may take: on a machine that does other things too, wall time says little. */
    private static final double LONGEST_S = 2;

    private static final int MOST_SAVED = 200;
    private static final int SHRINKABLE = 1 << 16;

    private final Path work;
    private final Path failures;
    private final List<Input> inputs;
    private final List<Counts> intact = new ArrayList<>();
    private final Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
    /** What was said of mutants that hold fewer things, by subject. */
    private final Map<String, Integer> told = new TreeMap<>();

    private double longestS;
    private long longestSeed;
    private int defects;
    private String firstDefect = "";

    /**
     * @param work scratch folder
     * @param failures where failing inputs are saved
     */
    public Mutants(Path work, Path failures) {
        this(work, failures, "");
    }

    /** @param only inputs of this kind alone, {@code folder} or {@code survey-file}; of every kind where empty */
    public Mutants(Path work, Path failures, String only) {
        this.work = work;
        this.failures = failures;
        this.inputs = Input.all(work.resolve("originals")).stream()
                .filter(i -> only.isEmpty() || i.kind().name().equalsIgnoreCase(only.replace('-', '_')))
                .toList();
        for (Input input : inputs) {
            Verdict verdict = judge(input.kind(), input.files());
            if (verdict.outcome() != Outcome.READ) {
                throw new IllegalStateException("an original is not read: " + input.kind() + " " + verdict);
            }
            intact.add(verdict.counts() == null ? new Counts(Map.of(), Set.of()) : verdict.counts());
        }
    }

    /** Makes and reads the mutant of one seed. */
    public void read(long seed) {
        int which = (int) Math.floorMod(seed, (long) inputs.size());
        Input input = inputs.get(which);
        boolean takesAway = false;
        Map<String, byte[]> files = new TreeMap<>();
        if (input.kind() == Input.Kind.SURVEY_FILE) {
            input.files().forEach((name, bytes) -> files.put(name, new SurveyFileMutator(seed).mutated(bytes)));
        } else {
            Mutator mutator = new Mutator(seed);
            files.putAll(mutator.mutated(input.files()));
            takesAway = mutator.takesAway();
        }
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
        if (verdict.counts() != null && !takesAway) {
            verdict = missing(intact.get(which), verdict.counts());
        }
        counts.merge(verdict.outcome(), 1, Integer::sum);
        if (verdict.outcome() == Outcome.DEFECT) {
            defect(input.kind(), seed, files, verdict.why());
        }
    }

    /** A defect where a kind has fewer than the intact input and nothing more is said. */
    private Verdict missing(Counts before, Counts after) {
        String fewer = before.fewerIn(after);
        Set<String> said = before.newIn(after);
        if (!fewer.isEmpty() && said.isEmpty()) {
            return new Verdict(Outcome.DEFECT, "lost without a word: " + fewer);
        }
        if (!fewer.isEmpty()) {
            said.stream()
                    .map(s -> s.substring(0, s.indexOf(':')))
                    .distinct()
                    .forEach(s -> told.merge(s, 1, Integer::sum));
        }
        return new Verdict(Outcome.READ, "");
    }

    private void defect(Input.Kind kind, long seed, Map<String, byte[]> files, String why) {
        String text = "seed " + seed + ": " + why;
        firstDefect = firstDefect.isEmpty() ? text : firstDefect;
        boolean shrinks = kind != Input.Kind.SURVEY_FILE
                && judge(kind, files).outcome() == Outcome.DEFECT
                && files.values().stream().mapToLong(b -> b.length).sum() < SHRINKABLE;
        if (++defects <= MOST_SAVED) {
            Map<String, byte[]> small = new TreeMap<>(shrinks ? shrunk(kind, files) : files);
            small.put("why.txt", text.getBytes(StandardCharsets.UTF_8));
            Input.write(small, failures.resolve("seed-" + seed));
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
        return counts + ", fewer of a kind and said so " + told + ", longest "
                + String.format(java.util.Locale.ROOT, "%.2f", longestS)
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
