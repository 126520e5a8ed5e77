package corewright.repair.mix;

import corewright.survey.settings.Resin;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Which mix suits a gap: one that rises where it is high enough, else a thin one. Structural mixes only. */
public final class ResinChoice {
    /** A rising mix is too thick for less: its reach at 0.3 mm is half that of thin epoxy (see docs/repair.md). */
    static final double FOAM_FROM_MM = 0.5;

    private ResinChoice() {}

    /** The first suitable structural mix, else any structural one, else none. */
    public static Optional<Resin> forGap(List<Resin> resins, double gapMm) {
        Predicate<Resin> rises = r -> r.expansion() > 1;
        Predicate<Resin> suits = gapMm >= FOAM_FROM_MM ? rises : rises.negate();
        List<Resin> structural = resins.stream().filter(Resin::structural).toList();
        return structural.stream().filter(suits).findFirst().or(() -> structural.stream()
                .findFirst());
    }

    /** Why none was chosen. */
    public static String refusal(List<Resin> resins) {
        String names = String.join(", ", resins.stream().map(Resin::name).toList());
        return "No structural mix is listed (" + (names.isEmpty() ? "none at all" : names + " may carry no load")
                + "): a core has to carry shear, so nothing else is put into it.";
    }
}
