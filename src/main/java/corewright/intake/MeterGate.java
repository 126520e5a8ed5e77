package corewright.intake;

import corewright.intake.text.Numerals;
import corewright.survey.Finding.Severity;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Survey;
import java.util.List;

/** Whether readings can stand on the scale that their meter is said to have. */
final class MeterGate {
    private static final int ENOUGH = 5;

    /** All readings under this share of the dry reading: no deck is that much drier than dry core. Common practice. */
    private static final double FAR_BELOW_DRY = 0.25;

    /** Scatter of a meter over dry core, in steps from dry to wet; most readings lie within twice that of dry. */
    private static final double BELOW_DRY = 0.25;

    private MeterGate() {}

    static void check(Survey survey, Implausible gate) {
        for (Meter meter : survey.meters()) {
            List<Moisture> own = survey.readings().moisture().stream()
                    .filter(m -> m.meter().equals(meter.name()))
                    .toList();
            if (!own.isEmpty()) {
                check(meter, own, gate);
            }
        }
    }

    private static void check(Meter meter, List<Moisture> own, Implausible gate) {
        double most = own.stream().mapToDouble(Moisture::value).max().orElseThrow();
        String name = "meter " + meter.name();
        Double dry = meter.dry();
        Double wet = meter.wet();
        if (dry == null || own.size() < ENOUGH) {
            return;
        }
        double step = wet == null ? dry : wet - dry;
        long below =
                own.stream().filter(m -> m.value() < dry - BELOW_DRY * step).count();
        if (most < FAR_BELOW_DRY * dry) {
            say(
                    gate,
                    own,
                    "All " + own.size() + " readings of " + name + " are " + Numerals.plain(most)
                            + " or less, and its dry"
                            + " reading is " + Numerals.plain(dry)
                            + ": are they shares of one, or from another meter?",
                    "A deck cannot read so far below dry core. Mend meters in " + SurveyYaml.NAME + " or the file.");
        } else if (2 * below > own.size()) {
            say(
                    gate,
                    own,
                    below + " of " + own.size() + " readings of " + name + " lie well below its dry reading of "
                            + Numerals.plain(dry) + ": was that read over wet core, or with another meter?",
                    "Wet core is called dry if the dry reading is too high. Read a place proven dry again.");
        }
    }

    private static void say(Implausible gate, List<Moisture> own, String message, String effect) {
        gate.say(Severity.HAZARD, new Origin(own.get(0).origin().file(), 0), message, effect);
    }
}
