package corewright.damage;

import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.survey.Face;
import corewright.survey.Finding;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What the readings say of one face.
 *
 * @param sound what is left when the regions are taken away; regions and sound together are the face's core exactly, or
 *     both are empty and all of it is undecided, where nothing may be said of the face
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

    /**
     * The same face with nothing said of it, good or bad: all of its core is undecided. Findings on single readings and
     * places to read next go with it: they all rest on what is doubted as a whole.
     *
     * @param why a sentence
     */
    FaceDamage withheld(String why) {
        Stream<Geometry> core = Stream.concat(regions.stream().map(Region::likely), sound.stream());
        List<Polygon> all = told() ? Pieces.polygons(Overlay.union(core.toList())) : undecidedAreas();
        return new FaceDamage(
                face,
                bays,
                surfaces,
                List.of(),
                List.of(),
                all.stream()
                        .map(area -> new Undecided(face.name(), area, Double.NaN, why))
                        .toList(),
                Quantiles.ZERO,
                Quantiles.ZERO,
                List.of(),
                List.of(),
                notes);
    }

    /** Whether anything is said of the face, good or bad. */
    public boolean told() {
        return !(regions.isEmpty() && sound.isEmpty());
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
        return told() ? Stream.of(Condition.values()).mapToDouble(this::areaMm2).sum() : undecidedMm2();
    }

    /** Area where the readings leave any question open, square millimetres; where two are open it counts once. */
    public double undecidedMm2() {
        return undecidedAreas().stream().mapToDouble(Polygon::getArea).sum();
    }

    /** The same as areas that do not overlap. */
    public List<Polygon> undecidedAreas() {
        List<Geometry> areas = undecided.stream().map(u -> (Geometry) u.area()).toList();
        return areas.isEmpty() ? List.of() : Pieces.polygons(Overlay.union(areas));
    }
}
