package corewright.sandwich;

import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.PanelSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plane in which a bonded panel stretches without bending: displacements there are a mean of the skins', weighted by their
 * stretching stiffness and half the core's each. Written in these and in the slip of the skins, stretching hangs together with nothing else, if one
 * skin is a multiple of the other; all but a core that is stiff in its plane otherwise than the skins.
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
        if (aside * share / (1 + ratio) > COUPLED) {
            return null;
        }
        double half = panel.core().material().elastic().d11() * core / outer.d11() / 2;
        double all = 1 + ratio + 2 * half;
        return new NeutralPlane((1 + half) / all, (ratio + half) / all);
    }

    private static double share(Elastic core, Elastic skin) {
        return Math.max(core.d11() / skin.d11(), Math.max(core.d22() / skin.d22(), core.d33() / skin.d33()));
    }

    /**
     * Takes from a bonded cell's matrix what couples stretching with the rest.
     *
     * @param k row-major square matrix
     * @param surfaces of the cell, 2 or 3; the core's middle is displaced as a whole with both skins
     */
    void part(double[] k, int surfaces) {
        int n = (int) Math.round(Math.sqrt(k.length));
        for (int row = 0; row < n; row++) {
            join(k, row * n, 1, n, surfaces);
        }
        for (int column = 0; column < n; column++) {
            join(k, column, n, n, surfaces);
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                if (stretches(i, surfaces) != stretches(j, surfaces)) {
                    k[i * n + j] = 0;
                }
            }
        }
        for (int row = 0; row < n; row++) {
            split(k, row * n, 1, n, surfaces);
        }
        for (int column = 0; column < n; column++) {
            split(k, column, n, n, surfaces);
        }
    }

    private static boolean stretches(int at, int surfaces) {
        return at % (surfaces * CellRows.PER_SURFACE) < 2;
    }

    /** From forces on the surfaces to those on the stretching, then the slip, of each corner. */
    private void join(double[] k, int from, int step, int n, int surfaces) {
        int per = CellRows.PER_SURFACE;
        for (int at = 0; at < n; at += surfaces * per) {
            for (int d = at; d < at + 2; d++) {
                int o = from + d * step;
                int i = o + per * step;
                double both = k[o] + k[i];
                for (int s = 2; s < surfaces; s++) {
                    both += k[o + s * per * step];
                }
                k[i] = outer * k[i] - inner * k[o];
                k[o] = both;
            }
        }
    }

    /** The way back. */
    private void split(double[] k, int from, int step, int n, int surfaces) {
        int per = CellRows.PER_SURFACE;
        for (int at = 0; at < n; at += surfaces * per) {
            for (int d = at; d < at + 2; d++) {
                int o = from + d * step;
                int i = o + per * step;
                double both = k[o];
                for (int s = 2; s < surfaces; s++) {
                    both -= k[o + s * per * step];
                }
                double slip = k[i];
                k[o] = outer * both - slip;
                k[i] = inner * both + slip;
            }
        }
    }
}
