package corewright.damage;

import corewright.overlay.Overlay;
import corewright.survey.Face;
import corewright.survey.Finding;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What the readings say of one face.
 *
 * @param sound what is left when the regions are taken away; regions and sound together are the face's core exactly
 * @param damagedMm2 area that is not sound
 * @param voidMm3 empty space under the whole face
 * @param findings readings doubted or set aside, and things that cannot be known
 * @param notes how each surface was estimated, a sentence each
 */
public record FaceDamage(
        Face face,
        List<Bay> bays,
        Surfaces surfaces,
        List<Region> regions,
        List<Polygon> sound,
        List<Undecided> undecided,
        Quantiles damagedMm2,
        Quantiles voidMm3,
        List<NextReading> next,
        List<Finding> findings,
        List<String> notes) {
    public FaceDamage {
        bays = List.copyOf(bays);
        regions = List.copyOf(regions);
        sound = List.copyOf(sound);
        undecided = List.copyOf(undecided);
        next = List.copyOf(next);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }

    /** Area in the likely extent of a condition, square millimetres. */
    public double areaMm2(Condition condition) {
        Stream<Polygon> polygons = condition == Condition.SOUND
                ? sound.stream()
                : regions.stream().filter(r -> r.condition() == condition).map(Region::likely);
        return polygons.mapToDouble(Polygon::getArea).sum();
    }

    /** Area of the face's core: the outline less its openings. */
    public double deckMm2() {
        return Stream.of(Condition.values()).mapToDouble(this::areaMm2).sum();
    }

    /** Area where the readings leave any question open, square millimetres; where two are open it counts once. */
    public double undecidedMm2() {
        return undecidedAreas().stream().mapToDouble(Polygon::getArea).sum();
    }

    /** The same as areas that do not overlap. */
    public List<Polygon> undecidedAreas() {
        List<Geometry> areas = undecided.stream().map(u -> (Geometry) u.area()).toList();
        return areas.isEmpty() ? List.of() : Plan.polygons(Overlay.union(areas));
    }
}
