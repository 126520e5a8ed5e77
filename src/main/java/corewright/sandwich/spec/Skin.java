package corewright.sandwich.spec;

/**
 * One skin, an orthotropic sheet with its axes along x and y.
 *
 * @param nuXy contraction in y under tension in x; {@code nuYx = nuXy Ey / Ex}
 */
public record Skin(double thicknessMm, double exMPa, double eyMPa, double nuXy, double gxyMPa) {
    public Skin {
        Require.positive("thicknessMm", thicknessMm);
        Require.positive("exMPa", exMPa);
        Require.positive("eyMPa", eyMPa);
        Require.positive("gxyMPa", gxyMPa);
        Require.within("nuXy² Ey/Ex", nuXy * nuXy * eyMPa / exMPa, 0, 0.999);
    }

    /** The same in every direction. */
    public static Skin isotropic(double thicknessMm, double eMPa, double nu) {
        return new Skin(thicknessMm, eMPa, eMPa, nu, eMPa / (2 * (1 + nu)));
    }

    public Elastic elastic() {
        return Elastic.of(exMPa, eyMPa, nuXy, gxyMPa);
    }
}
