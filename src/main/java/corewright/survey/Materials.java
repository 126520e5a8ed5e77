package corewright.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The materials a laminate may name: the built-in ones and the survey's own, which win. */
public record Materials(Map<String, Skin> skins, Map<String, Core> cores) {
    /**
     * A skin laminate, taken as isotropic in its plane.
     *
     * @param modulusMPa Young's modulus
     * @param poisson Poisson's ratio
     * @param densityKgM3 kilograms per cubic metre
     * @param source where the figures come from
     */
    public record Skin(
            String name, double modulusMPa, double poisson, double strengthMPa, double densityKgM3, String source) {}

    /**
     * A core.
     *
     * @param modulusMPa Young's modulus through the thickness
     * @param shearMPa transverse shear modulus
     * @param crushMPa compressive strength through the thickness
     * @param shearStrengthMPa transverse shear strength
     */
    public record Core(
            String name,
            double densityKgM3,
            double modulusMPa,
            double shearMPa,
            double crushMPa,
            double shearStrengthMPa,
            String source) {}

    public Materials {
        skins = Map.copyOf(skins);
        cores = Map.copyOf(cores);
    }

    /** The skin of that name. */
    public Skin skin(String name) {
        return known(name, skins.get(name));
    }

    /** The core of that name. */
    public Core core(String name) {
        return known(name, cores.get(name));
    }

    private static <M> M known(String name, @Nullable M material) {
        if (material == null) {
            throw new IllegalArgumentException("no material is called " + name);
        }
        return material;
    }

    private static final String GRP =
            "values computed from the mass-fraction rules of 1990s drafts of ISO 12215-5 (from memory), fibre 0.40";
    /**
     * Linear in density (Borrega and Gibson, Mechanics of Materials 84, 2015, 75) through the Wood Handbook's balsa of 160
     * kg/m3 (FPL-GTR-190, 2010, ch. 5: bending modulus 3400 MPa, a tenth more along the grain, crushing 14.9, shear 2.1 MPa, G over
     * E 0.054 and 0.037, here their mean; from memory). Crushing at 0.7 of it, as panels are glued of blocks: common practice.
     */
    private static final String BALSA =
            "end-grain balsa, rounded: linear in density through the Wood Handbook's balsa of 160 kg/m3 (from memory)";

    /**
     * Powers of density, the form of Gibson and Ashby (Cellular Solids, 1997, ch. 5) for foams between open and closed cells;
     * constants of common practice: at 80 kg/m3 E 95, G 28, crushing 1.2, shear 1.0 MPa with powers 1.3, 1.2, 1.5, 1.4.
     */
    private static final String PVC =
            "cross-linked PVC foam, rounded: powers of density (form: Gibson and Ashby 1997), constants common practice";

    private static final String HONEYCOMB = "common practice, rounded, no source: shear of the weaker way";

    /** Typical, rounded values for planning; the product's own sheet, entered in the survey under the same or another name, wins. */
    public static Materials builtIn() {
        Map<String, Skin> skins = new LinkedHashMap<>();
        for (Skin s : List.of(
                new Skin("e-glass-polyester", 10050, 0.30, 123, 1550, GRP),
                new Skin("e-glass-epoxy", 13750, 0.30, 188, 1700, GRP.replace("0.40", "0.50")),
                new Skin("carbon-epoxy", 55000, 0.30, 500, 1500, "quasi-isotropic, common practice, no source"))) {
            skins.put(s.name(), s);
        }
        Map<String, Core> cores = new LinkedHashMap<>();
        for (Core c : List.of(
                new Core("balsa-100", 100, 2300, 105, 6.5, 1.3, BALSA),
                new Core("balsa-150", 150, 3500, 160, 10, 2.0, BALSA),
                new Core("balsa-220", 220, 5100, 235, 14, 2.9, BALSA),
                new Core("pvc-60", 60, 65, 20, 0.8, 0.67, PVC),
                new Core("pvc-80", 80, 95, 28, 1.2, 1.0, PVC),
                new Core("pvc-100", 100, 125, 37, 1.7, 1.4, PVC),
                new Core("pvc-130", 130, 180, 50, 2.5, 2.0, PVC),
                new Core("pvc-200", 200, 310, 84, 4.7, 3.6, PVC),
                new Core("honeycomb-aramid-48", 48, 120, 25, 2.0, 0.65, HONEYCOMB),
                new Core("honeycomb-pp-80", 80, 50, 8, 1.2, 0.45, HONEYCOMB),
                new Core("plywood", 550, 400, 110, 6.0, 1.3, "marine plywood, rolling shear (from memory)"))) {
            cores.put(c.name(), c);
        }
        return new Materials(skins, cores);
    }
}
