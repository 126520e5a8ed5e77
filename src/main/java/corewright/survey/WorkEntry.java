package corewright.survey;

import org.jspecify.annotations.Nullable;

/**
 * One line of the work log: what went into a hole.
 *
 * @param hole as it was written: a name, or the number on the card
 * @param afterS seconds since the first batch was mixed
 * @param oozeAt the hole or place where mix showed
 * @param cup the number on the cup
 * @param ventShown the vent in which mix rose
 * @param depthFeltMm from the outer surface to where the drill met something
 * @param leak where mix ran out, empty where nowhere
 * @param stopped why the hole was left off, empty where it took its mix
 * @param note anything else
 * @param who did it
 * @param resinLot as printed on the can
 * @param cardRevision of the plan on the card that was worked from
 * @param lift number from 1, of a hole that is filled in several lifts; without it all of them are in
 */
public record WorkEntry(
        Origin origin,
        String hole,
        double afterS,
        double grams,
        @Nullable String oozeAt,
        @Nullable Integer cup,
        @Nullable String ventShown,
        @Nullable Double depthFeltMm,
        String leak,
        String stopped,
        String note,
        String who,
        String resinLot,
        @Nullable Integer cardRevision,
        @Nullable Integer lift) {
    /** Nothing but what went in. */
    public WorkEntry(Origin origin, String hole, double afterS, double grams, @Nullable String oozeAt) {
        this(origin, hole, afterS, grams, oozeAt, null, null, null, "", "", "", "", "", null, null);
    }

    /** The same under the names of the plan. */
    public WorkEntry named(String name, @Nullable String ooze, @Nullable String vent) {
        return new WorkEntry(
                origin,
                name,
                afterS,
                grams,
                ooze,
                cup,
                vent,
                depthFeltMm,
                leak,
                stopped,
                note,
                who,
                resinLot,
                cardRevision,
                lift);
    }
}
