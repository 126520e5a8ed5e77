package corewright.sandwich.spec;

import java.util.Optional;

/**
 * A core: its stiffness, and its strength where it is not that of the panel's own.
 *
 * @param inPlane what the core itself carries in the plane; empty where unknown, and then taken as nothing
 * @param strength empty where it is the panel's own or unknown
 */
public record CoreMaterial(
        double gxzMPa, double gyzMPa, double ezMPa, Optional<InPlane> inPlane, Optional<Strengths.OfCore> strength) {
    public CoreMaterial {
        Require.positive("gxzMPa", gxzMPa);
        Require.positive("gyzMPa", gyzMPa);
        Require.positive("ezMPa", ezMPa);
    }

    public CoreMaterial(double gxzMPa, double gyzMPa, double ezMPa, Optional<InPlane> inPlane) {
        this(gxzMPa, gyzMPa, ezMPa, inPlane, Optional.empty());
    }

    public CoreMaterial(double gxzMPa, double gyzMPa, double ezMPa) {
        this(gxzMPa, gyzMPa, ezMPa, Optional.empty());
    }

    /** As stiff, with a strength of its own. */
    public CoreMaterial with(Strengths.OfCore own) {
        return new CoreMaterial(gxzMPa, gyzMPa, ezMPa, inPlane, Optional.of(own));
    }

    /** Whether it has the same moduli. */
    public boolean asStiffAs(CoreMaterial other) {
        return new CoreMaterial(gxzMPa, gyzMPa, ezMPa, inPlane)
                .equals(new CoreMaterial(other.gxzMPa, other.gyzMPa, other.ezMPa, other.inPlane));
    }

    /** The same material with all its moduli multiplied, its strength as before, as where it is wet or only partly filled. */
    public CoreMaterial times(double factor) {
        return new CoreMaterial(
                factor * gxzMPa,
                factor * gyzMPa,
                factor * ezMPa,
                inPlane.map(p -> new InPlane(factor * p.exMPa(), factor * p.eyMPa(), p.nuXy(), factor * p.gxyMPa())),
                strength);
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
