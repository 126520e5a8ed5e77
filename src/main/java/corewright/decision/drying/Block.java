package corewright.decision.drying;

/**
 * A rectangle of core that dries through its four edges: the product of two sheets (Newman 1931; Crank 1975, 2.5). Both sheets are
 * asked in their own time: {@code D t} over the square of half of that side.
 *
 * @param across of the shorter side
 * @param along of the longer side
 * @param ratio half the longer side over half the shorter one
 */
public record Block(Sheet across, Sheet along, double ratio) {
    /** Share left, mean; time of the shorter side. */
    public double mean(double time) {
        return across.mean(time) * along.mean(time / (ratio * ratio));
    }

    /** Share left in the middle, where it dries last. */
    public double last(double time) {
        return across.last(time) * along.last(time / (ratio * ratio));
    }

    /** When the share left in the middle comes down to this. */
    public double timeTo(double share) {
        if (share >= 1 || share <= 0) {
            return share >= 1 ? 0 : Double.POSITIVE_INFINITY;
        }
        return Body.timeTo(this::last, share, across.rate() + along.rate() / (ratio * ratio));
    }
}
