package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.FrozenPlan.PlannedRegion;
import corewright.survey.FrozenPlan.Standing;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Regions under the names of a frozen plan: one that holds holes of the plan, or the place by which the plan knows a region,
 * is that region still. Others get a name that the plan never gave.
 */
public final class KeptRegions {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A hole that is drilled tells more than any number of planned ones. */
    private static final int DRILLED_TELLS = 1000;

    private final FrozenPlan plan;
    private final Set<String> begun;

    private KeptRegions(Survey survey) {
        plan = survey.repairPlan();
        begun = Begun.holes(survey);
    }

    /** The map with its regions named so; as it is where no plan is frozen. */
    public static DamageMap on(Survey survey, DamageMap damage) {
        return survey.repairPlan().isNone() ? damage : new KeptRegions(survey).named(damage);
    }

    /** How much speaks for a region being one of the plan's. */
    private record Claim(Region region, String name, int votes) {}

    private DamageMap named(DamageMap damage) {
        List<Claim> claims = new ArrayList<>();
        for (Region region : damage.regions()) {
            for (PlannedRegion old : plan.regions()) {
                int votes = votes(region, old);
                if (votes > 0) {
                    claims.add(new Claim(region, old.name(), votes));
                }
            }
        }
        claims.sort(Comparator.comparingInt((Claim c) -> -c.votes));
        Map<Region, String> names = new HashMap<>();
        Set<String> used = new HashSet<>();
        for (Claim claim : claims) {
            if (!names.containsKey(claim.region) && used.add(claim.name)) {
                names.put(claim.region, claim.name);
            }
        }
        plan.regions().forEach(r -> used.add(r.name()));
        plan.holes().forEach(h -> used.add(h.region()));
        int next = 1;
        List<FaceDamage> faces = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            List<Region> regions = new ArrayList<>();
            for (Region region : face.regions()) {
                String name = names.get(region);
                while (name == null && !used.add("R" + next)) {
                    next++;
                }
                regions.add(region.named(name == null ? "R" + next : name));
            }
            faces.add(with(face, regions));
        }
        return new DamageMap(faces, damage.voidMm3(), damage.damagedMm2());
    }

    private int votes(Region region, PlannedRegion old) {
        if (!region.face().equals(old.label().face())) {
            return 0;
        }
        int votes = old.standing() != Standing.DROPPED && holds(region, old.label()) ? 1 : 0;
        for (PlannedHole hole : plan.holes()) {
            if (hole.region().equals(old.name()) && holds(region, hole.spot())) {
                votes += begun.contains(hole.name()) ? DRILLED_TELLS : hole.dropped() ? 0 : 1;
            }
        }
        return votes;
    }

    private static boolean holds(Region region, Spot spot) {
        return region.face().equals(spot.face()) && region.likely().covers(FACTORY.createPoint(spot.coordinate()));
    }

    private static FaceDamage with(FaceDamage face, List<Region> regions) {
        return new FaceDamage(
                face.face(),
                face.bays(),
                face.surfaces(),
                regions,
                face.sound(),
                face.undecided(),
                face.damagedMm2(),
                face.voidMm3(),
                face.next(),
                face.findings(),
                face.notes());
    }
}
