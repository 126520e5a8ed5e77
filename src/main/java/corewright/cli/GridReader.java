package corewright.cli;

import corewright.contour.Raster;
import corewright.intake.text.Complaint;
import corewright.intake.text.Decimals;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Text;
import corewright.survey.Origin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Reads an ESRI ASCII grid: {@code ncols nrows xllcorner|xllcenter yllcorner|yllcenter cellsize [nodata_value]}, in any
 * order and case, then rows times columns values, the first row at the largest y. Line breaks between values carry no
 * meaning, as in the format's own readers.
 *
 * <p>Format: Esri, ArcGIS documentation, "Esri ASCII raster format".
 */
public final class GridReader {
    /** Above this a file is not a survey's raster but a mistake; 10 million values fill 80 MB. */
    private static final long MOST_CELLS = 10_000_000L;

    /** Corners farther out, or beside smaller cells, would leave neighbours at one place. */
    private static final double LARGEST_PLACE = 1e9;

    private static final long LARGEST_BYTES = 64L << 20;

    /** Larger values would leave the range of a double when two are multiplied; as nodata they are common. */
    private static final double LARGEST = 1e30;

    /** Of a line of the header. */
    private static final int LONGEST = 200;

    /** A wrong file would otherwise list every word it holds. */
    private static final int MOST_COMPLAINTS = 50;

    /** The format's own default. */
    private static final double DEFAULT_NODATA = -9999;

    private static final List<String> KEYS =
            List.of("ncols", "nrows", "xllcorner", "xllcenter", "yllcorner", "yllcenter", "cellsize", "nodata_value");

    private final String name;
    private final String text;
    private int at;
    private int line = 1;
    private final List<Complaint> complaints = new ArrayList<>();
    private final Map<String, Head> heads = new LinkedHashMap<>();

    /** One line of the header. */
    private record Head(String text, double value, int line) {}

    private GridReader(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /**
     * Reads one file.
     *
     * @throws RefusedException with every complaint, when the content is not a grid
     */
    public static Raster read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        Notes notes = new Notes(name);
        String text = Text.read(file, name, LARGEST_BYTES, notes);
        notes.refuseIfAnyComplaint();
        return parse(name, Objects.requireNonNull(text, "a text that is none was not complained of"));
    }

    static Raster parse(String name, String text) throws RefusedException {
        GridReader reader = new GridReader(
                name, text.replace("\r\n", "\n").replace('\r', '\n').stripTrailing());
        Raster grid = reader.grid();
        if (grid == null || !reader.complaints.isEmpty()) {
            throw new RefusedException(reader.complaints);
        }
        return grid;
    }

    private @Nullable Raster grid() {
        readHeader();
        int columns = count("ncols");
        int rows = count("nrows");
        double cell = number("cellsize");
        if (cell <= 0) {
            complain("cellsize", "a number above 0");
        }
        if (cell > LARGEST_PLACE || cell < 1 / LARGEST_PLACE) {
            complain("cellsize", "a number from " + 1 / LARGEST_PLACE + " to " + LARGEST_PLACE);
        }
        double x0 = corner("xllcorner", "xllcenter", cell);
        double y0 = corner("yllcorner", "yllcenter", cell);
        if (complaints.isEmpty() && (long) rows * columns > MOST_CELLS) {
            complain("nrows", "at most " + MOST_CELLS + " values in all");
        }
        return complaints.isEmpty() ? new Raster(x0, y0, cell, rows, columns, readValues(rows, columns)) : null;
    }

    /** Reads the lines that begin with a letter; stops at the first line of values. */
    private void readHeader() {
        while (at < text.length()) {
            int newline = text.indexOf('\n', at);
            int end = newline < 0 ? text.length() : newline;
            String head = text.substring(at, Math.min(end, at + LONGEST)).strip();
            if (!head.isEmpty()) {
                String[] words = head.split("\\s+");
                if (!Character.isLetter(words[0].charAt(0)) || isNaN(words[0])) {
                    return;
                }
                readHead(words, line);
            }
            at = Math.min(end + 1, text.length());
            line++;
        }
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

    private double[] readValues(int rows, int columns) {
        double[] values = new double[rows * columns];
        Arrays.fill(values, Double.NaN);
        double nodata = heads.containsKey("nodata_value") ? number("nodata_value") : DEFAULT_NODATA;
        int count = 0;
        for (String word = word(); !word.isEmpty(); word = word()) {
            if (count == values.length) {
                String problem = "found more than the " + values.length + " values of " + rows + " rows of " + columns
                        + " columns";
                add(new Complaint(new Origin(name, line), "", problem));
                return values;
            }
            double value = isNaN(word) ? Double.NaN : value(word, new Origin(name, line), "");
            int row = rows - 1 - count / columns;
            values[row * columns + count % columns] = cell(value, nodata, word);
            count++;
        }
        if (count < values.length) {
            String problem = "found " + count + " values, expected " + rows + " rows of " + columns + " columns";
            add(new Complaint(new Origin(name, line), "", problem));
        }
        return values;
    }

    private double cell(double value, double nodata, String word) {
        if (value == nodata) {
            return Double.NaN;
        }
        if (Math.abs(value) > LARGEST) {
            add(Complaint.of(new Origin(name, line), "", word, "a number from -1e30 to 1e30, or the nodata_value"));
        }
        return value;
    }

    /** The next word, its line in {@link #line}; empty at the end. */
    private String word() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            line += text.charAt(at++) == '\n' ? 1 : 0;
        }
        int from = at;
        while (at < text.length() && !Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at);
    }

    private double value(String text, Origin here, String key) {
        Double value = Decimals.parse(text, Double.MAX_VALUE);
        if (value == null) {
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
        for (String key : List.of(edge, centre)) {
            Head head = heads.get(key);
            if (head != null && Math.abs(head.value) > LARGEST_PLACE * Math.max(1, cell)) {
                complain(key, "a number from -1e9 to 1e9, or as many cells");
            }
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
