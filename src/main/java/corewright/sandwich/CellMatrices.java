package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The stiffness of cells of panels that have the same skins and the same thickness of core, as one panel has in all its states; cells
 * alike are reckoned once: a grid has few kinds, and what damage does not touch is the same in every state.
 */
public final class CellMatrices {
    /** Kinds that are kept: 13 kB each, 26 MB in all. A panel of some 1000 nodes has a few hundred. */
    private static final int MOST = 2000;

    private final PanelSpec panel;
    private final Map<Kind, double[]> known = new ConcurrentHashMap<>();

    /** @param panel any of them */
    public CellMatrices(PanelSpec panel) {
        this.panel = panel;
    }

    /** What decides a cell's matrix; corners from the first one on, in 1e-9 mm, so that rounding does not tell them apart. */
    private record Kind(
            int corners,
            long x1,
            long y1,
            long x2,
            long y2,
            long x3,
            long y3,
            Zone zone,
            int surfaces,
            @Nullable NeutralPlane neutral) {
        static Kind of(CellShape shape, Zone zone, int surfaces, @Nullable NeutralPlane neutral) {
            int last = shape.n - 1;
            return new Kind(
                    shape.n,
                    fine(shape.x[1] - shape.x[0]),
                    fine(shape.y[1] - shape.y[0]),
                    fine(shape.x[2] - shape.x[0]),
                    fine(shape.y[2] - shape.y[0]),
                    fine(shape.x[last] - shape.x[0]),
                    fine(shape.y[last] - shape.y[0]),
                    zone,
                    surfaces,
                    neutral);
        }

        private static long fine(double mm) {
            return Math.round(1e9 * mm);
        }

        CellShape shape() {
            double[] x = {0, 1e-9 * x1, 1e-9 * x2, 1e-9 * x3};
            double[] y = {0, 1e-9 * y1, 1e-9 * y2, 1e-9 * y3};
            return corners == 4
                    ? new CellShape(x, y)
                    : new CellShape(new double[] {0, x[1], x[2]}, new double[] {0, y[1], y[2]});
        }
    }

    /**
     * Row-major square matrix ({@link CellStiffness}), not to be changed.
     *
     * @param neutral in which a bonded cell stretches without bending; null where both hang together
     */
    double[] of(CellShape shape, Zone zone, int surfaces, @Nullable NeutralPlane neutral) {
        Kind kind = Kind.of(shape, zone, surfaces, neutral);
        double[] found = known.get(kind);
        if (found == null) {
            found = matrix(kind);
            if (known.size() < MOST) {
                known.put(kind, found);
            }
        }
        return found;
    }

    private double[] matrix(Kind kind) {
        double[] k = CellStiffness.of(panel, kind.shape(), kind.zone, kind.surfaces);
        if (kind.neutral != null && kind.zone.bonded()) {
            kind.neutral.part(k, kind.surfaces);
        }
        return k;
    }
}
