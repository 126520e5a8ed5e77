package corewright.stiffness;

import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.survey.Spot;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the loads of one case, acting together, do to a panel in every state, with contact and von Karman's strain. */
public record LoadCase(String name, Map<State, Answer> states) {
    /**
     * @param deflectionMm the largest of the outer skin, positive inward
     * @param linearMm the largest without contact and von Karman's strain, at a place of its own
     * @param at where the first is
     * @param margins demand over capacity with the damage as it is in that state
     */
    public record Answer(double deflectionMm, double linearMm, Spot at, List<Margin> margins) {
        public Answer {
            margins = List.copyOf(margins);
        }

        /** The largest part of any strength that the loads take; a loose skin may buckle and still hold. */
        double taken() {
            return margins.stream()
                    .filter(m -> !m.what().equals(Margins.LOOSE_SKIN_BUCKLING))
                    .mapToDouble(Margin::ratio)
                    .max()
                    .orElse(0);
        }
    }

    public LoadCase {
        states = Map.copyOf(new EnumMap<>(states));
    }

    LoadCase with(State state, Answer answer) {
        Map<State, Answer> all = new EnumMap<>(states);
        all.put(state, answer);
        return new LoadCase(name, all);
    }

    /** The answer in a state. */
    public Answer in(State state) {
        Answer answer = states.get(state);
        if (answer == null) {
            throw new IllegalArgumentException("no answer for " + state);
        }
        return answer;
    }
}
