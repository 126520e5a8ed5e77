package corewright.drawing.placing;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Cutout;
import corewright.drawing.kit.Measure;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * What to draw where.
 *
 * @param face name of the face
 * @param box paper that map and labels may use, millimetres
 * @param scale survey millimetres to one of paper; {@link #LARGEST} takes the largest standard scale that fits
 * @param part of the face that is drawn, null for all of it
 */
public record MapSpec(
        Assessment assessment,
        String face,
        Box box,
        double scale,
        Set<Layer> layers,
        Lettering lettering,
        @Nullable FaceDamage part) {
    /** Let the painter choose among 1 : 5, 10, 20, 25, 50 and 100. */
    public static final double LARGEST = 0;

    public MapSpec {
        layers = Set.copyOf(layers);
    }

    /** All of a face. */
    public MapSpec(Assessment assessment, String face, Box box, double scale, Set<Layer> layers, Lettering lettering) {
        this(assessment, face, box, scale, layers, lettering, null);
    }

    /** On paper. */
    public MapSpec(Assessment assessment, String face, Box box, double scale, Set<Layer> layers, MapWording wording) {
        this(assessment, face, box, scale, layers, Lettering.onPaper(wording, Measure.of(assessment.survey())));
    }

    public MapWording wording() {
        return lettering.wording();
    }

    public Measure measure() {
        return lettering.measure();
    }

    public boolean shows(Layer layer) {
        return layers.contains(layer);
    }

    /** What is drawn. */
    public FaceDamage damage() {
        return part != null ? part : whole();
    }

    public FaceDamage whole() {
        return assessment.damage().face(face);
    }

    /** The datum lies on what is drawn. */
    boolean showsDatum() {
        Envelope drawn = damage().face().outline().getEnvelopeInternal();
        return shows(Layer.DATUM) && (part == null || drawn.intersects(0, 0));
    }

    /** Only the part of the face round these places. */
    public MapSpec round(List<Polygon> places) {
        return new MapSpec(assessment, face, box, scale, layers, lettering, Cutout.of(whole(), places));
    }
}
