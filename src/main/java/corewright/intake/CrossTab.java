package corewright.intake;

import corewright.intake.text.Kind;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Row;
import corewright.intake.text.Sheet;
import corewright.intake.text.SheetLine;
import corewright.intake.text.Table;
import corewright.survey.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A sheet laid out like the deck: first row x, first column y, cells readings; an empty cell is no reading. */
final class CrossTab {
    private CrossTab() {}

    /** Whether the first row has places in it instead of names. */
    static boolean isOne(Sheet sheet) {
        if (sheet.lines().isEmpty()) {
            return false;
        }
        List<String> header = sheet.lines().get(0).cells();
        return header.stream().skip(1).anyMatch(c -> isLength(c, sheet));
    }

    /** The same readings as a table, a row for each cell that holds one; its id is file:line:column. */
    static Table unfold(Sheet sheet, Kind kind, Notes notes) {
        SheetLine header = sheet.lines().get(0);
        Origin top = new Origin(sheet.file(), header.number());
        boolean[] usable = new boolean[header.cells().size()];
        for (int column = 1; column < usable.length; column++) {
            usable[column] = isLength(header.cell(column), sheet);
            if (!usable[column] && (!header.cell(column).isEmpty() || holdsReadings(sheet, column))) {
                notes.expected(top, "column " + (column + 1), header.cell(column), "the x of this column, a length");
            }
        }
        List<Row> rows = new ArrayList<>();
        for (SheetLine line : sheet.lines().subList(1, sheet.lines().size())) {
            Origin origin = new Origin(sheet.file(), line.number());
            if (!isLength(line.cell(0), sheet)) {
                notes.expected(origin, "y", line.cell(0), "the y of this row, a length");
                continue;
            }
            for (int column = 1; column < line.cells().size(); column++) {
                if (column >= usable.length && !line.cell(column).isEmpty()) {
                    notes.expected(origin, "column " + (column + 1), line.cell(column), "no cell without an x above");
                } else if (column < usable.length
                        && usable[column]
                        && !line.cell(column).isEmpty()) {
                    rows.add(row(sheet, kind, line, column, notes));
                    if (rows.size() > Sheet.MOST_ROWS) {
                        notes.complain(origin, "", "expected at most " + Sheet.MOST_ROWS + " readings in a file");
                        return new Table(kind, List.of());
                    }
                }
            }
        }
        return new Table(kind, rows);
    }

    private static Row row(Sheet sheet, Kind kind, SheetLine line, int column, Notes notes) {
        Origin origin = new Origin(sheet.file(), line.number());
        String reading = line.cell(column);
        boolean timed = kind.taps() && Numerals.parse(reading, sheet.decimal()) != null;
        String value = kind == Kind.MOISTURE ? "value" : timed ? "contact_us" : "sound";
        String x = sheet.lines().get(0).cell(column);
        SheetLine cells = new SheetLine(line.number(), List.of(origin + ":" + (column + 1), x, line.cell(0), reading));
        return new Row(cells, origin, Map.of("id", 0, "x", 1, "y", 2, value, 3), sheet.decimal(), notes);
    }

    private static boolean holdsReadings(Sheet sheet, int column) {
        return sheet.lines().stream().skip(1).anyMatch(l -> !l.cell(column).isEmpty());
    }

    private static boolean isLength(String cell, Sheet sheet) {
        return Lengths.parse(cell, LengthUnit.MM, sheet.decimal()) != null;
    }
}
