package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import java.util.List;
import java.util.Objects;

/** Decisions by hand that go past a stop sign: the report does not recommend them, and says so where it speaks of what is planned. */
final class OwnerStops {
    private OwnerStops() {}

    /** What the choice that is planned is to the report, a sentence. */
    static String standing(Assessment assessment) {
        return passed(assessment).isEmpty() ? "Recommended." : "By hand.";
    }

    /** The same within a sentence on the costs. */
    static String within(Assessment assessment) {
        return passed(assessment).isEmpty() ? "which is advised" : "as decided by hand";
    }

    /** A sentence for each such decision: who made it, what it goes past, that this report does not advise it. */
    static List<String> sentences(Assessment assessment) {
        return passed(assessment).stream().map(OwnerStops::sentence).toList();
    }

    /** The same in brief, with a space before what follows; empty where there is none. */
    static String brief(Assessment assessment) {
        List<String> ids =
                passed(assessment).stream().map(RegionDecision::region).toList();
        return ids.isEmpty() ? "" : "Not what is decided for " + Wording.list(ids) + ": page 1 says why. ";
    }

    private static List<RegionDecision> passed(Assessment assessment) {
        return assessment.decision().regions().stream()
                .filter(d -> d.stopPassed().isPresent())
                .toList();
    }

    private static String sentence(RegionDecision decision) {
        Overruled overruled = Objects.requireNonNull(decision.overruled());
        String who = overruled.by().isEmpty() ? "by hand" : "by " + Prose.plain(overruled.by());
        return decision.region() + " goes past a stop sign, as decided " + who + "; this report advises against it. "
                + Prose.plain(decision.stopPassed().orElseThrow());
    }
}
