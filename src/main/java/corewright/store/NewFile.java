package corewright.store;

import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.sqlite.core.DB;

/** Survey files that come into being: written beside their place under another name, then moved there. */
final class NewFile {
    /** Bytes 18 and 19 of a database (www.sqlite.org/fileformat.html). */
    static final int WRITE_VERSION_AT = 18;

    /** Stands in a folder that is not finished. */
    private static final String UNFINISHED = ".corewright-unfinished";

    private NewFile() {}

    /** What fills the file under its temporary name. */
    private interface Filling {
        void fill(Path file) throws SQLException, IOException;
    }

    static void write(Path target, Survey survey, List<Finding> importNotes, Pictures pictures) throws IOException {
        appear(target, file -> {
            try (Connection connection = Database.connect(file, false)) {
                Database.mark(connection);
                connection.setAutoCommit(false);
                Schema.create(connection, survey.heading().surveyed());
                Rows rows = new Rows(connection);
                rows.insertAll(survey);
                rows.append(Table.IMPORT_NOTES, importNotes);
                for (String name : Pictures.names(survey)) {
                    byte[] content = pictures.content(name);
                    if (content != null) {
                        put(connection, name, content);
                    }
                }
                connection.commit();
            }
        });
    }

    /** Writes a picture down, in the place of an earlier one. */
    static void put(Connection connection, String name, byte[] content) throws SQLException {
        String sql = "INSERT OR REPLACE INTO pictures (file, content) VALUES (?, ?)";
        try (PreparedStatement insert = connection.prepareStatement(sql)) {
            insert.setString(1, name);
            insert.setBytes(2, content);
            insert.executeUpdate();
        }
    }

    /** A copy of an open file with its journal; where the file itself is lost, of the survey alone. */
    static void copy(Connection connection, Path path, Survey survey, Path target) throws IOException {
        try {
            appear(target, file -> {
                int code = database(connection).backup("main", file.toString(), null);
                if (code != SQLiteErrorCode.SQLITE_OK.code) {
                    throw new SQLiteException("the copy stopped", SQLiteErrorCode.getErrorCode(code));
                }
            });
        } catch (StoreException e) {
            if (Files.exists(path)) {
                throw e;
            }
            write(target, survey, List.of(), Pictures.NONE);
        }
    }

    /** An older file's content with its tables brought up to date, in memory; the file itself stays as it is. */
    static Connection migratedInMemory(Connection older, int version) throws SQLException {
        Connection memory = Database.inMemory();
        boolean done = false;
        try {
            byte[] content = database(older).serialize("main");
            content[WRITE_VERSION_AT] = 1; // a database in memory keeps no write-ahead log
            content[WRITE_VERSION_AT + 1] = 1;
            database(memory).deserialize("main", content);
            Strangers.remove(memory, version);
            Schema.migrate(memory, version);
            Database.queryOnly(memory, true);
            done = true;
            return memory;
        } finally {
            if (!done) {
                memory.close();
            }
        }
    }

    private static DB database(Connection connection) throws SQLException {
        return connection.unwrap(SQLiteConnection.class).getDatabase();
    }

    /** What fills a folder under its temporary name. */
    interface FolderFilling {
        void fill(Path folder) throws IOException;
    }

    static void appearAsFolder(Path target, FolderFilling filling) throws IOException {
        try (WriterLock lock = lock(target)) {
            Path place = place(target);
            Path temporary = temporary(place);
            deleteLeftOver(temporary);
            try (OnInterrupt clear = new OnInterrupt(() -> interrupted(lock, temporary))) {
                Files.createDirectory(temporary);
                Files.createFile(temporary.resolve(UNFINISHED));
                filling.fill(temporary);
                Files.delete(temporary.resolve(UNFINISHED));
                Files.move(temporary, place, StandardCopyOption.ATOMIC_MOVE); // never over what has something in it
            } finally {
                deleteAll(temporary);
            }
        }
    }

