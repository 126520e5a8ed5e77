package corewright.drawing;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The map plates of an assessment: condition of each face, and repair of each face that has damage. */
public final class Plates {
    private static final Set<Layer> CONDITION = EnumSet.of(
            Layer.READINGS,
            Layer.PROBES,
            Layer.NEXT,
            Layer.VOICE_GRID,
            Layer.BACKING,
            Layer.REGION_LABELS,
            Layer.FEATURE_NAMES,
            Layer.DATUM,
            Layer.SCALE_AND_UPHILL);

    private static final Set<Layer> REPAIR = EnumSet.of(
            Layer.HOLES,
            Layer.DEPTH_STOPS,
            Layer.CUTS,
            Layer.VOICE_GRID,
            Layer.BACKING,
            Layer.REGION_LABELS,
            Layer.METHODS,
            Layer.FEATURE_NAMES,
            Layer.DATUM,
            Layer.SCALE_AND_UPHILL);

    private record Wanted(String face, Plate.Kind kind) {}

    private Plates() {}

    /** All plates in the survey's order of faces. */
    public static List<Plate> of(Assessment assessment) {
        List<Wanted> wanted = new ArrayList<>();
        for (FaceDamage damage : assessment.damage().faces()) {
            wanted.add(new Wanted(damage.face().name(), Plate.Kind.CONDITION));
            if (!damage.regions().isEmpty()) {
                wanted.add(new Wanted(damage.face().name(), Plate.Kind.REPAIR));
            }
        }
        List<Plate> plates = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            Wanted w = wanted.get(i);
            Set<Layer> layers = w.kind == Plate.Kind.CONDITION ? CONDITION : REPAIR;
            MapSpec spec =
                    new MapSpec(assessment, w.face, Plate.mapBox(), MapSpec.LARGEST, layers, MapSpec.Wording.TRADE);
            plates.add(new Plate(spec, w.kind, i + 1, wanted.size()));
        }
        return plates;
    }
}
