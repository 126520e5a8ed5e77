package corewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code corewright desktop [SURVEY]}: the window. */
@Command(name = "desktop", mixinStandardHelpOptions = true, description = "Opens the window.")
final class DesktopCommand implements Callable<Integer> {
    private final Window window;

    @Parameters(arity = "0..1", paramLabel = "SURVEY", description = "a survey folder, or a survey file (.gpkg)")
    private @Nullable Path survey;

    DesktopCommand(Window window) {
        this.window = window;
    }

    @Override
    public Integer call() throws IOException {
        Path path = survey;
        if (path != null && !Files.exists(path)) {
            throw new NoSuchFileException(path.toString());
        }
        window.open(path);
        return Corewright.DONE;
    }
}
