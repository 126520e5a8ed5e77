package corewright.damage;

import java.util.List;

/**
 * What the readings say of the whole survey.
 *
 * @param faces in the survey's order; region ids run over all of them
 * @param voidMm3 empty space under all faces together, from draws added up
 * @param damagedMm2 area that is not sound on all faces together, from the same draws
 */
public record DamageMap(List<FaceDamage> faces, Quantiles voidMm3, Quantiles damagedMm2) {
    public DamageMap {
        faces = List.copyOf(faces);
    }

    /** The same map with nothing said of any face, good or bad, for a reason. */
    public DamageMap withheld(String why) {
        List<FaceDamage> open = faces.stream().map(f -> f.withheld(why)).toList();
        return new DamageMap(open, Quantiles.ZERO, Quantiles.ZERO);
    }

    /** All regions, R1 first. */
    public List<Region> regions() {
        return faces.stream().flatMap(f -> f.regions().stream()).toList();
    }

    /** What is known of one face. */
    public FaceDamage face(String name) {
        return faces.stream()
                .filter(f -> f.face().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
