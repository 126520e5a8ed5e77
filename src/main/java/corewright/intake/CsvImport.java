package corewright.intake;

import corewright.intake.Declared.DeclaredFace;
import corewright.intake.text.Complaint;
import corewright.intake.text.Dialect;
import corewright.intake.text.Kind;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Numerals.Decimal;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Row;
import corewright.intake.text.Sheet;
import corewright.intake.text.SheetLine;
import corewright.intake.text.Table;
import corewright.intake.text.Text;
import corewright.intake.text.Units;
import corewright.intake.yaml.YamlValue;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One CSV of somebody else's: split into cells, guessed at, and read into a survey with the choices a person made. Whatever
 * cannot be read keeps its row, so that it can be mended and read again.
 */
public final class CsvImport {
    private CsvImport() {}

    /** What the rows are. */
    public enum What {
        MOISTURE(Kind.MOISTURE),
        TAPS(Kind.TAPS),
        PROBES(Kind.PROBES);

        private final Kind kind;

        What(Kind kind) {
            this.kind = kind;
        }

        /** Columns such rows must have. */
        public List<String> required() {
            return this == TAPS ? List.of("x", "y", "sound") : kind.required;
        }

        /** All columns such rows may have. */
        public List<String> columns() {
            return kind.columns;
        }
    }

    /**
     * How to read it.
     *
     * @param header the first line names the columns
     * @param columns ours to the file's, counted from 0
     * @param face of rows that name none
     * @param meter of rows that name none
     */
    public record Choice(
            What what,
            boolean header,
            boolean decimalComma,
            LengthUnit length,
            Map<String, Integer> columns,
            String face,
            String meter) {
        public Choice {
            columns = Map.copyOf(columns);
        }
    }

    /** What came of it. */
    public record Result(Readings readings, List<Complaint> problems) {
        public Result {
            problems = List.copyOf(problems);
        }
    }

    /** The text of a file, whatever it is encoded in. */
    public static String text(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        Notes notes = new Notes(name);
        String text = Text.read(file, name, Text.LARGEST_BYTES, notes);
        notes.refuseIfAnyComplaint();
        return Objects.requireNonNull(text);
    }

    /** The separator that the file seems to have. */
    public static char separator(String text) {
        return Dialect.detect(text, CsvImport::known).separator();
    }

    /** The file's lines, blank ones left out. */
    public static List<SheetLine> lines(String file, String text, char separator) throws IOException {
        Notes notes = new Notes(file);
        // a first line "sep=" is how a sheet is told its separator; it is one line more than the file has
        Sheet sheet = Sheet.parse(file, "sep=" + separator + "\n" + text, CsvImport::known, notes);
        notes.refuseIfAnyComplaint();
        return Objects.requireNonNull(sheet).lines().stream()
                .map(l -> new SheetLine(l.number() - 1, l.cells()))
                .toList();
    }

    private static boolean known(String header) {
        return CsvGuess.column(header) != null;
    }

    /** What the lines seem to be. */
    public static Choice guess(String file, List<SheetLine> lines, char separator, Survey survey) {
        return CsvGuess.of(file, lines, separator, survey);
    }

    /** Reads the lines as chosen. */
    public static Result read(String file, List<SheetLine> lines, Choice choice, Survey survey) {
        Notes notes = new Notes(file);
        Kind kind = choice.what().kind;
        Decimal decimal = choice.decimalComma() ? Decimal.COMMA : Decimal.DOT;
        Map<String, Integer> columns = new HashMap<>(choice.columns());
        columns.keySet().retainAll(kind.columns);
        List<Row> rows = lines.stream()
                .skip(choice.header() ? 1 : 0)
                .map(l -> new Row(l, new Origin(file, l.number()), columns, decimal, notes))
                .toList();
        Readings readings = taken(new Table(kind, rows), choice, survey, notes);
        return new Result(readings, problems(notes));
    }

    private static Readings taken(Table table, Choice choice, Survey survey, Notes notes) {
        Declared declared = declared(survey, choice.length());
        FileEntry entry = new FileEntry(
                table.kind(),
                YamlValue.missing(new Origin("import", 0), ""),
                "import",
                choice.face(),
                choice.meter(),
                Side.OUTER,
                null);
        List<Moisture> moisture = new ArrayList<>();
        List<Tap> taps = new ArrayList<>();
        List<Probe> probes = new ArrayList<>();
        switch (choice.what()) {
            case MOISTURE -> new MoistureReader(declared, notes).read(table, entry, moisture);
            case TAPS -> new OtherReaders(declared).taps(table, entry, taps);
            case PROBES -> new OtherReaders(declared).probes(table, entry, probes);
        }
        // an empty id became file:line; a file's name may be used twice, a place in it is not
        return new Readings(moisture, taps, probes, List.of(), List.of(), List.of());
    }

    private static Declared declared(Survey survey, LengthUnit length) {
        List<DeclaredFace> faces = survey.faces().stream()
                .map(f -> new DeclaredFace(
                        YamlValue.missing(new Origin("import", 0), ""), f.name(), f.tiltDeg(), f.uphillDeg()))
                .toList();
        return new Declared(
                survey.heading(),
                new Units(length, LengthUnit.MM, false),
                faces,
                List.of(),
                survey.meters(),
                survey.laminates(),
                survey.materials(),
                Map.of(),
                survey.settings(),
                survey.judgements());
    }

    private static List<Complaint> problems(Notes notes) {
        try {
            notes.refuseIfAnyComplaint();
            return List.of();
        } catch (RefusedException e) {
            return e.complaints();
        }
    }

    /** All readings of a result, whatever their kind. */
    public static Stream<Reading> all(Readings r) {
        return Stream.<List<? extends Reading>>of(r.moisture(), r.taps(), r.probes())
                .flatMap(List::stream);
    }

    static @Nullable Double number(String cell, boolean decimalComma) {
        return Numerals.parse(cell, decimalComma ? Decimal.COMMA : Decimal.DOT);
    }

    static boolean decimalComma(List<SheetLine> lines, char separator) {
        return new Dialect(separator, 0).decimal(lines) == Decimal.COMMA;
    }
}
