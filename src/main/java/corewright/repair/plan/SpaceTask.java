package corewright.repair.plan;

import corewright.contour.Raster;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.survey.Face;
import corewright.survey.Feeler;
import corewright.survey.Laminate;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Everything the plan of one empty space depends on. Its regions are called 1, 2 ... in their order, so that a plan stays as
 * it is where regions elsewhere get other numbers; {@link Naming} gives them their names.
 *
 * @param voidDepthMm of the face, NaN away from the space
 * @param laminates all of the survey
 * @param moved injection holes that a person has placed, anywhere
 * @param rods on the face
 */
public record SpaceTask(
        EmptySpace space,
        Face face,
        Raster voidDepthMm,
        Settings settings,
        List<Laminate> laminates,
        List<MovedHole> moved,
        List<Feeler> rods) {
    /** Depths are read between the cells round a place. */
    private static final int BESIDE_CELLS = 2;

    public SpaceTask {
        laminates = List.copyOf(laminates);
        moved = List.copyOf(moved);
        rods = List.copyOf(rods);
    }

    /** The task of a space of a face. */
    public static SpaceTask of(Survey survey, FaceDamage damage, EmptySpace space) {
        List<Region> numbered = new ArrayList<>();
        for (Region region : space.regions()) {
            numbered.add(region.named(String.valueOf(numbered.size() + 1)));
        }
        String face = space.face();
        return new SpaceTask(
                new EmptySpace(numbered, space.area()),
                damage.face(),
                near(damage.surfaces().voidDepthMm(), space.area().getEnvelopeInternal()),
                survey.settings(),
                survey.laminates(),
                survey.judgements().holes().stream()
                        .filter(h -> h.spot().face().equals(face)
                                || h.planned().face().equals(face))
                        .toList(),
                survey.readings().on(face).feelers());
    }

    /** The same with injection holes that stay where they are. */
    public SpaceTask holding(List<MovedHole> held) {
        List<MovedHole> all = new ArrayList<>(moved);
        all.addAll(held);
        return new SpaceTask(space, face, voidDepthMm, settings, laminates, all, rods);
    }

    private static Raster near(Raster depth, Envelope box) {
        box.expandBy(BESIDE_CELLS * depth.cell());
        double[] values = depth.values();
        for (int i = 0; i < values.length; i++) {
            boolean inside = box.contains(depth.centreX(i % depth.columns()), depth.centreY(i / depth.columns()));
            values[i] = inside ? values[i] : Double.NaN;
        }
        return depth.with(values);
    }

    /** The laminate at a place of the face. */
    public Laminate laminateAt(Spot spot) {
        String name = face.laminateAt(spot);
        return laminates.stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
    }
}
