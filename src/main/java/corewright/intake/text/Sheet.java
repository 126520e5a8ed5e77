package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import corewright.survey.Origin;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * A CSV file as lines of cells, blank lines left out.
 *
 * @param file name inside the survey folder
 * @param separator between cells
 * @param decimal what a lone comma or dot before three digits means in this file
 */
public record Sheet(String file, char separator, Decimal decimal, List<SheetLine> lines) {
    public static final int MOST_ROWS = 500_000;

    /** Of a cross-tab 50 m long with a reading every 25 mm. */
    static final int MOST_COLUMNS = 2000;

    private static final int MOST_CELLS = 8_000_000;

    /** Parses a text; null after a complaint. {@code knows} tells a header this kind of file can use. */
    public static @Nullable Sheet parse(String file, String text, Predicate<String> knows, Notes notes)
            throws IOException {
        Dialect dialect = Dialect.detect(text, knows);
        long wide = Separators.tooMany(text, dialect.start(), dialect.separator(), MOST_COLUMNS);
        if (wide > 0) {
            notes.complain(new Origin(file, wide), "", "expected at most " + MOST_COLUMNS + " columns");
            return null;
        }
        List<SheetLine> lines = new ArrayList<>();
        long read = 0;
        Shared shared = new Shared();
        PlaceCounter place = new PlaceCounter(text, dialect.start());
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(dialect.separator())
                .setIgnoreEmptyLines(false)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.substring(dialect.start())), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                CSVRecord found = records.next();
                long number = place.lineAt(found.getCharacterPosition());
                place.recordEnded(parser.getCurrentLineNumber());
                String[] cells = new String[found.size()];
                boolean blank = true;
                for (int i = 0; i < cells.length; i++) {
                    cells[i] = shared.of(found.get(i).strip());
                    blank &= cells[i].isEmpty();
                }
                if (blank) {
                    continue;
                }
                lines.add(new SheetLine(number, List.of(cells)));
                read += cells.length;
                if (lines.size() > MOST_ROWS + 1 || read > MOST_CELLS) {
                    notes.complain(
                            new Origin(file, number),
                            "",
                            "expected at most " + MOST_ROWS + " rows and " + MOST_CELLS + " cells in a file");
                    return null;
                }
            }
        } catch (UncheckedIOException e) {
            notes.complain(
                    new Origin(file, place.nextRecord()),
                    "",
                    "a quotation mark is opened here that is not closed, or text follows the closing one");
            return null;
        }
        return new Sheet(file, dialect.separator(), dialect.decimal(lines), lines);
    }

    /** Keeps one of equal texts: names of meters and faces, words and small numbers fill most cells of a file. */
    private static final class Shared {
        private final @Nullable String[] seen = new String[1 << 12];

        String of(String text) {
            int at = text.hashCode() & (seen.length - 1);
            String before = seen[at];
            if (before != null && before.equals(text)) {
                return before;
            }
            seen[at] = text;
            return text;
        }
    }

    /** Turns positions in the text into physical lines; asked in rising order. */
    private static final class PlaceCounter {
        private final String text;
        private final int start;
        private final long before;
        private int position;
        private long line = 1;
        private long next = 1;

        PlaceCounter(String text, int start) {
            this.text = text;
            this.start = start;
            this.position = start;
            this.line += text.substring(0, start).chars().filter(c -> c == '\n').count();
            this.before = this.line - 1;
            this.next = this.line;
        }

        long lineAt(long characterPosition) {
            int target = (int) Math.min(text.length(), start + characterPosition);
            while (position < target) {
                line += text.charAt(position++) == '\n' ? 1 : 0;
            }
            return line;
        }

        void recordEnded(long linesRead) {
            next = before + linesRead + 1;
        }

        /** The line after the last record that was read whole. */
        long nextRecord() {
            return next;
        }
    }
}
