package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Numerals;
import corewright.intake.text.Row;
import corewright.survey.WorkEntry;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One row of the work log, as it is written at the boat. */
final class LogRow {
    private static final int MOST_CUPS = 100_000;
    private static final int MOST_LIFTS = 100;

    /** Hours and minutes since the first mix. */
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");

    private static final Pattern MINUTES = Pattern.compile("(?i)(.*[0-9])\\s*(?:min|minutes|')");
    private static final Pattern GRAMS = Pattern.compile("(?i)(.*[0-9])\\s*(?:g|gr|grams?)");

    private LogRow() {}

    /** Null after a complaint. */
    static @Nullable WorkEntry read(Row row, LengthUnit depth) {
        if (!row.has("hole")) {
            row.expected("hole", "the hole's name or its number on the card");
        }
        Double minutes = minutes(row);
        Double grams = number(row, "grams", GRAMS, OtherReaders.MOST_GRAMS, "a number of grams");
        Integer cup = whole(row, "cup", MOST_CUPS);
        Integer revision = whole(row, "card_revision", MOST_CUPS);
        Double felt = row.has("depth_felt") ? row.depth("depth_felt", depth) : null;
        if (!row.has("hole") || minutes == null || grams == null) {
            return null;
        }
        return new WorkEntry(
                row.origin(),
                row.name("hole"),
                minutes * 60,
                grams,
                optional(row, "ooze_at"),
                cup,
                optional(row, "vent_shown"),
                felt,
                row.name("leak"),
                row.name("stopped"),
                row.text("note"),
                row.name("who"),
                row.name("resin_lot"),
                revision,
                whole(row, "lift", MOST_LIFTS));
    }

    private static @Nullable String optional(Row row, String column) {
        return row.has(column) ? row.name(column) : null;
    }

    private static @Nullable Double minutes(Row row) {
        Matcher clock = CLOCK.matcher(row.text("minutes"));
        return clock.matches()
                ? (Double) (60.0 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2)))
                : number(
                        row,
                        "minutes",
                        MINUTES,
                        OtherReaders.LONGEST_MINUTES,
                        "minutes since the first mix, such as 75 or 1:15");
    }

    private static @Nullable Double number(Row row, String column, Pattern withUnit, double most, String expected) {
        Matcher unit = withUnit.matcher(row.text(column));
        Double value = Numerals.parse(unit.matches() ? unit.group(1) : row.text(column), row.decimal());
        if (value == null) {
            row.expected(column, expected);
            return null;
        }
        if (value < 0 || value > most) {
            row.expected(column, "a number from 0 to " + Numerals.plain(most));
            return null;
        }
        return value;
    }

    private static @Nullable Integer whole(Row row, String column, int most) {
        if (!row.has(column)) {
            return null;
        }
        Double value = Numerals.parse(row.text(column), row.decimal());
        if (value == null || value != Math.rint(value) || value < 1 || value > most) {
            row.expected(column, "a whole number from 1");
            return null;
        }
        return (int) (double) value;
    }
}
