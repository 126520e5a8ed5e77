package corewright.repair.plan;

import java.util.Locale;

/**
 * What the scale shows while a cup is weighed: tare to zero, then one part on top of the other.
 *
 * @param firstToG reading at which to stop the first part (resin)
 * @param secondToG reading at which to stop the second part (hardener): the whole cup
 */
public record CupTarget(double firstToG, double secondToG) {
    /** The targets of a batch. */
    public static CupTarget of(Batch batch) {
        return new CupTarget(batch.partAG(), batch.partAG() + batch.partBG());
    }

    /** As a person at the scale reads it, to a tenth of a gram. */
    public String text() {
        return String.format(
                Locale.ROOT,
                "Put the empty cup on the scale, tare to 0. Resin to %.1f g, then hardener to %.1f g. One stick per pot.",
                firstToG,
                secondToG);
    }
}
