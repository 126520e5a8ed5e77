package corewright.drawing.kit;

import java.awt.Color;

/**
 * The colours a drawing is made in: paper has one, a screen has one by day and one by night.
 *
 * @param ink of everything that speaks
 * @param quiet names of data fields
 * @param ground the paper
 * @param lines multiplies every line's weight; more than 1 in sunlight
 */
public record Tone(Color ink, Color quiet, Color ground, double lines) {
    /** Black on white, as on paper. */
    public static final Tone PRINT = new Tone(Paper.INK, Paper.QUIET, Paper.WHITE, 1);

    /** What one of the three colours of {@link Paper} becomes; any other stays. */
    Color of(Color colour) {
        if (colour == Paper.INK) {
            return ink;
        }
        if (colour == Paper.WHITE) {
            return ground;
        }
        return colour == Paper.QUIET ? quiet : colour;
    }
}
