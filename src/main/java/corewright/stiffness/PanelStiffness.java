package corewright.stiffness;

import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.survey.Spot;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How stiff one panel is in every state.
 *
 * @param softest where it gives most as found; all states are compared there
 * @param damaged whether any region lies on it; if not, all states are the same
 * @param margins under the foot at that place as found: demand over capacity
 * @param looseSkin the loose skin under that foot, where there is one
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
        List<LoadCase> cases,
        List<String> notes) {
    public PanelStiffness {
        states = Map.copyOf(new EnumMap<>(states));
        margins = List.copyOf(margins);
        cases = List.copyOf(cases);
        notes = List.copyOf(notes);
    }

    /** The same with the state after the advised plan. */
    PanelStiffness planned(StateStiffness plan, Function<LoadCase, LoadCase.Answer> answers) {
        Map<State, StateStiffness> all = new EnumMap<>(states);
        all.put(State.AFTER_PLAN, plan);
        List<LoadCase> withPlan = cases.stream()
                .map(c -> c.with(State.AFTER_PLAN, answers.apply(c)))
                .toList();
        return new PanelStiffness(panel, softest, damaged, all, margins, looseSkin, withPlan, notes);
    }

    /** States with figures, in order: the one after the advised plan may be missing, by a defect. */
    public List<State> known() {
        return Stream.of(State.values()).filter(states::containsKey).toList();
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
