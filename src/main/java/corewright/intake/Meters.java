package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.survey.Meter;
import corewright.survey.Origin;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The section {@code meters}. */
final class Meters {
    static final double LARGEST = 1e6;

    private Meters() {}

    static List<Meter> read(YamlBlock top, Notes notes) {
        List<Meter> meters = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        for (YamlValue item : top.list("meters")) {
            YamlBlock block = YamlBlock.of(item, notes);
            block.only(List.of("name", "kind", "full_scale", "dry", "wet"));
            String name = block.required("name", "a name");
            if (!name.isEmpty() && !names.add(name)) {
                block.complain("name", "two meters are called \"" + name + "\"");
            }
            meters.add(meter(block, name, notes));
        }
        return meters;
    }

    private static Meter meter(YamlBlock block, String name, Notes notes) {
        Meter.Kind kind = block.word("kind", Meter.Kind.class);
        Double dry = block.number("dry", 0, LARGEST);
        Double wet = block.number("wet", 0, LARGEST);
        if (dry != null && wet != null && dry >= wet) {
            block.expected("wet", "more than dry, which is " + Numerals.plain(dry));
        }
        double fullScale = fullScale(block, name, notes);
        Double wetOrDoubled = wet(block, name, dry, wet, notes);
        if (wetOrDoubled != null && wetOrDoubled > fullScale) {
            notes.doubt(
                    block.origin(),
                    Subject.METER,
                    say(
                            "Meter %s counts as wet from %s, beyond the end of its scale at %s.",
                            name, wetOrDoubled, fullScale),
                    "Only readings off the scale can count as wet.");
        }
        return new Meter(name, kind == null ? Meter.Kind.RELATIVE : kind, fullScale, dry, wetOrDoubled);
    }

    private static double fullScale(YamlBlock block, String name, Notes notes) {
        if (!block.has("full_scale")) {
            notes.doubt(
                    block.origin(),
                    Subject.METER,
                    "Meter " + name + " has no full_scale.",
                    "100 is taken; a reading of 100 or more counts as off the scale.");
        }
        return block.number("full_scale", 1e-6, LARGEST, 100);
    }

    private static @Nullable Double wet(
            YamlBlock block, String name, @Nullable Double dry, @Nullable Double wet, Notes notes) {
        Origin origin = block.origin();
        if (dry == null) {
            notes.doubt(
                    origin,
                    Subject.METER,
                    "Meter " + name + " has no reading over known dry core (dry).",
                    "Its dry reading is estimated from the survey's own readings, which is less certain.");
        }
        if (wet != null || block.has("wet")) {
            return wet;
        }
        Double doubled = dry == null || dry == 0 ? null : (Double) (2 * dry);
        String effect = doubled == null
                ? "Where wet begins is estimated from the survey's own readings, which is less certain."
                : say("Twice the dry reading, %s, is taken (common practice).", doubled);
        notes.doubt(
                origin,
                Subject.METER,
                "Meter " + name + " has no reading from which core counts as wet (wet).",
                effect);
        return doubled;
    }

    private static String say(String form, Object... values) {
        Object[] plain = values.clone();
        for (int i = 0; i < plain.length; i++) {
            plain[i] = plain[i] instanceof Double d ? Numerals.plain(d) : plain[i];
        }
        return String.format(Locale.ROOT, form, plain);
    }
}
