package corewright.store;

import corewright.GeneratedSurveys;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Kills an editing process at random instants, many times, and looks at the file after each. A killed process, not a
 * power cut: what the disk itself loses is not tried.
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.store.KillRun -Dexec.args="500 1"</pre> with how many and a seed
 */
public final class KillRun {
    /** A new file and a new seed after so many kills, so that journals do not grow without end. */
    private static final int KILLS_A_FILE = 25;

    private static final String LETTERS = "my letters";

    private final Path folder;
    private final List<String> namespace;
    private long acknowledged;
    private long onlyWritten;
    private long duringOpening;

    private long inNamespace;

    private KillRun(Path folder, List<String> namespace) {
        this.folder = folder;
        this.namespace = namespace;
    }

    public static void main(String[] args) throws Exception {
        int kills = Integer.parseInt(args[0]);
        Path folder = Files.createTempDirectory("corewright-kill");
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        System.out.println(run(kills, folder, seed, EditingProcess.namespace()));
    }

    /**
     * What came of so many kills.
     *
     * @param namespace what starts every other process; none where empty
     * @throws AssertionError at the first lost edit or damaged file
     */
    static String run(int kills, Path folder, long seed, List<String> namespace) throws Exception {
        KillRun run = new KillRun(folder, namespace);
        for (int done = 0; done < kills; done += KILLS_A_FILE) {
            run.file(Math.min(KILLS_A_FILE, kills - done), seed * 1000 + done);
        }
        return String.format(
                Locale.ROOT,
                "%d kills: %d acknowledged steps, none lost; %d steps written but not yet acknowledged; %d kills before"
                        + " the first step of a process, %d in a process namespace of its own; integrity_check ok every"
                        + " time, nothing left, nothing of others touched",
                kills,
                run.acknowledged,
                run.onlyWritten,
                run.duringOpening,
                run.inNamespace);
    }

    private void file(int kills, long seed) throws Exception {
        Path file = folder.resolve("s" + seed + ".gpkg");
        Survey first = new GeneratedSurveys(seed).survey(5);
        SurveyFile.create(file, first);
        EditingProcess.Expected expected = new EditingProcess.Expected(seed, first);
        Random random = new Random(seed);
        Path letters = Files.writeString(folder.resolve(file.getFileName() + ".letters"), LETTERS);
        for (int i = 0; i < kills; i++) {
            long before = expected.steps();
            boolean amongEdits = random.nextInt(5) > 0; // the others fall into start and opening
            int afterMs = random.nextInt(amongEdits ? 300 : 1000);
            boolean apart = i % 2 == 1 && !namespace.isEmpty();
            inNamespace += apart ? 1 : 0;
            long said = EditingProcess.killed(apart ? namespace : List.of(), file, seed, before, amongEdits, afterMs);
            check(file, expected, said);
            acknowledged += said - before;
            duringOpening += said == before ? 1 : 0;
        }
        clear(Set.of(file, letters, folder.resolve("said.txt")));
    }

    private void check(Path file, EditingProcess.Expected expected, long said) throws Exception {
        expected.to(said);
        Survey found;
        try (SurveyFile open = SurveyFile.open(file)) {
            found = open.survey();
        }
        if (!found.equals(expected.survey())) {
            expected.to(said + 1); // written, but killed before it could say so
            onlyWritten++;
        }
        if (!found.equals(expected.survey())) {
            throw new AssertionError(file + ": an acknowledged edit is lost after step " + said);
        }
        String integrity = integrity(file);
        if (!integrity.equals("ok")) {
            throw new AssertionError(file + ": " + integrity + " after step " + said);
        }
    }

    private static String integrity(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement pragma = connection.createStatement();
                ResultSet row = pragma.executeQuery("PRAGMA integrity_check")) {
            return row.getString(1);
        }
    }

    /** The file was opened since the last kill: nothing is left beside it but the unpacked database library. */
    private void clear(Set<Path> expected) throws IOException {
        try (Stream<Path> left = Files.list(folder)) {
            for (Path path : left.toList()) {
                boolean library = String.valueOf(path.getFileName()).startsWith("sqlite-");
                if (!library && !expected.contains(path)) {
                    throw new AssertionError(path + " was left behind");
                }
                if (path.toString().endsWith(".letters")
                        && !Files.readString(path).equals(LETTERS)) {
                    throw new AssertionError(path + " of others was touched");
                }
                Files.delete(path);
            }
        }
    }
}
