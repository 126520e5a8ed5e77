package corewright.intake;

import corewright.survey.Origin;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Named columns of numbers from a CSV file, for the expert commands.
 *
 * <p>Names are matched without regard to case. Comma, semicolon or tab, whichever the header line has most of; with
 * semicolon or tab a decimal comma is understood. UTF-8, UTF-16 with a byte-order mark, else Latin-1. Blank lines are
 * skipped.
 */
public final class NumberTable {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final String file;
    private final List<String> names;
    private final double[][] columns;
    private final long[] lines;

    private NumberTable(String file, List<String> names, double[][] columns, long[] lines) {
        this.file = file;
        this.names = names;
        this.columns = columns;
        this.lines = lines;
    }

    /**
     * Reads these columns.
     *
     * @throws RefusedException with every complaint of the file: unreadable, a column missing, cells that are no numbers, no
     *     row at all
     */
    public static NumberTable read(Path path, List<String> names) throws RefusedException {
        String file = String.valueOf(path.getFileName());
        return new Reading(file, names).read(path);
    }

    /** How many rows. */
    public int size() {
        return lines.length;
    }

    /** A copy of one of the columns asked for. */
    public double[] column(String name) {
        return columns[names.indexOf(name)].clone();
    }

    /** Where a row stands. */
    public Origin origin(int row) {
        return new Origin(file, lines[row]);
    }

    /** One pass over one file, collecting what is wrong with it. */
    private static final class Reading {
        private final String file;
        private final List<String> names;
        private final List<Complaint> complaints = new ArrayList<>();
        private final List<double[]> rows = new ArrayList<>();
        private final List<Long> lines = new ArrayList<>();

        Reading(String file, List<String> names) {
            this.file = file;
            this.names = names;
        }

        NumberTable read(Path path) throws RefusedException {
            try {
                parse(text(Files.readAllBytes(path)));
            } catch (NoSuchFileException e) {
                complain(0, "", "no such file");
            } catch (IOException e) {
                complain(0, "", Files.isDirectory(path) ? "is a folder" : "cannot be read: " + e.getMessage());
            } catch (UncheckedIOException e) {
                complain(0, "", "cannot be read: " + e.getMessage());
            }
            if (complaints.isEmpty() && rows.isEmpty()) {
                complain(0, "", "expected at least one row below the header");
            }
            if (!complaints.isEmpty()) {
                throw new RefusedException(complaints);
            }
            double[][] columns = new double[names.size()][rows.size()];
            for (int r = 0; r < rows.size(); r++) {
                for (int c = 0; c < columns.length; c++) {
                    columns[c][r] = rows.get(r)[c];
                }
            }
            return new NumberTable(
                    file,
                    List.copyOf(names),
                    columns,
                    lines.stream().mapToLong(l -> l).toArray());
        }

        private void parse(String text) throws IOException {
            char separator =
                    separator(text.lines().filter(l -> !l.isBlank()).findFirst().orElse(""));
            CSVFormat format = CSVFormat.DEFAULT
                    .builder()
                    .setDelimiter(separator)
                    .setIgnoreEmptyLines(true)
                    .setIgnoreSurroundingSpaces(true)
                    .get();
            try (CSVParser parser = CSVParser.parse(text, format)) {
                int[] at = new int[0];
                int width = 0;
                for (CSVRecord record : parser) {
                    if (width == 0) {
                        width = record.size();
                        at = header(record, parser.getCurrentLineNumber());
                        if (!complaints.isEmpty()) {
                            return; // without its columns no cell can be judged
                        }
                    } else if (!blank(record)) {
                        row(record, width, at, new Row(parser.getCurrentLineNumber(), separator != ','));
                    }
                }
            }
        }

        private record Row(long line, boolean decimalComma) {}

        private int[] header(CSVRecord record, long line) {
            int[] at = new int[names.size()];
            List<String> found = record.stream().map(String::strip).toList();
            for (int c = 0; c < at.length; c++) {
                String name = names.get(c);
                at[c] = -1;
                for (int i = 0; i < found.size(); i++) {
                    if (found.get(i).equalsIgnoreCase(name)) {
                        if (at[c] >= 0) {
                            complain(line, name, "two columns have this name");
                        }
                        at[c] = i;
                    }
                }
                if (at[c] < 0) {
                    String all = String.join(", ", found);
                    complaints.add(Complaint.of(new Origin(file, line), name, all, "a column of this name"));
                }
            }
            return at;
        }

        private void row(CSVRecord record, int width, int[] at, Row row) {
            for (int i = width; i < record.size(); i++) {
                if (!record.get(i).isBlank()) {
                    complain(row.line(), "", "found " + record.size() + " cells, expected " + width);
                    return;
                }
            }
            double[] values = new double[at.length];
            for (int c = 0; c < at.length; c++) {
                String cell = at[c] < record.size() ? record.get(at[c]).strip() : "";
                values[c] = number(row.decimalComma() ? cell.replace(',', '.') : cell);
                if (Double.isNaN(values[c])) {
                    complaints.add(Complaint.of(new Origin(file, row.line()), names.get(c), cell, "a number"));
                }
            }
            rows.add(values);
            lines.add(row.line());
        }

        private void complain(long line, String column, String problem) {
            complaints.add(new Complaint(new Origin(file, line), column, problem));
        }

        private static boolean blank(CSVRecord record) {
            return record.stream().allMatch(String::isBlank);
        }
    }

    /** NaN for what is not a plain, finite decimal number. */
    private static double number(String cell) {
        String plain = cell.replace('\u2212', '-'); // the typographic minus
        if (!NUMBER.matcher(plain).matches()) {
            return Double.NaN;
        }
        double number = Double.parseDouble(plain);
        return Double.isInfinite(number) ? Double.NaN : number;
    }

    private static char separator(String header) {
        char best = ',';
        long most = 0;
        for (char c : new char[] {',', ';', '\t'}) {
            long count = header.chars().filter(h -> h == c).count();
            if (count > most) {
                most = count;
                best = c;
            }
        }
        return best;
    }

    /** By byte-order mark, else UTF-8, else (bytes that are no UTF-8) Latin-1. */
    private static String text(byte[] bytes) {
        int first = bytes.length > 1 ? (bytes[0] & 0xff) << 8 | bytes[1] & 0xff : 0;
        if (first == 0xfeff || first == 0xfffe) {
            Charset charset = first == 0xfeff ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE;
            return new String(Arrays.copyOfRange(bytes, 2, bytes.length), charset);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1); // never fails: every byte is a character of it
        }
    }
}
