package corewright.cli;

import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.intake.Intake;
import corewright.report.Outputs;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code corewright run SURVEY --out DIR}: from a folder or file of readings to every output. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "Assesses a survey and writes maps, tables and the owner's report.")
final class RunCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "SURVEY", description = "the survey folder, or a survey file (.gpkg)")
    @SuppressWarnings("NullAway.Init")
    private Path survey;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "folder for the outputs: new, empty, or of an earlier run, which is replaced")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--json", description = "print machine-readable results")
    private boolean json;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private Quiet quiet;

    @Override
    public Integer call() throws IOException {
        Outputs.check(out);
        Assessment assessment;
        String summary;
        try (StageClock clock = quiet.clock(spec.commandLine().getErr())) {
            clock.begin("intake", 0);
            Intake intake = SurveySource.read(survey);
            Assessed assessed = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, clock);
            assessment = assessed.assessment();
            summary = Outputs.write(assessed, SurveySource.pictures(survey), out, clock, clock::timingsMs);
        }
        PrintWriter print = spec.commandLine().getOut();
        if (json) {
            print.print(summary);
        } else {
            RunSummary.lines(assessment, out).forEach(print::println);
        }
        return status(assessment, spec.commandLine().getErr());
    }

    /** What is missing by a defect is said and spoils the status; the rest is written all the same. */
    static int status(Assessment assessment, PrintWriter err) {
        assessment.defects().forEach(d -> err.println(d.sentence() + " The rest stands. (" + d.cause() + ")"));
        return assessment.defects().isEmpty() ? Corewright.DONE : Corewright.OUR_DEFECT;
    }
}
