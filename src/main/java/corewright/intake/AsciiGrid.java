package corewright.intake;

import corewright.survey.Origin;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads an ESRI ASCII grid: {@code ncols nrows xllcorner|xllcenter yllcorner|yllcenter cellsize [nodata_value]}, in any
 * order and case, then rows times columns values, the first row at the largest y. Line breaks between values carry no
 * meaning, as in the format's own readers.
 *
 * <p>Format: Esri, ArcGIS documentation, "Esri ASCII raster format".
 */
public final class AsciiGrid {
    /** Above this a file is not a survey's raster but a mistake; 100 million values fill 800 MB. */
    private static final long MOST_CELLS = 100_000_000L;

    /** A wrong file would otherwise list every word it holds. */
    private static final int MOST_COMPLAINTS = 50;

    /** The format's own default. */
    private static final double DEFAULT_NODATA = -9999;

    private static final List<String> KEYS =
            List.of("ncols", "nrows", "xllcorner", "xllcenter", "yllcorner", "yllcenter", "cellsize", "nodata_value");
    private static final Pattern WORD = Pattern.compile("\\S+");
    /** Java's own reader would also take 1f, 0x1p3 and Infinity. */
    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

    private final String name;
    private final List<Complaint> complaints = new ArrayList<>();
    private final Map<String, Head> heads = new LinkedHashMap<>();

    /** One line of the header. */
    private record Head(String text, double value, int line) {}

    private AsciiGrid(String name) {
        this.name = name;
    }

    /** A grid of square cells; row 0 at the smallest y; NaN where the file has no data. */
    public static final class Grid {
        private final double x0;
        private final double y0;
        private final double cell;
        private final int rows;
        private final int columns;
        private final double[] values;

        Grid(double x0, double y0, double cell, int rows, int columns, double[] values) {
            this.x0 = x0;
            this.y0 = y0;
            this.cell = cell;
            this.rows = rows;
            this.columns = columns;
            this.values = values;
        }

        /** Left edge of column 0. */
        public double x0() {
            return x0;
        }

        /** Lower edge of row 0. */
        public double y0() {
            return y0;
        }

        public double cell() {
            return cell;
        }

        public int rows() {
            return rows;
        }

        public int columns() {
            return columns;
        }

        /** A copy of the values, row-major. */
        public double[] values() {
            return values.clone();
        }
    }

    /**
     * Reads one file.
     *
     * @throws RefusedException with every complaint, when the content is not a grid
     */
    public static Grid read(Path file) throws IOException {
        Path last = file.getFileName();
        String name = (last == null ? file : last).toString();
        return parse(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
    }

    static Grid parse(String name, String text) throws RefusedException {
        AsciiGrid reader = new AsciiGrid(name);
        Grid grid = reader.grid(text.lines().toList());
        if (grid == null || !reader.complaints.isEmpty()) {
            throw new RefusedException(reader.complaints);
        }
        return grid;
    }

    private @Nullable Grid grid(List<String> lines) {
        int first = readHeader(lines);
        int columns = count("ncols");
        int rows = count("nrows");
        double cell = number("cellsize");
        if (cell <= 0) {
            complain("cellsize", "a number above 0");
        }
        double x0 = corner("xllcorner", "xllcenter", cell);
        double y0 = corner("yllcorner", "yllcenter", cell);
        if (complaints.isEmpty() && (long) rows * columns > MOST_CELLS) {
            complain("nrows", "at most " + MOST_CELLS + " values in all");
        }
        return complaints.isEmpty()
                ? new Grid(x0, y0, cell, rows, columns, readValues(lines, first, rows, columns))
                : null;
    }

    /** Reads the lines that begin with a letter; gives the index of the first line of values. */
    private int readHeader(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty()) {
                String[] words = line.split("\\s+");
                if (!Character.isLetter(words[0].charAt(0)) || isNaN(words[0])) {
                    return i;
                }
                readHead(words, i + 1);
            }
        }
        return lines.size();
    }

    private void readHead(String[] words, int line) {
        Origin here = new Origin(name, line);
        String key = words[0].toLowerCase(Locale.ROOT);
        if (!KEYS.contains(key)) {
            add(Complaint.of(here, "", words[0], "one of " + String.join(" ", KEYS)));
        } else if (words.length != 2) {
            add(new Complaint(here, key, "found " + (words.length - 1) + " values, expected one"));
        } else if (heads.containsKey(key)) {
            add(new Complaint(here, key, "found a second time"));
        } else {
            boolean noNumber = key.equals("nodata_value") && isNaN(words[1]);
            heads.put(key, new Head(words[1], noNumber ? Double.NaN : value(words[1], here, key), line));
        }
    }

    private double[] readValues(List<String> lines, int first, int rows, int columns) {
        double[] values = new double[rows * columns];
        Arrays.fill(values, Double.NaN);
        double nodata = heads.containsKey("nodata_value") ? number("nodata_value") : DEFAULT_NODATA;
        int count = 0;
        for (int i = first; i < lines.size(); i++) {
            Matcher words = WORD.matcher(lines.get(i));
            while (words.find()) {
                if (count == values.length) {
                    add(new Complaint(
                            new Origin(name, i + 1),
                            "",
                            "found more than the " + values.length + " values of " + rows + " rows of " + columns
                                    + " columns"));
                    return values;
                }
                String word = words.group();
                double value = isNaN(word) ? Double.NaN : value(word, new Origin(name, i + 1), "");
                int row = rows - 1 - count / columns;
                values[row * columns + count % columns] = value == nodata ? Double.NaN : value;
                count++;
            }
        }
        if (count < values.length) {
            add(new Complaint(
                    new Origin(name, lines.size()),
                    "",
                    "found " + count + " values, expected " + rows + " rows of " + columns + " columns"));
        }
        return values;
    }

    private double value(String text, Origin here, String key) {
        Double value = PLAIN_NUMBER.matcher(text).matches() ? Double.valueOf(text) : null;
        if (value == null || value.isInfinite()) {
            add(Complaint.of(here, key, text, "a number"));
            return Double.NaN;
        }
        return value;
    }

    private void add(Complaint complaint) {
        if (complaints.size() < MOST_COMPLAINTS) {
            complaints.add(complaint);
        }
    }

    private static boolean isNaN(String word) {
        return word.equalsIgnoreCase("nan") || word.equalsIgnoreCase("-nan");
    }

    private int count(String key) {
        double value = number(key);
        if (Double.isFinite(value) && (value < 1 || value != Math.rint(value) || value > Integer.MAX_VALUE)) {
            complain(key, "a whole number from 1");
            return 0;
        }
        return (int) value;
    }

    private double number(String key) {
        Head head = heads.get(key);
        if (head == null) {
            add(new Complaint(new Origin(name, 0), "", "the header has no " + key));
            return Double.NaN;
        }
        return head.value;
    }

    /** The lower or left edge, from whichever of its two forms is given. */
    private double corner(String edge, String centre, double cell) {
        if (heads.containsKey(edge) && heads.containsKey(centre)) {
            complain(centre, "only one of " + edge + " and " + centre);
        }
        if (heads.containsKey(centre)) {
            return number(centre) - cell / 2;
        }
        if (heads.containsKey(edge)) {
            return number(edge);
        }
        add(new Complaint(new Origin(name, 0), "", "the header has neither " + edge + " nor " + centre));
        return Double.NaN;
    }

    private void complain(String key, String expected) {
        Head head = Objects.requireNonNull(heads.get(key));
        add(Complaint.of(new Origin(name, head.line), key, head.text, expected));
    }
}
