package corewright.cli;

import corewright.store.OnInterrupt;
import corewright.store.WriterLock;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: beside its place first, then moved over it. */
final class WholeFile {
    private static final String NOT_THERE = "cannot be written there; name another place";

    private WholeFile() {}

    /**
     * Whether a file can be written, asked before the work begins.
     *
     * @throws FileSystemException where something other than a file is there, or no folder for it
     */
    static void check(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileAlreadyExistsException(file.toString(), null, "is a folder, expected a file to write");
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
            throw new FileAlreadyExistsException(
                    file.toString(), null, "is a device, a pipe or a link to none, expected a file to write");
        }
        Path folder = place(file).resolveSibling(".");
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(file.toString(), null, "there is no such folder to put it in");
        }
        if (!Files.isWritable(folder)) {
            throw new FileSystemException(file.toString(), null, NOT_THERE);
        }
    }

    private static Path place(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
    }

    /** @throws FileSystemException as {@link #check}, and where another process writes it */
    static void write(Path file, CharSequence content) throws IOException {
        check(file);
        Path place = place(file);
        try (WriterLock lock = WriterLock.take(place, "is being written by another process; name another, or wait")) {
            Path beside = place.resolveSibling("." + place.getFileName() + ".corewright-part");
            Files.deleteIfExists(beside); // of a process that was killed, as nobody else has the lock
            try (OnInterrupt clear = new OnInterrupt(() -> interrupted(lock, beside))) {
                Files.writeString(beside, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                move(beside, place);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (WriterLock.NotFreeException e) {
            throw new FileSystemException(file.toString(), null, e.getMessage());
        } catch (FileSystemException e) {
            String why = e.getReason() == null ? "" : " (" + e.getReason() + ")";
            throw new FileSystemException(file.toString(), null, NOT_THERE + why);
        } catch (IOException e) {
            throw new FileSystemException(file.toString(), null, "could not be written (" + e.getMessage() + ")");
        }
    }

    private static void interrupted(WriterLock lock, Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            // the next process that writes there clears it
        }
        lock.close();
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) { // some network drives
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
