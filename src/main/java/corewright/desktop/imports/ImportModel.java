package corewright.desktop.imports;

import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.intake.CsvImport;
import corewright.intake.CsvImport.Choice;
import corewright.intake.CsvImport.Result;
import corewright.intake.CsvImport.What;
import corewright.intake.text.Complaint;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.SheetLine;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An import under way: what is chosen, what would come of it, what is mended. Knows no window. */
public final class ImportModel {
    private final String file;
    private final String text;
    private final Survey survey;
    private final Units units;
    private char separator;
    private List<SheetLine> lines;
    private Choice choice;
    private Result result;

    /**
     * A line as the preview shows it.
     *
     * @param problem what was found and what was expected; empty where it can be read
     */
    public record PreviewLine(SheetLine line, boolean header, String problem) {}

    private ImportModel(String file, String text, Survey survey, Units units) throws IOException {
        this.file = file;
        this.text = text;
        this.survey = survey;
        this.units = units;
        separator = CsvImport.separator(text);
        lines = CsvImport.lines(file, text, separator);
        choice = CsvImport.guess(file, lines, separator, survey);
        result = CsvImport.read(file, lines, choice, survey);
    }

    /**
     * @param units in which the effect is said; what the file's own figures are in is a choice
     * @throws IOException where the file is no text that could be a table
     */
    public static ImportModel of(Path path, Survey survey, Units units) throws IOException {
        return new ImportModel(String.valueOf(path.getFileName()), CsvImport.text(path), survey, units);
    }

    // --- choices -----------------------------------------------------------------------------------------------------

    /** Splits the file anew; what was mended before is gone, as the cells are other ones. */
    public void separate(char by) throws IOException {
        separator = by;
        lines = CsvImport.lines(file, text, separator);
        choose(CsvImport.guess(file, lines, separator, survey));
    }

    /** Other rows than guessed: the columns are guessed anew where the file does not name them. */
    public void what(What other) {
        choose(with(other, choice.header(), choice.decimalComma(), choice.length()));
    }

    public void header(boolean named) {
        choose(with(choice.what(), named, choice.decimalComma(), choice.length()));
    }

    public void decimalComma(boolean comma) {
        choose(with(choice.what(), choice.header(), comma, choice.length()));
    }

    public void length(LengthUnit unit) {
        choose(with(choice.what(), choice.header(), choice.decimalComma(), unit));
    }

    private Choice with(What what, boolean header, boolean comma, LengthUnit length) {
        return new Choice(what, header, comma, length, choice.columns(), choice.face(), choice.meter());
    }

    public void face(String name) {
        choose(new Choice(
                choice.what(),
                choice.header(),
                choice.decimalComma(),
                choice.length(),
                choice.columns(),
                name,
                choice.meter()));
    }

    public void meter(String name) {
        choose(new Choice(
                choice.what(),
                choice.header(),
                choice.decimalComma(),
                choice.length(),
                choice.columns(),
                choice.face(),
                name));
    }

    /** What a column of the file holds; empty for nothing. Whatever held that before holds nothing now. */
    public void column(int at, String holds) {
        Map<String, Integer> columns = new HashMap<>(choice.columns());
        columns.values().removeIf(c -> c == at);
        if (!holds.isEmpty()) {
            columns.put(holds, at);
        }
        choose(new Choice(
                choice.what(),
                choice.header(),
                choice.decimalComma(),
                choice.length(),
                columns,
                choice.face(),
                choice.meter()));
    }

    private void choose(Choice other) {
        choice = other;
        result = CsvImport.read(file, lines, choice, survey);
    }

    /** Mends one cell; the file itself stays as it is. */
    public void mend(long lineNumber, int column, String to) {
        List<SheetLine> mended = new ArrayList<>();
        for (SheetLine line : lines) {
            mended.add(line.number() == lineNumber ? line.with(column, to) : line);
        }
        lines = List.copyOf(mended);
        result = CsvImport.read(file, lines, choice, survey);
    }

    // --- what there is -----------------------------------------------------------------------------------------------

    public Choice choice() {
        return choice;
    }

    public char separator() {
        return separator;
    }

