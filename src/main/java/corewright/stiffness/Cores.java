package corewright.stiffness;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.CoreMaterial.InPlane;
import corewright.survey.Materials;
import java.util.Optional;

/**
 * A core of the survey in the terms of the finite-element model, with what it carries in its plane: the part that remains
 * under a loose skin bends with the inner skin by it.
 *
 * <ul>
 *   <li>End-grain wood: E 0.015 and G 0.005 of the modulus along the grain, the tangential and the rolling-shear ratio of balsa in the
 *       Wood Handbook, table 5-1 (from memory); the radial one, 0.046, is three times that, so this is the low end.
 *   <li>Plywood: half its plies run along, E 4000 MPa, in-plane G 170 MPa, the lower of two values (common practice).
 *   <li>Honeycomb: its cells fold, so nothing (common practice).
 *   <li>Foam: the same in all directions, so the moduli it has through its thickness.
 * </ul>
 */
final class Cores {
    private static final double ACROSS_GRAIN = 0.015;
    private static final double ROLLING = 0.005;
    private static final InPlane PLYWOOD = new InPlane(4000, 4000, 0.05, 170);

    /** A foam of Poisson's ratio 0.3 has E = 2.6 G, foams of the trade up to 4 G; end-grain wood 17 to 25 G. */
    private static final double FOAM_AT_MOST = 8;

    private Cores() {}

    static CoreMaterial material(Materials.Core core) {
        return new CoreMaterial(core.shearMPa(), core.shearMPa(), core.modulusMPa(), inPlane(core));
    }

    private static Optional<InPlane> inPlane(Materials.Core core) {
        double e = core.modulusMPa();
        if (core.name().equals("plywood")) {
            return Optional.of(PLYWOOD);
        }
        if (core.name().startsWith("honeycomb")) {
            return Optional.empty();
        }
        return Optional.of(
                e > FOAM_AT_MOST * core.shearMPa()
                        ? new InPlane(ACROSS_GRAIN * e, ACROSS_GRAIN * e, 0.05, ROLLING * e)
                        : new InPlane(e, e, 0.3, core.shearMPa()));
    }
}
