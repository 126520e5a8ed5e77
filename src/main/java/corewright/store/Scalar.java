package corewright.store;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One value of a column: texts and numbers as they are, yes and no as 1 and 0, choices as their words
 * ({@code set-aside}), days and times as ISO 8601.
 *
 * @param type of the record's component
 */
record Scalar(Class<?> type, String column, boolean mayBeNull) {
    /** Longer than any cell of a survey folder may be. */
    private static final int LONGEST_TEXT = 100_000;

    @Nullable
    Object written(@Nullable Object value) {
        if (value == null || value instanceof String || value instanceof Double || value instanceof Long) {
            return value;
        }
        if (value instanceof Integer whole) {
            return whole.longValue();
        }
        if (value instanceof Boolean yes) {
            return yes ? 1L : 0L;
        }
        return value instanceof Enum<?> choice ? word(choice) : value.toString();
    }

    /**
     * The value as a record wants it.
     *
     * @throws IllegalArgumentException naming the column, where it does not fit
     */
    @Nullable
    Object read(@Nullable Object value) {
        if (value == null) {
            if (!mayBeNull) {
                throw expected("nothing", "a value");
            }
            return null;
        }
        if (value instanceof Number number) {
            return number(number);
        }
        if (value instanceof String text && text.length() <= LONGEST_TEXT) {
            return text(text);
        }
        throw expected(value instanceof String ? "a very long text" : "bytes", "a value");
    }

    private Object number(Number number) {
        if (type == double.class || type == Double.class) {
            return number.doubleValue();
        }
        boolean whole = number instanceof Long || number instanceof Integer;
        if (whole && type == long.class) {
            return number.longValue();
        }
        if (whole && (type == int.class || type == Integer.class)) {
            return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, number.longValue()));
        }
        if (whole && (type == boolean.class || type == Boolean.class)) {
            return number.longValue() != 0;
        }
        throw expected(number.toString(), type == String.class ? "a text" : "another value");
    }

    private Object text(String text) {
        if (type == String.class) {
            return text;
        }
        try {
            if (type == LocalDate.class) {
                return LocalDate.parse(text);
            }
            if (type == LocalDateTime.class) {
                return LocalDateTime.parse(text);
            }
        } catch (DateTimeException e) {
            throw expected(text, "a date");
        }
        if (type.isEnum()) {
            for (Object choice : type.getEnumConstants()) {
                if (word((Enum<?>) choice).equals(text)) {
                    return choice;
                }
            }
            throw expected(text, "another word");
        }
        throw expected(text, "a number");
    }

    private IllegalArgumentException expected(String found, String expected) {
        return new IllegalArgumentException(column + ": found \"" + shown(found) + "\", expected " + expected);
    }

    /** A text of the file as a message may show it: not too long, and without what would upset a terminal. */
    static String shown(String text) {
        return shown(text, 60);
    }

    static String shown(String text, int most) {
        String cut = text.length() > most ? text.substring(0, most) + "..." : text;
        return cut.replaceAll("[\\p{Cc}\\p{Cf}\u2028\u2029]", "\uFFFD");
    }

    static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
