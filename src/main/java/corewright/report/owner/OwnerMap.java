package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.plates.MapPainter;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;

/** The map as the owner sees it: regions in plain words, names, question tags; readings stand on the condition map. */
final class OwnerMap {
    private static final Set<Layer> LAYERS =
            Set.of(Layer.REGION_LABELS, Layer.FEATURE_NAMES, Layer.NEXT, Layer.SCALE_AND_UPHILL);

    /** Left free above and below the deck together, for the labels of its regions. */
    static final double LABEL_ROOM = 18;

    private static final int TAGS = 5;

    /** Paper millimetres in height from which names of fittings have room; chosen by eye. */
    private static final double NAMED_FROM = 70;

    static final double SIDE_ROOM = 3;

    private OwnerMap() {}

    /** Returns the scale, survey millimetres to one of paper. */
    static double paint(Paper paper, Assessment assessment, FaceDamage face, Box box) {
        String name = face.face().name();
        Assessment shown = withTags(assessment, tags(assessment, name));
        double scale = scale(face, box);
        MapPainter.paint(paper, new MapSpec(shown, name, box, scale, layers(box), MapWording.OWNER));
        return scale;
    }

    /** A map with little room drops the names of what stands on the deck; the following pages have them. */
    private static Set<Layer> layers(Box box) {
        return box.height() >= NAMED_FROM ? LAYERS : Set.of(Layer.REGION_LABELS, Layer.NEXT, Layer.SCALE_AND_UPHILL);
    }

    /** The first few places on a face to be read next: more would hide the map and tell little. */
    static List<NextReading> tags(Assessment assessment, String face) {
        return assessment.next().stream()
                .filter(n -> n.spot().face().equals(face))
                .limit(TAGS)
                .toList();
    }

    private static Assessment withTags(Assessment a, List<NextReading> tags) {
        return a.withNext(tags);
    }

    /** As large as fits, in whole numbers: nobody measures on the owner's map, and its comb tells the scale. */
    private static double scale(FaceDamage face, Box box) {
        Envelope extent = face.face().outline().getEnvelopeInternal();
        double height = box.height() - (face.regions().isEmpty() ? SIDE_ROOM : LABEL_ROOM);
        return Math.ceil(Math.max(extent.getWidth() / (box.width() - SIDE_ROOM), extent.getHeight() / height));
    }
}
