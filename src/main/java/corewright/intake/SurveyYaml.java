package corewright.intake;

import corewright.intake.Declared.DeclaredFace;
import corewright.intake.text.Kind;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Units;
import corewright.intake.text.Words;
import corewright.intake.yaml.Overrides;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.survey.About;
import corewright.survey.Heading;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.Subject;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads survey.yaml, section by section. */
final class SurveyYaml {
    static final String NAME = "survey.yaml";

    private static final List<String> KNOWN = List.of(
            "format",
            "name",
            "surveyed",
            "vessel",
            "client",
            "surveyor",
            "weather",
            "days_ashore",
            "notes",
            "units",
            "faces",
            "files",
            "meters",
            "laminates",
            "columns",
            "skins",
            "cores",
            "resins",
            "costs",
            "thresholds",
            "drilling",
            "crew",
            "loads",
            "climate",
            "drying",
            "goal",
            "letterhead",
            "numerics",
            "rule_overrides",
            "method_overrides",
            "reading_overrides",
            "moved_holes");
    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[T ].*)?");

    private final YamlBlock top;
    private final Notes notes;

    private SurveyYaml(YamlBlock top, Notes notes) {
        this.top = top;
        this.notes = notes;
    }

    /** What the file says; complaints go to {@code notes}, after which the rest is still read as far as it goes. */
    static Declared read(YamlValue top, String folder, Notes notes) {
        return new SurveyYaml(YamlBlock.of(top, notes), notes).declared(folder);
    }

    private Declared declared(String folder) {
        if (!top.text("format").equals("1")) {
            top.expected("format", "1");
        }
        hintAtUnknown();
        Heading heading = heading(folder);
        Units units = units();
        List<DeclaredFace> faces = faces();
        List<Meter> meters = Meters.read(top, notes);
        Materials materials = MaterialsYaml.read(top, notes);
        return new Declared(
                heading,
                units,
                faces,
                FilesYaml.read(top, faces.stream().map(DeclaredFace::name).toList(), meters, notes),
                meters,
                laminates(materials),
                materials,
                columns(),
                SettingsYaml.read(top, notes),
                JudgementsYaml.read(top, faces.stream().map(DeclaredFace::name).toList(), notes));
    }

    private void hintAtUnknown() {
        top.value().fields().forEach((key, value) -> {
            if (!KNOWN.contains(key)) {
                String message = NAME + " has a key \"" + key + "\" that is not understood; the known ones are "
                        + Words.and(KNOWN) + ".";
                notes.hint(value.origin(), Subject.UNKNOWN_KEY, message, "It is ignored.");
            }
        });
    }

    private Heading heading(String folder) {
        String name = top.text("name");
        if (name.isEmpty()) {
            notes.hint(top.origin(), Subject.NAME, NAME + " gives the survey no name.", "The folder's name is used.");
            name = folder;
        }
        Double daysAshore = top.number("days_ashore", 0, 100_000);
        return new Heading(
                name,
                surveyed(),
                top.text("vessel"),
                top.text("client"),
                top.text("surveyor"),
                top.text("weather"),
                daysAshore == null ? null : (Integer) (int) Math.round(daysAshore),
                top.text("notes"));
    }

    private LocalDate surveyed() {
        Matcher date = DATE.matcher(top.text("surveyed"));
        try {
            if (date.matches()) {
                return LocalDate.of(
                        Integer.parseInt(date.group(1)),
                        Integer.parseInt(date.group(2)),
                        Integer.parseInt(date.group(3)));
            }
        } catch (DateTimeException e) {
            // no such day: complained of below, with its place
        }
        top.expected("surveyed", "a date such as 2026-04-02");
        return LocalDate.EPOCH;
    }

    private Units units() {
        YamlBlock block = top.block("units");
        block.only(List.of("length", "depth", "temperature", "display", "decimal", "csv", "paper"));
        LengthUnit length = block.word("length", LengthUnit.class);
        LengthUnit depth = block.word("depth", LengthUnit.class);
        String temperature = block.text("temperature").replace("°", "");
        if (!temperature.isEmpty() && !temperature.equalsIgnoreCase("C") && !temperature.equalsIgnoreCase("F")) {
            block.expected("temperature", "C or F");
        }
        return new Units(
                length == null ? Units.DEFAULT.length() : length,
                depth == null ? Units.DEFAULT.depth() : depth,
                temperature.equalsIgnoreCase("F"));
    }

    private List<DeclaredFace> faces() {
        List<DeclaredFace> faces = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        if (top.list("faces").isEmpty()) {
            top.expected("faces", "a list of faces such as - { name: foredeck, tilt_deg: 3, uphill_deg: 180 }");
        }
        for (YamlValue item : top.list("faces")) {
            YamlBlock face = YamlBlock.of(item, notes);
            face.only(List.of("name", "tilt_deg", "uphill_deg"));
            String name = face.required("name", "a name");
            if (name.isEmpty()) {
                continue;
            }
            if (!canNameAFile(name)) {
                face.expected("name", "a name of at most 60 letters, digits, spaces, - and _, as it also names files");
            } else if (!names.add(name)) {
                face.complain("name", "two faces are called \"" + name + "\"");
            }
            double tilt = face.number("tilt_deg", 0, 180, 0);
            if (tilt > 5 && tilt < 175 && !face.has("uphill_deg")) {
                notes.doubt(
                        item.origin(),
                        new About.OfFace(name),
                        Subject.UPHILL,
                        "Face " + name + " is tilted and " + NAME + " does not say which side is high (uphill_deg).",
                        "The +x side is taken as the high one; vents may be planned at the wrong side.");
            }
            faces.add(new DeclaredFace(item, name, tilt, face.number("uphill_deg", -360, 360, 0)));
        }
        return faces;
    }

    static boolean canNameAFile(String name) {
        return name.matches("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} _.()+'-]{0,59}") && !name.endsWith(".");
    }

    private List<Laminate> laminates(Materials materials) {
        List<Laminate> laminates = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        if (top.list("laminates").isEmpty()) {
            top.expected(
                    "laminates",
                    "a list of laminates, each with name, outer_skin_mm, core_mm, inner_skin_mm, skin" + " and core");
        }
        for (YamlValue item : top.list("laminates")) {
            YamlBlock block = YamlBlock.of(item, notes);
            block.only(Overrides.keys(Laminate.class));
            String name = block.required("name", "a name");
            if (!name.isEmpty() && !names.add(name)) {
                block.complain("name", "two laminates are called \"" + name + "\"");
            }
            Boolean measured = Words.yesNo(block.text("measured"));
            if (measured == null) {
                block.expected("measured", "yes or no");
            }
            Laminate.CoreForm form =
                    block.has("core_form") ? block.word("core_form", Laminate.CoreForm.class) : Laminate.CoreForm.PLAIN;
            laminates.add(new Laminate(
                    name,
                    thickness(block, "outer_skin_mm"),
                    thickness(block, "core_mm"),
                    thickness(block, "inner_skin_mm"),
                    known(block, "skin", materials.skins().keySet()),
                    known(block, "core", materials.cores().keySet()),
                    Boolean.TRUE.equals(measured),
                    form == null ? Laminate.CoreForm.PLAIN : form,
                    block.number("solid_edge_mm", 0, Laminate.WIDEST_EDGE_MM, 0)));
        }
        return laminates;
    }

    private double thickness(YamlBlock block, String key) {
        if (!block.has(key)) {
            block.expected(key, "a thickness in mm");
            return 1;
        }
        return block.number(key, SurveyRules.THINNEST_MM, SurveyRules.THICKEST_MM, 1);
    }

    private static String known(YamlBlock block, String key, Set<String> names) {
        String name = block.required(key, Words.or(names.stream().sorted().toList()));
        if (!name.isEmpty() && !names.contains(name)) {
            block.expected(key, Words.or(names.stream().sorted().toList()));
        }
        return name;
    }

    private Map<Kind, Map<String, String>> columns() {
        Map<Kind, Map<String, String>> columns = new EnumMap<>(Kind.class);
        YamlBlock block = top.block("columns");
        block.only(Kind.keys());
        block.value().fields().forEach((key, value) -> {
            Kind kind = Kind.of(key);
            if (kind != null) {
                YamlBlock names = YamlBlock.of(value, notes);
                names.only(kind.columns);
                Map<String, String> renamed = new HashMap<>();
                names.value().fields().keySet().forEach(column -> {
                    String header = names.required(column, "the column's name in the file");
                    if (!header.isEmpty()) {
                        renamed.put(column, header);
                    }
                });
                columns.put(kind, renamed);
            }
        });
        return columns;
    }
}
