package corewright.assessment;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.BuyingItem;
import corewright.decision.Decision;
import corewright.repair.plan.Batch;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.work.Begun;
import corewright.repair.work.FrozenSpace;
import corewright.repair.work.WorkLog;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.Kind;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.FrozenPlan.PlannedRegion;
import corewright.survey.FrozenPlan.Standing;
import corewright.survey.Origin;
import corewright.survey.ReadingsMark;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/**
 * The repair plan as this run issues it: the frozen one where nothing of it changed, else the next revision.
 *
 * @param plan to be written down
 * @param changes against the frozen one, a sentence each; none where there was none or nothing changed
 */
public record Issued(FrozenPlan plan, List<String> changes, List<Finding> findings) {
    /** A tenth of a millimetre, of a gram: what a person reads. */
    private static final double TENTHS = 10;

    public Issued {
        changes = List.copyOf(changes);
        findings = List.copyOf(findings);
    }

    /** What the decisions on a survey come to. */
    public static Issued of(Survey survey, DamageMap damage, Decision decision) {
        FrozenPlan before = survey.repairPlan();
        if (!before.isNone() && damage.faces().stream().noneMatch(FaceDamage::told)) {
            return new Issued(before, List.of(), List.of()); // no verdict: the plan stays as it is
        }
        FrozenPlan work = new Maker(survey, damage, decision).plan();
        if (!before.isNone() && before.sameWork(work)) {
            return new Issued(before, List.of(), List.of());
        }
        int revision = before.revision() + 1;
        FrozenPlan next = work.withIssue(List.of(ReadingsMark.issue(survey, revision)));
        List<String> changes = before.isNone() ? List.of() : PlanChanges.of(before, next, Begun.holes(survey));
        return new Issued(next, changes, changes.isEmpty() ? List.of() : List.of(finding(before, next, changes)));
    }

    private static Finding finding(FrozenPlan before, FrozenPlan next, List<String> changes) {
        Origin origin = new Origin("repair-plan.yaml", 0);
        return new Finding(
                Finding.Severity.DOUBT,
                origin,
                new About.OfFile(origin),
                Subject.REPAIR_PLAN,
                "The repair plan is now revision " + next.revision() + ": " + PlanChanges.why(before, next) + " "
                        + String.join(" ", changes),
                "Cards of revision " + before.revision()
                        + " are out of date: print the new ones. Every name on them still means the same place.");
    }

    /** Puts a plan together. */
    private static final class Maker {
        private final Survey survey;
        private final DamageMap damage;
        private final Decision decision;
        private final FrozenPlan before;
        private final Set<String> begun;
        private final Map<String, PlannedHole> holes = new HashMap<>();

        Maker(Survey survey, DamageMap damage, Decision decision) {
            this.survey = survey;
            this.damage = damage;
            this.decision = decision;
            before = survey.repairPlan();
            begun = Begun.holes(survey);
        }

        FrozenPlan plan() {
            List<FrozenPlan.PlannedCup> cups = new ArrayList<>();
            for (InjectionPlan plan : decision.injections()) {
                holes(plan);
                for (Batch b : plan.batches()) {
                    cups.add(new FrozenPlan.PlannedCup(
                            b.number(),
                            b.region(),
                            String.join(" ", b.holes()),
                            tenths(b.partAG()),
                            tenths(b.partBG())));
                }
            }
            for (PlannedHole old : before.holes()) {
                holes.computeIfAbsent(
                        old.name(),
                        n -> begun.contains(n)
                                ? with(old, old.standing() == Standing.DROPPED ? Standing.HELD : old.standing())
                                : with(old, Standing.DROPPED));
            }
            return new FrozenPlan(
                    before.issue(),
                    regions(),
                    holes.values().stream().sorted(BY_NAME).toList(),
                    cuts(),
                    cups,
                    buying());
        }

