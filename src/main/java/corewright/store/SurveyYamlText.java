package corewright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Heading;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.MethodOverride;
import corewright.survey.MovedHole;
import corewright.survey.ReadingOverride;
import corewright.survey.Resin;
import corewright.survey.Settings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;

/** survey.yaml of a survey. Texts stand in double quotes, which JSON and YAML write alike. */
final class SurveyYamlText {
    private final StringBuilder text = new StringBuilder();

    private SurveyYamlText() {}

    /** @param files names without their ending */
    static String of(Survey survey, Collection<String> files) {
        SurveyYamlText yaml = new SurveyYamlText();
        yaml.heading(survey.heading());
        yaml.text.append("units: { length: mm, depth: mm, temperature: C }\n");
        yaml.list("faces", survey.faces(), SurveyYamlText::face);
        yaml.text
                .append("files: { ")
                .append(files.stream().map(f -> f + ": " + f + ".csv").collect(Collectors.joining(", ")))
                .append(" }\n");
        yaml.list("meters", survey.meters(), SurveyYamlText::meter);
        yaml.list("laminates", survey.laminates(), SurveyYamlText::laminate);
        yaml.materials(survey.materials());
        yaml.settings(survey.settings());
        yaml.judgements(survey);
        return yaml.text.toString();
    }

    private void heading(Heading heading) {
        text.append("format: 1\n");
        Map<String, @Nullable Object> lines = new LinkedHashMap<>();
        lines.put("name", heading.name());
        lines.put("surveyed", heading.surveyed());
        lines.put("vessel", heading.vessel());
        lines.put("client", heading.client());
        lines.put("surveyor", heading.surveyor());
        lines.put("weather", heading.weather());
        lines.put("days_ashore", heading.daysAshore());
        lines.put("notes", heading.notes());
        lines.forEach((key, value) -> {
            if (value != null && !value.equals("")) {
                text.append(key).append(": ").append(value(value)).append('\n');
            }
        });
    }

    private static Map<String, @Nullable Object> face(Face face) {
        return fields("name", face.name(), "tilt_deg", face.tiltDeg(), "uphill_deg", face.uphillDeg());
    }

    private static Map<String, @Nullable Object> meter(Meter m) {
        return fields("name", m.name(), "kind", m.kind(), "full_scale", m.fullScale(), "dry", m.dry(), "wet", m.wet());
    }

    private static Map<String, @Nullable Object> laminate(Laminate laminate) {
        return tree(laminate);
    }

    private void materials(Materials materials) {
        Materials builtIn = Materials.builtIn();
        list("skins", own(materials.skins(), builtIn.skins()), SurveyYamlText::tree);
        list("cores", own(materials.cores(), builtIn.cores()), SurveyYamlText::tree);
    }

    private static <M> List<M> own(Map<String, M> all, Map<String, M> builtIn) {
        return all.entrySet().stream()
                .filter(e -> !e.getValue().equals(builtIn.get(e.getKey())))
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    private void settings(Settings settings) {
        List<Resin> resins = settings.resins();
        list("resins", resins.equals(Resin.builtIn()) ? List.of() : resins, SurveyYamlText::tree);
        ObjectNode defaults = Json.tree(Settings.defaults());
        Json.tree(settings).fields().forEachRemaining(section -> {
            Map<String, @Nullable Object> changed = new LinkedHashMap<>();
            section.getValue().fields().forEachRemaining(each -> {
                if (!each.getValue().equals(defaults.get(section.getKey()).get(each.getKey()))) {
                    changed.put(Form.snake(each.getKey()), plain(each.getValue()));
                }
            });
            if (!changed.isEmpty()) {
                text.append(section.getKey()).append(": ").append(flow(changed)).append('\n');
            }
        });
    }

    private void judgements(Survey survey) {
        list("method_overrides", survey.judgements().methods(), SurveyYamlText::method);
        list("reading_overrides", survey.judgements().readings(), SurveyYamlText::doubt);
        list("moved_holes", survey.judgements().holes(), SurveyYamlText::hole);
        list("loads", survey.loads(), SurveyYamlText::load);
    }

    private static Map<String, @Nullable Object> load(DeckLoad load) {
        Map<String, @Nullable Object> fields = fields(
                "name",
                load.loadCase(),
                "face",
                load.face(),
                load.area() instanceof Lineal ? "line" : "area",
                FolderWriter.wkt(load.area()),
                "force_N",
                load.forceN());
        if (load.area() instanceof Polygonal) {
            fields.putAll(fields(
                    "pressure_kPa",
                    load.pressureKPa(),
                    "moment_x_Nmm",
                    load.momentXNmm(),
                    "moment_y_Nmm",
                    load.momentYNmm()));
        }
        return fields;
    }

    private static Map<String, @Nullable Object> method(MethodOverride m) {
        Spot at = m.spot();
        return fields(
                "face", at.face(), "x_mm", at.xMm(), "y_mm", at.yMm(), "method", m.method(), "reason", m.reason());
    }

    private static Map<String, @Nullable Object> doubt(ReadingOverride r) {
        Map<String, @Nullable Object> fields = fields("kind", r.kind(), "id", r.id());
        fields.putAll(fields(
                "face",
                r.spot().face(),
                "x_mm",
                r.spot().xMm(),
                "y_mm",
                r.spot().yMm()));
        fields.putAll(fields("trust", r.trust(), "reason", r.reason()));
        return fields;
    }

    private static Map<String, @Nullable Object> hole(MovedHole h) {
        Map<String, @Nullable Object> fields = fields(
                "face",
                h.spot().face(),
                "planned_x_mm",
                h.planned().xMm(),
                "planned_y_mm",
                h.planned().yMm());
        fields.putAll(fields("x_mm", h.spot().xMm(), "y_mm", h.spot().yMm()));
        return fields;
    }

    private <T> void list(String key, List<T> items, Function<T, Map<String, @Nullable Object>> fields) {
        if (items.isEmpty()) {
            return;
        }
        text.append(key).append(":\n");
        items.forEach(
                item -> text.append("  - ").append(flow(fields.apply(item))).append('\n'));
    }

    /** A record's components under their names in snake case. */
    private static Map<String, @Nullable Object> tree(Record record) {
        Map<String, @Nullable Object> fields = new LinkedHashMap<>();
        Json.tree(record).fields().forEachRemaining(e -> fields.put(Form.snake(e.getKey()), plain(e.getValue())));
        return fields;
    }

    private static Object plain(JsonNode value) {
        if (value.isBoolean()) {
            return value.asBoolean();
        }
        return value.isIntegralNumber()
                ? (Object) value.asLong()
                : value.isNumber() ? (Object) value.asDouble() : value.asText();
    }

    /** Keys and values in turn; those without a value are left out. */
    private static Map<String, @Nullable Object> fields(@Nullable Object... keysAndValues) {
        Map<String, @Nullable Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            if (keysAndValues[i + 1] != null) {
                fields.put((String) keysAndValues[i], keysAndValues[i + 1]);
            }
        }
        return fields;
    }

    private static String flow(Map<String, @Nullable Object> fields) {
        return fields.entrySet().stream()
                .map(e -> e.getKey() + ": " + value(e.getValue()))
                .collect(Collectors.joining(", ", "{ ", " }"));
    }

    private static String value(@Nullable Object value) {
        if (value instanceof Double number) {
            return Csv.number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Enum<?> choice) {
            return Scalar.word(choice);
        }
        return value instanceof String words ? Json.quoted(words) : String.valueOf(value);
    }
}
