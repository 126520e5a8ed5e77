package corewright.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The folder for temporary files, asked before the work begins: the survey file's library and large pages need it. */
final class TemporaryFiles {
    private static final int BYTES = 1 << 16;

    private TemporaryFiles() {}

    /** @throws IOException a sentence, where nothing can be written there */
    static void check() throws IOException {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"));
        Path trial = null;
        try {
            trial = Files.createTempFile(folder, "corewright", null);
            Files.write(trial, new byte[BYTES]);
        } catch (IOException e) {
            String why = Files.isDirectory(folder) ? "cannot be written, or is full" : "is not there";
            throw new FileSystemException(
                    folder.toString(),
                    null,
                    "the folder for temporary files " + why + "; name another (java -Djava.io.tmpdir=FOLDER ...)");
        } finally {
            if (trial != null) {
                Files.deleteIfExists(trial);
            }
        }
    }
}
