package corewright.stiffness;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import java.util.List;
import java.util.Optional;

/** What the two repairs of the contract do to a face: fill what is loose and dry and every void; renew all damage. */
final class Treatments {
    private final Survey survey;
    private final FaceDamage face;
    private final DeckPanel panel;

    Treatments(Survey survey, FaceDamage face, DeckPanel panel) {
        this.survey = survey;
        this.face = face;
        this.panel = panel;
    }

    /** With the survey's first structural mix that rises, else its first structural one; none without one. */
    List<Treatment> injection() {
        List<Resin> structural =
                survey.settings().resins().stream().filter(Resin::structural).toList();
        Optional<Resin> resin = structural.stream()
                .filter(r -> r.expansion() > 1)
                .findFirst()
                .or(() -> structural.stream().findFirst());
        return resin.map(mix -> face.regions().stream()
                        .filter(r -> r.condition() == Condition.DELAMINATED || r.condition() == Condition.VOID)
                        .<Treatment>map(r -> new Treatment.Fill(r.face(), r.likely(), mix))
                        .toList())
                .orElse(List.of());
    }

    List<Treatment> recore() {
        return face.regions().stream()
                .<Treatment>map(r -> new Treatment.Renew(
                        r.face(), r.likely(), panel.laminate().core()))
                .toList();
    }
}
