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
