package corewright.desktop.state;

import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;

/** Why something cannot be used, line by line, as the list beside the plan shows it. */
public final class Complaints {
    private Complaints() {}

    /**
     * @param place file, line and column
     * @param problem what was found and what was expected
     */
    public record Line(String place, String problem) {}

    static List<Line> of(RefusedException refused) {
        return refused.complaints().stream().map(Complaints::line).toList();
    }

    private static Line line(Complaint c) {
        String column = c.column().isEmpty() ? "" : ": " + c.column();
        return new Line(c.origin() + column, c.problem());
    }

    /** A failure in a sentence; what is no fault of the files is said to be ours. */
    public static String sentence(Exception e) {
        if (e instanceof CancellationException) {
            return "it was stopped.";
        }
        String text = Objects.requireNonNullElse(e.getMessage(), e.toString());
        return e instanceof IOException ? text : "this is a defect of ours, not of your files: " + text;
    }
}
