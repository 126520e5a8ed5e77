package corewright.bench;

import corewright.GeneratedSurveys;
import corewright.store.EditingProcess;
import corewright.store.StoreException;
import corewright.store.SurveyFile;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Plug;
import corewright.survey.Spot;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Two processes edit one survey file at once, each opening it again and again for a few edits. Every edit that was
 * acknowledged must be in the file and in its journal of edits, once.
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.TwoWriters -Dexec.args="20 2000"</pre>
 */
public final class TwoWriters {
    private static final int MOST_EDITS_AT_ONCE = 25;
    private static final int LONGEST_PAUSE_MS = 4;
    private static final long LONGEST_RUN_S = 3600;

    private TwoWriters() {}

    /** {@code main RUNS EDITS}, or {@code main --edit FILE NAME EDITS} in a process of its own. */
    public static void main(String[] args) throws Exception {
        if (args[0].equals("--edit")) {
            edit(Path.of(args[1]), args[2], Integer.parseInt(args[3]));
            return;
        }
        Path folder = Files.createTempDirectory("corewright-two-writers");
        System.out.println(run(Integer.parseInt(args[0]), Integer.parseInt(args[1]), folder));
    }

    /**
     * What came of so many runs of so many edits each, half of them by either process.
     *
     * @throws AssertionError at the first edit lost
     */
    public static String run(int runs, int edits, Path folder) throws Exception {
        long turns = 0;
        for (int run = 0; run < runs; run++) {
            turns += race(folder.resolve("run-" + run + ".gpkg"), edits);
        }
        return String.format(
                Locale.ROOT,
                "%d runs of %d edits by two processes: none lost from contents or journal; the right to write changed"
                        + " hands %d times",
                runs,
                edits,
                turns);
    }

    private static long race(Path file, int edits) throws Exception {
        SurveyFile.create(file, new GeneratedSurveys(1).survey(3));
        List<Process> processes = new ArrayList<>();
        Set<String> acknowledged = new HashSet<>();
        try {
            for (String name : List.of("A", "B")) {
                processes.add(start(file, name, edits / 2));
            }
            for (Process process : processes) {
                if (!process.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS) || process.exitValue() != 0) {
                    throw new AssertionError(file + ": a process did not come to its end");
                }
            }
        } finally {
            processes.forEach(Process::destroyForcibly);
        }
        for (String name : List.of("A", "B")) {
            Path said = said(file, name);
            acknowledged.addAll(Files.readAllLines(said, StandardCharsets.US_ASCII));
            Files.delete(said);
        }
        if (acknowledged.size() != edits) {
            throw new AssertionError(file + ": " + acknowledged.size() + " edits acknowledged of " + edits);
        }
        List<String> contents = SurveyFile.read(file).readings().plugs().stream()
                .map(Plug::id)
                .filter(id -> id.matches("[AB]-[0-9]+"))
                .toList();
        List<String> journal = journal(file);
        check(file, "contents", acknowledged, contents);
        check(file, "journal", acknowledged, journal);
        return turns(journal);
    }

    private static void check(Path file, String where, Set<String> acknowledged, List<String> found) {
        Set<String> missing = new HashSet<>(acknowledged);
        found.forEach(missing::remove);
        if (!missing.isEmpty() || found.size() != acknowledged.size()) {
            throw new AssertionError(file + ": " + where + ": " + missing.size() + " acknowledged edits missing, "
                    + found.size() + " found");
        }
    }

    private static List<String> journal(Path file) throws SQLException {
        List<String> ids = new ArrayList<>();
        Pattern id = Pattern.compile("\"([AB]-[0-9]+)\"");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement select = connection.createStatement();
                ResultSet rows = select.executeQuery("SELECT edit FROM edits ORDER BY fid")) {
            while (rows.next()) {
                Matcher found = id.matcher(rows.getString(1));
                if (found.find()) {
                    ids.add(found.group(1));
                }
            }
        }
        return ids;
    }

    private static long turns(List<String> journal) {
        long turns = 0;
        for (int i = 1; i < journal.size(); i++) {
            turns += journal.get(i).charAt(0) != journal.get(i - 1).charAt(0) ? 1 : 0;
        }
        return turns;
    }

    private static Process start(Path file, String name, int edits) throws IOException {
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-cp",
                        classPath(),
                        TwoWriters.class.getName(),
                        "--edit",
                        file.toString(),
                        name,
                        String.valueOf(edits)))
                .redirectOutput(said(file, name).toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static String classPath() {
        return EditingProcess.classPath() + File.pathSeparator + System.getProperty("java.class.path");
    }

    private static Path said(Path file, String name) {
        return file.resolveSibling(file.getFileName() + "-said-" + name + ".txt");
    }

    /** On a slow machine the other's edits may keep a reader waiting longer than it waits. */
    private static SurveyFile openWhenNotBusy(Path path) throws IOException {
        while (true) {
            try {
                return SurveyFile.open(path);
            } catch (StoreException e) {
                throwUnlessBusy(e);
            }
        }
    }

    /** And the other's reading an edit, which is then refused: it must not be in the file, or it would be there twice. */
    private static boolean isAcknowledged(SurveyFile file, Plug plug) throws StoreException {
        try {
            file.append(Edit.add(file.survey(), Part.PLUGS, plug));
            return true;
        } catch (StoreException e) {
            throwUnlessBusy(e);
            return false;
        }
    }

    private static void throwUnlessBusy(StoreException e) throws StoreException {
        if (!String.valueOf(e.getMessage()).contains("another program is writing to it")) {
            throw e;
        }
    }

    /** Makes so many edits, a few each time the file is free, and says each once it is done. */
    private static void edit(Path path, String name, int edits) throws IOException, InterruptedException {
        Random random = new Random(name.hashCode());
        int done = 0;
        while (done < edits) {
            try (SurveyFile file = openWhenNotBusy(path)) {
                for (int i = 1 + random.nextInt(MOST_EDITS_AT_ONCE); i > 0 && done < edits && !file.readOnly(); i--) {
                    String id = name + "-" + (done + 1);
                    Plug plug = new Plug(new Origin("by hand", 0), id, new Spot("foredeck", 1, 2), 11);
                    if (isAcknowledged(file, plug)) {
                        System.out.println(id);
                        done++;
                    }
                }
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_PAUSE_MS));
        }
    }
}
