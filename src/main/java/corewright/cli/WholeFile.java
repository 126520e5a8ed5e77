package corewright.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: beside its place first, then moved over it. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, CharSequence content) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileAlreadyExistsException(file.toString(), null, "is a folder, expected a file to write");
        }
        String part = file.getFileName() + "." + ProcessHandle.current().pid() + ".part";
        Path beside = file.resolveSibling(part);
        try {
            Files.writeString(beside, content, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING);
            move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) { // some network drives
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
