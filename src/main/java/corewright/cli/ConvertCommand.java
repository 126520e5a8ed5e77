package corewright.cli;

import com.fasterxml.jackson.databind.node.TextNode;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.store.FolderWriter;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code corewright convert IN OUT}: a survey folder into a survey file, or back. */
@Command(
        name = "convert",
        mixinStandardHelpOptions = true,
        description = "Turns a survey folder into one survey file (.gpkg), or a survey file into a folder.")
final class ConvertCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "IN", description = "a survey folder, or a survey file")
    @SuppressWarnings("NullAway.Init")
    private Path in;

    @Parameters(index = "1", paramLabel = "OUT", description = "new: a file ending in .gpkg, or a folder")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--json", description = "print machine-readable results")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        boolean intoFile = out.toString().toLowerCase(Locale.ROOT).endsWith(".gpkg");
        if (intoFile == Files.isRegularFile(in)) {
            String expected = intoFile ? "a survey folder into a .gpkg" : "a .gpkg into a survey folder";
            throw new ParameterException(
                    spec.commandLine(), "cannot convert " + in + " into " + out + ", expected " + expected);
        }
        if (intoFile) {
            Intake intake = SurveyFolder.read(in);
            SurveyFile.create(out, intake.survey(), SurveyCheck.importNotes(intake), Pictures.in(in));
        } else {
            try (SurveyFile file = SurveyFile.openToRead(in)) {
                FolderWriter.write(file.survey(), file::picture, out);
            }
        }
        spec.commandLine().getOut().println(json ? "{ \"written\": " + quoted() + " }" : out + " was written.");
        return Corewright.DONE;
    }

    private String quoted() {
        return TextNode.valueOf(out.toString()).toString();
    }
}
