package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.reuse.Memory;
import corewright.sandwich.spec.UnsupportedPanelException;
import corewright.survey.About;
import corewright.survey.DeckLoad;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** How stiff the panels of a survey are, were, and would be. */
public final class Stiffness {
    private Stiffness() {}

    /**
     * Every panel of every face in all states, but of faces of which nothing may be said. A defect costs its own panel.
     *
     * @param memory gives the panels that are as they were
     */
    public static StiffnessMap of(Survey survey, DamageMap damage, Memory memory) {
        List<Asked> asked = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (FaceDamage face : damage.faces().stream().filter(FaceDamage::told).toList()) {
            DeckPanels cut = DeckPanels.of(survey, face.face());
            findings.addAll(cut.findings());
            CaseLoads loads = new CaseLoads(cut.panels(), survey.loads());
            loads.off().forEach(load -> findings.add(off(load)));
            cut.panels().forEach(panel -> asked.add(new Asked(face, panel, loads)));
        }
        List<PanelStiffness> panels = new ArrayList<>();
        List<Defect> defects = new ArrayList<>();
        for (Answer answer : Abreast.on(asked, Asked::panel, one -> answer(survey, one, memory))) {
            answer.found.ifPresent(panels::add);
            answer.finding.ifPresent(findings::add);
            answer.defect.ifPresent(defects::add);
        }
        return new StiffnessMap(panels, findings, defects);
    }

    private record Asked(FaceDamage face, DeckPanel panel, CaseLoads loads) {}

    private record Answer(Optional<PanelStiffness> found, Optional<Finding> finding, Optional<Defect> defect) {}

    private static Answer answer(Survey survey, Asked asked, Memory memory) {
        DeckPanel panel = asked.panel;
        try {
            PanelInput input = PanelInput.of(survey, asked.face, panel, asked.loads, memory);
            PanelStiffness found = memory.of(input, PanelStudy::of);
            return new Answer(Optional.of(found), BareOpening.softest(asked.face.face(), found), Optional.empty());
        } catch (UnsupportedPanelException e) {
            return new Answer(
                    Optional.empty(), Optional.of(cannot(panel, String.valueOf(e.getMessage()))), Optional.empty());
        } catch (RuntimeException e) {
            Defect defect = Defect.of("the stiffness", new About.OfPanel(panel.name(), middle(panel)), e);
            return new Answer(Optional.empty(), Optional.empty(), Optional.of(defect));
        }
    }

    /**
     * The panels after the advised plan too, and what is left of the worst panel's stiffness, by what is done.
     *
     * @param dried all that drying does
     * @param advised all that the advised methods do
     * @param memory gives what was asked before
     */
    public static Gains gains(
            Survey survey,
            DamageMap damage,
            StiffnessMap stiffness,
            List<Treatment> dried,
            List<Treatment> advised,
            Memory memory) {
        return new PlannedGains(survey, damage, memory).of(stiffness, dried, advised);
    }

    private static Finding off(DeckLoad load) {
        Coordinate c = load.area().getInteriorPoint().getCoordinate();
        return new Finding(
                Finding.Severity.DOUBT,
                new Origin("survey.yaml", 0),
                new About.OfLoad(load.loadCase(), new Spot(load.face(), c.x, c.y)),
                Subject.LOAD,
                "A load of the case \"" + load.loadCase() + "\" lies on no panel of " + load.face() + ".",
                "The case is calculated without it.");
    }

    static Spot middle(DeckPanel panel) {
        Coordinate c = panel.area().getInteriorPoint().getCoordinate();
        return new Spot(panel.face(), c.x, c.y);
    }

    private static Finding cannot(DeckPanel panel, String why) {
        return new Finding(
                Finding.Severity.DOUBT,
                new Origin("survey.yaml", 0),
                new About.OfPanel(panel.name(), middle(panel)),
                Subject.PANEL_LEFT_OUT,
                "The stiffness of the panel " + panel.name() + " cannot be calculated: " + why + ".",
                "Nothing is said of how far it gives.");
    }
}
