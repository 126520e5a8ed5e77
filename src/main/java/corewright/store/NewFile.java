package corewright.store;

import corewright.survey.Finding;
import corewright.survey.Photo;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
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
                for (Photo photo : survey.photos()) {
                    byte[] content = pictures.content(photo.file());
                    if (content != null) {
                        put(connection, photo.file(), content);
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
        Path place = place(target);
        Path temporary = temporary(place);
        try {
            deleteAll(temporary);
            Files.createDirectory(temporary);
            filling.fill(temporary);
            Files.move(temporary, place, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            deleteAll(temporary);
        }
    }

    private static void appear(Path target, Filling filling) throws IOException {
        Path place = place(target);
        Path temporary = temporary(place);
        try {
            Files.deleteIfExists(temporary);
            filling.fill(temporary);
            makeDurable(temporary, StandardOpenOption.WRITE);
            Files.move(temporary, place, StandardCopyOption.ATOMIC_MOVE);
            makeDurable(temporary.resolveSibling("."), StandardOpenOption.READ);
        } catch (SQLException e) {
            throw Database.explain(target, e);
        } finally {
            Files.deleteIfExists(temporary);
            Files.deleteIfExists(temporary.resolveSibling(temporary.getFileName() + "-journal"));
        }
    }

    /** The real place of something new. */
    private static Path place(Path target) throws IOException {
        Path place = target.toAbsolutePath().normalize();
        if (Files.exists(place)) {
            throw new FileAlreadyExistsException(target.toString(), null, "is there already; name a new one");
        }
        if (place.getParent() == null || !Files.isDirectory(place.getParent())) {
            throw new StoreException(target, "there is no such folder to put it in");
        }
        return place;
    }

    private static Path temporary(Path place) {
        return place.resolveSibling(
                "." + place.getFileName() + "-" + ProcessHandle.current().pid() + ".part");
    }

    private static void deleteAll(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
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
