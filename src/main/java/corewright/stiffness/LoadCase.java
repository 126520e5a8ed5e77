package corewright.stiffness;

import corewright.sandwich.Margin;
import corewright.survey.Spot;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the loads of one case, acting together, do to a panel in every state. Linear. */
public record LoadCase(String name, Map<State, Answer> states) {
    /**
     * @param deflectionMm the largest of the outer skin, positive inward
     * @param at where
     * @param margins demand over capacity with the damage as it is in that state
     */
    public record Answer(double deflectionMm, Spot at, List<Margin> margins) {
        public Answer {
            margins = List.copyOf(margins);
        }
    }

    public LoadCase {
        states = Map.copyOf(new EnumMap<>(states));
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
