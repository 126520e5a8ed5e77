package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.assessment.Assessment;
import corewright.assessment.Verdict;
import corewright.damage.Condition;
import corewright.damage.Coverage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.WeightChange;
import corewright.repair.work.CuredFill;
import corewright.repair.work.WorkProgress;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.survey.Finding;
import corewright.survey.Heading;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** summary.json: the figures of the whole job in one place. */
public final class SummaryJson {
    private SummaryJson() {}

    /** @param timingsMs stage → milliseconds, in the order they ran */
    public static String text(Assessment assessment, Map<String, Long> timingsMs) {
        ObjectNode root = JsonFile.MAPPER.createObjectNode();
        Heading heading = assessment.survey().heading();
        root.put("survey", heading.name())
                .put("surveyed", heading.surveyed().toString())
                .put("vessel", heading.vessel())
                .put("surveyor", heading.surveyor())
                .put("data_sha256", InputHash.of(assessment.survey()));
        Verdict verdict = assessment.verdict();
        DamageMap damage = assessment.damage();
        range(root, "void_volume_l", Conversions.litres(damage.voidMm3()), !verdict.withheld());
        range(root, "damaged_area_m2", Conversions.squareMetres(damage.damagedMm2()), !verdict.withheld());
        root.put("verdict", verdict.sentence());
        ArrayNode faces = root.putArray("faces");
        assessment.damage().faces().forEach(f -> face(faces.addObject(), f, assessment.survey()));
        ArrayNode regions = root.putArray("regions");
        assessment.damage().regions().forEach(r -> region(regions.addObject(), r, assessment));
        ArrayNode panels = root.putArray("panels");
        assessment.stiffness().panels().forEach(p -> PanelsJson.put(panels.addObject(), p));
        OptionsJson.put(root.putArray("options"), assessment.decision().weighing());
        SensitivityJson.put(
                root.putObject("sensitivity"), assessment.decision().weighing().sensitivity());
        if (!assessment.work().progress().isEmpty()) {
            ArrayNode work = root.putArray("work");
            assessment.work().progress().forEach(p -> work(work.addObject(), p));
        }
        if (SecondShotsCsv.wanted(assessment)) {
            ArrayNode checks = root.putArray("fill_check");
            assessment.work().cured().forEach(f -> fillCheck(checks.addObject(), f));
        }
        RulesJson.overrides(root, assessment.survey());
        if (!assessment.defects().isEmpty()) {
            ArrayNode defects = root.putArray("defects");
            assessment.defects().forEach(d -> defects.addObject()
                    .put("about", d.about().id())
                    .put("face", d.about().face())
                    .put("missing", d.what())
                    .put("cause", d.cause()));
        }
        findings(root.putObject("findings"), assessment.findings());
        ObjectNode timings = root.putObject("timings_ms");
        timingsMs.forEach(timings::put);
        return JsonFile.text(root);
    }

    private static void work(ObjectNode node, WorkProgress work) {
        node.put("region", work.region());
        JsonFile.put(node, "cavity_l", Conversions.litres(work.cavityMm3()));
        JsonFile.put(node, "left_g", work.log().leftG());
        JsonFile.put(node, "left_p90_g", work.log().leftP90G());
    }

    /** A range; null where nothing may be said. */
    private static void range(ObjectNode node, String key, Quantiles range, boolean told) {
        if (told) {
            JsonFile.put(node, key, range);
        } else {
            node.putNull(key);
        }
    }

    private static void face(ObjectNode node, FaceDamage face, Survey survey) {
        node.put("name", face.face().name());
        node.put("deck_area_m2", Conversions.squareMetres(face.deckMm2()));
        ObjectNode areas = node.putObject("area_m2");
        for (Condition condition : Condition.values()) {
            areas.put(condition.word().replace('-', '_'), Conversions.squareMetres(face.areaMm2(condition)));
        }
        JsonFile.put(node, "undecided_m2", Conversions.squareMetres(face.undecidedMm2()));
        range(node, "damaged_m2", Conversions.squareMetres(face.damagedMm2()), face.told());
        range(node, "void_volume_l", Conversions.litres(face.voidMm3()), face.told());
        Coverage coverage = Coverage.of(survey, face.face());
        ObjectNode read = node.putObject("read_share");
        JsonFile.put(read, "water", coverage.water());
        JsonFile.put(read, "bond", coverage.bond());
    }

    private static void region(ObjectNode node, Region region, Assessment assessment) {
        RegionDecision decision = assessment.decision().on(region.id());
        node.put("id", region.id())
                .put("face", region.face())
                .put("condition", region.condition().word())
                .put("area_m2", Conversions.squareMetres(region.likely().getArea()))
                .put(
                        "possible_area_m2",
                        Conversions.squareMetres(region.possible().getArea()));
        JsonFile.put(node, "p_wet_mean", region.pWetMean());
        JsonFile.put(node, "void_volume_l", Conversions.litres(region.voidMm3()));
        JsonFile.put(node, "mean_void_depth_mm", region.meanVoidDepthMm());
        JsonFile.put(node, "max_void_depth_mm", region.maxVoidDepthMm());
        node.put("method", decision.method().word());
        ArrayNode reasons = node.putArray("reasons");
        decision.reasons().forEach(reasons::add);
        injection(node, region.id(), plan(assessment, region), BatchesCsv.all(assessment));
        node.put("bay", region.bay());
        weights(node.putObject("weight_kg"), region, assessment);
        node.put("first_step", decision.firstStep());
        node.put("architect", decision.architect());
        RulesJson.put(node, decision);
        ObjectNode notOffered = node.putObject("not_offered");
        for (Method method : Method.values()) {
            if (decision.notOffered().containsKey(method)) {
                notOffered.put(method.word(), decision.notOffered().get(method));
            }
        }
    }

