package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.survey.Defect;
import java.util.List;
import java.util.Optional;

/**
 * What is left of the worst panel's stiffness, over the one as built, by what is done; p10 in the worse tenth of cases, p90 in
 * the better one. Empty where no panel is damaged, or where it could not be calculated.
 *
 * @param left nothing is done
 * @param dried what is wet is dried
 * @param advised what is advised is done
 * @param renewed all damaged core is renewed
 * @param map all panels, with their state after what is advised
 */
public record Gains(
        Optional<Quantiles> left,
        Optional<Quantiles> dried,
        Optional<Quantiles> advised,
        Optional<Quantiles> renewed,
        StiffnessMap map,
        List<Defect> defects) {
    /** Nothing to gain. */
    public static final Gains NONE = none(StiffnessMap.NONE, List.of());

    public Gains {
        defects = List.copyOf(defects);
    }

    static Gains none(StiffnessMap map, List<Defect> defects) {
        return new Gains(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), map, defects);
    }
}
