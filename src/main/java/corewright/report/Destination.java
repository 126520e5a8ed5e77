package corewright.report;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The folder that outputs go to. It appears whole or not at all: everything is written to a temporary folder beside it,
 * which takes its place at the end. A folder of an earlier run gives way; what somebody else put into it stays.
 */
final class Destination implements AutoCloseable {
    /** What tells a folder of ours. */
    static final String MARKER = "summary.json";

    /** Everything a run writes at the top of its folder. */
    private static final Set<String> OURS = Set.of(
            MARKER,
            "regions.geojson",
            "holes.csv",
            "batches.csv",
            "buying-list.csv",
            "cups.csv",
            "schedule.csv",
            "findings.csv",
            "work-done.csv",
            "work-left.csv",
            "fill-check.csv",
            "second-shots.csv",
            "next-readings.csv",
            "exchange",
            "foot-load.csv",
            "surfaces",
            "maps",
            "owner-report.pdf",
            "survey-record.pdf",
            "work-cards.pdf",
            "drill-template.pdf");

    private final Path target;
    private final List<Path> missing;
    private final Path work;
    private final Thread onInterrupt;

    /** Checks the folder and begins a temporary one beside it. */
    Destination(Path folder) throws IOException {
        target = check(folder);
        takeBack(target);
        missing = missing(parent(target));
        Files.createDirectories(parent(target));
        work = beside("unfinished");
        onInterrupt = new Thread(this::removeUnfinished, "remove unfinished outputs");
        Runtime.getRuntime().addShutdownHook(onInterrupt);
    }

    /**
     * The folder's real place, if outputs may go there.
     *
     * @throws FileSystemException where it is a file, or holds something that is not ours
     */
    static Path check(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return folder.toAbsolutePath().normalize();
        }
        if (!Files.isDirectory(folder)) {
            throw new FileAlreadyExistsException(
                    folder.toString(), null, "is a file, expected a folder for the outputs");
        }
        if (!Files.exists(folder.resolve(MARKER)) && !entries(folder).isEmpty()) {
            throw new FileAlreadyExistsException(
                    folder.toString(),
                    null,
                    "holds other things than outputs of an earlier run; name an empty or a new folder");
        }
        return folder.toRealPath();
    }

    /** Where to write. */
    Path work() {
        return work;
    }

    /** Puts the finished folder in its place. */
    void finish() throws IOException {
        if (!Files.exists(target)) {
            Files.move(work, target);
            return;
        }
        Path aside = beside("earlier");
        Files.delete(aside);
        Files.move(target, aside);
        try {
            for (Path entry : entries(aside)) {
                if (!OURS.contains(entry.getFileName().toString())) {
                    Files.move(entry, work.resolve(entry.getFileName()));
                }
            }
            Files.move(work, target);
        } catch (IOException e) {
            putBack(work, aside, target);
            throw e;
        }
        deleteQuietly(aside);
    }

    /**
     * A run that was killed between its last two moves has left the earlier outputs beside their place: they return to
     * it, unless that run is still at work.
     */
    private static void takeBack(Path target) throws IOException {
        if (Files.exists(target) || !Files.isDirectory(parent(target))) {
            return;
        }
        Pattern name = Pattern.compile(Pattern.quote("." + target.getFileName() + "-earlier-") + "([0-9]{1,18})");
        for (Path aside : entries(parent(target))) {
            Matcher killed = name.matcher(aside.getFileName().toString());
            if (killed.matches() && !isAlive(Long.parseLong(killed.group(1))) && Files.exists(aside.resolve(MARKER))) {
                Path unfinished = target.resolveSibling("." + target.getFileName() + "-unfinished-" + killed.group(1));
                putBack(unfinished, aside, target);
                deleteQuietly(unfinished);
                return;
            }
        }
    }

    private static boolean isAlive(long pid) {
        return ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false);
    }

    /** The earlier outputs return to their place, and with them what is not ours. */
    private static void putBack(Path work, Path aside, Path target) throws IOException {
        for (Path entry : Files.exists(work) ? entries(work) : List.<Path>of()) {
            if (!OURS.contains(entry.getFileName().toString())) {
                Files.move(entry, aside.resolve(entry.getFileName()));
            }
        }
        Files.move(aside, target);
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
        Path doomed = work.resolveSibling(work.getFileName() + "-removed");
        try {
            Files.move(work, doomed);
        } catch (IOException e) {
            doomed = work; // gone already, or the system will not rename what is open
        }
        deleteQuietly(doomed);
        if (!Files.exists(target)) {
            missing.forEach(Destination::deleteEmpty);
        }
    }

    /** A new empty folder beside the target; not a system temporary one, which only its owner may read. */
    private Path beside(String purpose) throws IOException {
        String name = "." + target.getFileName() + "-" + purpose + "-"
                + ProcessHandle.current().pid();
        return Files.createDirectory(target.resolveSibling(name));
    }

    /** The folders above that are not there yet, the deepest first. */
    private static List<Path> missing(Path folder) {
        return Stream.iterate(folder, p -> p != null && !Files.exists(p), Path::getParent)
                .toList();
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

    private static void deleteQuietly(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException e) throws IOException {
                    Files.delete(visited);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            // a left-over temporary folder is no reason to call the run failed
        }
    }
}
