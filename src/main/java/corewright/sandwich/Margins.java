package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Strengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private static final String CORE_SHEAR = "resultant core shear";
    private static final String SKIN = "larger principal stress, either face";
    private static final String GIVEN = "input";

    /** Where the core has no strength of its own: it is the panel's, or nothing is known of it. */
    private static final Predicate<CellStress> OWN_CORE =
            s -> s.place().material().strength().isEmpty();

    private final List<CellStress> stresses;
    private final String crushing;
    private final PanelSpec panel;
    private final List<Margin> margins = new ArrayList<>();

    private Margins(PanelSpec panel, Response response) {
        this.panel = panel;
        stresses = response.stresses();
        crushing = response.crushFormula();
    }

    /** Those margins for which the strengths are known, and wrinkling and buckling, which need none. */
    public static List<Margin> of(PanelSpec panel, Response response, Strengths strengths) {
        Margins m = new Margins(panel, response);
        m.strength("core shear", strengths.coreShear(), CellStress::shear, CORE_SHEAR, OWN_CORE);
        m.strength("outer skin", strengths.outerSkin(), s -> s.outer().worst(), SKIN, s -> true);
        m.strength("inner skin", strengths.innerSkin(), s -> s.inner().worst(), SKIN, s -> true);
        m.strength("core crushing", strengths.coreCrush(), CellStress::crush, m.crushing, OWN_CORE);
        m.bond("", strengths.bond(), s -> s.place().repaired(), GIVEN);
        response.stresses().stream()
                .flatMap(s -> s.place().material().strength().stream())
                .distinct()
                .forEach(m::otherCore);
        m.wrinkling("outer skin wrinkling", panel.outer(), CellStress::outer);
        m.wrinkling("inner skin wrinkling", panel.inner(), CellStress::inner);
        m.looseSkinBuckling();
        return List.copyOf(m.margins);
    }

    /** A core with a strength of its own, and its bond, wherever it is. */
    private void otherCore(Strengths.OfCore core) {
        Predicate<CellStress> there =
                s -> s.place().bonded() && s.place().material().strength().equals(Optional.of(core));
        String of = ", " + core.name();
        strength("core shear" + of, core.shear(), CellStress::shear, CORE_SHEAR, there, core.source());
        strength("core crushing" + of, core.crush(), CellStress::crush, crushing, there, core.source());
        bond(of, core.bond(), there, core.source());
    }

    private void strength(
            String what,
            OptionalDouble capacity,
            ToDoubleFunction<CellStress> demand,
            String formula,
            Predicate<CellStress> where) {
        strength(what, capacity, demand, formula + " / given strength", where, GIVEN);
    }

    private void strength(
            String what,
            OptionalDouble capacity,
            ToDoubleFunction<CellStress> demand,
            String formula,
            Predicate<CellStress> where,
            String source) {
        if (capacity.isPresent()) {
            add(
                    what,
                    demand,
                    s -> capacity.getAsDouble(),
                    where.and(s -> s.place().clear()),
                    formula,
                    source);
        }
    }

    /** Traction between a repaired core and the skins: through the core's depth it is the same, so one for both skins. */
    private void bond(String of, Strengths.Bond bond, Predicate<CellStress> where, String source) {
        String from = "equilibrium at the interface; strength: " + source;
        strength(
                "repair bond, shear" + of,
                bond.shear(),
                CellStress::shear,
                "core shear beside the skin, hypot(τxz, τyz) / bond shear strength",
                where,
                from);
        strength(
                "repair bond, peel" + of,
                bond.peel(),
                s -> Math.max(0, -s.squeeze()),
                "tension across the bond, -Ez (w_o - w_i) / c / peel strength",
                where,
                from);
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
