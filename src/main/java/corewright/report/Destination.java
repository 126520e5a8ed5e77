package corewright.report;

import corewright.store.WriterLock;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The folder that outputs go to. It appears whole or not at all: everything is written to a temporary folder beside it,
 * which takes its place at the end. A folder of an earlier run gives way, as far as its {@link OutputList} says that what
 * is in it is that run's own; everything else stays.
 *
 * <p>One run at a time has the place, by a {@link WriterLock}. So what stands beside it under the names of the temporary
 * folders was left by a run that was killed, and is cleared or put back by the next.
 */
final class Destination implements AutoCloseable {
    static final String MARKER = "summary.json";
    private static final long LEAST_ROOM = 5_000_000;

    private final Path target;
    private final List<Path> missing;
    private final WriterLock lock;
    private final Path work;
    private final Path aside;
    private final Thread onInterrupt;

    /** Checks the folder and begins a temporary one beside it. */
    Destination(Path folder) throws IOException {
        target = check(folder);
        missing = missing(parent(target));
        Files.createDirectories(parent(target));
        work = beside("unfinished");
        aside = beside("earlier");
        lock = lock();
        boolean begun = false;
        try {
            takeBack();
            check(target);
            Files.createDirectory(work);
            Files.createFile(work.resolve(OutputList.NAME)); // by which the next run knows it for ours
            begun = true;
        } finally {
            if (!begun) {
                lock.close();
                missing.forEach(Destination::deleteEmpty);
            }
        }
        onInterrupt = new Thread(this::removeUnfinished, "remove unfinished outputs");
        Runtime.getRuntime().addShutdownHook(onInterrupt);
    }

