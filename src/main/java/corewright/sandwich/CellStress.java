package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;

/**
 * Stresses at the centre of a cell.
 *
 * @param shearX core shear on planes square to x, MPa; likewise y
 * @param squeeze pressure in the core, the mean through its thickness, MPa, compression positive
 * @param press what presses on the outer skin, MPa
 */
public record CellStress(
        Place place, double shearX, double shearY, double squeeze, double press, SkinStress outer, SkinStress inner) {
    /**
     * Where the cell is and what it is.
     *
     * @param bonded whether the core carries here
     * @param repaired whether a patch has put another core there
     * @param clear whether it is more than a core thickness from edges and rims, where stresses can be trusted
     */
    public record Place(
            double x,
            double y,
            double areaMm2,
            boolean bonded,
            boolean repaired,
            boolean clear,
            CoreMaterial material) {}

    /**
     * @param middle stress in the middle of the skin
     * @param bending what its inner face has more, its outer face less
     */
    public record SkinStress(PlaneStress middle, PlaneStress bending) {
        /** The worse principal stress of the two faces, magnitude. */
        public double worst() {
            return Math.max(
                    middle.plus(bending, 1).worst(), middle.plus(bending, -1).worst());
        }
    }

    /**
     * Pressure in the core at the outer skin, where it is largest, MPa: by equilibrium it falls off evenly to the inner one, from half of what
     * presses above the mean to as much below it, as core shear carries it.
     */
    public double crush() {
        return place.bonded() ? squeeze + press / 2 : squeeze;
    }

    /** Resultant core shear. */
    public double shear() {
        return Math.hypot(shearX, shearY);
    }
}
