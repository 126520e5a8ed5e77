package corewright.store;

import org.jspecify.annotations.Nullable;

/** A table as text: comma, decimal dot, line feed, quotation marks where needed (RFC 4180). */
final class Csv {
    private final StringBuilder text = new StringBuilder();
    private int rows = -1;

    Csv(String... columns) {
        row((Object[]) columns);
    }

    boolean isEmpty() {
        return rows == 0;
    }

    /** Numbers with all their digits, yes and no, choices as their words; nothing for null. */
    void row(@Nullable Object... cells) {
        for (int i = 0; i < cells.length; i++) {
            text.append(i == 0 ? "" : ",").append(quoted(cell(cells[i])));
        }
        text.append('\n');
        rows++;
    }

    String text() {
        return text.toString();
    }

    /** The shortest text that is this number again when read. */
    static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private static String cell(@Nullable Object value) {
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "";
        }
        return value == null ? "" : value instanceof Enum<?> choice ? Scalar.word(choice) : value.toString();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == ';' || c == '"' || c < ' ');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
