package corewright.damage;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A connected polygon of one condition in one bay.
 *
 * @param id R1, R2 ... over the whole survey, the gravest first
 * @param bay name of the bay
 * @param likely where the condition is more probable than not; shares its edges exactly with its neighbours
 * @param possible where it cannot be ruled out; holds {@code likely}
 * @param label a point well inside {@code likely}
 * @param pWetMean mean probability of wet over {@code likely}
 * @param voidMm3 empty space in {@code likely}
 * @param meanVoidDepthMm over {@code likely}
 * @param maxVoidDepthMm over {@code likely}
 */
public record Region(
        String id,
        String face,
        String bay,
        Condition condition,
        Polygon likely,
        Geometry possible,
        Point label,
        double pWetMean,
        Quantiles voidMm3,
        double meanVoidDepthMm,
        double maxVoidDepthMm) {
    /** The same under another name. */
    public Region named(String other) {
        return new Region(
                other,
                face,
                bay,
                condition,
                likely,
                possible,
                label,
                pWetMean,
                voidMm3,
                meanVoidDepthMm,
                maxVoidDepthMm);
    }

    /** Whether the core is more probably wet than dry here, whatever the condition is called. */
    public boolean wet() {
        return condition == Condition.WET || condition == Condition.WET_DELAMINATED || pWetMean > 0.5;
    }
}
