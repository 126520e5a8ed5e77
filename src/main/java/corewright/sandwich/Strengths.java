package corewright.sandwich;

import java.util.OptionalDouble;

/** Strengths in MPa, each empty where unknown. */
public record Strengths(
        OptionalDouble outerSkin, OptionalDouble innerSkin, OptionalDouble coreShear, OptionalDouble coreCrush) {
    /** Nothing known. */
    public static final Strengths UNKNOWN = new Strengths(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
