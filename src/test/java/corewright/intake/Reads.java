package corewright.intake;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import corewright.SurveyFolders;
import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import corewright.survey.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** What tests of this package ask of a folder. */
public final class Reads {
    private Reads() {}

    public static Intake read(SurveyFolders folder) {
        try {
            return SurveyFolder.read(folder.path());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every complaint, as printed. */
    public static List<String> complaints(SurveyFolders folder) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, () -> SurveyFolder.read(folder.path()));
        return refused == null
                ? List.of()
                : refused.complaints().stream().map(Complaint::toString).toList();
    }

    /** Every finding as place, message and effect. */
    public static List<String> findings(SurveyFolders folder) {
        return read(folder).findings().stream()
                .map((Finding f) -> f.origin() + ": " + f.message() + " " + f.effect())
                .toList();
    }
}
