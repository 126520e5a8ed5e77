package corewright.store;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The survey file cannot be read or written; the message is a sentence that a person can act on. */
public final class StoreException extends IOException {
    private static final long serialVersionUID = 1L;

    /** A problem may quote the file. */
    private static final int LONGEST = 1000;

    StoreException(Path file, String problem) {
        this(file, problem, null);
    }

    StoreException(Path file, String problem, @Nullable Throwable cause) {
        super(file + ": " + Scalar.shown(problem, LONGEST), cause);
    }
}
