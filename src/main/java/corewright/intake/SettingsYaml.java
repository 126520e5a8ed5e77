package corewright.intake;

import corewright.intake.MaterialsYaml.Named;
import corewright.intake.text.Notes;
import corewright.intake.text.Words;
import corewright.intake.yaml.Overrides;
import corewright.intake.yaml.YamlBlock;
import corewright.survey.Subject;
import corewright.survey.settings.Costs;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Terms;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The sections that override settings: thresholds, drilling, resins, costs, crew, climate, numerics, drying, goal, letterhead. */
final class SettingsYaml {
    private SettingsYaml() {}

    static Settings read(YamlBlock top, Notes notes) {
        Settings defaults = Settings.defaults();
        return new Settings(
                Overrides.apply(defaults.thresholds(), JudgementsYaml.thresholds(top)),
                Overrides.apply(defaults.drilling(), top.block("drilling")),
                resins(defaults.resins(), top, notes),
                costs(defaults.costs(), top.block("costs")),
                Overrides.apply(defaults.crew(), top.block("crew")),
                Overrides.apply(defaults.climate(), top.block("climate")),
                Overrides.apply(defaults.numerics(), top.block("numerics")),
                terms(top.block("units")),
                Overrides.apply(defaults.drying(), top.block("drying")),
                Overrides.apply(defaults.goal(), top.block("goal")),
                Overrides.apply(defaults.letterhead(), top.block("letterhead")));
    }

    /** They stand beside the units of the files. */
    private static Terms terms(YamlBlock units) {
        Terms defaults = Terms.DEFAULT;
        Terms.Display display = units.word("display", Terms.Display.class);
        Terms.Sign decimal = units.word("decimal", Terms.Sign.class);
        Terms.Sign csv = units.word("csv", Terms.Sign.class);
        Terms.Sheet paper = units.word("paper", Terms.Sheet.class);
        Terms.Display shown = display == null ? defaults.display() : display;
        return new Terms(
                shown,
                decimal == null ? defaults.decimal() : decimal,
                csv == null ? defaults.csv() : csv,
                paper == null ? Terms.Sheet.usual(shown) : paper);
    }

    private static Costs costs(Costs defaults, YamlBlock block) {
        Costs costs = Overrides.apply(defaults, block);
        for (RecordComponent component : Costs.class.getRecordComponents()) {
            if (component.getType() == double.class && Overrides.number(costs, component) < 0) {
                block.expected(Overrides.snake(component.getName()), "a number that is not negative");
            }
        }
        if (costs.hoursPerDay() == 0) {
            block.expected("hours_per_day", "a number above zero");
        }
        return costs;
    }

    /** The survey's own resins first, then the built-in ones it does not replace. */
    private static List<Resin> resins(List<Resin> builtIn, YamlBlock top, Notes notes) {
        Map<String, Resin> known = new LinkedHashMap<>();
        builtIn.forEach(r -> known.put(r.name(), r));
        List<Resin> own = new ArrayList<>();
        for (Named named : MaterialsYaml.named(top.value().at("resins"), notes)) {
            Resin like = known.get(named.name());
            if (like == null) {
                like = renamed(builtIn.get(0), named.name());
                sayWhatIsAssumed(named, builtIn.get(0).name(), notes);
            }
            Resin resin = Overrides.apply(like, named.block());
            own.add(resin);
            known.remove(named.name());
        }
        return Stream.concat(own.stream(), known.values().stream()).toList();
    }

    private static void sayWhatIsAssumed(Named named, String like, Notes notes) {
        Set<String> given = Overrides.given(Resin.class, named.block(), Map.of());
        List<String> assumed = Stream.of(Resin.class.getRecordComponents())
                .map(RecordComponent::getName)
                .filter(c -> !given.contains(c) && !c.equals("name") && !c.equals("source"))
                .filter(c -> !c.endsWith("MPa")) // by rule, not after another mix
                .map(Overrides::snake)
                .toList();
        if (!assumed.isEmpty()) {
            notes.doubt(
                    named.block().origin(),
                    Subject.RESIN,
                    "Resin " + named.name() + " does not give " + Words.and(assumed) + ".",
                    "The values of " + like + " are taken; the figures of the product in hand must be checked.");
        }
    }

    private static Resin renamed(Resin r, String name) {
        return new Resin(
                name,
                r.hardenerPerResin(),
                r.densityKgM3(),
                r.expansion(),
                r.pack(),
                r.viscosityPaS(),
                r.workS(),
                r.firstRiseS(),
                r.riseEndS(),
                r.gelS(),
                r.hardS(),
                r.referenceC(),
                r.structural(),
                r.shearStrengthMPa(),
                r.crushMPa(),
                r.bondShearMPa(),
                r.bondPeelMPa(),
                "the survey");
    }
}
