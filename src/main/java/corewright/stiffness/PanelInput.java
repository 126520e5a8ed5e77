package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.reuse.Memory;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Strengths;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Probe;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Everything the figures of a panel depend on.
 *
 * @param damaged whether any region lies on it
 * @param states all but as built
 * @param cases loads by case, in the survey's order
 */
record PanelInput(
        DeckPanel panel,
        PanelSpec built,
        boolean damaged,
        Map<State, Prospects> states,
        Strengths strengths,
        List<Case> cases) {
    /** Loads that act together. */
    record Case(String name, List<Load> loads) {
        Case {
            loads = List.copyOf(loads);
        }
    }

    PanelInput {
        states = Map.copyOf(states);
        cases = List.copyOf(cases);
    }

    /** @param memory gives the states of a panel of which nothing else is known now */
    static PanelInput of(Survey survey, FaceDamage face, DeckPanel panel, CaseLoads loads, Memory memory) {
        Grounds grounds = new Grounds(
                panel,
                face.regions(),
                face.damagedMm2(),
                survey.readings().probes(),
                survey.materials(),
                survey.settings().resins());
        Cores cores = memory.of(grounds, g -> cores(survey, face, panel));
        return new PanelInput(
                panel,
                cores.built,
                cores.damaged,
                cores.states,
                strengths(survey.materials(), panel.laminate()),
                loads.on(panel).entrySet().stream()
                        .map(c -> new Case(c.getKey(), c.getValue()))
                        .toList());
    }

    /** What the states of a panel hang on. */
    private record Grounds(
            DeckPanel panel,
            List<Region> regions,
            Quantiles damagedMm2,
            List<Probe> probes,
            Materials materials,
            List<Resin> resins) {}

    /** A panel in its states. */
    private record Cores(PanelSpec built, boolean damaged, Map<State, Prospects> states) {}

    private static Cores cores(Survey survey, FaceDamage face, DeckPanel panel) {
        Patches patches = new Patches(survey, face, panel);
        Treatments standard = new Treatments(survey, face, panel);
        Map<State, Prospects> states = new EnumMap<>(State.class);
        states.put(State.AS_FOUND, patches.with(List.of()));
        states.put(State.AFTER_INJECTION, patches.with(standard.injection()));
        states.put(State.AFTER_RECORE, patches.with(standard.recore()));
        return new Cores(patches.asBuilt(), patches.damaged(), states);
    }

    private static Strengths strengths(Materials materials, Laminate laminate) {
        Materials.Skin skin = materials.skin(laminate.skin());
        Materials.Core core = materials.core(laminate.core());
        return new Strengths(
                OptionalDouble.of(skin.strengthMPa()),
                OptionalDouble.of(skin.strengthMPa()),
                OptionalDouble.of(core.shearStrengthMPa()),
                OptionalDouble.of(core.crushMPa()));
    }

    /** A state other than as built. */
    Prospects in(State state) {
        Prospects found = states.get(state);
        if (found == null) {
            throw new IllegalArgumentException("no panel " + state);
        }
        return found;
    }

    PanelSpec found() {
        return in(State.AS_FOUND).middle();
    }
}
