package corewright.desktop;

import java.nio.file.Path;
import java.util.Optional;

/** A person who always chooses the same, or nothing. */
record NoChooser(Optional<Path> answer) implements Chooser {
    @Override
    public Optional<Path> folder(String title) {
        return answer;
    }

    @Override
    public Optional<Path> file(String title, String kind, String... endings) {
        return answer;
    }

    @Override
    public Optional<Path> newFile(String title, String proposed) {
        return answer;
    }
}
