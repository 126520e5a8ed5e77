package corewright.cli;

import corewright.store.WriterLock;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder for temporary files. The survey file's library and the type faces of pages unpack files there, which stay
 * when the program is killed; so the program has a folder of its own, which the next one clears.
 */
public final class TemporaryFiles {
    /** Asked by everything here that makes such files; Java itself remembers what it was at first. */
    static final String PROPERTY = "java.io.tmpdir";

    private static final int BYTES = 1 << 16;
    private static final String NAME = ".corewright-temporary-";
    private static final Pattern OURS = Pattern.compile("\\.corewright-temporary-[0-9a-f]{16}(?:\\.lock)?");

    private TemporaryFiles() {}

    /** To be called first of all; where no folder can be made, all stays as it is. */
    public static void begin() {
        Path folder = Path.of(System.getProperty(PROPERTY));
        try {
            clear(folder);
            Path own = folder.resolve(NAME + HexFormat.of().toHexDigits(new SecureRandom().nextLong()));
            WriterLock lock =
                    WriterLock.take(own, ""); // before there is a folder that another might take for left over
            Files.createDirectory(own);
            System.setProperty(PROPERTY, own.toString());
            Runtime.getRuntime().addShutdownHook(new Thread(() -> end(own, lock), "remove temporary files"));
        } catch (IOException | WriterLock.NotFreeException e) {
            // check() says what is wrong with the folder, to those who come to need it
        }
    }

    private static void end(Path own, WriterLock lock) {
        delete(own);
        lock.close();
    }

    /** Deletes what killed programs left: folders that nobody holds the lock of, and locks without a folder. */
    static void clear(Path folder) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, NAME + "*")) {
            for (Path each : left) {
                String name = String.valueOf(each.getFileName());
                Path own = each.resolveSibling(name.replace(".lock", ""));
                boolean folderOrLock = Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS) != name.endsWith(".lock");
                if (!OURS.matcher(name).matches() || !folderOrLock) {
                    continue;
                }
                try (WriterLock lock = WriterLock.take(own, "")) {
                    delete(own);
                } catch (IOException | WriterLock.NotFreeException e) {
                    // another program is at work there, or it is another person's
                }
            }
        }
    }

    /** As much as the system lets go; links are not followed. */
    private static void delete(Path folder) {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(folder)) {
            List<Path> deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.deleteIfExists(each);
            }
        } catch (IOException | java.io.UncheckedIOException e) {
            // a library in use, on some systems; the next program clears it
        }
    }

    /**
     * Asked before the work begins.
     *
     * @throws IOException a sentence, where nothing can be written there
     */
    static void check() throws IOException {
        check(Path.of(System.getProperty(PROPERTY)));
    }

    static void check(Path folder) throws IOException {
        Path trial = null;
        try {
            trial = Files.createTempFile(folder, "corewright", null);
            Files.write(trial, new byte[BYTES]);
        } catch (IOException e) {
            String why = Files.isDirectory(folder) ? "cannot be written, or is full" : "is not there";
            throw new FileSystemException(
                    folder.toString(),
                    null,
                    "the folder for temporary files " + why + "; name another (java -Djava.io.tmpdir=FOLDER ...)");
        } finally {
            if (trial != null) {
                Files.deleteIfExists(trial);
            }
        }
    }
}
