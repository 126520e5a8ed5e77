package corewright;

import corewright.cli.Corewright;
import corewright.cli.TemporaryFiles;
import corewright.desktop.Desktop;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Entry of the program. */
public final class Main {
    private Main() {}

    /** Runs the command line; exits with its status. */
    public static void main(String[] args) {
        TemporaryFiles.begin();
        System.setProperty("java.awt.headless", "true");
        int status = Corewright.run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                Desktop::open,
                args);
        if (status != 0) {
            System.exit(status);
        }
    }
}
