package corewright.stiffness;

/**
 * A share of the stiffness where a thing is at the low, and where it is at the high end of its range: over the one as built, or over the
 * one in the middle, as is said where it stands.
 */
public record Ends(double low, double high) {}
