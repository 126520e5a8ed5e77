package corewright.sandwich.spec;

/**
 * Plane-stress stiffness of an orthotropic sheet, axes along x and y: {@code σx = d11 εx + d12 εy}, {@code σy = d12 εx +
 * d22 εy}, {@code τ = d33 γ}. Source: R. M. Jones, Mechanics of Composite Materials (1975), ch. 2.
 *
 * @param d11 MPa, like all of them
 */
public record Elastic(double d11, double d12, double d22, double d33) {
    public static final Elastic NONE = new Elastic(0, 0, 0, 0);

    static Elastic of(double exMPa, double eyMPa, double nuXy, double gxyMPa) {
        double nuYx = nuXy * eyMPa / exMPa;
        double c = 1 / (1 - nuXy * nuYx);
        return new Elastic(c * exMPa, c * nuXy * eyMPa, c * eyMPa, gxyMPa);
    }

    public Elastic times(double factor) {
        return new Elastic(factor * d11, factor * d12, factor * d22, factor * d33);
    }

    /** Stresses from strains {@code εx, εy, γxy}. */
    public double[] stress(double[] e) {
        return new double[] {d11 * e[0] + d12 * e[1], d12 * e[0] + d22 * e[1], d33 * e[2]};
    }
}
