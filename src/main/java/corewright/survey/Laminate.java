package corewright.survey;

import corewright.survey.settings.Check;

/**
 * A laminate: two skins and the core between them.
 *
 * @param skin name of a skin material
 * @param core name of a core material
 * @param measured the thicknesses were measured on this boat, not taken from papers
 * @param coreForm how the core's sheets were cut
 * @param solidEdgeMm where it is a face's own laminate: solid, without core, this far in from the outline and from openings
 */
public record Laminate(
        String name,
        double outerSkinMm,
        double coreMm,
        double innerSkinMm,
        String skin,
        String core,
        boolean measured,
        CoreForm coreForm,
        double solidEdgeMm) {
    /** How the sheets of a core were cut before they were laid: water and mix run along cuts. */
    public enum CoreForm {
        /** Whole sheets. */
        PLAIN,
        /** Cut into blocks that a scrim holds together, so that the sheet follows a curve. */
        SCORED,
        /** Saw cuts part way through. */
        KERFED
    }

    /** Wider is no edge. */
    public static final double WIDEST_EDGE_MM = 2000;

    public Laminate {
        Check.positive("outerSkinMm", outerSkinMm);
        Check.positive("coreMm", coreMm);
        Check.positive("innerSkinMm", innerSkinMm);
        Check.within("solidEdgeMm", solidEdgeMm, 0, WIDEST_EDGE_MM);
    }

    /** Whole sheets of core, right out to the edge. */
    public Laminate(
            String name,
            double outerSkinMm,
            double coreMm,
            double innerSkinMm,
            String skin,
            String core,
            boolean measured) {
        this(name, outerSkinMm, coreMm, innerSkinMm, skin, core, measured, CoreForm.PLAIN, 0);
    }

    /** The same under another name. */
    public Laminate named(String other) {
        return new Laminate(other, outerSkinMm, coreMm, innerSkinMm, skin, core, measured, coreForm, solidEdgeMm);
    }

    /** The same with other thicknesses. */
    public Laminate thick(double outerMm, double middleMm, double innerMm) {
        return new Laminate(name, outerMm, middleMm, innerMm, skin, core, measured, coreForm, solidEdgeMm);
    }

    /** The same of other materials. */
    public Laminate of(String otherSkin, String otherCore, boolean nowMeasured) {
        return new Laminate(
                name, outerSkinMm, coreMm, innerSkinMm, otherSkin, otherCore, nowMeasured, coreForm, solidEdgeMm);
    }
}
