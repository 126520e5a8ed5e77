package corewright.intake;

import corewright.intake.text.Clean;
import corewright.intake.text.Notes;
import corewright.intake.yaml.YamlValue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The survey folder on disk; nothing outside it is ever opened. */
record Folder(Path root) {
    private static final int LONGEST_NAME = 1000;

    /** The file of that name; null after a complaint at {@code asked}. */
    @Nullable
    Path find(YamlValue asked, String name, Notes notes) throws IOException {
        String problem = leaves(name);
        if (problem.isEmpty()) {
            Path path = inside(name);
            if (!Files.exists(path)) {
                problem = "file \"" + name + "\" is not in the folder";
            } else if (!Files.isRegularFile(path)) {
                problem = "\"" + name + "\" is not a file";
            } else {
                return path;
            }
        }
        notes.complain(asked.origin(), asked.path(), problem);
        return null;
    }

    /** The CSV files beside survey.yaml. */
    List<String> tables() throws IOException {
        try (Stream<Path> entries = Files.list(root)) {
            return entries.map(p -> String.valueOf(p.getFileName()))
                    .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    /** Bytes of a file of the folder, 0 where there is none to read. */
    long size(String name) throws IOException {
        return leaves(name).isEmpty() && Files.isRegularFile(inside(name)) ? Files.size(inside(name)) : 0;
    }

    /** Why a name must not be followed: it leads outside, by itself or over a link; empty where it stays inside. */
    String leaves(String name) {
        String outside = "\"" + name + "\" leads outside the survey folder, expected a file inside it";
        if (name.length() > LONGEST_NAME || Clean.firstHarmful(name) >= 0 || name.indexOf('\n') >= 0) {
            return "this is no file name";
        }
        if (name.startsWith("/") || name.startsWith("\\") || name.matches("[A-Za-z]:.*")) {
            return outside;
        }
        try {
            Path path = inside(name);
            if (!path.normalize().startsWith(root)) {
                return outside;
            }
            return Files.exists(path) && !path.toRealPath().startsWith(root) ? outside : "";
        } catch (InvalidPathException e) {
            return "this is no file name";
        } catch (IOException e) {
            return outside; // a link that cannot be followed to its end
        }
    }

    /** Why a picture of the folder cannot be shown; empty where it can. */
    String unseen(String name) throws IOException {
        Path path = inside(name);
        if (!Files.exists(path)) {
            return "is not in the folder";
        }
        return Files.isRegularFile(path) && Files.isReadable(path) ? Picture.problem(path) : "is not a file";
    }

    private Path inside(String name) {
        return root.resolve(name.replace('\\', '/'));
    }
}
