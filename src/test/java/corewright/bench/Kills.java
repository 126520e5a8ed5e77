package corewright.bench;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.store.EditingProcess;
import corewright.store.SurveyFile;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills {@code run} and {@code convert} at random moments, every other time in a fresh process namespace where the system
 * has such, in which the program is always process 1. After each kill what is at the destination must be whole, the
 * earlier or the new; after the next undisturbed command nothing may be left of the killed ones, and files of others
 * beside and inside must have their bytes. Edits are killed by {@code KillRun}.
 *
 * <pre>mvn -o -q test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test -Dexec.args="-cp %classpath corewright.bench.Kills 40 80"</pre>
 *
 * Arguments: kills of {@code run}, kills of {@code convert}, seed.
 */
public final class Kills {
    /** An undisturbed command, and a look at what is left, after so many kills. */
    private static final int KILLS_A_ROUND = 5;

    private static final long LONGEST_MS = 600_000;
    private static final String LETTERS = "my letters";

    private final Path work;
    private final Random random;
    private final List<String> namespace;
    private final Path survey;
    private int inNamespace;
    private int atWork;
    private int finished;

    private Kills(Path work, long seed) throws Exception {
        this.work = work;
        this.random = new Random(seed);
        this.namespace = EditingProcess.namespace();
        this.survey = SurveyFolders.minimal(work).path();
        Files.createDirectory(work.resolve("tmp"));
        for (String name : List.of("letters.txt", ".out-letters", ".s.gpkg.letters", "tmp/letters.txt")) {
            Files.writeString(work.resolve(name), LETTERS);
        }
    }

    public static void main(String[] args) throws Exception {
        int runs = Integer.parseInt(args[0]);
        int conversions = Integer.parseInt(args[1]);
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        Kills kills = new Kills(Files.createTempDirectory("corewright-kills"), seed);
        kills.runs(runs);
        System.out.println(kills.said(runs, "run"));
        kills.conversions(conversions);
        System.out.println(kills.said(conversions, "convert"));
        delete(kills.work);
    }

    private String said(int kills, String command) {
        String said = String.format(
                Locale.ROOT,
                "%d kills of %s, %d in a fresh process namespace, %d while it wrote, %d after its end: nothing"
                        + " half-written, nothing left, nothing of others touched",
                kills,
                command,
                inNamespace,
                atWork,
                finished);
        inNamespace = 0;
        atWork = 0;
        finished = 0;
        return said;
    }

    private void runs(int kills) throws Exception {
        Path out = work.resolve("out");
        List<String> run = List.of("run", survey.toString(), "--out", out.toString());
        long wholeMs = undisturbed(run);
        Files.writeString(out.resolve("letters.txt"), LETTERS);
        Set<String> names = names();
        for (int i = 0; i < kills; i++) {
            killed(run, work.resolve(".out-unfinished"), wholeMs);
            require(isWholeRun(out), "outputs are neither the earlier nor the new ones");
            if (i % KILLS_A_ROUND == KILLS_A_ROUND - 1 || i == kills - 1) {
                undisturbed(run);
                require(isWholeRun(out), "outputs are not whole");
                require(names().equals(names), "left behind: " + names() + ", expected " + names);
                letters("out/letters.txt");
            }
        }
    }

    private void conversions(int kills) throws Exception {
        Survey expected = SurveyFolder.read(survey).survey();
        Path file = work.resolve("s.gpkg");
        Path back = work.resolve("back");
        List<String> into = List.of("convert", survey.toString(), file.toString());
        List<String> from = List.of("convert", file.toString(), back.toString());
        Set<String> names = names();
        long intoMs = undisturbed(into);
        long fromMs = undisturbed(from);
        delete(back);
        for (int i = 0; i < kills; i++) {
            boolean isInto = i % (2 * KILLS_A_ROUND) < KILLS_A_ROUND;
            Path place = isInto ? file : back;
            delete(place);
            killed(isInto ? into : from, work.resolve('.' + name(place) + ".part"), isInto ? intoMs : fromMs);
            if (i % KILLS_A_ROUND == KILLS_A_ROUND - 1 && !Files.exists(place)) {
                undisturbed(isInto ? into : from);
            }
            if (Files.exists(place)) {
                Survey found = isInto
                        ? SurveyFile.read(place)
                        : SurveyFolder.read(place).survey();
                require(
                        found.readings().taps().size()
                                        == expected.readings().taps().size()
                                && found.readings().moisture().size()
                                        == expected.readings().moisture().size()
                                && found.faces().size() == expected.faces().size(),
                        place + " is not whole");
            }
            if (i % KILLS_A_ROUND == KILLS_A_ROUND - 1) {
                delete(back);
                if (isInto) {
                    undisturbed(from); // another command than the killed one: it leaves what is not its own
                    delete(back);
                }
                Set<String> left = names();
                left.remove("s.gpkg");
                if (Files.exists(place) || isInto) {
                    require(left.equals(names), "left behind: " + left + ", expected " + names);
                }
            }
        }
        delete(file);
        letters("letters.txt");
    }

