package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Words;
import corewright.intake.yaml.Overrides;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Materials;
import corewright.survey.Materials.Core;
import corewright.survey.Materials.Skin;
import corewright.survey.Subject;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;

/** The sections {@code skins} and {@code cores}: a list of blocks with a name, or a block of names. */
final class MaterialsYaml {
    /** The symbols of the trade are accepted beside the long names; folded to lower case without underscores. */
    private static final Map<String, String> SKIN_SYMBOLS =
            Map.of("empa", "modulusMPa", "nu", "poisson", "strengthmpa", "strengthMPa");

    private static final Map<String, String> CORE_SYMBOLS =
            Map.of("gmpa", "shearMPa", "gxzmpa", "shearMPa", "ezmpa", "modulusMPa", "empa", "modulusMPa");

    /** What a new material that leaves something out is completed from. */
    private static final String COMMON_SKIN = "e-glass-polyester";

    private static final String COMMON_CORE = "balsa-150";

    private MaterialsYaml() {}

    static Materials read(YamlBlock top, Notes notes) {
        Materials builtIn = Materials.builtIn();
        Skin commonSkin = Objects.requireNonNull(builtIn.skins().get(COMMON_SKIN));
        Core commonCore = Objects.requireNonNull(builtIn.cores().get(COMMON_CORE));
        Map<String, Skin> skins = new LinkedHashMap<>(builtIn.skins());
        for (Named named : named(top.value().at("skins"), notes)) {
            Skin base = skins.get(named.name());
            Skin like = base != null ? base : renamed(commonSkin, named.name());
            if (base == null) {
                sayWhatIsAssumed(named, Skin.class, SKIN_SYMBOLS, List.of("modulusMPa"), COMMON_SKIN);
            }
            Skin skin = Overrides.apply(like, named.block(), SKIN_SYMBOLS);
            checkFigures(skin, named.block()::complain);
            skins.put(named.name(), skin);
        }
        Map<String, Core> cores = new LinkedHashMap<>(builtIn.cores());
        for (Named named : named(top.value().at("cores"), notes)) {
            Core base = cores.get(named.name());
            Core like = base != null ? base : renamed(commonCore, named.name());
            if (base == null) {
                sayWhatIsAssumed(named, Core.class, CORE_SYMBOLS, List.of("modulusMPa", "shearMPa"), COMMON_CORE);
            }
            Core core = Overrides.apply(like, named.block(), CORE_SYMBOLS);
            checkFigures(core, named.block()::complain);
            cores.put(named.name(), core);
        }
        return new Materials(skins, cores);
    }

    /** A block of settings and the name it goes by. */
    record Named(String name, YamlBlock block) {}

    /** A list of blocks that hold their names, or one block of blocks under their names. */
    static List<Named> named(YamlValue section, Notes notes) {
        List<Named> named = new ArrayList<>();
        if (section.shape() == Shape.TEXT) {
            notes.expected(section.origin(), section.path(), section.text(), "a list of blocks, each with a name");
        }
        for (YamlValue item : section.items()) {
            YamlBlock block = YamlBlock.of(item, notes);
            String name = block.required("name", "a name");
            if (named.stream().anyMatch(other -> other.name().equals(name))) {
                block.complain("name", "two entries are called \"" + name + "\"");
            } else if (!name.isEmpty()) {
                named.add(new Named(name, block));
            }
        }
        section.fields().forEach((name, value) -> named.add(new Named(name, YamlBlock.of(value, notes))));
        return named;
    }

    /** Complains of what a new material must say and notes what was taken from a similar one. */
    private static void sayWhatIsAssumed(
            Named named, Class<? extends Record> type, Map<String, String> symbols, List<String> must, String like) {
        Set<String> given = Overrides.given(type, named.block(), symbols);
        List<String> assumed = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            String name = component.getName();
            if (given.contains(name) || name.equals("name") || name.equals("source")) {
                continue;
            }
            if (must.contains(name)) {
                named.block().expected(Overrides.snake(name), "a number");
            } else {
                assumed.add(Overrides.snake(name));
            }
        }
        if (!assumed.isEmpty()) {
            named.block()
                    .notes()
                    .doubt(
                            named.block().origin(),
                            Subject.MATERIAL,
                            "Material " + named.name() + " does not give " + Words.and(assumed) + ".",
                            "The values of " + like + " are taken.");
        }
    }

    /**
     * Complains of figures that no material has.
     *
     * @param complain takes the key and the problem
     */
    static void checkFigures(Record material, BiConsumer<String, String> complain) {
        for (RecordComponent component : material.getClass().getRecordComponents()) {
            if (component.getType() != double.class) {
                continue;
            }
            double value = Overrides.number(material, component);
            double most = component.getName().equals("poisson") ? 0.49 : 1e7;
            if (!(value > 0 && value <= most)) {
                String key = Overrides.snake(component.getName());
                complain.accept(key, key + " must be more than 0 and at most " + Numerals.plain(most));
            }
        }
    }

    private static Skin renamed(Skin s, String name) {
        return new Skin(name, s.modulusMPa(), s.poisson(), s.strengthMPa(), s.densityKgM3(), "the survey");
    }

    private static Core renamed(Core c, String name) {
        return new Core(
                name, c.densityKgM3(), c.modulusMPa(), c.shearMPa(), c.crushMPa(), c.shearStrengthMPa(), "the survey");
    }
}