    /** Names of the file's columns: its header, or A, B, C. */
    public List<String> columnNames() {
        int n = lines.stream().mapToInt(l -> l.cells().size()).max().orElse(0);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            String name = choice.header() ? lines.get(0).cell(i) : "";
            names.add(name.isEmpty() ? String.valueOf((char) ('A' + i % 26)) : name);
        }
        return names;
    }

    /** What a column holds, empty for nothing. */
    public String holds(int column) {
        return choice.columns().entrySet().stream()
                .filter(e -> e.getValue() == column)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    /** All lines but the header, those with a problem first. */
    public List<PreviewLine> preview() {
        Map<Long, String> problems = new HashMap<>();
        for (Complaint p : result.problems()) {
            String words = (p.column().isEmpty() ? "" : p.column() + ": ") + p.problem();
            problems.merge(p.origin().line(), words, (a, b) -> a + "; " + b);
        }
        List<PreviewLine> bad = new ArrayList<>();
        List<PreviewLine> good = new ArrayList<>();
        for (SheetLine line : lines.subList(choice.header() && !lines.isEmpty() ? 1 : 0, lines.size())) {
            String problem = problems.getOrDefault(line.number(), "");
            (problem.isEmpty() ? good : bad).add(new PreviewLine(line, false, problem));
        }
        bad.addAll(good);
        return bad;
    }

    /** Lines that cannot be read. */
    public int bad() {
        return (int) result.problems().stream()
                .map(p -> p.origin().line())
                .distinct()
                .count();
    }

    /** Lines that can. */
    public int good() {
        return (int) CsvImport.all(result.readings()).count();
    }

    /** What would come of it, in a sentence or two. */
    public String effect() {
        List<String> missing = choice.what().required().stream()
                .filter(c -> !choice.columns().containsKey(c))
                .toList();
        if (!missing.isEmpty()) {
            return "Say which column holds " + String.join(" and which holds ", missing) + ".";
        }
        if (good() == 0) {
            return "Not one row can be read this way.";
        }
        DoubleSummaryStatistics x = new DoubleSummaryStatistics();
        DoubleSummaryStatistics y = new DoubleSummaryStatistics();
        CsvImport.all(result.readings()).map(Reading::spot).forEach(s -> {
            x.accept(s.xMm());
            y.accept(s.yMm());
        });
        String kind =
                switch (choice.what()) {
                    case MOISTURE -> "moisture readings";
                    case TAPS -> "taps";
                    case PROBES -> "probes";
                };
        String rest = bad() == 0
                ? ""
                : " " + bad() + (bad() == 1 ? " row" : " rows") + " cannot be read and can be mended here.";
        return good() + " " + kind + " from " + length(x.getMin()) + " to " + units.place(x.getMax()) + " aft and "
                + length(y.getMin()) + " to " + units.place(y.getMax()) + " to starboard" + values() + "." + rest;
    }

    private String values() {
        DoubleSummaryStatistics v = result.readings().moisture().stream()
                .mapToDouble(Moisture::value)
                .summaryStatistics();
        return v.getCount() == 0
                ? ""
                : ", values " + Figures.atMost(v.getMin(), 1) + " to " + Figures.atMost(v.getMax(), 1);
    }

    private String length(double mm) {
        return Figures.fixed(units.deck(mm), 2);
    }

    /** The readings that can be read. */
    public Readings readings() {
        return result.readings();
    }

    /** As undo will name it. */
    public String deed() {
        return "import of " + file;
    }

    /** All of it as one edit. */
    public Edit edit(Survey into) {
        List<Edit> edits = new ArrayList<>();
        add(into, Part.MOISTURE, result.readings().moisture(), edits);
        add(into, Part.TAPS, result.readings().taps(), edits);
        add(into, Part.PROBES, result.readings().probes(), edits);
        return new Edit.Together(edits);
    }

    private static <T> void add(Survey into, Part<T> part, List<T> items, List<Edit> edits) {
        int at = part.of(into).size();
        for (T item : items) {
            edits.add(new Edit.Insert<>(part, at++, item));
        }
    }
}
