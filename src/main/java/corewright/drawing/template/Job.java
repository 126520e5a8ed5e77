package corewright.drawing.template;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.PlanView;
import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * What belongs to one card and is laid out on the face together: the holes of one space, one cut, or the holes that one region dries
 * through.
 *
 * @param title as the card's
 * @param regions that are worked on
 * @param holes places of nozzles too, where nothing is drilled
 * @param drying places of holes that stay open, all alike
 * @param cut through the outer skin
 * @param skinMm thickness of the outer skin at the cut
 */
public record Job(
        Assessment assessment,
        String title,
        FaceDamage damage,
        List<Region> regions,
        List<Hole> holes,
        List<Spot> drying,
        Optional<Geometry> cut,
        double skinMm) {
    public Job {
        regions = List.copyOf(regions);
        holes = List.copyOf(holes);
        drying = List.copyOf(drying);
    }

    /** Full size, as whoever works there sees it, the datum at the paper's corner. */
    public PlanView view() {
        return new PlanView(1, 0, 0, damage.face().plusYPointsDown());
    }

    /** What comes before any tool; empty where nothing does. */
    public List<String> before() {
        List<String> before = new ArrayList<>();
        List<RegionDecision> decisions =
                regions.stream().map(r -> assessment.decision().on(r.id())).toList();
        if (decisions.stream().anyMatch(RegionDecision::architect)) {
            before.add("A naval architect or surveyor decides before any work: this place carries load.");
        }
        decisions.stream()
                .map(RegionDecision::firstStep)
                .filter(Objects::nonNull)
                .distinct()
                .forEach(step -> before.add("First: " + step));
        return before;
    }
}
