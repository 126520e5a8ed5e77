package corewright.intake.text;

/** Counts cells before they are parsed: a parser gathers a whole record first, however many cells it has. */
final class Separators {
    private final char separator;
    private final int most;

    private Separators(char separator, int most) {
        this.separator = separator;
        this.most = most;
    }

    /** The physical line of the first record with more than {@code most} cells; 0 where there is none. */
    static long tooMany(String text, int start, char separator, int most) {
        return new Separators(separator, most).tooMany(text, start);
    }

    /** As in RFC 4180, a quotation mark opens a cell only where it is the cell's first character. */
    private long tooMany(String text, int start) {
        long line = 1;
        int cells = 1;
        boolean first = true;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            line += c == '\n' ? 1 : 0;
            if (i < start) {
                continue;
            }
            if (quoted) {
                quoted = c != '"'; // a doubled one closes and opens again
                first = !quoted;
            } else if (c == '"' && first) {
                quoted = true;
            } else if (c == separator) {
                first = true;
                if (++cells > most) {
                    return line;
                }
            } else {
                first = c == '\n';
                cells = c == '\n' ? 1 : cells;
            }
        }
        return 0;
    }
}
