package corewright.intake;

import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Judgements;
import corewright.survey.MethodOverride;
import corewright.survey.MovedHole;
import corewright.survey.Reading.Kind;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** The sections {@code method_overrides}, {@code reading_overrides}, {@code moved_holes} and {@code rule_overrides}. */
final class JudgementsYaml {
    private static final List<String> METHODS = List.of("monitor", "dry-out", "inject", "recore");

    private final List<String> faces;
    private final YamlBlock top;
    private final Notes notes;

    private JudgementsYaml(List<String> faces, YamlBlock top, Notes notes) {
        this.faces = faces;
        this.top = top;
        this.notes = notes;
    }

    static Judgements read(YamlBlock top, List<String> faces, Notes notes) {
        JudgementsYaml yaml = new JudgementsYaml(faces, top, notes);
        return new Judgements(
                yaml.list("method_overrides", List.of("face", "x_mm", "y_mm", "method", "who", "reason"), yaml::method),
                yaml.list(
                        "reading_overrides",
                        List.of("kind", "id", "face", "x_mm", "y_mm", "trust", "reason"),
                        yaml::reading),
                yaml.list(
                        "moved_holes",
                        List.of("face", "planned_x_mm", "planned_y_mm", "x_mm", "y_mm", "kind"),
                        yaml::hole),
                yaml.rules());
    }

    /** Rules set aside and limits set, with who and why, in either section. */
    private List<RuleOverride> rules() {
        List<RuleOverride> rules =
                new ArrayList<>(list("rule_overrides", List.of("rule", "value", "who", "reason"), this::rule));
        top.value().at("thresholds").fields().forEach((key, value) -> {
            if (value.shape() == Shape.MAP && Thresholds.keys().contains(key)) {
                YamlBlock block = YamlBlock.of(value, notes);
                block.only(List.of("value", "who", "reason"));
                if (!block.has("value")) {
                    block.expected("value", "a number");
                }
                told(block, key, rules);
            }
        });
        return rules;
    }

    /** The section of that name, of a limit with who and why its value, and with it the limits that {@code rule_overrides} set. */
    static YamlBlock thresholds(YamlBlock top) {
        YamlBlock section = top.block("thresholds");
        Map<String, YamlValue> fields = new LinkedHashMap<>(section.value().fields());
        fields.replaceAll((key, value) -> value.shape() == Shape.MAP ? value.at("value") : value);
        for (YamlValue item : top.list("rule_overrides")) {
            String key = item.at("rule").text();
            YamlValue value = item.at("value");
            if (Thresholds.keys().contains(key) && !value.isMissing()) {
                YamlValue other = fields.put(key, value);
                if (other != null && !other.text().equals(value.text())) {
                    top.notes()
                            .complain(
                                    value.origin(),
                                    value.path(),
                                    key + " is set to " + value.found() + " here and to " + other.found() + " at "
                                            + other.path());
                }
            }
        }
        YamlValue at = section.value();
        return fields.isEmpty()
                ? section
                : new YamlBlock(
                        new YamlValue(Shape.MAP, at.origin(), at.path(), "", List.of(), fields), section.notes());
    }

    /** Reads every block of a section; one that was complained of adds nothing. */
    private <T> List<T> list(String key, List<String> known, BiConsumer<YamlBlock, List<T>> read) {
        List<T> list = new ArrayList<>();
        for (YamlValue item : top.list(key)) {
            YamlBlock block = YamlBlock.of(item, notes);
            block.only(known);
            read.accept(block, list);
        }
        return list;
    }

    private void method(YamlBlock block, List<MethodOverride> into) {
        Spot spot = spot(block, "x_mm", "y_mm");
        String method = block.required("method", Words.or(METHODS));
        if (!method.isEmpty() && !METHODS.contains(method)) {
            block.expected("method", Words.or(METHODS));
        } else if (spot != null && !method.isEmpty()) {
            into.add(new MethodOverride(spot, method, block.text("who"), block.text("reason")));
        }
    }

    private void reading(YamlBlock block, List<ReadingOverride> into) {
        Spot spot = spot(block, "x_mm", "y_mm");
        String id = block.required("id", "the reading's id");
        Kind kind = word(block, "kind", Kind.class);
        Trust trust = word(block, "trust", Trust.class);
        if (spot != null && kind != null && trust != null) {
            into.add(new ReadingOverride(kind, id, spot, trust, block.text("reason")));
        }
    }

    private void hole(YamlBlock block, List<MovedHole> into) {
        Spot planned = spot(block, "planned_x_mm", "planned_y_mm");
        Spot spot = spot(block, "x_mm", "y_mm");
        MovedHole.Kind kind = block.has("kind") ? word(block, "kind", MovedHole.Kind.class) : MovedHole.Kind.HOLE;
        if (kind != null && planned != null && spot != null) {
            into.add(new MovedHole(kind, planned, spot));
        }
    }

    /** A rule is set aside by {@code off}; a limit's value is read with the settings. */
    private void rule(YamlBlock block, List<RuleOverride> into) {
        String rule = block.required("rule", "the name of a rule or a limit");
        boolean limit = Thresholds.keys().contains(rule);
        if (!rule.isEmpty() && !RuleOverride.names().contains(rule)) {
            block.expected("rule", Words.or(RuleOverride.RULES) + "; or a limit: " + Words.or(Thresholds.keys()));
            return;
        }
        if (limit && !block.has("value")) {
            block.expected("value", "a number");
        } else if (!limit && !block.text("value").equals("off")) {
            block.expected("value", "off, which sets the rule aside");
        }
        told(block, rule, into);
    }

    private void told(YamlBlock block, String rule, List<RuleOverride> into) {
        String who = block.has("who") ? block.text("who") : top.text("surveyor");
        if (who.isEmpty()) {
            block.expected("who", "who answers for it");
        }
        String reason = block.required("reason", "why");
        if (!rule.isEmpty() && !who.isEmpty() && !reason.isEmpty()) {
            into.add(new RuleOverride(rule, who, reason));
        }
    }

    private static <E extends Enum<E>> @Nullable E word(YamlBlock block, String key, Class<E> choices) {
        if (!block.has(key)) {
            block.expected(key, Words.choices(choices));
        }
        return block.word(key, choices);
    }

    private @Nullable Spot spot(YamlBlock block, String xKey, String yKey) {
        String face = block.text("face");
        if (!faces.contains(face)) {
            block.expected("face", Words.or(faces));
        }
        Double x = coordinate(block, xKey);
        Double y = coordinate(block, yKey);
        return x == null || y == null ? null : new Spot(face, x, y);
    }

    private static @Nullable Double coordinate(YamlBlock block, String key) {
        if (!block.has(key)) {
            block.expected(key, "a number");
        }
        return block.number(key, -Lengths.LARGEST_MM, Lengths.LARGEST_MM);
    }
}
