package corewright.decision;

/**
 * A line of the buying list.
 *
 * @param plan needed if all goes as planned
 * @param buy to have at hand
 * @param unit of both
 * @param basis how the figures came about
 */
public record BuyingItem(String item, double plan, double buy, String unit, String basis) {}
