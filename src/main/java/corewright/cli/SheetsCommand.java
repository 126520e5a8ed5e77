package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.drawing.kit.GridPoints;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.report.sheets.FieldSheets;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code corewright sheets SURVEY --out F.pdf}: field sheets to fill in by hand. */
@Command(
        name = "sheets",
        mixinStandardHelpOptions = true,
        description = "Writes field sheets to fill in by hand; a survey without readings will do.")
final class SheetsCommand implements Callable<Integer> {
    private static final double USUAL_MM = 300;
    private static final double USUAL_INCHES = 12;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "SURVEY", description = "the survey folder, or a survey file (.gpkg)")
    @SuppressWarnings("NullAway.Init")
    private Path survey;

    @Option(names = "--out", paramLabel = "F.pdf", required = true, description = "the PDF to write")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(
            names = "--spacing",
            paramLabel = "MM",
            description = "of the grid where nothing was read yet: 300, or 12 inches in US units")
    private @Nullable Double spacing;

    @Option(names = "--paper", paramLabel = "SIZE", description = "a4, or letter as usual with US units")
    private @Nullable LyingSheet paper;

    @Option(names = "--json", description = "print machine-readable results")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        if (spacing != null && !GridPoints.sensible(spacing)) {
            throw new ParameterException(spec.commandLine(), "--spacing: found " + spacing + ", expected 10 to 5000");
        }
        if (Files.isDirectory(out)) {
            throw new FileAlreadyExistsException(out.toString(), null, "is a folder, expected a file to write");
        }
        Path folder = out.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new NoSuchFileException(out.toString(), null, "there is no such folder to put it in");
        }
        Survey read = SurveySource.readPlan(survey).survey();
        boolean us = Measure.of(read) == Measure.US;
        double step = spacing != null ? spacing : us ? USUAL_INCHES * Measure.MM_PER_INCH : USUAL_MM;
        LyingSheet size = paper != null ? paper : us ? LyingSheet.LETTER : LyingSheet.A4;
        int sheets = FieldSheets.write(read, step, size, out);
        spec.commandLine()
                .getOut()
                .println(
                        json
                                ? new ObjectMapper()
                                        .createObjectNode()
                                        .put("written", out.toString())
                                        .put("sheets", sheets)
                                        .toPrettyString()
                                : out + " was written: " + sheets + (sheets == 1 ? " sheet." : " sheets."));
        return Corewright.DONE;
    }
}
