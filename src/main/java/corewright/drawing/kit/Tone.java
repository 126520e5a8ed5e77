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
    /** Ink on files: black, whatever the printer. */
    public static final Color INK = Color.BLACK;

    /** Names of data fields only; 7.3 : 1 on white. */
    public static final Color QUIET = new Color(0x4E5955);

    public static final Color WHITE = Color.WHITE;

    /** Black on white, as on paper. */
    public static final Tone PRINT = new Tone(INK, QUIET, WHITE, 1);

    /** What one of the three colours of a sheet becomes; any other stays. */
    Color of(Color colour) {
        if (colour == INK) {
            return ink;
        }
        if (colour == WHITE) {
            return ground;
        }
        return colour == QUIET ? quiet : colour;
    }
}
