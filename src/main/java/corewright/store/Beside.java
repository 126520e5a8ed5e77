package corewright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** What a database keeps beside its file while it is written, and what is left of it there. */
final class Beside {
    private static final List<String> ENDINGS = List.of("-journal", "-wal", "-shm");

    private Beside() {}

    /**
     * The database reads and writes what it finds under these names.
     *
     * @throws StoreException where one is a link, pipe, device or folder, which might lead elsewhere or wait without end
     */
    static void check(Path file) throws IOException {
        for (String ending : ENDINGS) {
            Path path = path(file, ending);
            try { // asked once: a journal may go at any time
                if (!Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                        .isRegularFile()) {
                    throw new StoreException(
                            file,
                            "has " + path.getFileName() + " beside it, which is a link or no file; move that away");
                }
            } catch (NoSuchFileException e) {
                // as it is nearly always
            }
        }
    }

    static boolean hasJournal(Path file) {
        return Files.exists(path(file, "-journal"), LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Opens a file to be read only. Where its folder cannot be written and the last edits still stand in files beside
     * it, they are put together in a copy, which goes when the connection is closed.
     */
    static Connection connectToRead(Path file) throws SQLException, IOException {
        Path folder = file.getParent();
        boolean writable = Files.isWritable(file) && folder != null && Files.isWritable(folder);
        return writable || !isUnfinished(file) ? Database.connect(file, true) : connectToCopy(file);
    }

    private static boolean isUnfinished(Path file) throws IOException {
        for (String ending : ENDINGS) {
            Path path = path(file, ending);
            if (path.toFile().length() > 0) { // 0 where there is none
                return true;
            }
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(NewFile.WRITE_VERSION_AT + 1);
            return head.length > NewFile.WRITE_VERSION_AT && head[NewFile.WRITE_VERSION_AT] == 2; // keeps a log
        }
    }

    static Connection connectToCopy(Path file) throws SQLException, IOException {
        Path folder = Files.createTempDirectory(Path.of(System.getProperty("java.io.tmpdir")), "corewright-read");
        Path copy = folder.resolve("survey.gpkg");
        try {
            Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            for (String ending : List.of("-journal", "-wal")) {
                if (Files.isRegularFile(path(file, ending))) {
                    Files.copy(path(file, ending), path(copy, ending));
                }
            }
            Database.connect(copy, false).close(); // puts all of it into the one file
            return Database.connect(copy, true);
        } finally {
            remove(folder, copy);
        }
    }

    /** A name in use goes at once on most systems, and the file when it is closed; on others with the program. */
    private static void remove(Path folder, Path copy) {
        for (Path path : List.of(path(copy, "-journal"), path(copy, "-wal"), path(copy, "-shm"), copy, folder)) {
            try {
                Files.deleteIfExists(path);
            } catch (IOException e) {
                path.toFile().deleteOnExit();
            }
        }
    }

    private static Path path(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}
