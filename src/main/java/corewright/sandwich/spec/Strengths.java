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
        this(outerSkin, innerSkin, coreShear, coreCrush, Bond.UNKNOWN);
    }

    /**
     * Strength of a bond.
     *
     * @param shear against sliding
     * @param peel against tension across it
     */
    public record Bond(OptionalDouble shear, OptionalDouble peel) {
        /** Not known, or none of a repair. */
        public static final Bond UNKNOWN = new Bond(OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Strength in MPa of a core that is not the panel's own.
     *
     * @param name what it is, as a margin is called after it
     * @param bond between it and the skins, where it is a repair
     * @param source where the figures come from
     */
    public record OfCore(String name, OptionalDouble shear, OptionalDouble crush, Bond bond, String source) {}
}
