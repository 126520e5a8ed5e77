package corewright.desktop.slip;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Kept;
import corewright.desktop.state.Step;
import corewright.desktop.state.Steps;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Orientation;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Laminate;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The slip of each step. */
public final class StepSlips {
    private StepSlips() {}

    /** @param shown what the plan shows; @param selected the region selected, where the step speaks of regions */
    public static Slip of(Step step, Assessment shown, Workbench bench) {
        Ages ages = bench.ages();
        Units units = bench.sight().units();
        Optional<Region> selected = bench.region();
        if (step.ordinal() >= Step.DAMAGE.ordinal()
                && Steps.nothingRead(shown.survey().readings())) {
            return nothingRead(step);
        }
        return switch (step) {
            case PLAN -> plan(shown.survey(), bench.face(), units, bench.log());
            case READINGS -> readings(shown, bench.face(), units, ages);
            case DAMAGE ->
                selected.map(r -> SlipWords.of(shown, units, ages).region(r))
                        .orElseGet(() -> SlipWords.of(shown, units, ages).face(bench.face()));
            case REPAIR ->
                selected.map(r -> decide(
                                SlipWords.of(shown, units, ages).region(r),
                                shown.ages().freshRest()))
                        .orElseGet(() -> repair(shown, bench.stopped()));
            case STIFFNESS -> stiffness(shown, bench, units);
            case PAPERS -> papers(shown, bench.stopped());
        };
    }

    /** No all-clear: what is missing, and the ways to it. */
    private static Slip nothingRead(Step step) {
        return new Slip(
                step.word(),
                "",
                "Nothing is read yet, so nothing is known of the core, good or bad. It takes moisture readings, taps or pilot"
                        + " holes: walk the grid, bring in a CSV, or note one by hand.",
                "",
                null,
                List.of(),
                new Slip.Work(List.of(), "", "", List.of()));
    }

    private static Slip plan(Survey survey, String name, Units units, @Nullable EditLog log) {
        Face face = survey.face(name);
        Laminate laminate = survey.laminate(face.laminate());
        List<Slip.Fact> facts = new ArrayList<>();
        facts.add(new Slip.Fact("outline", units.area(face.outline().getArea())));
        count(facts, face, Feature.Opening.class, "openings");
        List<Feature.Coaming> coamings = face.all(Feature.Opening.class).stream()
                .flatMap(o -> o.coaming().stream())
                .toList();
        if (!coamings.isEmpty()) {
            facts.add(new Slip.Fact(
                    "coamings, height by thickness",
                    coamings.stream()
                            .map(c -> units.depthFigure(c.heightMm()) + " by " + units.depth(c.thicknessMm()))
                            .distinct()
                            .collect(Collectors.joining("; "))));
        }
        count(facts, face, Feature.Divider.class, "dividers");
        count(facts, face, Feature.Support.class, "supports");
        count(facts, face, Feature.Fitting.class, "fittings");
        count(facts, face, Feature.Access.class, "accesses");
        facts.add(new Slip.Fact(
                "outer skin, core, inner skin",
                units.depthFigure(laminate.outerSkinMm()) + ", " + units.depthFigure(laminate.coreMm()) + ", "
                        + units.depth(laminate.innerSkinMm())));
        if (log != null) {
            facts.add(new Slip.Fact("edits are kept in", Kept.briefly(log)));
        }
        return new Slip(
                "Plan of " + name,
                "",
                "The outline, what is cut into it, what holds it on the other side and what is bolted through it. The plan is "
                        + Orientation.of(face) + ".",
                "What is drawn",
                null,
                facts,
                new Slip.Work(List.of(), "", "", List.of()));
    }

    private static <F extends Feature> void count(List<Slip.Fact> facts, Face face, Class<F> kind, String name) {
        int n = face.all(kind).size();
        if (n > 0) {
            facts.add(new Slip.Fact(name, String.valueOf(n)));
        }
    }

