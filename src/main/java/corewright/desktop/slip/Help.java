package corewright.desktop.slip;

import corewright.desktop.state.Units;
import java.util.Map;
import java.util.function.Supplier;

/** Every quantity explains itself in a sentence. */
public final class Help {
    private static final Map<String, String> MEANINGS = Map.ofEntries(
            Map.entry("area, likely", "Where this is more probable than not, by the readings in and around it."),
            Map.entry("area, possible", "Where it cannot be ruled out: one case in ten or more."),
            Map.entry(
                    "depth, mean and most",
                    "Empty height between the outer skin and what is left of the core, as probes and neighbours tell."),
            Map.entry(
                    "highest reading",
                    "A place on the meter's own scale, never a share of water; this deck dry and wet are stated in the"
                            + " survey."),
            Map.entry("rests on", "What was observed in it and within {near} of it. Few readings make a wide range."),
            Map.entry("sound", "What is left when everything more probably damaged than not is taken away."),
            Map.entry("wet", "The core holds water and the skin is still bonded to it."),
            Map.entry("delaminated", "The skin is off the core, and the core is dry."),
            Map.entry("wet-delaminated", "The core holds water and the skin is off it."),
            Map.entry("void", "Empty space under the outer skin; some core may remain below it."),
            Map.entry("stiffness", "How far one foot, {foot}, bends the deck; 100 is the deck as built."),
            Map.entry("variogram", "How unlike two readings are on the mean, by the distance between them."),
            Map.entry("standard error", "In about two cases of three the truth lies within this much of the figure."),
            Map.entry(
                    "moisture index",
                    "0 is this deck dry and 100 the reading from which core counts as wet; other meters give the same"
                            + " index."));

    private static final String NEAR = "{near}";
    private static final String FOOT = "{foot}";

    private final Supplier<Units> units;

    /** @param units in which the sentences speak at the time */
    public Help(Supplier<Units> units) {
        this.units = units;
    }

    /** Empty where a name speaks for itself. */
    public String of(String quantity) {
        Units in = units.get();
        return MEANINGS.getOrDefault(quantity, "")
                .replace(NEAR, in.length(SlipWords.NEAR_MM))
                .replace(FOOT, in.foot());
    }
}
