package corewright.field;

/**
 * One distance class of an experimental variogram.
 *
 * @param pairs how many pairs fell into it, at least 1
 * @param lag their mean distance, coordinate unit
 * @param gamma their mean squared half-difference, value unit squared
 */
public record Bin(int pairs, double lag, double gamma) {}
