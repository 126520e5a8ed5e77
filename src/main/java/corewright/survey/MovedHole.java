package corewright.survey;

/**
 * A hole that a person moved. Plans change with every reading, so the hole is known by where the plan had put it.
 *
 * @param planned where the program had put it
 * @param spot where it is to be drilled, on the same face
 */
public record MovedHole(Spot planned, Spot spot) {
    public MovedHole {
        if (!planned.face().equals(spot.face())) {
            throw new IllegalArgumentException("a hole stays on its face");
        }
    }
}
