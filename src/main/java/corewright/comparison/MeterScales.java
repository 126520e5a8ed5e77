package corewright.comparison;

import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Survey;
import java.util.List;

/** Whether readings of water in two surveys stand on scales that can be compared. */
final class MeterScales {
    private MeterScales() {}

    /** Why not, a sentence; empty where they can. */
    static String whyNot(Survey before, Survey after, String face) {
        List<Meter> first = used(before, face);
        List<Meter> second = used(after, face);
        for (boolean was : new boolean[] {true, false}) {
            for (Meter meter : was ? first : second) {
                if (!dryKnown(was ? before : after, meter)) {
                    return "What meter " + meter.name() + " reads over dry core was not stated in the survey "
                            + (was ? "before" : "after") + ": water cannot be compared.";
                }
            }
        }
        boolean wetKnown =
                first.stream().allMatch(m -> m.wet() != null) && second.stream().allMatch(m -> m.wet() != null);
        boolean same = first.containsAll(second) && second.containsAll(first);
        return wetKnown || same
                ? ""
                : "Different meters were used and what they read over wet core was not stated: water cannot be compared.";
    }

    private static List<Meter> used(Survey survey, String face) {
        return survey.meters().stream()
                .filter(m -> survey.readings().moisture().stream()
                        .anyMatch(r -> r.spot().face().equals(face) && r.meter().equals(m.name())))
                .toList();
    }

    private static boolean dryKnown(Survey survey, Meter meter) {
        return meter.dry() != null
                || survey.readings().moisture().stream()
                        .filter(r -> r.meter().equals(meter.name()))
                        .anyMatch(Moisture::reference);
    }
}
