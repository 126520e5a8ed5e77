package corewright.desktop.holes;

import corewright.damage.Region;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Edit;
import corewright.survey.MovedHole;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a person does to the holes and vents of one plan, as edits. Injection holes are planned round those placed by hand until one is
 * taken away; from the first vent placed or taken away the vents are a person's own. Then the others stay where the plan had them.
 *
 * @param survey as it is
 * @param plan of the space
 * @param regions of its face
 */
record HoleEdits(Survey survey, InjectionPlan plan, List<Region> regions) {
    /** A hole that was placed by hand stands where the plan drills it. */
    private static final double SAME_MM = 2;

    HoleEdits {
        regions = List.copyOf(regions);
    }

    /** What a person has placed at a place. */
    static Optional<MovedHole> standing(Survey survey, Spot spot) {
        return survey.judgements().holes().stream()
                .filter(m -> m.drilled() && m.spot().face().equals(spot.face()) && near(m.spot(), spot))
                .findFirst();
    }

    private static boolean near(Spot a, Spot b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm()) <= SAME_MM;
    }

    /** A hole to another place, or held where it is. */
    Edit placed(Hole hole, Spot to) {
        List<MovedHole> all = own();
        if (!hole.fills()) {
            holdOthers(all, hole);
        }
        Spot planned = standing(survey, hole.spot()).map(MovedHole::planned).orElse(hole.spot());
        all.removeIf(m -> m.drilled() && near(m.spot(), hole.spot()));
        all.add(new MovedHole(hole.fills() ? MovedHole.Kind.HOLE : MovedHole.Kind.VENT, planned, to));
        return put(all);
    }

    /** One more. */
    Edit added(MovedHole.Kind kind, Spot at) {
        List<MovedHole> all = own();
        if (kind == MovedHole.Kind.VENT) {
            holdOthers(all, null);
        }
        all.add(new MovedHole(kind, at, at));
        return put(all);
    }

    /** A hole of the plan taken away; the others stay where they are. */
    Edit removed(Hole hole) {
        List<MovedHole> all = own();
        holdOthers(all, hole);
        all.removeIf(m -> m.drilled() && near(m.spot(), hole.spot()));
        all.add(new MovedHole(
                hole.fills() ? MovedHole.Kind.NO_HOLE : MovedHole.Kind.NO_VENT, hole.spot(), hole.spot()));
        return put(all);
    }

    /** A hole that was placed by hand left to the plan; null where it was not. */
    @Nullable
    Edit released(Hole hole) {
        List<MovedHole> all = own();
        return all.removeIf(m -> m.drilled() && near(m.spot(), hole.spot())) ? put(all) : null;
    }

    /** Holes, or vents, all left to the plan; null where none is by hand. */
    @Nullable
    Edit leftToThePlan(boolean vents) {
        List<MovedHole> all = own();
        return all.removeIf(m -> m.ofVents() == vents && here(m)) ? put(all) : null;
    }

    /** Whether any hole, or vent, of this space was placed or taken away by hand. */
    boolean byHand(boolean vents) {
        return survey.judgements().holes().stream().anyMatch(m -> m.ofVents() == vents && here(m));
    }

    private List<MovedHole> own() {
        return new ArrayList<>(survey.judgements().holes());
    }

    /** Holds all others of a hole's kind where the plan has them. */
    private void holdOthers(List<MovedHole> all, @Nullable Hole hole) {
        boolean fills = hole != null && hole.fills();
        for (Hole other : plan.holes()) {
            if (other != hole
                    && other.drilled()
                    && other.fills() == fills
                    && standing(survey, other.spot()).isEmpty()) {
                all.add(new MovedHole(fills ? MovedHole.Kind.HOLE : MovedHole.Kind.VENT, other.spot(), other.spot()));
            }
        }
    }

    private boolean here(MovedHole m) {
        return regions.stream()
                .filter(r -> plan.part(r.id()).isPresent())
                .anyMatch(r -> inside(r, m.spot()) || inside(r, m.planned()));
    }

    private static boolean inside(Region region, Spot spot) {
        return region.face().equals(spot.face())
                && region.likely().covers(region.likely().getFactory().createPoint(spot.coordinate()));
    }

    /** The list as it is to be, as one edit: away with all that differ, from the last, then the new ones. */
    private Edit put(List<MovedHole> after) {
        List<MovedHole> before = survey.judgements().holes();
        List<Edit> edits = new ArrayList<>();
        Survey now = survey;
        for (MovedHole m : before) {
            if (!after.contains(m)) {
                Edit gone = Edit.remove(now, Part.HOLES, m);
                edits.add(gone);
                now = gone.apply(now);
            }
        }
        for (MovedHole m : after) {
            if (!before.contains(m)) {
                Edit more = Edit.add(now, Part.HOLES, m);
                edits.add(more);
                now = more.apply(now);
            }
        }
        return new Edit.Together(edits);
    }
}
