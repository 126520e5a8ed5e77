package corewright.desktop.state;

import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Opens surveys from wherever they are. */
public final class SurveyOpener {
    private static final List<String> SAMPLE =
            List.of("survey.yaml", "plan.csv", "moisture.csv", "taps.csv", "probes.csv", "feelers.csv", "plugs.csv");

    private SurveyOpener() {}

    /** The folder that is meant, where it is one or its survey.yaml. */
    public static Path folder(Path chosen) {
        Path parent = chosen.toAbsolutePath().getParent();
        return chosen.endsWith("survey.yaml") && parent != null ? parent : chosen;
    }

    /** A survey folder (its survey.yaml will do) or a survey file. */
    public static EditLog open(Path chosen) throws IOException {
        Path path = chosen.endsWith("survey.yaml") ? chosen.toAbsolutePath().getParent() : chosen;
        if (path != null && Files.isRegularFile(path)) {
            return FileLog.of(SurveyFile.open(path));
        }
        Path folder = path == null ? chosen : path;
        Intake intake = SurveyFolder.readPlan(folder); // one that is still to be read opens too
        Survey survey = intake.survey();
        List<Finding> notes = SurveyCheck.importNotes(intake);
        return FileLog.ofFolder(
                folder, survey, notes, () -> SurveyFile.createBeside(folder, survey, notes, Pictures.in(folder)));
    }

    /** A new survey file. */
    public static EditLog create(Path file, Survey survey) throws IOException {
        SurveyFile.create(file, survey);
        return FileLog.of(SurveyFile.open(file));
    }

    /** The sample; what is changed in it is not kept. */
    public static EditLog sample() throws IOException {
        Path folder = Files.createTempDirectory(Path.of(System.getProperty("java.io.tmpdir")), "corewright-sample");
        try {
            for (String name : SAMPLE) {
                try (InputStream in = SurveyOpener.class.getResourceAsStream("/corewright/desktop/sample/" + name)) {
                    if (in == null) {
                        throw new IOException("the sample survey is missing from the program: " + name);
                    }
                    Files.copy(in, folder.resolve(name));
                }
            }
            Intake intake = SurveyFolder.read(folder);
            return new MemoryLog(intake.survey(), SurveyCheck.importNotes(intake));
        } finally {
            for (String name : SAMPLE) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.deleteIfExists(folder);
        }
    }
}
