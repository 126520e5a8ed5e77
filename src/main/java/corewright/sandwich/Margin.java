package corewright.sandwich;

/**
 * One thing that can fail, as demand over capacity: 1 is failure by the formula, before any safety factor. It is no stamp:
 * a naval architect decides what margin a deck needs.
 *
 * @param what in words
 * @param demandMPa largest stress found
 * @param capacityMPa what it is compared with
 * @param x where
 * @param formula how capacity and demand were found
 */
public record Margin(
        String what, double demandMPa, double capacityMPa, double x, double y, String formula, String source) {
    /** Demand over capacity. */
    public double ratio() {
        return demandMPa / capacityMPa;
    }
}
