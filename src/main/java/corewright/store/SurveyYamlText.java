package corewright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Heading;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.MethodOverride;
import corewright.survey.MovedHole;
import corewright.survey.ReadingOverride;
import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Terms;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;

/** survey.yaml of a survey: sections one below the other, each entry of a list on a line of its own. */
final class SurveyYamlText {
    private final Map<String, Object> yaml = new LinkedHashMap<>();

    private SurveyYamlText() {}

    /** @param files names without their ending */
    static String of(Survey survey, Collection<String> files) {
        SurveyYamlText text = new SurveyYamlText();
        text.heading(survey.heading());
        text.yaml.put("units", units(survey.settings().terms()));
        text.list("faces", survey.faces(), SurveyYamlText::face);
        Map<String, String> named = new LinkedHashMap<>();
        files.forEach(f -> named.put(f, f + ".csv"));
        if (!survey.repairPlan().isNone()) {
            named.put("repair_plan", RepairPlanText.NAME);
        }
        text.yaml.put("files", named);
        text.list("meters", survey.meters(), SurveyYamlText::meter);
        text.list("laminates", survey.laminates(), SurveyYamlText::tree);
        text.materials(survey.materials());
        text.settings(survey.settings());
        text.judgements(survey);
        DumperOptions options = new DumperOptions();
        options.setDefaultFlowStyle(DumperOptions.FlowStyle.AUTO); // a collection of plain values stands on one line
        options.setSplitLines(false);
        options.setWidth(Integer.MAX_VALUE);
        return new Yaml(options).dump(text.yaml);
    }

    /** Those of the files, and what the reader asked for where it is not the default. */
    private static Map<String, Object> units(Terms terms) {
        Map<String, Object> units = fields("length", "mm", "depth", "mm", "temperature", "C");
        asked(units, "display", terms.display(), Terms.DEFAULT.display());
        asked(units, "decimal", terms.decimal(), Terms.DEFAULT.decimal());
        asked(units, "csv", terms.csv(), Terms.DEFAULT.csv());
        asked(units, "paper", terms.paper(), Terms.Sheet.usual(terms.display()));
        return units;
    }

    private static void asked(Map<String, Object> units, String key, Enum<?> value, Enum<?> plain) {
        if (value != plain) {
            units.put(key, value.name().toLowerCase(Locale.ROOT));
        }
    }

    private void heading(Heading heading) {
        yaml.put("format", 1);
        yaml.putAll(fields(
                "name",
                heading.name(),
                "surveyed",
                heading.surveyed(),
                "vessel",
                heading.vessel(),
                "client",
                heading.client(),
                "surveyor",
                heading.surveyor(),
                "weather",
                heading.weather(),
                "days_ashore",
                heading.daysAshore(),
                "notes",
                heading.notes()));
    }

    private static Map<String, Object> face(Face face) {
        return fields("name", face.name(), "tilt_deg", face.tiltDeg(), "uphill_deg", face.uphillDeg());
    }

    private static Map<String, Object> meter(Meter m) {
        return fields("name", m.name(), "kind", m.kind(), "full_scale", m.fullScale(), "dry", m.dry(), "wet", m.wet());
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
            Map<String, Object> changed = new LinkedHashMap<>();
            section.getValue().fields().forEachRemaining(each -> {
                if (!each.getValue().equals(defaults.get(section.getKey()).get(each.getKey()))) {
                    changed.put(Form.snake(each.getKey()), plain(each.getValue()));
                }
            });
            if (!changed.isEmpty() && !section.getKey().equals("terms")) { // they stand under units
                yaml.put(section.getKey(), changed);
            }
        });
    }

    private void judgements(Survey survey) {
        list("method_overrides", survey.judgements().methods(), SurveyYamlText::method);
        list("reading_overrides", survey.judgements().readings(), SurveyYamlText::doubt);
        list("moved_holes", survey.judgements().holes(), SurveyYamlText::hole);
        list("rule_overrides", survey.judgements().rules(), r -> rule(r, survey.settings()));
        list("loads", survey.loads(), SurveyYamlText::load);
    }

    private static Map<String, Object> load(DeckLoad load) {
        Map<String, Object> fields = fields(
                "name",
                load.loadCase(),
                "face",
                load.face(),
                load.area() instanceof Lineal ? "line" : "area",
                EveryDigit.wkt(load.area()),
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

    private static Map<String, Object> method(MethodOverride m) {
        Spot at = m.spot();
        Map<String, Object> fields =
                fields("face", at.face(), "x_mm", at.xMm(), "y_mm", at.yMm(), "method", m.method());
        if (!m.who().isEmpty()) {
            fields.put("who", m.who());
        }
        fields.put("reason", m.reason());
        return fields;
    }

    private static Map<String, Object> doubt(ReadingOverride r) {
        Spot at = r.spot();
        return fields(
                "kind",
                r.kind(),
                "id",
                r.id(),
                "face",
                at.face(),
                "x_mm",
                at.xMm(),
                "y_mm",
                at.yMm(),
                "trust",
                r.trust(),
                "reason",
                r.reason());
    }

    private static Map<String, Object> rule(RuleOverride r, Settings settings) {
        Object value = r.limit() ? (Object) settings.thresholds().of(r.rule()) : "off";
        return fields("rule", r.rule(), "value", value, "who", r.who(), "reason", r.reason());
    }

    private static Map<String, Object> hole(MovedHole h) {
        Spot was = h.planned();
        Spot at = h.spot();
        return fields(
                "face",
                at.face(),
                "planned_x_mm",
                was.xMm(),
                "planned_y_mm",
                was.yMm(),
                "x_mm",
                at.xMm(),
                "y_mm",
                at.yMm(),
                "kind",
                h.kind().name().toLowerCase(Locale.ROOT));
    }

    private <T> void list(String key, List<T> items, Function<T, Map<String, Object>> fields) {
        if (items.isEmpty()) {
            return;
        }
        yaml.put(key, items.stream().map(fields).toList());
    }

    /** A record's components under their names in snake case. */
    private static Map<String, Object> tree(Record record) {
        Map<String, Object> fields = new LinkedHashMap<>();
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
    private static Map<String, Object> fields(@Nullable Object... keysAndValues) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            Object value = keysAndValues[i + 1];
            if (value instanceof Enum<?> choice) {
                fields.put((String) keysAndValues[i], Scalar.word(choice));
            } else if (value instanceof LocalDate day) {
                fields.put((String) keysAndValues[i], day.toString());
            } else if (value != null && !value.equals("")) {
                fields.put((String) keysAndValues[i], value);
            }
        }
        return fields;
    }
}
