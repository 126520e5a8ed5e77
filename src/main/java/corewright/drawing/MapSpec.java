package corewright.drawing;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import java.util.Set;

/**
 * What to draw where.
 *
 * @param face name of the face
 * @param box paper that map and labels may use, millimetres
 * @param scale survey millimetres to one of paper; {@link #LARGEST} takes the largest standard scale that fits
 */
public record MapSpec(
        Assessment assessment, String face, Box box, double scale, Set<Layer> layers, Lettering lettering) {
    /** Let the painter choose among 1 : 5, 10, 20, 25, 50 and 100. */
    public static final double LARGEST = 0;

    /** For whom the labels speak. */
    public enum Wording {
        /** Trade words, areas, ranges, depths. */
        TRADE,
        /** Plain words, the least of figures. */
        OWNER
    }

    public MapSpec {
        layers = Set.copyOf(layers);
    }

    /** On paper. */
    public MapSpec(Assessment assessment, String face, Box box, double scale, Set<Layer> layers, Wording wording) {
        this(assessment, face, box, scale, layers, Lettering.onPaper(wording));
    }

    public Wording wording() {
        return lettering.wording();
    }

    Measure measure() {
        return lettering.measure();
    }

    boolean shows(Layer layer) {
        return layers.contains(layer);
    }

    FaceDamage damage() {
        return assessment.damage().face(face);
    }

    MapSpec at(double otherScale) {
        return new MapSpec(assessment, face, box, otherScale, layers, lettering);
    }
}
