package corewright.stiffness;

import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How stiff one panel is in every state.
 *
 * @param softest where it gives most as found; all states are compared there
 * @param damaged whether any region lies on it; if not, all states are the same
 * @param margins under the foot at that place as found: demand over capacity
 * @param looseSkin the loose skin under that foot, where there is one
 * @param restingMm what the foot truly sinks as found where a loose skin comes to rest on what is below or pulls like a
 *     membrane, which the linear figures leave out; empty where they leave
 *     nothing out, and for all but the panel that lost most
 * @param cases the survey's load cases that reach the panel
 * @param notes what a reader must know of the figures, a sentence each
 */
public record PanelStiffness(
        DeckPanel panel,
        Spot softest,
        boolean damaged,
        Map<State, StateStiffness> states,
        List<Margin> margins,
        Optional<LooseSkin> looseSkin,
        OptionalDouble restingMm,
        List<LoadCase> cases,
        List<String> notes) {
    public PanelStiffness {
        states = Map.copyOf(new EnumMap<>(states));
        margins = List.copyOf(margins);
        cases = List.copyOf(cases);
        notes = List.copyOf(notes);
    }

    PanelStiffness resting(double mm, String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(note);
        return new PanelStiffness(
                panel, softest, damaged, states, margins, looseSkin, OptionalDouble.of(mm), cases, all);
    }

    /** The figures of a state. */
    public StateStiffness in(State state) {
        StateStiffness found = states.get(state);
        if (found == null) {
            throw new IllegalArgumentException("no figures for " + state);
        }
        return found;
    }
}
