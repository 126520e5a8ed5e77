package corewright.drawing.screen;

import corewright.damage.Condition;
import corewright.drawing.kit.Tone;
import java.awt.Color;
import java.util.Map;

/**
 * An appearance of the screen.
 *
 * @param crayon what the hand holds right now
 * @param tints under the patterns, their lightness in the order of severity; none in sunlight
 */
public record ScreenLook(Tone tone, Color crayon, Map<Condition, Color> tints) {
    /** Paper white. */
    public static final ScreenLook DAY = new ScreenLook(
            new Tone(new Color(0x14201D), new Color(0x4E5955), Color.WHITE, 1),
            new Color(0xB03A00),
            tints(0xC9DDD7, 0xE0B873, 0xAC9080, 0x7F6376));

    /** Severity grows away from the dark ground, so that its order reads the same. */
    public static final ScreenLook NIGHT = new ScreenLook(
            new Tone(new Color(0xF1EEE6), new Color(0xA9B3AE), new Color(0x101816), 1),
            new Color(0xFFA366),
            tints(0x24393A, 0x5E4B26, 0x80685A, 0x9B8290));

    /** As by day, no tints, heavier lines. */
    public static final ScreenLook SUNLIGHT =
            new ScreenLook(new Tone(new Color(0x14201D), new Color(0x14201D), Color.WHITE, 1.4), DAY.crayon, Map.of());

    public ScreenLook {
        tints = Map.copyOf(tints);
    }

    /** The same without tints: patterns alone. */
    public ScreenLook untinted() {
        return new ScreenLook(tone, crayon, Map.of());
    }

    /** The tone of what the hand holds. */
    Tone selected() {
        return new Tone(crayon, crayon, tone.ground(), tone.lines());
    }

    private static Map<Condition, Color> tints(int wet, int delaminated, int both, int empty) {
        return Map.of(
                Condition.WET, new Color(wet),
                Condition.DELAMINATED, new Color(delaminated),
                Condition.WET_DELAMINATED, new Color(both),
                Condition.VOID, new Color(empty));
    }
}
