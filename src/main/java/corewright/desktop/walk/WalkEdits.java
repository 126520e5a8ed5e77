package corewright.desktop.walk;

import corewright.desktop.state.FreeIds;
import corewright.survey.Edit;
import corewright.survey.Heading;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Reading;
import corewright.survey.Side;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.Tolerances;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The edits of a walk. */
final class WalkEdits {
    private static final Origin WALK = new Origin("grid walk", 0);

    private WalkEdits() {}

    /** What a survey knows of a point already. */
    static Noted noted(Survey survey, Spot spot, String meter) {
        Moisture moisture = last(
                survey.readings().moisture().stream()
                        .filter(m -> m.meter().equals(meter) && m.side() == Side.OUTER)
                        .toList(),
                spot);
        Tap tap = last(survey.readings().taps(), spot);
        return new Noted(
                moisture == null
                        ? ""
                        : BigDecimal.valueOf(moisture.value())
                                .stripTrailingZeros()
                                .toPlainString(),
                moisture != null && moisture.offScale(),
                tap == null ? null : tap.sound(),
                "");
    }

    private static <R extends Reading> @Nullable R last(List<R> readings, Spot spot) {
        R found = null;
        for (R r : readings) {
            boolean here = r.spot().face().equals(spot.face())
                    && Math.hypot(r.spot().xMm() - spot.xMm(), r.spot().yMm() - spot.yMm()) <= Tolerances.SAME_PLACE_MM;
            found = here ? r : found;
        }
        return found;
    }

    /**
     * What is kept of a point.
     *
     * @param more one more reading at the place instead of exchanging the one that stands there
     * @param taken when
     */
    record Kept(String meter, Noted now, boolean more, LocalDateTime taken) {}

    static @Nullable Edit keep(Survey survey, Spot spot, Kept kept) {
        List<Edit> edits = new ArrayList<>();
        moisture(survey, spot, kept, edits);
        tap(survey, spot, kept.now, edits);
        return edits.isEmpty() ? null : new Edit.Together(edits);
    }

    private static void moisture(Survey survey, Spot spot, Kept reading, List<Edit> edits) {
        String meter = reading.meter;
        Noted now = reading.now;
        boolean more = reading.more;
        List<Moisture> own = survey.readings().moisture().stream()
                .filter(m -> m.meter().equals(meter) && m.side() == Side.OUTER)
                .toList();
        Moisture before = last(own, spot);
        if (now.value().isEmpty()) {
            if (before != null && !more) {
                edits.add(Edit.remove(survey, Part.MOISTURE, before));
            }
            return;
        }
        double full = survey.meter(meter).fullScale();
        double value = Double.parseDouble(now.value());
        boolean off = now.offScale() || value > full;
        double kept = Math.min(value, full);
        if (before == null || more) {
            String id = FreeIds.next(survey.readings().moisture(), "W");
            edits.add(Edit.add(
                    survey,
                    Part.MOISTURE,
                    new Moisture(WALK, id, spot, kept, off, meter, null, reading.taken, false, Side.OUTER, "")));
        } else if (before.value() != kept || before.offScale() != off) {
            Moisture exchanged = new Moisture(
                    before.origin(),
                    before.id(),
                    before.spot(),
                    kept,
                    off,
                    meter,
                    before.temperatureC(),
                    reading.taken,
                    before.reference(),
                    before.side(),
                    before.note());
            edits.add(Edit.replace(survey, Part.MOISTURE, before, exchanged));
        }
    }

    private static void tap(Survey survey, Spot spot, Noted now, List<Edit> edits) {
        Tap before = last(survey.readings().taps(), spot);
        if (now.tap() == null) {
            if (before != null && before.contactUs() == null) {
                edits.add(Edit.remove(survey, Part.TAPS, before));
            }
        } else if (before == null) {
            String id = FreeIds.next(survey.readings().taps(), "WT");
            edits.add(Edit.add(survey, Part.TAPS, new Tap(WALK, id, spot, now.tap(), null, Side.OUTER)));
        } else if (before.sound() != now.tap()) {
            Tap exchanged =
                    new Tap(before.origin(), before.id(), before.spot(), now.tap(), before.contactUs(), before.side());
            edits.add(Edit.replace(survey, Part.TAPS, before, exchanged));
        }
    }

    /** A point left out is written into the survey's notes, so that a reader knows it was no oversight. */
    static Edit skip(Survey survey, String face, String place, String reason) {
        Heading h = survey.heading();
        String line = line(face, place, reason);
        String notes = h.notes().isBlank() ? line : h.notes() + "\n" + line;
        return Edit.put(Part.HEADING, h.withNotes(notes));
    }

    /** Whether the notes still say so. */
    static boolean leftOut(Survey survey, String face, String place, String reason) {
        return survey.heading().notes().contains(line(face, place, reason));
    }

    private static String line(String face, String place, String reason) {
        return "Not read: " + face + ", " + place + ": " + reason + ".";
    }
}
