package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.About;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Laminate;
import corewright.survey.MethodOverride;
import corewright.survey.Origin;
import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.settings.Thresholds;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a person should know before acting on the decision: a place, a fact, a consequence. */
final class Doubts {
    private static final Origin NOWHERE = new Origin("", 0);

    /** Coverage that counts as whole. */
    private static final double WHOLE = 0.995;

    private Doubts() {}

    static List<Finding> of(
            Survey survey, DamageMap damage, List<RegionDecision> decisions, List<InjectionPlan> injections) {
        List<Finding> findings = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                loads(findings, face, region);
            }
        }
        for (Region region : damage.regions()) {
            decisions.stream()
                    .filter(d -> d.region().equals(region.id()) && d.firstStep() != null)
                    .forEach(d -> findings.add(about(
                            Severity.DOUBT,
                            region,
                            Subject.DRY_CORE,
                            region.id() + " is loose over core that is not proven dry.",
                            "It is not injected until that is settled. " + d.firstStep())));
            injections.stream()
                    .filter(p -> p.region().equals(region.id()) && p.coveredFraction() < WHOLE)
                    .forEach(p -> findings.add(about(
                            Severity.DOUBT,
                            region,
                            Subject.COVERAGE,
                            String.format(
                                    Locale.ROOT,
                                    "%.1f %% of the empty space of %s lies out of reach of every hole that may be drilled.",
                                    100 * (1 - p.coveredFraction()),
                                    region.id()),
                            "It may stay empty. Tap there after cure.")));
        }
        overridden(findings, survey, damage, decisions);
        laminates(findings, survey, damage);
        return findings;
    }

    /** What people decided: past a stop sign, and at places where nothing is damaged. */
    private static void overridden(
            List<Finding> findings, Survey survey, DamageMap damage, List<RegionDecision> decisions) {
        for (Region region : damage.regions()) {
            for (RegionDecision decision : decisions) {
                Overruled overruled = decision.overruled();
                if (decision.region().equals(region.id()) && overruled != null && overruled.stop() != null) {
                    findings.add(about(
                            Severity.HAZARD,
                            region,
                            Subject.METHOD_BY_HAND,
                            region.id() + " is decided by hand past a stop sign. " + overruled.stop(),
                            decision.reasons().get(0)));
                }
            }
        }
        rules(findings, survey, damage, decisions);
        for (MethodOverride each : survey.judgements().methods()) {
            if (damage.regions().stream().noneMatch(r -> Overriding.inside(r, each))) {
                findings.add(new Finding(
                        Severity.DOUBT,
                        NOWHERE,
                        new About.OfPlace(each.spot()),
                        Subject.JUDGEMENT_OF_NOTHING,
                        "A method decided by hand (" + each.method() + ") lies where no damage is mapped.",
                        "It is kept, and has no effect now."));
            }
        }
    }

    /** Rules set aside and limits set: all of them as one, and each region that lost a stop sign. */
    private static void rules(List<Finding> findings, Survey survey, DamageMap damage, List<RegionDecision> decisions) {
        for (Region region : damage.regions()) {
            for (RegionDecision decision : decisions) {
                if (decision.region().equals(region.id())
                        && !decision.setAside().isEmpty()) {
                    String signs = decision.setAside().values().stream()
                            .distinct()
                            .sorted()
                            .collect(Collectors.joining(" "));
                    String offered = decision.setAside().keySet().stream()
                            .sorted()
                            .map(Method::word)
                            .collect(Collectors.joining(", "));
                    findings.add(about(
                            Severity.HAZARD,
                            region,
                            Subject.RULE_BY_HAND,
                            region.id() + ": " + signs,
                            "Offered for that: " + offered + "."));
                }
            }
        }
        Thresholds limits = survey.settings().thresholds();
        List<String> changed = new ArrayList<>(survey.judgements().rules().stream()
                .map(r -> changed(r, limits))
                .toList());
        survey.unexplainedLimits()
                .forEach(key -> changed.add(limit(key, limits) + "; the survey does not say who set it, nor why."));
        if (!changed.isEmpty()) {
            String all = String.join(" ", changed);
            findings.add(new Finding(
                    Severity.DOUBT,
                    NOWHERE,
                    new About.OfFile(NOWHERE),
                    Subject.RULE_BY_HAND,
                    all,
                    "The decisions rest on that."));
        }
    }

    private static String changed(RuleOverride rule, Thresholds limits) {
        String what = rule.limit() ? limit(rule.rule(), limits) : "Rule \"" + rule.rule() + "\" is set aside";
        return what + ", by " + Words.whoAndWhy(rule);
    }

    private static String limit(String key, Thresholds limits) {
        return "Limit " + key + " is " + number(limits.of(key)) + ", by default " + number(Thresholds.DEFAULT.of(key));
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static void loads(List<Finding> findings, FaceDamage face, Region region) {
        for (Feature.Fitting fitting : Evidence.loads(face, region)) {
            var at = fitting.geometry().getCentroid();
            findings.add(new Finding(
                    Severity.HAZARD,
                    fitting.origin(),
                    new About.OfRegion(region.id(), new Spot(region.face(), at.getX(), at.getY())),
                    Subject.LOAD,
                    region.id() + " holds or touches the place of " + fitting.called() + ", which carries load.",
                    "Injection is not offered under a load. Keep " + fitting.called()
                            + " out of use until a naval architect or surveyor has decided."));
        }
    }

    private static void laminates(List<Finding> findings, Survey survey, DamageMap damage) {
        Set<Laminate> guessed = new LinkedHashSet<>();
        for (Region region : damage.regions()) {
            Laminate laminate = survey.laminateAt(middle(region));
            if (!laminate.measured()) {
                guessed.add(laminate);
            }
        }
        for (Laminate laminate : guessed) {
            findings.add(new Finding(
                    Severity.HINT,
                    NOWHERE,
                    new About.OfLaminate(laminate.name()),
                    Subject.LAMINATE,
                    "The thicknesses of laminate " + laminate.name() + " were not measured on this boat.",
                    "Depth stops rest on them: a pilot hole drilled by hand comes before the others."));
        }
    }

    private static Finding about(Severity severity, Region region, Subject subject, String message, String effect) {
        About about = new About.OfRegion(region.id(), middle(region));
        return new Finding(severity, NOWHERE, about, subject, message, effect);
    }

    private static Spot middle(Region region) {
        return new Spot(region.face(), region.label().getX(), region.label().getY());
    }
}
