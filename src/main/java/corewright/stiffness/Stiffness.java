package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.sandwich.UnsupportedPanelException;
import corewright.survey.About;
import corewright.survey.DeckLoad;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** How stiff the panels of a survey are, were, and would be. */
public final class Stiffness {
    private Stiffness() {}

    /** Every panel of every face in all states. */
    public static StiffnessMap of(Survey survey, DamageMap damage) {
        List<PanelStiffness> panels = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            DeckPanels cut = DeckPanels.of(survey, face.face());
            findings.addAll(cut.findings());
            CaseLoads loads = new CaseLoads(cut.panels(), survey.loads());
            loads.off().forEach(load -> findings.add(off(load)));
            for (DeckPanel panel : cut.panels()) {
                try {
                    panels.add(new PanelStudy(survey, face, panel).study(loads.on(panel)));
                } catch (UnsupportedPanelException e) {
                    findings.add(cannot(panel, String.valueOf(e.getMessage())));
                }
            }
        }
        new StiffnessMap(panels, findings).worst().ifPresent(worst -> {
            FaceDamage face = damage.face(worst.panel().face());
            panels.set(panels.indexOf(worst), new PanelStudy(survey, face, worst.panel()).withResting(worst));
        });
        return new StiffnessMap(panels, findings);
    }

    /**
     * Stiffness of a panel at its softest place over the one as built, were areas treated so.
     *
     * @return p10 in the worse tenth of cases, p90 in the better one
     */
    public static Quantiles treated(Survey survey, DamageMap damage, PanelStiffness panel, List<Treatment> treatments) {
        Coordinate place = panel.softest().coordinate();
        return new PanelStudy(survey, damage.face(panel.panel().face()), panel.panel())
                .ratios(treatments, place, panel.in(State.AS_BUILT).stiffnessNPerMm());
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

    private static Finding cannot(DeckPanel panel, String why) {
        Coordinate c = panel.area().getInteriorPoint().getCoordinate();
        return new Finding(
                Finding.Severity.DOUBT,
                new Origin("survey.yaml", 0),
                new About.OfPanel(panel.name(), new Spot(panel.face(), c.x, c.y)),
                Subject.PANEL,
                "The stiffness of the panel " + panel.name() + " cannot be calculated: " + why + ".",
                "Nothing is said of how far it gives.");
    }
}
