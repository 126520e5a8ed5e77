package corewright.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Opens the window; the command line does not know how. */
@FunctionalInterface
public interface Window {
    /**
     * Returns when the window is closed.
     *
     * @param survey to open, or null for an empty window
     * @throws IOException with one sentence, where no window can be shown
     */
    void open(@Nullable Path survey) throws IOException;
}
