package corewright.repair.work;

import corewright.repair.plan.Amounts;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Subject;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What single lines of the log mean, and what to do next: each a finding, the leak before all. */
final class WorkWords {
    /** A hole that takes so many times its grams asks for a look below. Practice. */
    static final double MUCH_MORE = 1.5;

    /** Less than this share of its grams is nothing: what the nozzle lost. Practice. */
    static final double NOTHING = 0.1;

    /** A drill is felt to half a millimetre. Practice. */
    private static final double FELT_MM = 0.5;

    private final Map<String, Hole> holes = new LinkedHashMap<>();
    /** The region that leads its plan, by the hole. */
    private final Map<String, String> leads = new LinkedHashMap<>();

    private WorkWords(List<InjectionPlan> plans) {
        for (InjectionPlan plan : plans) {
            for (Hole hole : plan.holes()) {
                holes.put(hole.id(), hole);
                leads.put(hole.id(), plan.region());
            }
        }
    }

    /** @param log under the names of the plans */
    static List<Finding> findings(List<WorkEntry> log, List<InjectionPlan> plans) {
        WorkWords words = new WorkWords(plans);
        List<Finding> findings = new ArrayList<>();
        log.forEach(e -> words.leak(e).ifPresent(findings::add));
        for (WorkEntry entry : log) {
            words.strangePlace(entry).ifPresent(findings::add);
            words.tooDeep(entry).ifPresent(findings::add);
            if (!entry.stopped().isEmpty()) {
                findings.add(finding(
                        Severity.HINT,
                        entry,
                        entry.hole() + " was left off: " + sentence(entry.stopped()),
                        "It counts as filled with what went in. Tap round it after cure."));
            }
        }
        return findings;
    }

    private Optional<Finding> leak(WorkEntry entry) {
        return entry.leak().isEmpty()
                ? Optional.empty()
                : Optional.of(finding(
                        Severity.HAZARD,
                        entry,
                        "Mix from " + entry.hole() + " runs out: " + sentence(entry.leak()),
                        "First of all close it, from below: stop filling, wipe, press on tape or putty, prop it. Fill no hole"
                                + " near it before that has held a cup. What ran out is lost: weigh it if you can, and"
                                + " take it off this hole's grams."));
    }

    private Optional<Finding> strangePlace(WorkEntry entry) {
        String at = entry.oozeAt();
        Hole from = holes.get(entry.hole());
        if (at == null || at.equals(entry.hole()) || from == null) {
            return Optional.empty();
        }
        Hole to = holes.get(at);
        if (to == null) {
            return Optional.of(finding(
                    Severity.DOUBT,
                    entry,
                    "Mix from " + entry.hole() + " showed at an unexpected place: " + sentence(at),
                    "Close that place before the next cup. The cavity runs on to it: tap between the two, enter the taps,"
                            + " and run again before filling on."));
        }
        return Objects.equals(leads.get(from.id()), leads.get(to.id()))
                ? Optional.empty()
                : Optional.of(finding(
                        Severity.DOUBT,
                        entry,
                        "Mix from " + entry.hole() + " showed in " + at + ", which is of another space.",
                        "The two are one. Tap " + to.region()
                                + " again before filling there, and leave out every hole in" + " which mix stands."));
    }

    private Optional<Finding> tooDeep(WorkEntry entry) {
        Hole hole = holes.get(entry.hole());
        Double felt = entry.depthFeltMm();
        if (hole == null || felt == null || !hole.drilled() || felt <= hole.depthStopMm() + FELT_MM) {
            return Optional.empty();
        }
        return Optional.of(finding(
                Severity.HAZARD,
                entry,
                String.format(
                        Locale.ROOT,
                        "%s: the drill was felt at %.1f mm, the stop is at %.1f mm.",
                        entry.hole(),
                        felt,
                        hole.depthStopMm()),
                "Look at the inner skin from the other side before filling: where it is drilled through, close it first. Set the"
                        + " collar again."));
    }

    private static String sentence(String text) {
        return text.matches("(?s).*[.!?]") ? text : text + ".";
    }

    private static Finding finding(Severity severity, WorkEntry entry, String message, String effect) {
        return new Finding(severity, entry.origin(), new About.OfHole(entry.hole()), Subject.WORK_LOG, message, effect);
    }

    /** What to do about a hole by what it took; empty where nothing. */
    static String advice(WorkLog.Filled filled) {
        double share = filled.plannedG() > 0 ? filled.takenG() / filled.plannedG() : 1;
        if (share >= MUCH_MORE || filled.took() == WorkLog.Took.FAR_MORE) {
            return "Stop and look below before more goes in. Where nothing runs out, the cavity is larger than mapped: probe"
                    + " around the hole, enter the probes and run again.";
        }
        if (filled.took() == WorkLog.Took.FILLED_BY_NEIGHBOUR) {
            return "";
        }
        if (share < NOTHING) {
            return "The hole is blocked or ends in core: clear it with a wire as far as the stop, never deeper, and try once"
                    + " more. Where it still takes nothing and no mix shows in it, drill beside it.";
        }
        return filled.took() == WorkLog.Took.FAR_LESS
                ? "The hole is blocked or the cavity smaller than mapped: clear it, or drill beside it."
                : "";
    }

    /** What it took, in a sentence. */
    static String took(WorkLog.Filled filled) {
        return filled.plannedG() > 0 && filled.takenG() < NOTHING * filled.plannedG()
                ? String.format(
                        Locale.ROOT,
                        "%s takes nothing (%s), planned were %s.",
                        filled.hole(),
                        Amounts.grams(filled.takenG()),
                        Amounts.grams(filled.plannedG()))
                : String.format(
                        Locale.ROOT,
                        "%s took %s, planned were %s.",
                        filled.hole(),
                        Amounts.grams(filled.takenG()),
                        Amounts.grams(filled.plannedG()));
    }
}
