package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Strengths;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Survey;
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

    static PanelInput of(Survey survey, FaceDamage face, DeckPanel panel, CaseLoads loads) {
        Patches patches = new Patches(survey, face, panel);
        Treatments standard = new Treatments(survey, face, panel);
        Map<State, Prospects> states = new EnumMap<>(State.class);
        states.put(State.AS_FOUND, patches.with(List.of()));
        states.put(State.AFTER_INJECTION, patches.with(standard.injection()));
        states.put(State.AFTER_RECORE, patches.with(standard.recore()));
        return new PanelInput(
                panel,
                patches.asBuilt(),
                patches.damaged(),
                states,
                strengths(survey.materials(), panel.laminate()),
                loads.on(panel).entrySet().stream()
                        .map(c -> new Case(c.getKey(), c.getValue()))
                        .toList());
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
