package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;
import corewright.report.page.Prose;
import java.util.List;
import java.util.Objects;

/** Decisions by hand that go past a stop sign: the report does not recommend them, and says so where it speaks of what is planned. */
final class OwnerStops {
    private OwnerStops() {}

    /** What the choice that is planned is to the report, a sentence. */
    static String standing(Assessment assessment) {
        return passed(assessment).isEmpty() ? "Recommended." : "As decided by hand, past a stop sign.";
    }

    /** The same within a sentence on the costs. */
    static String within(Assessment assessment) {
        return passed(assessment).isEmpty() ? "which is advised" : "as decided by hand";
    }

    /** A sentence for each such decision: who made it, what it goes past, that this report does not advise it. */
    static List<String> sentences(Assessment assessment) {
        return passed(assessment).stream().map(OwnerStops::sentence).toList();
    }

    private static List<RegionDecision> passed(Assessment assessment) {
        return assessment.decision().regions().stream()
                .filter(d -> d.stopPassed().isPresent())
                .toList();
    }

    private static String sentence(RegionDecision decision) {
        Overruled overruled = Objects.requireNonNull(decision.overruled());
        String who = overruled.by().isEmpty() ? "by hand" : "by " + Prose.plain(overruled.by());
        return decision.region() + " is decided " + who + " past a stop sign; this report advises against it. "
                + Prose.plain(decision.stopPassed().orElseThrow());
    }
}