    /** What each method would add, less what it takes away, at the region's label point. */
    private static void weights(ObjectNode node, Region region, Assessment assessment) {
        Survey survey = assessment.survey();
        Drilling drilling = survey.settings().drilling();
        Spot middle =
                new Spot(region.face(), region.label().getX(), region.label().getY());
        node.putArray("at").add(middle.xMm()).add(middle.yMm());
        plan(assessment, region)
                .or(() -> assessment.plans().injection(region.id()))
                .filter(p -> p.region().equals(region.id())) // of a space, what all of it takes, once
                .ifPresent(p -> JsonFile.put(
                        node, "inject", WeightChange.of(p, drilling).netKg()));
        assessment
                .plans()
                .recore(region.id())
                .ifPresent(p -> JsonFile.put(
                        node,
                        "recore",
                        WeightChange.of(p, region, survey.laminateAt(middle), survey.materials(), drilling)
                                .netKg()));
    }

    private static Optional<InjectionPlan> plan(Assessment assessment, Region region) {
        return assessment.decision().injections().stream()
                .filter(p -> p.part(region.id()).isPresent())
                .findFirst();
    }

    /**
     * A region that is not injected has no holes and no grams, and nothing to cover. One that is filled with another has
     * the holes that lie in it; mix and cups stand where it is filled from.
     */
    private static void injection(ObjectNode node, String region, Optional<InjectionPlan> plan, List<Batch> cups) {
        Optional<InjectionPlan.Part> part = plan.flatMap(p -> p.part(region));
        Optional<InjectionPlan> own = plan.filter(p -> p.region().equals(region));
        node.put(
                "injection_holes",
                plan.map(p -> count(p, region, Hole.Kind.INJECTION)).orElse(0L));
        node.put("vent_holes", plan.map(p -> count(p, region, Hole.Kind.VENT)).orElse(0L));
        node.put(
                "covered_fraction",
                part.map(InjectionPlan.Part::coveredFraction).orElse(null));
        Optional<Fill> fill = own.map(InjectionPlan::fill).filter(Fill::simulated);
        node.put("empty_after_rise", fill.map(Fill::emptyShare).orElse(null));
        node.put(
                "empty_if_large",
                own.filter(p -> fill.isPresent())
                        .map(p -> p.outlook().emptyLarge())
                        .orElse(null));
        node.put("air_pockets", fill.map(f -> f.pockets().size()).orElse(null));
        node.put(
                "hole_lower_bound", part.map(InjectionPlan.Part::holeLowerBound).orElse(null));
        node.put(
                "hole_hex_estimate",
                part.map(InjectionPlan.Part::holeHexEstimate).orElse(null));
        List<Batch> ownCups =
                cups.stream().filter(b -> b.region().equals(region)).toList();
        node.put("resin_g", grams(ownCups, Batch::partAG));
        node.put("hardener_g", grams(ownCups, Batch::partBG));
        node.put("batches", ownCups.size());
        List<Batch> held = ownCups.stream().filter(HeldCups::heldBack).toList();
        node.put("held_back_g", grams(held, Batch::partAG).add(grams(held, Batch::partBG)));
        node.put(
                "nozzle_places",
                plan.map(p -> count(p, region, Hole.Kind.NOZZLE)).orElse(0L));
        node.put("reach_mm", plan.map(InjectionPlan::reachMm).orElse(null));
        node.put("reach_governed_by", plan.map(InjectionPlan::reachGovernedBy).orElse(null));
        ArrayNode arithmetic = node.putArray("mix_arithmetic");
        own.ifPresent(p -> p.arithmetic().forEach(arithmetic::add));
        node.put(
                "filled_with",
                plan.filter(p -> p.fillsBeside(region))
                        .map(InjectionPlan::region)
                        .orElse(null));
    }

    private static long count(InjectionPlan plan, String region, Hole.Kind kind) {
        return plan.holes().stream()
                .filter(h -> h.kind() == kind && h.region().equals(region))
                .count();
    }

    /** The sum of what batches.csv prints. */
    static BigDecimal grams(List<Batch> cups, ToDoubleFunction<Batch> part) {
        return cups.stream().map(b -> Numbers.grams(part.applyAsDouble(b))).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** A filled space after cure: how much of it was tapped, and what is still hollow. */
    private static void fillCheck(ObjectNode node, CuredFill fill) {
        node.put("region", fill.region()).put("face", fill.face());
        JsonFile.put(node, "tapped_fraction", fill.tappedShare());
        JsonFile.put(node, "hollow_m2", Conversions.squareMetres(fill.hollowMm2()));
        ArrayNode shots = node.putArray("second_shots");
        fill.shots().forEach(s -> shots.add(s.id()));
    }

    private static void findings(ObjectNode node, List<Finding> findings) {
        for (Finding.Severity severity : Finding.Severity.values()) {
            node.put(
                    severity.name().toLowerCase(Locale.ROOT),
                    findings.stream().filter(f -> f.severity() == severity).count());
        }
    }
}
