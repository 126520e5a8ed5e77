package corewright.desktop.state;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the edits of a survey are kept, in words. */
public final class Kept {
    private Kept() {}

    /** Where edits go, as a sentence. */
    public static String sentence(EditLog log) {
        Path place = log.place();
        if (place == null) {
            return "Edits to the sample are not kept, unless you keep a copy of it: step Plan.";
        }
        return inFile(place)
                ? "Edits are kept in " + place.getFileName() + "."
                : "Edits will be kept in a survey file beside the folder; the folder stays as it is.";
    }

    /** The same in a few words. */
    public static String briefly(EditLog log) {
        Path place = log.place();
        return place == null
                ? "nowhere: the sample"
                : inFile(place)
                        ? String.valueOf(place.getFileName())
                        : "a file beside the folder, from the first edit on";
    }

    private static boolean inFile(Path place) {
        return place.toString().endsWith(".gpkg");
    }

    /** The survey file that was made of a folder at an edit and changed last; empty where there is none. */
    public static Optional<Path> beside(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        Path real = folder.toRealPath();
        Path above = real.getParent();
        if (above == null) {
            return Optional.empty();
        }
        String name = String.valueOf(real.getFileName());
        List<Path> found;
        try (Stream<Path> files = Files.list(above)) {
            found = files.filter(f -> isOf(name, String.valueOf(f.getFileName())))
                    .filter(Files::isRegularFile)
                    .toList();
        }
        return found.stream().max(Comparator.comparing(Kept::changed).thenComparing(Comparator.naturalOrder()));
    }

    private static boolean isOf(String folder, String file) {
        return file.startsWith(folder) && file.substring(folder.length()).matches("(-[0-9]{1,4})?\\.gpkg");
    }

    private static FileTime changed(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }
}
