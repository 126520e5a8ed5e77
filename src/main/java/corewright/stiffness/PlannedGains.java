package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.reuse.Memory;
import corewright.sandwich.CellMatrices;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out what each panel has again after the advised plan, and the one that lost most after drying. */
final class PlannedGains {
    private final Survey survey;
    private final DamageMap damage;
    private final Memory memory;
    private final List<Defect> defects = new ArrayList<>();

    PlannedGains(Survey survey, DamageMap damage, Memory memory) {
        this.survey = survey;
        this.damage = damage;
        this.memory = memory;
    }

    /** A panel that cannot be calculated after the plan keeps its other states; a defect names it. */
    Gains of(StiffnessMap stiffness, List<Treatment> dried, List<Treatment> advised) {
        List<Asked> asked = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            CaseLoads loads = new CaseLoads(DeckPanels.of(survey, face.face()).panels(), survey.loads());
            stiffness.of(face.face().name()).forEach(panel -> asked.add(new Asked(face, panel, loads)));
        }
        List<PanelStiffness> panels = new ArrayList<>();
        for (Answer answer : Abreast.on(asked, one -> one.known.panel(), one -> answer(one, advised))) {
            panels.add(answer.panel);
            answer.defect.ifPresent(defects::add);
        }
        StiffnessMap map = new StiffnessMap(panels, stiffness.findings(), stiffness.defects());
        return map.worst()
                .map(worst -> new Gains(
                        Optional.of(worst.in(State.AS_FOUND).ofAsBuilt()),
                        dried(worst, dried),
                        Optional.ofNullable(worst.states().get(State.AFTER_PLAN))
                                .map(StateStiffness::ofAsBuilt),
                        Optional.of(worst.in(State.AFTER_RECORE).ofAsBuilt()),
                        map,
                        defects))
                .orElseGet(() -> Gains.none(map, defects));
    }

    private record Asked(FaceDamage face, PanelStiffness known, CaseLoads loads) {}

    private record Answer(PanelStiffness panel, Optional<Defect> defect) {}

    private Answer answer(Asked asked, List<Treatment> advised) {
        PanelStiffness known = asked.known;
        try {
            Prospects plan = new Patches(survey, asked.face, known.panel()).with(advised);
            PanelInput input = PanelInput.of(survey, asked.face, known.panel(), asked.loads, memory);
            return new Answer(
                    memory.of(new PanelStudy.Planned(input, known, plan), PanelStudy::planned), Optional.empty());
        } catch (RuntimeException e) {
            About about = new About.OfPanel(known.panel().name(), known.softest());
            return new Answer(known, Optional.of(Defect.of("the stiffness after the advised plan", about, e)));
        }
    }

    private Optional<Quantiles> dried(PanelStiffness worst, List<Treatment> dried) {
        FaceDamage face = damage.face(worst.panel().face());
        Patches patches = new Patches(survey, face, worst.panel());
        Prospects state = patches.with(dried);
        if (state.equals(patches.with(List.of()))) {
            return Optional.of(worst.in(State.AS_FOUND).ofAsBuilt());
        }
        try {
            return Optional.of(PanelGains.gain(
                    worst, State.AFTER_RECORE, state.middle(), new CellMatrices(state.middle()), memory));
        } catch (RuntimeException e) {
            defects.add(Defect.of(
                    "what drying gives back of the stiffness",
                    new About.OfPanel(worst.panel().name(), worst.softest()),
                    e));
            return Optional.empty();
        }
    }
}
