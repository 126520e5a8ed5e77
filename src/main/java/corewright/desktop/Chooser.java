package corewright.desktop;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person for a file or a folder; the system's own dialogs in the program, fixed answers in tests. */
public interface Chooser {
    Optional<Path> folder(String title);

    Optional<Path> file(String title, String kind, String... endings);

    Optional<Path> newFile(String title, String proposed);
}
