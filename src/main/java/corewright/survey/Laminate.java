package corewright.survey;

/**
 * A laminate: two skins and the core between them.
 *
 * @param skin name of a skin material
 * @param core name of a core material
 * @param measured the thicknesses were measured on this boat, not taken from papers
 */
public record Laminate(
        String name,
        double outerSkinMm,
        double coreMm,
        double innerSkinMm,
        String skin,
        String core,
        boolean measured) {
    public Laminate {
        Check.positive("outerSkinMm", outerSkinMm);
        Check.positive("coreMm", coreMm);
        Check.positive("innerSkinMm", innerSkinMm);
    }
}
