package corewright.stiffness;

import corewright.survey.Defect;
import corewright.survey.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All panels of a survey, faces in its order.
 *
 * @param panels without those that cannot be calculated; a finding or a defect names each of these
 */
public record StiffnessMap(List<PanelStiffness> panels, List<Finding> findings, List<Defect> defects) {
    /** Nothing calculated. */
    public static final StiffnessMap NONE = new StiffnessMap(List.of(), List.of(), List.of());

    public StiffnessMap {
        panels = List.copyOf(panels);
        findings = List.copyOf(findings);
        defects = List.copyOf(defects);
    }

    /** The panels of a face. */
    public List<PanelStiffness> of(String face) {
        return panels.stream().filter(p -> p.panel().face().equals(face)).toList();
    }

    /** The damaged panel that kept the least of its stiffness. */
    public Optional<PanelStiffness> worst() {
        return worstOf(panels);
    }

    /** The damaged panel of a face that kept the least of its stiffness. */
    public Optional<PanelStiffness> worst(String face) {
        return worstOf(of(face));
    }

    /** The damaged panel that has least of its stiffness after the advised plan; empty before there is one. */
    public Optional<PanelStiffness> leastAfterPlan() {
        return panels.stream()
                .filter(p -> p.damaged() && p.states().containsKey(State.AFTER_PLAN))
                .min(Comparator.comparingDouble(
                        p -> p.in(State.AFTER_PLAN).ofAsBuilt().p50()));
    }

    /** The damaged panel of which the survey's loads, as found, take the largest part of what it holds; empty without loads. */
    public Optional<PanelStiffness> mostLoaded() {
        return panels.stream()
                .filter(p -> p.damaged() && !p.cases().isEmpty())
                .max(Comparator.comparingDouble(p -> p.cases().stream()
                        .mapToDouble(c -> c.in(State.AS_FOUND).taken())
                        .max()
                        .orElse(0)));
    }

    private static Optional<PanelStiffness> worstOf(List<PanelStiffness> panels) {
        return panels.stream().filter(PanelStiffness::damaged).min(Comparator.comparingDouble(p -> p.in(State.AS_FOUND)
                .ofAsBuilt()
                .p50()));
    }
}
