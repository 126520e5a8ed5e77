package corewright.cli;

import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A survey wherever it is: in a folder of plain files, or in a survey file. */
final class SurveySource {
    private SurveySource() {}

    static Intake read(Path path) throws IOException {
        if (!Files.isRegularFile(path)) {
            return SurveyFolder.read(path);
        }
        try (SurveyFile file = SurveyFile.openToRead(path)) {
            return SurveyCheck.check(file.survey(), file.importNotes());
        }
    }

    /** Its pictures, wherever it is; a survey file is opened for each. */
    static Pictures pictures(Path path) {
        if (!Files.isRegularFile(path)) {
            return Pictures.in(path);
        }
        return name -> {
            try (SurveyFile file = SurveyFile.openToRead(path)) {
                return file.picture(name);
            }
        };
    }

    /** The same of a survey that need not have a reading yet. */
    static Intake readPlan(Path path) throws IOException {
        if (!Files.isRegularFile(path)) {
            return SurveyFolder.readPlan(path);
        }
        try (SurveyFile file = SurveyFile.openToRead(path)) {
            return SurveyCheck.checkPlan(file.survey(), file.importNotes());
        }
    }
}
