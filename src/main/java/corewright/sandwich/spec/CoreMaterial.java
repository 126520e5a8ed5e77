package corewright.sandwich.spec;

import java.util.Optional;

/**
 * Stiffness of a core.
 *
 * @param inPlane what the core itself carries in the plane; empty where unknown, and then taken as nothing
 */
public record CoreMaterial(double gxzMPa, double gyzMPa, double ezMPa, Optional<InPlane> inPlane) {
    public CoreMaterial {
        Require.positive("gxzMPa", gxzMPa);
        Require.positive("gyzMPa", gyzMPa);
        Require.positive("ezMPa", ezMPa);
    }

    public CoreMaterial(double gxzMPa, double gyzMPa, double ezMPa) {
        this(gxzMPa, gyzMPa, ezMPa, Optional.empty());
    }

    /** The same material with all its moduli multiplied, as where it is wet or only partly filled. */
    public CoreMaterial times(double factor) {
        return new CoreMaterial(
                factor * gxzMPa,
                factor * gyzMPa,
                factor * ezMPa,
                inPlane.map(p -> new InPlane(factor * p.exMPa(), factor * p.eyMPa(), p.nuXy(), factor * p.gxyMPa())));
    }

    public Elastic elastic() {
        return inPlane.map(p -> Elastic.of(p.exMPa(), p.eyMPa(), p.nuXy(), p.gxyMPa()))
                .orElse(Elastic.NONE);
    }

    /** Stiffness of a core in its plane. */
    public record InPlane(double exMPa, double eyMPa, double nuXy, double gxyMPa) {
        public InPlane {
            Require.positive("exMPa", exMPa);
            Require.positive("eyMPa", eyMPa);
            Require.positive("gxyMPa", gxyMPa);
        }
    }
}
