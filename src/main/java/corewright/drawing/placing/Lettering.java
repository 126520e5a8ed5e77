package corewright.drawing.placing;

import corewright.drawing.kit.Measure;

/**
 * How the words of a map speak.
 *
 * @param wording for whom
 * @param measure in which units
 * @param oldVolumes volumes are those of before the last change and say so
 */
public record Lettering(MapWording wording, Measure measure, boolean oldVolumes) {
    /** As paper speaks: of the survey as it is. */
    public static Lettering onPaper(MapWording wording, Measure measure) {
        return new Lettering(wording, measure, false);
    }

    /** As a window speaks to the surveyor. */
    public static Lettering onScreen(Measure measure, boolean oldVolumes) {
        return new Lettering(MapWording.TRADE, measure, oldVolumes);
    }
}
