package corewright.repair.plan;

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
}
