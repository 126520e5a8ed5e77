package corewright.drawing.plates;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.placing.FilledSpaces;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * The map plates of an assessment: condition of each face, repair of each face that has damage, fill check of each that was
 * checked.
 */
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

    private static final Set<Layer> FILL_CHECK = EnumSet.of(
            Layer.FILL_CHECK,
            Layer.VOICE_GRID,
            Layer.BACKING,
            Layer.REGION_LABELS,
            Layer.FEATURE_NAMES,
            Layer.DATUM,
            Layer.SCALE_AND_UPHILL);

    private record Wanted(MapSpec spec, PlateKind kind, String detail) {}

    private Plates() {}

    /** All plates in the survey's order of faces. */
    public static List<Plate> of(Assessment assessment) {
        return of(assessment, EnumSet.allOf(PlateKind.class));
    }

    /** Those of some kinds, numbered among all. */
    public static List<Plate> of(Assessment assessment, Set<PlateKind> kinds) {
        List<Wanted> wanted = new ArrayList<>();
        for (FaceDamage damage : assessment.damage().faces()) {
            String face = damage.face().name();
            wanted.add(new Wanted(spec(assessment, face, PlateKind.CONDITION), PlateKind.CONDITION, ""));
            if (!damage.regions().isEmpty()) {
                wanted.add(new Wanted(spec(assessment, face, PlateKind.REPAIR), PlateKind.REPAIR, ""));
            }
            wanted.addAll(fillChecks(spec(assessment, face, PlateKind.FILL_CHECK)));
        }
        List<Plate> plates = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            Wanted w = wanted.get(i);
            if (kinds.contains(w.kind)) {
                plates.add(new Plate(w.spec, w.kind, w.detail, i + 1, wanted.size()));
            }
        }
        return plates;
    }

    private static MapSpec spec(Assessment assessment, String face, PlateKind kind) {
        Box box = Plate.mapBox(LyingSheet.of(assessment.survey()));
        return new MapSpec(assessment, face, box, MapSpec.LARGEST, layers(kind), MapWording.TRADE);
    }

    /** All that was felt or tapped on a face, and where that is several spaces a larger map of each. */
    private static List<Wanted> fillChecks(MapSpec spec) {
        List<FilledSpaces.Space> spaces = FilledSpaces.of(spec).spaces();
        List<Wanted> wanted = new ArrayList<>();
        if (!spaces.isEmpty()) {
            List<Polygon> all = spaces.stream().map(FilledSpaces.Space::area).toList();
            wanted.add(new Wanted(spec.round(all), PlateKind.FILL_CHECK, ""));
        }
        if (spaces.size() > 1) {
            spaces.forEach(
                    s -> wanted.add(new Wanted(spec.round(List.of(s.area())), PlateKind.FILL_CHECK, s.region())));
        }
        return wanted;
    }

    private static Set<Layer> layers(PlateKind kind) {
        return switch (kind) {
            case CONDITION -> CONDITION;
            case REPAIR -> REPAIR;
            case FILL_CHECK -> FILL_CHECK;
        };
    }
}
