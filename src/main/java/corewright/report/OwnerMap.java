package corewright.report;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.Box;
import corewright.drawing.Layer;
import corewright.drawing.MapPainter;
import corewright.drawing.MapSpec;
import corewright.drawing.Paper;
import java.util.Set;

/** The map as the owner sees it: regions in plain words, names, question tags; readings belong to the survey record. */
final class OwnerMap {
    private static final Set<Layer> LAYERS =
            Set.of(Layer.REGION_LABELS, Layer.FEATURE_NAMES, Layer.NEXT, Layer.SCALE_AND_UPHILL);

    /** Left free above and below the deck together, for the labels of its regions. */
    private static final double LABEL_ROOM = 18;

    private static final double SIDE_ROOM = 3;

    private OwnerMap() {}

    static void paint(Paper paper, Assessment assessment, FaceDamage face, Box box) {
        MapPainter.paint(
                paper,
                new MapSpec(assessment, face.face().name(), box, MapSpec.LARGEST, LAYERS, MapSpec.Wording.OWNER));
    }
}