    private static void appear(Path target, Filling filling) throws IOException {
        try (WriterLock lock = lock(target)) {
            Path place = place(target);
            Path temporary = temporary(place);
            Path journal = temporary.resolveSibling(temporary.getFileName() + "-journal");
            deleteLeftOver(temporary);
            deleteLeftOver(journal);
            try (OnInterrupt clear = new OnInterrupt(() -> interrupted(lock, temporary, journal))) {
                filling.fill(temporary);
                makeDurable(temporary, StandardOpenOption.WRITE);
                moveToFree(temporary, place);
                makeDurable(temporary.resolveSibling("."), StandardOpenOption.READ);
            } catch (SQLException e) {
                throw Database.explain(target, e);
            } finally {
                Files.deleteIfExists(temporary);
                Files.deleteIfExists(journal);
            }
        }
    }

    private static void interrupted(WriterLock lock, Path... unfinished) {
        for (Path each : unfinished) {
            try {
                deleteAll(each);
            } catch (IOException | UncheckedIOException e) {
                // still being written; the next process that writes there clears it
            }
        }
        lock.close();
    }

    private static WriterLock lock(Path target) throws IOException {
        try {
            return WriterLock.take(place(target), "is being written by another process; name another, or wait");
        } catch (WriterLock.NotFreeException e) {
            throw new StoreException(target, "" + e.getMessage());
        }
    }

    /** A move would take the place of a file that has come there meanwhile; a second name cannot. */
    private static void moveToFree(Path temporary, Path place) throws IOException {
        try {
            Files.createLink(place, temporary);
        } catch (FileAlreadyExistsException e) {
            throw isThere(place);
        } catch (UnsupportedOperationException | IOException e) { // a drive that gives a file one name
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                throw isThere(place);
            }
            Files.move(temporary, place, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    private static FileAlreadyExistsException isThere(Path target) {
        return new FileAlreadyExistsException(target.toString(), null, "is there already; name a new one");
    }

    /** The real place of something new. */
    private static Path place(Path target) throws IOException {
        Path place = target.toAbsolutePath().normalize();
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            throw isThere(target);
        }
        if (place.getParent() == null || !Files.isDirectory(place.getParent())) {
            throw new StoreException(target, "there is no such folder to put it in");
        }
        if (!Files.isWritable(place.getParent())) {
            throw new StoreException(target, "the folder cannot be written; name another place");
        }
        return place;
    }

    /** The same for every process: whoever holds the lock knows that what is there was left by a killed one. */
    private static Path temporary(Path place) {
        return place.resolveSibling("." + place.getFileName() + ".part");
    }

    /** What a killed process left; what another program has put there stays. */
    private static void deleteLeftOver(Path temporary) throws IOException {
        if (!Files.exists(temporary, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        boolean ours;
        if (Files.isDirectory(temporary, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> inside = Files.list(temporary)) {
                ours = Files.exists(temporary.resolve(UNFINISHED))
                        || inside.findAny().isEmpty();
            }
        } else {
            ours = Files.isRegularFile(temporary, LinkOption.NOFOLLOW_LINKS) && isOfADatabase(temporary);
        }
        if (!ours) {
            throw new StoreException(temporary, "is in the way and not of this program; move it away");
        }
        deleteAll(temporary);
    }

    /** Empty, or with the first bytes of a database or of its journal (www.sqlite.org/fileformat.html). */
    private static boolean isOfADatabase(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(8), StandardCharsets.ISO_8859_1);
            return head.chars().allMatch(c -> c == 0)
                    || head.equals("SQLite f")
                    || head.equals("\u00D9\u00D5\u0005\u00F9\u0020\u00A1\u0063\u00D7");
        }
    }

    private static void deleteAll(Path path) throws IOException {
        if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            Files.deleteIfExists(path);
            return;
        }
        try (Stream<Path> inside = Files.walk(path)) {
            // the mark goes last, so that what is left of a folder is known for ours
            Comparator<Path> order = Comparator.comparing((Path p) -> p.equals(path))
                    .thenComparing(p -> p.equals(path.resolve(UNFINISHED)))
                    .thenComparing(Comparator.reverseOrder());
            for (Path each : inside.sorted(order).toList()) {
                Files.delete(each);
            }
        }
    }

    /** On the disk, a folder's names too where the system lets a folder be flushed. */
    private static void makeDurable(Path path, StandardOpenOption access) throws IOException {
        try (FileChannel channel = FileChannel.open(path, access)) {
            channel.force(true);
        } catch (IOException e) {
            if (Files.isRegularFile(path)) {
                throw e; // some systems do not open folders; they keep names safe by themselves
            }
        }
    }
}
