package corewright.damage;

import corewright.field.LatentField;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How each surface was estimated, a sentence each. */
final class EstimateNotes {
    private EstimateNotes() {}

    static List<String> of(List<BayFields> bays) {
        List<String> notes = new ArrayList<>();
        for (BayFields bay : bays) {
            notes.add(note(bay.bay, "water", bay.wetSeen.size(), bay.wet));
            notes.add(note(bay.bay, "looseness", bay.looseSeen.size(), bay.loose));
            notes.add(note(bay.bay, "void depth", bay.voidSeen.size(), bay.empty));
        }
        return notes;
    }

    private static String note(Bay bay, String what, int count, LatentField field) {
        double root = Math.sqrt(field.rangeRatio());
        String direction = root == 1
                ? ""
                : String.format(
                        Locale.ROOT,
                        " (%.0f mm along %.0f degrees, %.0f mm across)",
                        field.range() * root,
                        field.longAxisDegrees(),
                        field.range() / root);
        return String.format(
                Locale.ROOT,
                "%s: %s from %d statements of readings; range %.0f mm%s, sill %.0f.",
                bay.name(),
                what,
                count,
                field.range(),
                direction,
                field.sill());
    }
}
