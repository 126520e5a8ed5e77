package corewright.store;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Survey;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.sqlite.JDBC;

/**
 * A process that edits a survey file without end and says each step on its standard output once it is done, and what
 * the file must hold after so many steps. Two of five steps are an undo and a redo.
 */
public final class EditingProcess {
    private EditingProcess() {}

    /** {@code main FILE SEED STEPS}: goes on after that many steps; with FILE alone it only says whether it may write. */
    public static void main(String[] args) throws IOException {
        if (args.length == 1) {
            try (SurveyFile file = SurveyFile.open(Path.of(args[0]))) {
                System.out.println(file.readOnly() ? file.whyReadOnly() : "may write");
            }
            return;
        }
        long seed = Long.parseLong(args[1]);
        try (SurveyFile file = SurveyFile.open(Path.of(args[0]))) {
            if (file.readOnly()) {
                throw new IllegalStateException(file.whyReadOnly());
            }
            for (long step = Long.parseLong(args[2]); ; step++) {
                switch ((int) (step % 5)) {
                    case 3 -> file.undo();
                    case 4 -> file.redo();
                    default -> file.append(edit(seed, step, file.survey()));
                }
                System.out.println(step + 1);
            }
        }
    }

    /** Opens a file in another process for a moment; answers what that says. */
    static String open(Path file) throws IOException, InterruptedException {
        Path said = file.resolveSibling("said.txt");
        Process process = new ProcessBuilder(
                        List.of(java(), "-cp", classPath(), EditingProcess.class.getName(), file.toString()))
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        return Files.readString(said);
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /**
     * Starts one that goes on after {@code steps}, kills it and answers its last word.
     *
     * @param before what starts it, such as in a process namespace of its own; nothing, or a program and its arguments
     * @param amongEdits counts {@code afterMs} from its first step on, else from its start
     */
    static long killed(List<String> before, Path file, long seed, long steps, boolean amongEdits, long afterMs)
            throws Exception {
        Path said = file.resolveSibling("said.txt"); // a file, as killing a process closes its pipes unread
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                java(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Dorg.sqlite.tmpdir=" + file.toAbsolutePath().getParent(),
                "-cp",
                classPath(),
                EditingProcess.class.getName(),
                file.toString(),
                String.valueOf(seed),
                String.valueOf(steps)));
        Process process = new ProcessBuilder(command)
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        while (amongEdits && process.isAlive() && Files.size(said) == 0) {
            process.waitFor(1, TimeUnit.MILLISECONDS);
        }
        process.waitFor(afterMs, TimeUnit.MILLISECONDS);
        kill(process);
        return Files.readString(said, StandardCharsets.US_ASCII)
                .lines()
                .filter(line -> line.matches("[0-9]+"))
                .mapToLong(Long::parseLong)
                .max()
                .orElse(steps);
    }

    /** Kills a process and all that it has started, and waits until they are gone. */
    public static void kill(Process process) throws Exception {
        List<ProcessHandle> all = process.descendants().toList();
        all.forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly().waitFor();
        for (ProcessHandle each : all) {
            each.onExit().get(1, TimeUnit.MINUTES);
        }
    }

    /**
     * What starts a program in a process namespace of its own, in which it is process 1 as in a container; empty where
     * the system has none or does not allow it.
     */
    public static List<String> namespace() throws InterruptedException {
        List<String> command = List.of("unshare", "-pf", "--mount-proc", "--kill-child=SIGKILL");
        List<String> trial = new ArrayList<>(command);
        trial.add("true");
        try {
            return new ProcessBuilder(trial).start().waitFor() == 0 ? command : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Of what it needs and no more; a build tool's own class path would not do. */
    public static String classPath() {
        return Stream.of(
                        EditingProcess.class,
                        SurveyFile.class,
                        JDBC.class,
                        Geometry.class,
                        ObjectMapper.class,
                        JsonFactory.class,
                        JsonProperty.class,
                        Nullable.class)
                .map(c -> Path.of(URI.create(c.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toString()))
                        .toString())
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static Edit edit(long seed, long step, Survey survey) {
        return new GeneratedSurveys(new Random(seed * 1_000_003 + step).nextLong()).edit(survey);
    }

    /** What the file holds after so many steps. */
    static final class Expected {
        private final long seed;
        private final Deque<Edit> undo = new ArrayDeque<>();
        private Survey survey;
        private Edit undone = new Edit.Together(List.of());
        private long steps;

        Expected(long seed, Survey survey) {
            this.seed = seed;
            this.survey = survey;
        }

        long steps() {
            return steps;
        }

        Survey survey() {
            return survey;
        }

        void to(long target) {
            for (; steps < target; steps++) {
                if (steps % 5 == 3) {
                    Edit inverse = undo.pop();
                    undone = inverse.inverse(survey);
                    survey = inverse.apply(survey);
                } else {
                    Edit edit = steps % 5 == 4 ? undone : edit(seed, steps, survey);
                    undo.push(edit.inverse(survey));
                    survey = edit.apply(survey);
                }
            }
        }
    }
}