        private void holes(InjectionPlan plan) {
            EmptySpace space = EmptySpace.of(damage, plan);
            FrozenSpace frozen =
                    FrozenSpace.of(survey, damage.face(space.face()).regions(), space);
            boolean stands = frozen.stands(plan);
            Set<String> filled = frozen.filled(plan);
            Map<String, Double> grams =
                    WorkLog.planned(plan, survey.settings().drilling().wasteFraction());
            for (Hole h : plan.holes()) {
                Optional<PlannedHole> old = before.hole(h.id());
                boolean held = old.filter(o -> stands ? o.held() : frozen.begun() && !o.dropped())
                        .isPresent();
                Hole.Nozzle nozzle = h.nozzle();
                holes.put(
                        h.id(),
                        new PlannedHole(
                                h.id(),
                                h.region(),
                                h.spot(),
                                Kind.valueOf(h.kind().name()),
                                tenths(h.diameterMm()),
                                tenths(h.depthStopMm()),
                                tenths(grams.getOrDefault(h.id(), 0.0)),
                                filled.contains(h.id()) ? Standing.FILLED : held ? Standing.HELD : Standing.PLANNED,
                                nozzle == null ? "" : nozzle.access(),
                                nozzle == null ? 0 : Math.rint(nozzle.pushMm())));
            }
        }

        private List<PlannedRegion> regions() {
            Map<String, PlannedRegion> regions = new HashMap<>();
            for (Region r : damage.regions()) {
                Spot label = new Spot(
                        r.face(), tenths(r.label().getX()), tenths(r.label().getY()));
                String method = decision.on(r.id()).method().word();
                regions.put(r.id(), new PlannedRegion(r.id(), label, method, Standing.PLANNED));
            }
            for (PlannedRegion old : before.regions()) {
                regions.putIfAbsent(
                        old.name(), new PlannedRegion(old.name(), old.label(), old.method(), Standing.DROPPED));
            }
            return regions.values().stream()
                    .sorted(Comparator.comparing(PlannedRegion::name, NATURAL))
                    .toList();
        }

        private List<FrozenPlan.PlannedCut> cuts() {
            GeometryFactory factory = new GeometryFactory();
            GeometryPrecisionReducer reducer = new GeometryPrecisionReducer(new PrecisionModel(TENTHS));
            List<FrozenPlan.PlannedCut> cuts = new ArrayList<>();
            for (RecorePlan recore : decision.recores()) {
                Geometry area = factory.createGeometry(reducer.reduce(recore.cut()));
                String face = damage.regions().stream()
                        .filter(r -> r.id().equals(recore.region()))
                        .findFirst()
                        .orElseThrow()
                        .face();
                if (!area.isEmpty()) {
                    cuts.add(new FrozenPlan.PlannedCut(recore.region(), face, area));
                }
            }
            return cuts;
        }

        private List<FrozenPlan.Purchase> buying() {
            List<FrozenPlan.Purchase> buying = new ArrayList<>();
            for (BuyingItem b : decision.buying()) {
                buying.add(new FrozenPlan.Purchase(b.item(), tenths(b.plan()), tenths(b.buy()), b.unit()));
            }
            return buying;
        }
    }

    private static PlannedHole with(PlannedHole h, Standing standing) {
        return new PlannedHole(
                h.name(),
                h.region(),
                h.spot(),
                h.kind(),
                h.diameterMm(),
                h.stopMm(),
                h.grams(),
                standing,
                h.access(),
                h.pushMm());
    }

    /** R2 before R10. */
    private static final Comparator<String> NATURAL = Comparator.comparing((String n) -> n.replaceAll("[0-9]+", "0"))
            .thenComparing(n -> n.replaceAll("[^0-9]+", " ").strip(), Comparator.comparing(Issued::padded));

    private static final Comparator<PlannedHole> BY_NAME = Comparator.comparing((PlannedHole h) -> h.region(), NATURAL)
            .thenComparing(PlannedHole::kind)
            .thenComparing(PlannedHole::name, NATURAL);

    private static String padded(String numbers) {
        StringBuilder text = new StringBuilder();
        for (String number : numbers.split(" ", -1)) {
            text.append("0".repeat(Math.max(0, 9 - number.length())))
                    .append(number)
                    .append(' ');
        }
        return text.toString();
    }

    private static double tenths(double value) {
        return Math.rint(value * TENTHS) / TENTHS;
    }
}
