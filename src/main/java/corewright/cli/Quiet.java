package corewright.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** The option of every command that may run for longer. */
final class Quiet {
    @Option(names = "--quiet", description = "say nothing of the progress on standard error")
    private boolean quiet;

    StageClock clock(PrintWriter err) {
        return new StageClock(err, StageClock.Manner.of(quiet));
    }
}
