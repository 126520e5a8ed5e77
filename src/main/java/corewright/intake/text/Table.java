package corewright.intake.text;

import corewright.survey.Origin;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A sheet whose first line names the columns. */
public record Table(Kind kind, List<Row> rows) {
    /** Maps the header to the columns of {@code kind}; null after a complaint about the header itself. */
    public static @Nullable Table of(Sheet sheet, Kind kind, Map<String, String> renamed, Notes notes) {
        if (sheet.lines().isEmpty()) {
            notes.complain(new Origin(sheet.file(), 0), "", "the file is empty, expected the columns " + wanted(kind));
            return null;
        }
        SheetLine header = sheet.lines().get(0);
        Origin origin = new Origin(sheet.file(), header.number());
        Map<String, Integer> columns = columns(header, origin, kind, renamed, notes);
        if (columns == null) {
            return null;
        }
        List<Row> rows = new ArrayList<>();
        for (SheetLine line : sheet.lines().subList(1, sheet.lines().size())) {
            Row row = new Row(line, new Origin(sheet.file(), line.number()), columns, sheet.decimal(), notes);
            if (fits(line, header, row) && row.isWithinLimits()) {
                rows.add(row);
            }
        }
        return new Table(kind, rows);
    }

    public static String fold(String header) {
        return header.strip().toLowerCase(Locale.ROOT);
    }

    private static @Nullable Map<String, Integer> columns(
            SheetLine header, Origin origin, Kind kind, Map<String, String> renamed, Notes notes) {
        Map<String, Integer> found = new LinkedHashMap<>();
        boolean good = true;
        for (int i = 0; i < header.cells().size(); i++) {
            String name = fold(header.cells().get(i));
            if (!name.isEmpty() && found.putIfAbsent(name, i) != null) {
                notes.complain(origin, header.cells().get(i), "two columns have this name");
                good = false;
            }
        }
        Map<String, Integer> columns = new LinkedHashMap<>();
        Set<String> unused = new LinkedHashSet<>(found.keySet());
        for (String column : kind.columns) {
            String name = fold(renamed.getOrDefault(column, column));
            Integer at = found.get(name);
            if (at != null) {
                columns.put(column, at);
                unused.remove(name);
            } else if (kind.required.contains(column) || renamed.containsKey(column)) {
                String called = name.equals(column) ? "" : " (called \"" + name + "\" in survey.yaml)";
                notes.complain(
                        origin, column, "the column is missing" + called + ", found " + Words.listed(found.keySet()));
                good = false;
            }
        }
        if (kind.taps() && good && !columns.containsKey("sound") && !columns.containsKey("contact_us")) {
            notes.complain(
                    origin,
                    "sound",
                    "the column is missing, and contact_us too, found " + Words.listed(found.keySet()));
            good = false;
        }
        if (good && !unused.isEmpty()) {
            String message = origin.file() + " has columns that are not used: " + Words.listed(unused) + ".";
            notes.hint(origin, Subject.UNUSED_COLUMNS, message, "They are left out.");
        }
        return good ? columns : null;
    }

    private static boolean fits(SheetLine line, SheetLine header, Row row) {
        boolean more = line.isWiderThan(header.cells().size());
        if (more) {
            row.complain(
                    "",
                    "found " + line.cells().size() + " cells, expected "
                            + header.cells().size()
                            + " as in the first line; a decimal comma or other text with the separator needs quotation"
                            + " marks");
        }
        return !more;
    }

    private static String wanted(Kind kind) {
        return String.join(", ", kind.required);
    }
}