    private static Slip readings(Assessment shown, String face, Units units, Ages ages) {
        Readings r = shown.survey().readings().on(face);
        List<Slip.Fact> facts = new ArrayList<>();
        facts.add(new Slip.Fact("moisture", String.valueOf(r.moisture().size())));
        facts.add(new Slip.Fact("taps", String.valueOf(r.taps().size())));
        facts.add(new Slip.Fact("probes", String.valueOf(r.probes().size())));
        facts.add(new Slip.Fact("feelers", String.valueOf(r.feelers().size())));
        facts.add(new Slip.Fact("plugs", String.valueOf(r.plugs().size())));
        DoubleSummaryStatistics celsius = r.moisture().stream()
                .map(Moisture::temperatureC)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        if (celsius.getCount() > 0) {
            facts.add(new Slip.Fact(
                    "surface, coldest and warmest",
                    units.temperature(celsius.getMin()) + " and " + units.temperature(celsius.getMax())));
        }
        List<Slip.FindingLine> lines = FindingLines.of(shown, face, units);
        return new Slip(
                "Readings on " + face,
                "",
                "A meter reading is a place on the meter's own scale, never a share of water.",
                "How many",
                null,
                facts,
                new Slip.Work(List.of(), "", "Findings, " + lines.size() + " open", lines),
                ages.oldRest() ? "Findings are " + Ages.WORDS + "." : "");
    }

    /** The region in a sentence; what is decided of it stands below, with keys. */
    private static Slip decide(Slip region, boolean fresh) {
        return new Slip(
                region.title(),
                region.aside(),
                region.sentence(),
                "",
                null,
                List.of(),
                new Slip.Work(
                        List.of(),
                        fresh ? "" : "Advice follows when the calculation is through.",
                        region.work().findingsTitle(),
                        region.work().findings()),
                region.before());
    }

    /** What is missing is said to come, or to be asked for. */
    private static String later(String what, boolean stopped) {
        return stopped ? "Not calculated yet: it was stopped." : what + " when the calculation is through.";
    }

    private static Slip repair(Assessment shown, boolean stopped) {
        boolean fresh = shown.ages().freshRest();
        List<Slip.FindingLine> lines = new ArrayList<>();
        if (fresh) {
            shown.decision().regions().forEach(d -> lines.add(decision(shown, d)));
        }
        return new Slip(
                "Repair",
                "",
                !fresh
                        ? later("Advice follows", stopped)
                        : shown.verdict().withheld()
                                ? shown.verdict().sentence()
                                : lines.isEmpty()
                                        ? "No region is more probably damaged than not: there is nothing to decide."
                                        : "Touch a region to decide on it. The program advises; an owner, a surveyor or a"
                                                + " naval architect decides.",
                "",
                null,
                List.of(),
                new Slip.Work(List.of(), "", lines.isEmpty() ? "" : "Regions, " + lines.size(), lines));
    }

    private static Slip.FindingLine decision(Assessment shown, RegionDecision d) {
        Region region = shown.damage().regions().stream()
                .filter(r -> r.id().equals(d.region()))
                .findFirst()
                .orElseThrow();
        Finding.Severity severity = d.architect()
                ? Finding.Severity.HAZARD
                : d.firstStep() != null ? Finding.Severity.DOUBT : Finding.Severity.HINT;
        return new Slip.FindingLine(
                severity,
                d.region() + " " + region.condition().word() + ": "
                        + MethodWords.name(d.method()).toLowerCase(java.util.Locale.ROOT) + ".",
                d.reasons().isEmpty() ? "" : d.reasons().get(0),
                new Spot(region.face(), region.label().getX(), region.label().getY()),
                d.region());
    }

    private static Slip stiffness(Assessment shown, Workbench bench, Units units) {
        String face = bench.face();
        Ages ages = shown.ages();
        List<Slip.Fact> facts = new ArrayList<>();
        shown.stiffness().defects().stream()
                .filter(d -> d.about().face().equals(face))
                .forEach(d -> facts.add(new Slip.Fact(d.about().id(), "not calculated, by a defect of this program")));
        boolean panels = !shown.stiffness().of(face).isEmpty();
        String sentence = panels
                ? "One foot, " + units.foot() + "; 100 is the deck as built. The figures compare, they do not approve:"
                        + " whether that is enough is for a naval architect or surveyor."
                : ages.freshRest()
                        ? "No panel of this face is calculated; the findings of the step Readings say why."
                        : later("Panels follow", bench.stopped());
        return new Slip(
                panels ? "How it gives under a foot" : "Stiffness",
                face,
                sentence,
                facts.isEmpty() ? "" : "Missing",
                null,
                facts,
                new Slip.Work(List.of(), "", "", List.of()),
                ages.oldRest() && panels
                        ? "These figures are " + Ages.WORDS + "; new ones follow when the calculation is through."
                        : "");
    }

    private static Slip papers(Assessment shown, boolean stopped) {
        return new Slip(
                "Papers",
                "",
                shown.ages().fresh()
                        ? "Pages as they will print. Everything together is what the command \"corewright run\" writes."
                        : later("Papers follow", stopped),
                "",
                null,
                List.of(),
                new Slip.Work(List.of(), "", "", List.of()));
    }
}
