package corewright.cli;

import corewright.assessment.Assessment;
import corewright.assessment.Verdict;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SecondShot;
import corewright.repair.work.CuredFill;
import corewright.survey.Finding;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Terms;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a person wants to see at the end of a run, a line each. */
final class RunSummary {
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_LITRE = 1e6;

    private RunSummary() {}

    static List<String> lines(Assessment assessment, Path out) {
        List<String> lines = metric(assessment);
        Measure measure = Measure.of(assessment.survey());
        lines.replaceAll(line ->
                said(line, measure, assessment.survey().settings().terms().decimal()));
        lines.add(0, assessment.survey().heading().name());
        lines.add("  owner's report: " + out.resolve("owner-report.pdf"));
        return lines;
    }

    /** In the reader's units and with the reader's decimal sign. */
    static String said(String line, Measure measure, Terms.Sign decimal) {
        return Figures.signed(measure.say(line), decimal);
    }

    private static List<String> metric(Assessment assessment) {
        List<String> lines = new ArrayList<>();
        Verdict verdict = assessment.verdict();
        if (!verdict.free()) {
            lines.add("  " + verdict.sentence());
        }
        if (verdict.withheld()) {
            lines.add("  " + findings(assessment.findings()));
            return lines;
        }
        assessment.damage().faces().stream()
                .filter(f -> verdict.read(f.face().name()))
                .forEach(f -> lines.add("  " + face(f)));
        if (!assessment.damage().regions().isEmpty()) {
            lines.add("  "
                    + (assessment.survey().readings().coreSeen()
                            ? voids(assessment.damage().voidMm3())
                            : "empty space: not measured; a pilot hole where it sounds hollow would tell"));
            lines.add("  " + methods(assessment));
        }
        if (!assessment.decision().injections().isEmpty()) {
            lines.add("  "
                    + injections(
                            assessment.decision().injections(),
                            assessment.survey().settings()));
        }
        if (!assessment.work().cured().isEmpty()) {
            lines.add("  " + cured(assessment.work().cured()));
        }
        String safety = assessment.safety(r -> true).brief();
        if (!safety.isEmpty()) {
            lines.add("  caution: " + safety);
        }
        lines.add("  " + findings(assessment.findings()));
        return lines;
    }

    private static String face(FaceDamage face) {
        String areas = java.util.Arrays.stream(Condition.values())
                .filter(c -> face.areaMm2(c) > 0)
                .map(c -> String.format(Locale.ROOT, "%s %.2f m2", c.word(), face.areaMm2(c) / MM2_PER_M2))
                .collect(Collectors.joining(", "));
        return face.face().name() + ": " + areas;
    }

    private static String voids(Quantiles mm3) {
        Quantiles l = mm3.times(1 / MM3_PER_LITRE);
        return String.format(
                Locale.ROOT,
                "empty space: %.2f litres, in 8 cases of 10 between %.2f and %.2f",
                l.p50(),
                l.p10(),
                l.p90());
    }

    private static String methods(Assessment assessment) {
        List<String> parts = new ArrayList<>();
        for (Method method : Method.values()) {
            List<String> ids = assessment.damage().regions().stream()
                    .map(Region::id)
                    .filter(id -> assessment.decision().on(id).method() == method)
                    .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                    .map(id -> marked(assessment.decision().on(id)))
                    .toList();
            if (!ids.isEmpty()) {
                parts.add(method.word() + " " + String.join(" ", ids));
            }
        }
        String note = parts.stream().anyMatch(p -> p.contains("*")) ? " (* something must be proven first)" : "";
        return "methods: " + String.join("; ", parts) + note;
    }

    private static String marked(RegionDecision decision) {
        return decision.region() + (decision.firstStep() == null ? "" : "*");
    }

    private static String injections(List<InjectionPlan> plans, Settings settings) {
        int holes = plans.stream().mapToInt(p -> p.count(Hole.Kind.INJECTION)).sum();
        int vents = plans.stream().mapToInt(p -> p.count(Hole.Kind.VENT)).sum();
        List<Batch> batches = Stream.concat(
                        plans.stream().flatMap(p -> p.batches().stream()), HeldCups.of(plans, settings).stream())
                .toList();
        return String.format(
                Locale.ROOT,
                "injection: %s, %s, %s, %.1f g resin, %.1f g hardener",
                counted(holes, "hole", "holes"),
                counted(vents, "vent", "vents"),
                counted(batches.size(), "batch", "batches"),
                batches.stream().mapToDouble(Batch::partAG).sum(),
                batches.stream().mapToDouble(Batch::partBG).sum());
    }

    private static String counted(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    private static String cured(List<CuredFill> fills) {
        String tapped = fills.stream()
                .map(f -> String.format(Locale.ROOT, "%s over %.0f %%", f.region(), 100 * f.tappedShare()))
                .collect(Collectors.joining(", "));
        List<SecondShot> shots = fills.stream().flatMap(f -> f.shots().stream()).toList();
        String hollow = shots.isEmpty()
                ? "nothing hollow where it was tapped"
                : String.format(
                        Locale.ROOT,
                        "still hollow %.3f m2, second shots: %d",
                        fills.stream().mapToDouble(CuredFill::hollowMm2).sum() / MM2_PER_M2,
                        shots.size());
        return "tapped after cure: " + tapped + "; " + hollow;
    }

    private static String findings(List<Finding> findings) {
        return String.format(
                Locale.ROOT,
                "findings: %d ! (can hurt or spoil), %d ? (doubt), %d + (would help)",
                count(findings, Finding.Severity.HAZARD),
                count(findings, Finding.Severity.DOUBT),
                count(findings, Finding.Severity.HINT));
    }

    private static long count(List<Finding> findings, Finding.Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }
}
