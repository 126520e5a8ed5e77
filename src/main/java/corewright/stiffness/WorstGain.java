package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.reuse.Memory;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out what the panel that lost most would have again. */
final class WorstGain {
    private final PanelStiffness panel;
    private final Patches patches;
    private final Memory memory;
    private final List<Defect> defects = new ArrayList<>();

    WorstGain(Survey survey, DamageMap damage, PanelStiffness worst, Memory memory) {
        panel = worst;
        patches = new Patches(survey, damage.face(worst.panel().face()), worst.panel());
        this.memory = memory;
    }

    Gains gains(List<Treatment> dried, List<Treatment> advised) {
        Optional<Quantiles> left = Optional.of(panel.in(State.AS_FOUND).ofAsBuilt());
        return new Gains(
                left,
                with(dried, left, "what drying gives back of the stiffness"),
                with(advised, left, "what the advised repair gives back of the stiffness"),
                Optional.of(panel.in(State.AFTER_RECORE).ofAsBuilt()),
                defects);
    }

    private Optional<Quantiles> with(List<Treatment> treatments, Optional<Quantiles> left, String what) {
        if (treatments.stream().noneMatch(t -> t.face().equals(panel.panel().face()))) {
            return left;
        }
        try {
            return Optional.of(memory.of(
                    new PanelStudy.Gain(
                            patches.with(treatments),
                            panel.softest().coordinate(),
                            panel.in(State.AS_BUILT).stiffnessNPerMm()),
                    PanelStudy::gain));
        } catch (RuntimeException e) {
            defects.add(Defect.of(what, new About.OfPanel(panel.panel().name(), panel.softest()), e));
            return Optional.empty();
        }
    }
}
