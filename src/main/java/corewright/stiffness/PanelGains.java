package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What one panel has of its stiffness as built when a part of its core is treated, the rest as found. */
public final class PanelGains {
    /** Less of a region than this is no part of a panel: 0.001 m2. */
    private static final double SMALLEST_MM2 = 1000;

    private final Survey survey;
    private final DamageMap damage;
    private final StiffnessMap stiffness;
    private final Memory memory;

    /** @param stiffness panels that were calculated; others have no gain */
    public PanelGains(Survey survey, DamageMap damage, StiffnessMap stiffness, Memory memory) {
        this.survey = survey;
        this.damage = damage;
        this.stiffness = stiffness;
        this.memory = memory;
    }

    /** The calculated panel that holds most of a region; empty where none holds any. */
    public Optional<String> panelOf(Region region) {
        return stiffness.of(region.face()).stream()
                .filter(p -> p.damaged() && held(p, region) > SMALLEST_MM2)
                .max(Comparator.comparingDouble(p -> held(p, region)))
                .map(p -> p.panel().name());
    }

    private static double held(PanelStiffness panel, Region region) {
        return Overlay.intersection(region.likely(), panel.panel().area()).getArea();
    }

    /** The panel as it was found. */
    public Quantiles asFound(String panel) {
        return known(panel).in(State.AS_FOUND).ofAsBuilt();
    }

    /** The panel with all damage renewed. */
    public Quantiles renewed(String panel) {
        return known(panel).in(State.AFTER_RECORE).ofAsBuilt();
    }

    private PanelStiffness known(String panel) {
        return stiffness.panels().stream()
                .filter(p -> p.panel().name().equals(panel))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Stiffness over the one as built, at the place that is softest as found.
     *
     * @param treatments of the whole face; empty is as found
     * @return empty where it cannot be calculated
     */
    public Optional<Quantiles> after(String panel, List<Treatment> treatments) {
        PanelStiffness known = known(panel);
        FaceDamage face = damage.face(known.panel().face());
        Patches patches = new Patches(survey, face, known.panel());
        Prospects state = patches.with(treatments);
        PanelInput input = PanelInput.of(survey, face, known.panel(), new CaseLoads(List.of(), List.of()));
        for (State same : List.of(State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE)) {
            if (input.in(same).equals(state)) {
                return Optional.of(known.in(same).ofAsBuilt());
            }
        }
        if (state.equals(Prospects.all(input.built()))) {
            return Optional.of(known.in(State.AS_BUILT).ofAsBuilt());
        }
        try {
            return Optional.of(memory.of(
                    new PanelStudy.Gain(
                            input,
                            state,
                            known.softest().coordinate(),
                            known.in(State.AS_BUILT).deflectionMm()),
                    PanelStudy::gain));
        } catch (RuntimeException e) {
            return Optional.empty(); // the panel's own defect is told where it is calculated as found
        }
    }
}
