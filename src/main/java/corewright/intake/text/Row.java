package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import corewright.survey.About;
import corewright.survey.Origin;
import corewright.survey.SheetCell;
import corewright.survey.Subject;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One record of a table or of a drawing; every accessor complains at the record's own line and answers null, so that reading goes on. */
public class Row {
    private static final int LONGEST_CELL = 100_000;
    private static final int LONGEST_NAME = 100;

    private final SheetLine line;
    private final Origin origin;
    private final Map<String, Integer> columns;
    private final Decimal decimal;
    private final Notes notes;

    public Row(SheetLine line, Origin origin, Map<String, Integer> columns, Decimal decimal, Notes notes) {
        this.line = line;
        this.origin = origin;
        this.columns = columns;
        this.decimal = decimal;
        this.notes = notes;
    }

    public Origin origin() {
        return origin;
    }

    public Decimal decimal() {
        return decimal;
    }

    public boolean has(String column) {
        return !text(column).isEmpty();
    }

    /** The cell, stripped, without what makes a formula harmless; empty where the file has no such column. */
    public String text(String column) {
        Integer at = columns.get(column);
        return at == null ? "" : SheetCell.original(line.cell(at));
    }

    /** A name for lists and labels: one line, not long; empty where there is none, or after a complaint. */
    public String name(String column) {
        String name = text(column);
        if (name.length() > LONGEST_NAME) {
            complain(column, "has " + name.length() + " characters, expected at most " + LONGEST_NAME);
            return "";
        }
        return name.indexOf('\n') < 0 && name.indexOf('\t') < 0 ? name : name.replaceAll("\\s+", " ");
    }

    public void expected(String column, String expected) {
        notes.expected(origin, shown(column), text(column), expected);
    }

    /** What a complaint calls a column. */
    protected String shown(String column) {
        return column;
    }

    public void doubt(About about, Subject subject, String message, String effect) {
        notes.doubt(origin, about, subject, message, effect);
    }

    public void complain(String column, String problem) {
        notes.complain(origin, shown(column), problem);
    }

    @Nullable
    public Double length(String column, LengthUnit unit) {
        Double mm = Lengths.parse(text(column), unit, decimal);
        if (mm == null) {
            expected(column, lengthIn(unit));
        }
        return mm;
    }

    /** A length of zero or more. */
    @Nullable
    public Double depth(String column, LengthUnit unit) {
        Double mm = Lengths.parse(text(column), unit, decimal);
        if (mm == null || mm < 0) {
            expected(column, lengthIn(unit) + ", not negative");
            return null;
        }
        return mm;
    }

    /** A number from {@code low} to {@code high}. */
    @Nullable
    public Double number(String column, double low, double high) {
        Double value = Numerals.parse(text(column), decimal);
        if (value == null) {
            expected(column, "a number");
            return null;
        }
        if (value < low || value > high) {
            expected(column, "a number from " + Numerals.plain(low) + " to " + Numerals.plain(high));
            return null;
        }
        return value;
    }

    public <E extends Enum<E>> @Nullable E word(String column, Class<E> choices) {
        E choice = Words.pick(choices, text(column));
        if (choice == null) {
            expected(column, Words.choices(choices));
        }
        return choice;
    }

    public boolean yes(String column) {
        Boolean answer = Words.yesNo(text(column));
        if (answer == null) {
            expected(column, "yes or no");
        }
        return Boolean.TRUE.equals(answer);
    }

    /** Complains of cells no person wrote. */
    boolean isWithinLimits() {
        Integer wkt = columns.get("wkt"); // a polygon is long; its reader has a limit of its own
        for (int i = 0; i < line.cells().size(); i++) {
            int length = line.cells().get(i).length();
            if (length > LONGEST_CELL && (wkt == null || wkt != i)) {
                complain("", "cell " + (i + 1) + " has " + length + " characters, expected at most " + LONGEST_CELL);
                return false;
            }
        }
        return true;
    }

    private static String lengthIn(LengthUnit unit) {
        return "a length in " + unit;
    }
}
