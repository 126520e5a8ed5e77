package corewright.sandwich.spec;

import java.util.OptionalDouble;

/**
 * Strengths in MPa, each empty where unknown.
 *
 * @param bond of the bond between a repaired core and the skins
 */
public record Strengths(
        OptionalDouble outerSkin,
        OptionalDouble innerSkin,
        OptionalDouble coreShear,
        OptionalDouble coreCrush,
        Bond bond) {
    /** Nothing known. */
    public static final Strengths UNKNOWN = new Strengths(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** With a bond of unknown strength. */
    public Strengths(
            OptionalDouble outerSkin, OptionalDouble innerSkin, OptionalDouble coreShear, OptionalDouble coreCrush) {
        this(outerSkin, innerSkin, coreShear, coreCrush, new Bond(OptionalDouble.empty(), OptionalDouble.empty()));
    }

    /**
     * Strength of a bond.
     *
     * @param shear against sliding
     * @param peel against tension across it
     */
    public record Bond(OptionalDouble shear, OptionalDouble peel) {}
}