    /** Starts a command and kills it: half of the times anywhere in its time, else soon after it begins to write. */
    private void killed(List<String> command, Path begun, long wholeMs) throws Exception {
        boolean apart = !namespace.isEmpty() && random.nextBoolean();
        inNamespace += apart ? 1 : 0;
        boolean wait = random.nextBoolean();
        long afterMs = random.nextInt((int) Math.max(2, wait ? wholeMs / 4 : wholeMs));
        Process process = start(apart ? namespace : List.of(), command);
        for (long ms = 0; wait && process.isAlive() && !Files.exists(begun) && ms < LONGEST_MS; ms++) {
            process.waitFor(1, TimeUnit.MILLISECONDS);
        }
        process.waitFor(afterMs, TimeUnit.MILLISECONDS);
        boolean alive = process.isAlive();
        atWork += alive && Files.exists(begun) ? 1 : 0;
        finished += alive ? 0 : 1;
        EditingProcess.kill(process);
    }

    /** Answers how long it took. */
    private long undisturbed(List<String> command) throws Exception {
        long start = System.nanoTime();
        Process process = start(List.of(), command);
        require(process.waitFor(LONGEST_MS, TimeUnit.MILLISECONDS) && process.exitValue() == 0, command + " failed");
        letters("letters.txt", ".out-letters", ".s.gpkg.letters", "tmp/letters.txt");
        return (System.nanoTime() - start) / 1_000_000;
    }

    private Process start(List<String> before, List<String> command) throws IOException {
        List<String> line = new ArrayList<>(before);
        line.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx700m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.io.tmpdir=" + work.resolve("tmp"),
                "-cp",
                System.getProperty("java.class.path"),
                "corewright.Main"));
        line.addAll(command);
        return new ProcessBuilder(line)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.appendTo(
                        work.resolve("tmp/errors.txt").toFile()))
                .start();
    }

    /** Each file that the list names is there with the bytes it says, and nothing else but our letters. */
    private static boolean isWholeRun(Path out) throws Exception {
        Map<String, String> listed = new TreeMap<>();
        for (String line : Files.readAllLines(out.resolve("outputs.sha256"))) {
            listed.put(line.substring(66), line.substring(0, 64));
        }
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                found.put(out.relativize(file).toString(), HexFormat.of().formatHex(hash));
            }
        }
        found.remove("outputs.sha256");
        found.remove("letters.txt");
        return listed.size() > 10 && listed.equals(found);
    }

    private void letters(String... names) throws IOException {
        for (String name : names) {
            String found = Files.readString(work.resolve(name), StandardCharsets.UTF_8);
            require(found.equals(LETTERS), name + " of others was touched");
        }
    }

    /** What stands beside the survey and in the folder for temporary files. */
    private Set<String> names() throws IOException {
        Set<String> names = new TreeSet<>();
        for (Path folder : List.of(work, work.resolve("tmp"))) {
            try (Stream<Path> inside = Files.list(folder)) {
                inside.map(p -> work.relativize(p).toString()).forEach(names::add);
            }
        }
        names.remove("tmp/errors.txt");
        return names;
    }

    private void require(boolean good, String problem) {
        if (!good) {
            throw new AssertionError(work + ": " + problem);
        }
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }

    private static void delete(Path path) throws IOException {
        if (Files.exists(path)) {
            try (Stream<Path> inside = Files.walk(path)) {
                for (Path each : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
