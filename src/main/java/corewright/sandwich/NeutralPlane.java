package corewright.sandwich;

import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.PanelSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plane in which a bonded panel stretches without bending: displacements there are a mean of the skins', weighted by their
 * stretching stiffness. Written in these and in the slip of the skins, stretching hangs together with nothing else, if one skin is a multiple of the
 * other; all but a core that is stiff in its plane between unlike skins.
 *
 * @param outer the outer skin's share of the stretching stiffness
 * @param inner the inner one's
 */
record NeutralPlane(double outer, double inner) {
    /**
     * How much stretching the core may couple with bending, over the skins' stretching stiffness: what is left out of the bending stiffness then goes
     * with its square, a part in 10 000 at most.
     */
    private static final double COUPLED = 0.005;

    private static final double ALIKE = 1e-9;

    /** Null where stretching and bending hang together. */
    static @Nullable NeutralPlane of(PanelSpec panel, List<Zone> zones) {
        double to = panel.outer().thicknessMm();
        double ti = panel.inner().thicknessMm();
        Elastic outer = panel.outer().elastic().times(to);
        Elastic inner = panel.inner().elastic().times(ti);
        double ratio = inner.d11() / outer.d11();
        boolean alike = Math.abs(inner.d12() - ratio * outer.d12()) <= ALIKE * inner.d11()
                && Math.abs(inner.d22() - ratio * outer.d22()) <= ALIKE * inner.d11()
                && Math.abs(inner.d33() - ratio * outer.d33()) <= ALIKE * inner.d11();
        if (!alike || panel.openings().coaming().isPresent()) {
            return null;
        }
        double core = panel.core().thicknessMm();
        double aside = Math.abs(1 - ratio) / (1 + ratio) / 2 + Math.abs(to - ti) / core / 4;
        double share = zones.stream()
                .filter(Zone::bonded)
                .mapToDouble(z -> share(z.material().elastic().times(core), outer))
                .max()
                .orElse(0);
        return aside * share / (1 + ratio) > COUPLED
                ? null
                : new NeutralPlane(1 / (1 + ratio), ratio / (1 + ratio));
    }

    private static double share(Elastic core, Elastic skin) {
        return Math.max(core.d11() / skin.d11(), Math.max(core.d22() / skin.d22(), core.d33() / skin.d33()));
    }
}
