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
    private static final String BALSA = "end-grain balsa, nominal means (from memory)";
    private static final String PVC = "cross-linked PVC foam, nominal means (from memory)";

    /** Nominal mean values for planning; a tested data sheet entered in the survey always wins. */
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
                new Core("balsa-100", 100, 1850, 106, 6.0, 1.85, BALSA),
                new Core("balsa-150", 150, 3900, 157, 12.7, 2.98, BALSA),
                new Core("balsa-220", 220, 6500, 260, 22, 4.2, BALSA + ", interpolated"),
                new Core("pvc-60", 60, 70, 20, 0.9, 0.76, PVC),
                new Core("pvc-80", 80, 90, 27, 1.4, 1.15, PVC),
                new Core("pvc-100", 100, 135, 35, 2.0, 1.6, PVC),
                new Core("pvc-130", 130, 170, 50, 3.0, 2.2, PVC),
                new Core("plywood", 550, 400, 110, 6.0, 1.3, "marine plywood, rolling shear (from memory)"))) {
            cores.put(c.name(), c);
        }
        return new Materials(skins, cores);
    }
}
