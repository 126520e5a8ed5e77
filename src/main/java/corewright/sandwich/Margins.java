package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Strengths;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** What a response leaves before each kind of failure. */
public final class Margins {
    /** Design value; theory gives 0.91, imperfections take the rest. Hoff and Mautner (1945), from memory. */
    private static final double WRINKLING = 0.5;

    /** Clamped disc under even compression: N = 14.68 D/a². S. Timoshenko and J. Gere, Theory of Elastic Stability (1961). */
    private static final double DISC = 14.68;

    /** What is said of a loose skin that the load presses together. */
    public static final String LOOSE_SKIN_BUCKLING = "loose skin buckling";

    private final List<CellStress> stresses;
    private final PanelSpec panel;
    private final List<Margin> margins = new ArrayList<>();

    private Margins(PanelSpec panel, List<CellStress> stresses) {
        this.panel = panel;
        this.stresses = stresses;
    }

    /** Those margins for which the strengths are known, and wrinkling and buckling, which need none. */
    public static List<Margin> of(PanelSpec panel, Response response, Strengths strengths) {
        Margins m = new Margins(panel, response.stresses());
        m.strength("core shear", strengths.coreShear(), CellStress::shear, "resultant core shear");
        m.strength("outer skin", strengths.outerSkin(), s -> s.outer().worst(), "larger principal stress, either face");
        m.strength("inner skin", strengths.innerSkin(), s -> s.inner().worst(), "larger principal stress, either face");
        m.strength("core crushing", strengths.coreCrush(), CellStress::crush, "Ez (w_o - w_i) / c");
        m.bond(
                "repair bond, shear",
                strengths.bond().shear(),
                CellStress::shear,
                "core shear beside the skin, hypot(τxz, τyz) / given bond shear strength");
        m.bond(
                "repair bond, peel",
                strengths.bond().peel(),
                s -> Math.max(0, -s.crush()),
                "tension across the bond, Ez (w_i - w_o) / c / given peel strength");
        m.wrinkling("outer skin wrinkling", panel.outer(), CellStress::outer);
        m.wrinkling("inner skin wrinkling", panel.inner(), CellStress::inner);
        m.looseSkinBuckling();
        return List.copyOf(m.margins);
    }

    private void strength(String what, OptionalDouble capacity, ToDoubleFunction<CellStress> demand, String formula) {
        if (capacity.isPresent()) {
            add(
                    what,
                    demand,
                    s -> capacity.getAsDouble(),
                    s -> s.place().clear(),
                    formula + " / given strength",
                    "input");
        }
    }

    /** Traction between a repaired core and the skins: through the core's depth it is the same, so one for both skins. */
    private void bond(String what, OptionalDouble capacity, ToDoubleFunction<CellStress> demand, String formula) {
        if (capacity.isPresent()) {
            add(
                    what,
                    demand,
                    s -> capacity.getAsDouble(),
                    s -> s.place().repaired() && s.place().clear(),
                    formula,
                    "equilibrium at the interface; strength from input");
        }
    }

    private void wrinkling(
            String what, Skin skin, java.util.function.Function<CellStress, CellStress.SkinStress> side) {
        double e = Math.min(skin.exMPa(), skin.eyMPa());
        add(
                what,
                s -> Math.max(0, -side.apply(s).middle().smallest()),
                s -> {
                    CoreMaterial core = s.place().material();
                    double along = Math.cos(side.apply(s).middle().smallestDirection());
                    double g = along * along * core.gxzMPa() + (1 - along * along) * core.gyzMPa();
                    return WRINKLING * Math.cbrt(e * core.ezMPa() * g);
                },
                s -> s.place().bonded() && s.place().clear(),
                "smallest principal mid-skin stress / (0.5 (Ef Ez G)^(1/3))",
                "Hoff and Mautner (1945)");
    }

    private void looseSkinBuckling() {
        double area = stresses.stream()
                .filter(s -> !s.place().bonded())
                .mapToDouble(s -> s.place().areaMm2())
                .sum();
        if (area == 0) {
            return;
        }
        double t = panel.outer().thicknessMm();
        double d = Math.sqrt(
                        panel.outer().elastic().d11() * panel.outer().elastic().d22())
                * t
                * t
                * t
                / 12;
        double critical = DISC * d * Math.PI / area / t;
        add(
                LOOSE_SKIN_BUCKLING,
                s -> Math.max(0, -s.outer().middle().smallest()),
                s -> critical,
                s -> !s.place().bonded(),
                "smallest principal mid-skin stress / (14.68 D π / (A t)), A all loose area as one disc",
                "Timoshenko and Gere (1961)");
    }

    private void add(
            String what,
            ToDoubleFunction<CellStress> demand,
            ToDoubleFunction<CellStress> capacity,
            Predicate<CellStress> where,
            String formula,
            String source) {
        stresses.stream()
                .filter(where)
                .max(java.util.Comparator.comparingDouble(s -> demand.applyAsDouble(s) / capacity.applyAsDouble(s)))
                .ifPresent(s -> margins.add(new Margin(
                        what,
                        demand.applyAsDouble(s),
                        capacity.applyAsDouble(s),
                        s.place().x(),
                        s.place().y(),
                        formula,
                        source)));
    }
}