    /**
     * The folder's real place, if outputs may go there.
     *
     * @throws FileSystemException where it is a file, holds something that is not ours, or cannot be written
     */
    static Path check(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            Path place = folder.toAbsolutePath().normalize();
            Path above = place.getParent();
            while (above != null && !Files.exists(above)) {
                above = above.getParent();
            }
            if (Files.isSymbolicLink(place) || above == null || !Files.isDirectory(above) || !Files.isWritable(above)) {
                throw new FileSystemException(folder.toString(), null, "cannot be made there; name another folder");
            }
            checkRoom(folder, above);
            return place;
        }
        if (!Files.isDirectory(folder)) {
            throw new FileAlreadyExistsException(
                    folder.toString(), null, "is a file, expected a folder for the outputs");
        }
        if (!OutputList.isIn(folder) && !entries(folder).isEmpty()) {
            throw new FileAlreadyExistsException(
                    folder.toString(),
                    null,
                    "holds other things than outputs of an earlier run; name an empty or a new folder");
        }
        Path real = folder.toRealPath();
        checkRoom(folder, parent(real));
        if (!Files.isWritable(real) || !Files.isWritable(parent(real))) {
            throw new FileSystemException(
                    folder.toString(), null, "or the folder about it cannot be written; name another folder");
        }
        return real;
    }

    private WriterLock lock() throws IOException {
        try {
            return WriterLock.take(target, "is being written by another run; name another folder, or wait");
        } catch (WriterLock.NotFreeException e) {
            throw new FileSystemException(target.toString(), null, e.getMessage());
        }
    }

    /** Where to write. */
    Path work() {
        return work;
    }

    /** Puts the finished folder in its place. */
    void finish() throws IOException {
        OutputList.write(work);
        if (!Files.exists(target)) {
            Files.move(work, target);
            return;
        }
        Files.move(target, aside);
        try {
            keep(aside, work);
            Files.move(work, target);
        } catch (IOException e) {
            putBack();
            throw e;
        }
        deleteOwn(aside);
    }

    /**
     * A run that was killed between its last moves has left the earlier outputs beside their place: they return to it,
     * and with them what is not ours. One that was killed later has left some of them there, one that was killed earlier
     * only its unfinished folder.
     */
    private void takeBack() throws IOException {
        if (Files.exists(aside, LinkOption.NOFOLLOW_LINKS)) {
            refuseIfForeign(aside);
            if (Files.exists(target) && !entries(target).isEmpty()) {
                keep(aside, target);
                deleteOwn(aside);
            } else {
                putBack();
            }
        }
        for (Path left : List.of(work, removed())) {
            if (Files.exists(left, LinkOption.NOFOLLOW_LINKS)) {
                refuseIfForeign(left);
                deleteAll(left);
            }
        }
    }

    private static void refuseIfForeign(Path left) throws IOException {
        boolean ours = Files.isDirectory(left, LinkOption.NOFOLLOW_LINKS)
                && (OutputList.isIn(left) || entries(left).isEmpty());
        if (!ours) {
            throw new FileAlreadyExistsException(left.toString(), null, "is in the way and not of a run; move it away");
        }
    }

    /** The earlier outputs return to their place, and with them what is not ours. */
    private void putBack() throws IOException {
        if (Files.exists(work)) {
            keep(work, aside);
        }
        Files.deleteIfExists(target); // an empty folder at most
        Files.move(aside, target);
    }

    /** Moves what is not a run's own to the same place in another folder, or beside what stands there. */
    private static void keep(Path from, Path to) throws IOException {
        for (String name : OutputList.read(from).strangers(from)) {
            Path place = to.resolve(name);
            Files.createDirectories(parent(place));
            for (int i = 1; Files.exists(place, LinkOption.NOFOLLOW_LINKS); i++) {
                place = to.resolve(name + ".kept" + (i == 1 ? "" : "-" + i));
            }
            Files.move(from.resolve(name), place);
        }
    }

    /** Deletes what the list names; should something have come since, it stays, and so does its folder. */
    private static void deleteOwn(Path folder) throws IOException {
        if (OutputList.read(folder).strangers(folder).isEmpty()) {
            deleteAll(folder);
        }
    }

    /** Removes whatever is left of the temporary folder, and folders made for it that stayed empty. */
    @Override
    public void close() {
        removeUnfinished();
        try {
            Runtime.getRuntime().removeShutdownHook(onInterrupt);
        } catch (IllegalStateException e) {
            // the program is ending already and the hook runs
        }
    }

    /** Renamed first: whoever still writes into it when the program is interrupted then writes nowhere. */
    private void removeUnfinished() {
        if (!Files.exists(aside)) { // else the folders are being exchanged; the next run puts that right
            Path doomed = removed();
            try {
                Files.move(work, doomed);
            } catch (IOException e) {
                doomed = work; // gone already, or the system will not rename what is open
            }
            try {
                if (Files.exists(doomed)) {
                    deleteAll(doomed);
                }
            } catch (IOException e) {
                // a left-over temporary folder is no reason to call the run failed; the next one clears it
            }
        }
        lock.close();
        if (!Files.exists(target)) {
            missing.forEach(Destination::deleteEmpty);
        }
    }

    private Path removed() {
        return beside("removed");
    }

    /** The same name for every run: the lock says whether somebody is at work there. */
    private Path beside(String purpose) {
        return target.resolveSibling("." + target.getFileName() + "-" + purpose);
    }

    /** The folders above that are not there yet, the deepest first. */
    private static List<Path> missing(Path folder) {
        return Stream.iterate(folder, p -> p != null && !Files.exists(p), Path::getParent)
                .toList();
    }

    /** Outputs of a small survey take some megabytes; a system that does not know its room says 0 and is believed. */
    private static void checkRoom(Path folder, Path where) throws IOException {
        FileStore store = Files.getFileStore(where);
        checkRoom(folder, store.getTotalSpace(), store.getUsableSpace());
    }

    static void checkRoom(Path folder, long size, long free) throws IOException {
        if (size > 0 && free < LEAST_ROOM) {
            throw new FileSystemException(
                    folder.toString(),
                    null,
                    String.format(
                            Locale.ROOT,
                            "has room for %.1f MB only, and the outputs take %d MB or more; make room, or name another"
                                    + " folder",
                            free / 1e6,
                            LEAST_ROOM / 1_000_000));
        }
    }

    private static Path parent(Path folder) throws IOException {
        Path parent = folder.getParent();
        if (parent == null) {
            throw new FileSystemException(folder.toString(), null, "cannot be a folder for outputs");
        }
        return parent;
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        }
    }

    private static void deleteEmpty(Path folder) {
        try {
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            // somebody else put something there
        }
    }

    /** The list goes last, so that what is left of a folder is known for ours. */
    private static void deleteAll(Path folder) throws IOException {
        Comparator<Path> order = Comparator.comparing((Path p) -> p.equals(folder))
                .thenComparing(p -> p.equals(folder.resolve(OutputList.NAME)))
                .thenComparing(Comparator.reverseOrder());
        List<Path> inside;
        try (Stream<Path> all = Files.walk(folder)) {
            inside = all.sorted(order).toList();
        }
        for (Path path : inside) {
            Files.delete(path);
        }
    }
}
