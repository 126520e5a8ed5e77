package corewright.intake.text;

import corewright.survey.Origin;

/**
 * Why a file is refused, at one place; complete on its own.
 *
 * @param column the column or key, empty where the whole line or file is meant
 * @param problem what was found and what was expected
 */
public record Complaint(Origin origin, String column, String problem) {
    private static final int LONGEST = 2000;

    public Complaint {
        column = Clean.line(column, 200);
        problem = Clean.line(problem, LONGEST);
    }

    /** The usual form: {@code found "4l.5", expected a number}. */
    public static Complaint of(Origin origin, String column, String found, String expected) {
        return new Complaint(origin, column, "found \"" + Clean.line(found, 60) + "\", expected " + expected);
    }

    /** {@code moisture.csv:14: value: found "4l.5", expected a number}. */
    @Override
    public String toString() {
        return origin + ": " + (column.isEmpty() ? "" : column + ": ") + problem;
    }
}
