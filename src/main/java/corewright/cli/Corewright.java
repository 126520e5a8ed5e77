package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import corewright.report.page.Program;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.FileSystemException;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;

/** The command line's root: names the commands and turns every failure into a sentence and an exit status. */
@Command(
        name = "corewright",
        mixinStandardHelpOptions = true,
        version = "corewright " + Program.VERSION,
        description = "Maps moisture and core damage in sandwich boat decks, and plans and proves their repair.",
        subcommands = {
            CheckCommand.class,
            RunCommand.class,
            CompareCommand.class,
            SheetsCommand.class,
            ConvertCommand.class,
            EstimateCommand.class,
            ContourCommand.class,
            PanelCommand.class
        })
public final class Corewright {
    /** Exit status. */
    static final int DONE = 0;

    static final int OUR_DEFECT = 1;
    static final int WRONG_USE = 2;
    static final int REFUSED = 3;

    private Corewright() {}

    /** Runs one command line without a window to open, and returns its exit status. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(out, err, new CommandLine(new Corewright()), args);
    }

    /** Runs one command line and returns its exit status. */
    public static int run(PrintWriter out, PrintWriter err, Window window, String... args) {
        CommandLine line = new CommandLine(new Corewright());
        line.addSubcommand(new DesktopCommand(window));
        return run(out, err, line, args);
    }

    private static int run(PrintWriter out, PrintWriter err, CommandLine line, String... args) {
        line.setOut(out).setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler(Corewright::explain);
        if (args.length == 0) {
            line.usage(err);
            return WRONG_USE;
        }
        line.setExecutionStrategy(Corewright::execute);
        int status = withinMemory(() -> line.execute(args), err);
        out.flush();
        err.flush();
        return status;
    }

    /** Help asks for nothing; everything else may come to need a temporary file. */
    private static int execute(ParseResult parsed) {
        Integer help = CommandLine.executeHelpRequest(parsed);
        if (help != null) {
            return help;
        }
        try {
            TemporaryFiles.check();
        } catch (IOException e) {
            parsed.commandSpec().commandLine().getErr().println(sentence(e));
            return REFUSED;
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    static int withinMemory(IntSupplier command, PrintWriter err) {
        try {
            return command.getAsInt();
        } catch (OutOfMemoryError e) { // what was being made is given up: there is room again for a sentence
            err.println(
                    "This needs more memory than the " + (Runtime.getRuntime().maxMemory() >> 20)
                            + " MB that Java may take here. Allow it more (java -Xmx4g ...), or ask for less: a coarser mesh,"
                            + " larger cells, fewer points.");
            return REFUSED;
        }
    }

    private static int explain(Exception failure, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (failure instanceof RefusedException refused) {
            if (line.getParseResult().hasMatchedOption("--json")) {
                line.getOut().println(asJson(refused));
            }
            refused.complaints().forEach(err::println);
            return REFUSED;
        }
        if (failure instanceof IOException) {
            err.println(sentence((IOException) failure));
            return REFUSED;
        }
        err.println("This is a defect of ours, not of your files: " + failure);
        if (Boolean.getBoolean("corewright.trace")) {
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            err.println(trace);
        }
        return OUR_DEFECT;
    }

    private static String sentence(IOException failure) {
        if (failure instanceof FileSystemException where) {
            String reason = where.getReason();
            String kind = where.getClass().getSimpleName().replace("Exception", "");
            return where.getFile() + ": " + (reason != null ? reason : words(kind));
        }
        return String.valueOf(failure.getMessage());
    }

    private static String words(String camel) {
        return camel.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
    }

    private static String asJson(RefusedException refused) {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode root = mapper.createObjectNode();
        ArrayNode list = root.putArray("complaints");
        for (Complaint c : refused.complaints()) {
            list.addObject()
                    .put("file", c.origin().file())
                    .put("line", c.origin().line())
                    .put("column", c.column())
                    .put("problem", c.problem());
        }
        return root.toPrettyString();
    }
}
