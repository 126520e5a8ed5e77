package corewright.report.data;

import corewright.survey.SheetCell;
import corewright.survey.settings.Settings.Terms;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows on their way to a CSV file: RFC 4180 with line feeds, UTF-8, no byte-order mark. */
public final class CsvTable {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)?([eE][-+]?\\d+)?");

    private final List<List<String>> rows = new ArrayList<>();

    /** @param columns names, separated by commas */
    public CsvTable(String columns) {
        rows.add(List.of(columns.split(",")));
    }

    /** A row of numbers, enum words and texts; a text that a spreadsheet would run as a formula is made harmless. */
    public void add(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException("expected " + rows.get(0).size() + " cells, got " + cells.length);
        }
        List<String> row = new ArrayList<>();
        for (String cell : cells) {
            row.add(SheetCell.harmless(cell));
        }
        rows.add(row);
    }

    /** Writes header and rows, decimal points and commas between the fields. */
    public void write(Path file) throws IOException {
        write(file, Terms.Sign.POINT);
    }

    /** The same; with a decimal comma the fields are parted by semicolons. Only cells that are numbers change. */
    public void write(Path file, Terms.Sign decimal) throws IOException {
        boolean comma = decimal == Terms.Sign.COMMA;
        CSVFormat format = comma ? FORMAT.builder().setDelimiter(';').get() : FORMAT;
        try (CSVPrinter printer = new CSVPrinter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), format)) {
            for (List<String> row : rows) {
                printer.printRecord(
                        comma ? row.stream().map(CsvTable::withComma).toList() : row);
            }
        }
    }

    private static String withComma(String cell) {
        return NUMBER.matcher(cell).matches() ? cell.replace('.', ',') : cell;
    }
}
