package corewright.intake;

import corewright.intake.CsvImport.Choice;
import corewright.intake.CsvImport.What;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.SheetLine;
import corewright.intake.text.Table;
import corewright.survey.Survey;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a CSV seems to be, by its headers, its name and its figures. Only a first proposal: a person sees and changes it. */
final class CsvGuess {
    /** Words people put over columns, to ours; the first that fits wins. */
    private static final Map<Pattern, String> NAMES = names();

    private static final Pattern UNIT = Pattern.compile(".*[ _(\\[](mm|cm|m|in|inch|inches|ft|feet)[)\\]]?");

    /** No deck is longer than this in metres, and few are shorter than this in centimetres. */
    private static final double LONGEST_M = 40;

    private static final int LOOKED_AT = 200;

    private CsvGuess() {}

    private static Map<Pattern, String> names() {
        Map<Pattern, String> names = new LinkedHashMap<>();
        name(names, "x", "x|x[ _].*|aft|aft[ _].*|.*from (the )?bow.*|station|long.*position");
        name(names, "y", "y|y[ _].*|stbd.*|starboard.*|.*off (the )?cent(re|er)line.*|athwart.*|offset");
        name(names, "void_depth", "void.*|gap.*|.*void depth.*|depth.*");
        name(names, "sound", "sound|tap|tap.*|hammer.*|percussion.*");
        name(names, "value", "value|reading|readings|moisture.*|mc|meter reading|scale|.*reading");
        name(names, "id", "id|no|no\\.|nr|nr\\.|number|point|#|name|label");
        name(names, "face", "face|surface|area|zone");
        name(names, "meter", "meter|instrument");
        name(names, "temperature", "temp|temperature.*");
        name(names, "taken", "taken|date|time|timestamp|date.?time");
        name(names, "core_state", "core|core.?state|core.*found");
        name(names, "note", "note|notes|remark|remarks|comment|comments");
        return names;
    }

    private static void name(Map<Pattern, String> names, String ours, String theirs) {
        names.put(Pattern.compile(theirs), ours);
    }

    /** Our column under somebody's header, or null. */
    static @Nullable String column(String header) {
        String folded = Table.fold(header);
        for (Map.Entry<Pattern, String> name : NAMES.entrySet()) {
            if (!folded.isEmpty() && name.getKey().matcher(folded).matches()) {
                return name.getValue();
            }
        }
        return null;
    }

    static Choice of(String file, List<SheetLine> lines, char separator, Survey survey) {
        boolean comma = CsvImport.decimalComma(lines, separator);
        boolean header =
                !lines.isEmpty() && lines.get(0).cells().stream().noneMatch(c -> CsvImport.number(c, comma) != null);
        Map<String, Integer> columns = header ? byHeader(lines.get(0)) : new HashMap<>();
        What what = what(file, columns, lines);
        if (!columns.keySet().containsAll(what.required())) {
            byPosition(what, lines, header, comma, columns);
        }
        String face = survey.faces().get(0).name();
        String meter = survey.meters().isEmpty() ? "" : survey.meters().get(0).name();
        return new Choice(what, header, comma, unit(lines, header, comma, columns), columns, face, meter);
    }

    private static Map<String, Integer> byHeader(SheetLine header) {
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String ours = column(header.cell(i));
            if (ours != null) {
                columns.putIfAbsent(ours, i);
            }
        }
        return columns;
    }

    private static What what(String file, Map<String, Integer> columns, List<SheetLine> lines) {
        boolean words = lines.stream()
                .limit(LOOKED_AT)
                .flatMap(l -> l.cells().stream())
                .map(Table::fold)
                .anyMatch(c -> c.equals("hollow") || c.equals("dull"));
        String name = Table.fold(file);
        if (columns.containsKey("value") && !words) {
            return What.MOISTURE;
        }
        if (columns.containsKey("sound") || words || name.contains("tap")) {
            return What.TAPS;
        }
        return columns.containsKey("void_depth") || name.contains("probe") ? What.PROBES : What.MOISTURE;
    }

    /** Columns nobody named: what is needed, in its usual order, over the columns that hold figures. */
    private static void byPosition(
            What what, List<SheetLine> lines, boolean header, boolean comma, Map<String, Integer> columns) {
        SheetLine first = lines.size() > (header ? 1 : 0) ? lines.get(header ? 1 : 0) : new SheetLine(0, List.of());
        int at = 0;
        for (String wanted : what.required()) {
            while (at < first.cells().size()
                    && (columns.containsValue(at)
                            || (!wanted.equals("sound") && CsvImport.number(first.cell(at), comma) == null))) {
                at++;
            }
            if (!columns.containsKey(wanted) && at < first.cells().size()) {
                columns.put(wanted, at++);
            }
        }
    }

    /** As the header says, else by the largest place: decks are metres long. */
    private static LengthUnit unit(List<SheetLine> lines, boolean header, boolean comma, Map<String, Integer> columns) {
        Integer x = columns.get("x");
        if (x == null) {
            return LengthUnit.MM;
        }
        if (header) {
            Matcher named = UNIT.matcher(Table.fold(lines.get(0).cell(x)));
            if (named.matches()) {
                return switch (named.group(1).charAt(0)) {
                    case 'c' -> LengthUnit.CM;
                    case 'i' -> LengthUnit.IN;
                    case 'f' -> LengthUnit.FT;
                    default -> named.group(1).equals("m") ? LengthUnit.M : LengthUnit.MM;
                };
            }
        }
        double most = 0;
        for (SheetLine line : lines) {
            Double value = CsvImport.number(line.cell(x), comma);
            most = value == null ? most : Math.max(most, Math.abs(value));
        }
        return most > 0 && most <= LONGEST_M ? LengthUnit.M : LengthUnit.MM;
    }
}
