package corewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The right to write one thing, a survey file or a folder of outputs, held by one process at a time and given back by the
 * system when its process ends, however it ends. The lock is on a file beside it, {@code NAME.lock}, as closing any other handle of the database itself would drop the
 * database's own locks (POSIX advisory locks belong to the process). For the same reason the lock file has one handle in
 * this process as long as the lock is held: closing a second one would drop the lock.
 */
public final class WriterLock implements AutoCloseable {
    /** The locked byte lies beyond the content, which some systems would otherwise keep others from reading. */
    private static final long FAR = 1L << 40;

    /** What a lock file of ours begins with; dots follow, a random number of them. */
    private static final String MARK = "Somebody is at work on what this file is named after.\n";

    private static final int MOST_DOTS = 50_000;
    private static final Random RANDOM = new SecureRandom();

    /** Lock files held in this process. */
    private static final Set<Path> HELD = new HashSet<>();

    /** The lock is somebody's, or its place is taken; the message is what to say of the survey file. */
    public static final class NotFreeException extends Exception {
        private static final long serialVersionUID = 1L;

        NotFreeException(String message) {
            super(message);
        }
    }

    private final Path path;
    private final Object key;
    private final FileChannel channel;

    private WriterLock(Path path, Object key, FileChannel channel) {
        this.path = path;
        this.key = key;
        this.channel = channel;
    }

    /**
     * The lock of a file or folder.
     *
     * @param file its real path
     * @param held what to say where somebody else has it
     * @throws NotFreeException where somebody else has it, or where something that is not ours stands in its place
     * @throws IOException where the folder cannot be written
     */
    public static WriterLock take(Path file, String held) throws IOException, NotFreeException {
        Path path = file.resolveSibling(file.getFileName() + ".lock");
        synchronized (HELD) {
            if (HELD.contains(path)) {
                throw new NotFreeException(held);
            }
            while (true) {
                WriterLock lock = attempt(path, held);
                if (lock != null) {
                    HELD.add(path);
                    return lock;
                }
            }
        }
    }

    /** Null where the file lost its name while we took it, so that it is to be tried again. */
    private static @Nullable WriterLock attempt(Path path, String held) throws IOException, NotFreeException {
        try {
            Files.createFile(path);
        } catch (FileAlreadyExistsException e) {
            // somebody's lock, or what a killed process left
        }
        Object before = key(path);
        if (before == null) {
            return null;
        }
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    path, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        } catch (NoSuchFileException e) {
            return null;
        }
        boolean taken = false;
        try {
            if (channel.tryLock(FAR, 1, false) == null) {
                throw new NotFreeException(held);
            }
            if (!isOurs(channel)) {
                throw foreign(path);
            }
            taken = isStill(path, before, channel);
            return taken ? new WriterLock(path, before, channel) : null;
        } catch (OverlappingFileLockException e) {
            throw new NotFreeException(held);
        } finally {
            if (!taken) {
                channel.close();
            }
        }
    }

    /** What tells a file from another of the same name; null where there is none. */
    private static @Nullable Object key(Path path) throws IOException, NotFreeException {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!found.isRegularFile()) {
                throw foreign(path);
            }
            return Objects.requireNonNullElse(found.fileKey(), path);
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    private static NotFreeException foreign(Path path) {
        return new NotFreeException("cannot be locked, as " + path.getFileName()
                + " beside it is not of this program; move that away to work on it");
    }

    /** An empty one was left by a process that was killed as it began. */
    private static boolean isOurs(FileChannel channel) throws IOException {
        byte[] mark = MARK.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer found = ByteBuffer.allocate(mark.length);
        while (found.hasRemaining() && channel.read(found, found.position()) > 0) {
            continue;
        }
        return channel.size() == 0
                || (!found.hasRemaining()
                        && ByteBuffer.wrap(mark).equals(found.flip())
                        && channel.size() <= mark.length + MOST_DOTS);
    }

    /**
     * The last holder deletes the file as it goes: what we locked may have lost its name in between. It has not where
     * the name leads to the file it led to before, and that one has the length, random, that we have just given ours.
     * The name alone would not do, as systems use a file's key again; reading the file would take a second handle.
     */
    private static boolean isStill(Path path, Object before, FileChannel locked) throws IOException, NotFreeException {
        String content = MARK + ".".repeat(1 + RANDOM.nextInt(MOST_DOTS));
        try {
            locked.truncate(0);
            ByteBuffer bytes = ByteBuffer.wrap(content.getBytes(StandardCharsets.US_ASCII));
            while (bytes.hasRemaining()) {
                locked.write(bytes, bytes.position());
            }
        } catch (IOException e) {
            leave(path, before); // a full disk: what holds nobody's lock must not stay
            throw e;
        }
        if (!before.equals(key(path))) {
            return false;
        }
        try {
            return Files.size(path) == content.length();
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    @Override
    public void close() {
        synchronized (HELD) {
            if (!channel.isOpen()) {
                return;
            }
            try (channel) {
                leave(path, key);
            } catch (IOException | NotFreeException e) {
                // a file stays behind that locks nobody out, or somebody has put another in its place
            }
            HELD.remove(path);
        }
    }

    /** Deletes the file that we hold the lock of, unless somebody has put another in its place. */
    private static void leave(Path path, Object key) throws IOException, NotFreeException {
        if (key.equals(key(path))) {
            Files.deleteIfExists(path);
        }
    }
}
