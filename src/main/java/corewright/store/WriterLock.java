package corewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The right to write one survey file, held by one window at a time and given back by the system when its process ends,
 * however it ends. The lock is on a file beside it, as closing any other handle of the database itself would drop the
 * database's own locks (POSIX advisory locks belong to the process).
 */
final class WriterLock implements AutoCloseable {
    /** The locked byte lies beyond the content, which some systems would otherwise keep others from reading. */
    private static final long FAR = 1L << 40;

    private final Path path;
    private final FileChannel channel;

    private WriterLock(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /**
     * The lock, or null where somebody else has it.
     *
     * @throws IOException where the folder cannot be written
     */
    static @Nullable WriterLock take(Path file) throws IOException {
        Path path = file.resolveSibling(file.getFileName() + ".lock");
        while (true) {
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            boolean held = false;
            try {
                if (channel.tryLock(FAR, 1, false) == null) {
                    return null;
                }
                held = isStill(path, channel);
                if (held) {
                    return new WriterLock(path, channel);
                }
            } catch (OverlappingFileLockException e) {
                return null; // another window of this process
            } finally {
                if (!held) {
                    channel.close();
                }
            }
        }
    }

    /** The last holder deletes the file as it goes: what we locked may have lost its name in between. */
    private static boolean isStill(Path path, FileChannel locked) throws IOException {
        byte[] token = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
        locked.truncate(0);
        locked.write(ByteBuffer.wrap(token), 0);
        return Files.exists(path) && Arrays.equals(Files.readAllBytes(path), token);
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // an empty file stays behind, which locks nobody out
        }
    }
}
