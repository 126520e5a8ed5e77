package corewright.store;

import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An open survey file. Every change is on the disk before the call that makes it returns; a call that throws has changed
 * nothing, neither in the file nor in {@link #survey()}.
 *
 * <p>One process at a time writes: whoever opens a file that another has open for work, or that cannot be written, gets
 * it {@linkplain #whyReadOnly() read-only}.
 */
public final class SurveyFile implements AutoCloseable {
    /** What this process has open for work, by real path. */
    private static final Map<Path, SurveyFile> AT_WORK = new HashMap<>();

    private final Path path;
    private final Connection connection;
    private final @Nullable WriterLock lock;
    private final String whyReadOnly;
    private final Rows rows;
    private final Journal journal;
    private final List<Finding> importNotes;
    private Survey survey;
    private final long dataVersion;
    private final Object key;
    /** How many have opened it and not closed it; changed by whoever holds {@link #AT_WORK}. */
    private int users = 1;

    private SurveyFile(Path path, Connection connection, @Nullable WriterLock lock, String whyReadOnly)
            throws SQLException, IOException {
        this.path = path;
        this.key = key(path);
        this.connection = connection;
        this.lock = lock;
        this.whyReadOnly = whyReadOnly;
        this.rows = new Rows(connection);
        connection.setAutoCommit(false); // contents, journal and version of one moment
        this.journal = new Journal(path, connection);
        Contents contents = new Contents(path, connection);
        this.survey = contents.survey();
        this.importNotes = new ArrayList<>(contents.importNotes());
        this.dataVersion = Database.dataVersion(connection);
        connection.setAutoCommit(true);
    }

    /**
     * Opens a survey file for work; the tables of an older one are brought up to date. One that this process has open
     * for work already is the same survey, open until each who opened it has closed it.
     */
    public static SurveyFile open(Path file) throws IOException {
        synchronized (AT_WORK) {
            Database.checkKind(file);
            Path path = file.toRealPath();
            SurveyFile same = AT_WORK.get(path);
            if (same != null && same.key.equals(key(path))) {
                same.users++;
                return same;
            }
            SurveyFile opened = openForWork(path);
            if (!opened.readOnly()) {
                AT_WORK.put(path, opened);
            }
            return opened;
        }
    }

    private static SurveyFile openForWork(Path path) throws IOException {
        Database.checkHeader(path);
        WriterLock lock = null;
        String why = "the file or its folder cannot be written";
        try {
            if (Files.isWritable(path) && Files.isWritable(parent(path))) {
                lock = WriterLock.take(path, "is open in another window");
            }
        } catch (WriterLock.NotFreeException e) {
            why = e.getMessage() + "";
        } catch (IOException e) {
            // the folder cannot be written after all, which is what we say
        }
        why = lock != null ? "" : path + ": " + why + "; here it is opened to be read only.";
        boolean opened = false;
        try {
            SurveyFile open = open(path, lock, why);
            opened = true;
            return open;
        } finally {
            if (!opened && lock != null) {
                lock.close();
            }
        }
    }

    /** The survey in a file, which is left as it is. */
    public static Survey read(Path file) throws IOException {
        try (SurveyFile open = openToRead(file)) {
            return open.survey();
        }
    }

    /** Opens a survey file without any right to change it; an older one is brought up to date in a copy. */
    public static SurveyFile openToRead(Path file) throws IOException {
        Database.checkKind(file);
        synchronized (AT_WORK) {
            if (!AT_WORK.containsKey(file.toRealPath())) { // else it is known, and reading it would drop its locks
                Database.checkHeader(file);
            }
        }
        return open(file.toRealPath(), null, file + ": was opened to be read only.");
    }

    /** Writes a new survey file, which appears whole or not at all; none may be there yet. */
    public static void create(Path file, Survey survey) throws IOException {
        create(file, survey, List.of(), Pictures.NONE);
    }

    /**
     * Writes a new survey file from a survey that was read from other files.
     *
     * @param importNotes what was odd about those files and cannot be seen in the survey any more
     */
    public static void create(Path file, Survey survey, List<Finding> importNotes, Pictures pictures)
            throws IOException {
        NewFile.write(file, survey, importNotes, pictures);
    }

    /** Writes a survey file beside the folder that the survey was read from, under the folder's name, and opens it. */
    public static SurveyFile createBeside(Path folder, Survey survey, List<Finding> importNotes, Pictures pictures)
            throws IOException {
        Path real = folder.toRealPath();
        String name = String.valueOf(real.getFileName());
        Path file = real.resolveSibling(name + ".gpkg");
        for (int i = 2; Files.exists(file); i++) {
            file = real.resolveSibling(name + "-" + i + ".gpkg");
        }
        create(file, survey, importNotes, pictures);
        return open(file);
    }

    private static SurveyFile open(Path path, @Nullable WriterLock lock, String whyReadOnly) throws IOException {
        Connection connection = null;
        boolean opened = false;
        try {
            Beside.check(path);
            connection = lock == null ? Beside.connectToRead(path) : Database.connect(path, false);
            int version = Schema.version(connection, path);
            List<Finding> notes = Strangers.check(connection, path, version);
            Database.checkIntegrity(connection, path, Strangers.tables(version));
            if (version < Schema.VERSION && lock == null) {
                Connection inMemory = NewFile.migratedInMemory(connection, version);
                connection.close();
                connection = inMemory;
            } else if (lock != null) {
                prepare(connection, version, Beside.hasJournal(path));
            }
            SurveyFile file = new SurveyFile(path, connection, lock, whyReadOnly);
            file.importNotes.addAll(notes);
            opened = true;
            return file;
        } catch (SQLException e) {
            throw Database.explain(path, e);
        } finally {
            if (!opened) {
                closeQuietly(connection);
            }
        }
    }

    private static void prepare(Connection connection, int version, boolean journalLeft) throws SQLException {
        connection.setAutoCommit(false);
        if (journalLeft) {
            Database.touch(connection);
        }
        Strangers.remove(connection, version);
        Schema.migrate(connection, version);
        Schema.dropIndexesOfTools(connection);
        connection.setAutoCommit(true); // commits; a failure before it closes the connection, which takes all back
    }

    public Path path() {
        return path;
    }

    /** The survey with every edit in effect. */
    public synchronized Survey survey() {
        return survey;
    }

    /** What was odd about the files that the survey was first read from, and what in this one is not used. */
    public List<Finding> importNotes() {
        return List.copyOf(importNotes);
    }

    /** Empty where the file may be changed, else a sentence that says why not. */
    public String whyReadOnly() {
        return whyReadOnly;
    }

    public boolean readOnly() {
        return lock == null;
    }

    /**
     * Makes an edit and writes it down.
     *
     * @throws IllegalArgumentException or {@link IndexOutOfBoundsException} where the edit does not fit the survey
     * @throws StoreException where it cannot be written
     */
    public synchronized void append(Edit edit) throws StoreException {
        Survey after = edit.apply(survey);
        Edit inverse = edit.inverse(survey);
        write(() -> {
            rows.apply(edit, survey);
            journal.add(edit, inverse);
        });
        survey = after;
    }

    public synchronized boolean canUndo() {
        return !readOnly() && journal.canUndo();
    }

    public synchronized boolean canRedo() {
        return !readOnly() && journal.canRedo();
    }

    /** Takes the last edit back; nothing happens where there is none. */
    public synchronized void undo() throws StoreException {
        if (canUndo()) {
            step(-1);
        }
    }

    /** Makes the edit again that was taken back last; nothing happens where there is none. */
    public synchronized void redo() throws StoreException {
        if (canRedo()) {
            step(1);
        }
    }

    private void step(int by) throws StoreException {
        try {
            Edit edit = by < 0 ? journal.undo() : journal.redo();
            Survey after = edit.apply(survey);
            write(() -> {
                rows.apply(edit, survey);
                journal.step(by);
            });
            survey = after;
        } catch (SQLException e) {
            throw Database.explain(path, e);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw new StoreException(path, "the journal of edits does not fit the survey; the file is damaged", e);
        }
    }

    /** The bytes of a photograph that the file holds, or null. */
    public synchronized byte @Nullable [] picture(String name) throws StoreException {
        try (PreparedStatement select = connection.prepareStatement("SELECT content FROM pictures WHERE file = ?")) {
            select.setString(1, name);
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? row.getBytes(1) : null;
            }
        } catch (SQLException e) {
            throw Database.explain(path, e);
        }
    }

    /**
     * Keeps the bytes of a photograph under the name that a {@link corewright.survey.Photo} gives it; never in the place
     * of another picture, which an undo may want back.
     */
    public synchronized void putPicture(String name, byte[] content) throws StoreException {
        byte[] kept = picture(name);
        if (kept != null && !Arrays.equals(kept, content)) {
            throw new StoreException(
                    path, "holds another picture called " + name + " already; name this one otherwise");
        }
        if (content.length > Pictures.LARGEST_BYTES) {
            throw new StoreException(
                    path,
                    "picture " + name + " is larger than " + (Pictures.LARGEST_BYTES >> 20)
                            + " MB, which is the limit");
        }
        write(() -> NewFile.put(connection, name, content));
    }

    /** Writes the survey, its pictures and its journal to another file, which appears whole or not at all. */
    public synchronized void saveCopy(Path target) throws IOException {
        NewFile.copy(connection, path, survey, target);
    }

    /** What a transaction does. */
    private interface Work {
        void run() throws SQLException;
    }

    private void write(Work work) throws StoreException {
        if (readOnly()) {
            throw new StoreException(path, "is open to be read only; save a copy elsewhere to change it");
        }
        if (!Files.exists(path)) {
            throw new StoreException(
                    path, "was moved or deleted while open; nothing of it was written, save a copy elsewhere");
        }
        try {
            Database.execute(connection, "BEGIN IMMEDIATE"); // from here on nobody else can write
            if (Database.dataVersion(connection) != dataVersion) {
                throw new StoreException(path, "was changed by another program; close it and open it again");
            }
            work.run();
            Database.execute(connection, "COMMIT");
        } catch (StoreException | RuntimeException e) {
            rollBack(e);
            throw e;
        } catch (SQLException e) {
            rollBack(e);
            throw Database.explain(path, e);
        }
    }

    private void rollBack(Exception failure) {
        try {
            Database.execute(connection, "ROLLBACK");
        } catch (SQLException e) {
            failure.addSuppressed(e); // the database has rolled back by itself, or will when it is next opened
        }
        try {
            journal.refresh();
        } catch (SQLException e) {
            failure.addSuppressed(e);
        }
    }

    /** For tests: the file may not grow, as on a full disk. */
    void limitPages() throws SQLException {
        Database.execute(connection, "PRAGMA max_page_count = 1"); // the database takes the present size instead
    }

    @Override
    public void close() {
        synchronized (AT_WORK) {
            users--;
            if (users != 0) {
                return; // others have it open still, or it is closed already
            }
            AT_WORK.remove(path, this);
            synchronized (this) {
                closeQuietly(connection);
                if (lock != null) {
                    lock.close();
                }
            }
        }
    }

    /** What tells a file from another that takes its name. */
    private static Object key(Path path) throws IOException {
        Object key = Files.readAttributes(path, BasicFileAttributes.class).fileKey();
        return key == null ? path : key;
    }

    private static void closeQuietly(@Nullable Connection connection) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            // every edit is on the disk already
        }
    }

    private static Path parent(Path real) {
        Path parent = real.getParent();
        return parent == null ? real : parent;
    }
}
