package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;

/**
 * What the core that goes on under a loose skin does at the rim. On the bonded side the core's face follows the outer skin;
 * on the loose side the core turns with the inner skin. The two differ there by
 *
 * <pre>
 *   m = u_o + to/2 b_o - u_i + (ti/2 + c) b_i
 * </pre>
 *
 * <p>and the core under the loose skin evens the difference out within some millimetres by its own shear. With a core of
 * height r whose shift is linear from 0 at the inner skin to {@code s(x)} at its face, the energy {@code ∫ (E r s'²/3 + G
 * s²/r)/2 dx} is least for a decay over {@code r √(E/3G)}, and then is {@code √(E G/3) s²/2} a length of rim, whatever r; at
 * the height r of a bonded core that stays straight {@code s = (r/c) m}. It does not quite: the farther below its glued face, the
 * more it gives way, for which a further r/c is taken (ours; it fits solids of depth 0 to 3/4). That is too short a way for elements of any useful size, so the rim
 * carries it as a line of springs, across it with E and G of that direction, along it with the in-plane shear modulus.
 *
 * <p>The derivation is ours; what it changes against 3-D solids is in docs/stiffness.md.
 */
final class RimShear {
    private final PanelSpec panel;
    private final Mesh mesh;

    RimShear(PanelSpec panel, Mesh mesh) {
        this.panel = panel;
        this.mesh = mesh;
    }

    /** Whether the core under a loose skin has the moduli and the height to count. */
    boolean acts(Zone loose) {
        return remaining(loose) > 0 && loose.material().inPlane().isPresent();
    }

    private double remaining(Zone loose) {
        return panel.core().thicknessMm() - loose.depthMm();
    }

    /** Stiffness of a rim's edge on the displacements of its ends, 2 x 10, row-major, in the order of {@link CellRows}. */
    double[] of(int from, int to, Zone loose) {
        int stride = 2 * CellRows.PER_SURFACE;
        double length = mesh.distance(from, to);
        double nx = (mesh.y[to] - mesh.y[from]) / length;
        double ny = -(mesh.x[to] - mesh.x[from]) / length;
        CoreMaterial core = loose.material();
        CoreMaterial.InPlane plane = core.inPlane().orElseThrow();
        double g = core.gxzMPa() * nx * nx + core.gyzMPa() * ny * ny;
        double across = plane.exMPa() * nx * nx + plane.eyMPa() * ny * ny;
        double part = remaining(loose) / panel.core().thicknessMm();
        double kn = part * part * part * Math.sqrt(across * g / 3);
        double kt = part * part * part * Math.sqrt(plane.gxyMPa() * g / 3);
        double[] k = new double[4 * stride * stride];
        for (double[] point : CellShape.gauss(2)) {
            double weight = point[1] * length / 2;
            add(k, row(nx, ny, point[0]), weight * kn);
            add(k, row(-ny, nx, point[0]), weight * kt);
        }
        return k;
    }

    /** m along a direction, at t on the edge. */
    private double[] row(double dx, double dy, double t) {
        double to = panel.outer().thicknessMm() / 2;
        double below = panel.inner().thicknessMm() / 2 + panel.core().thicknessMm();
        double[] factor = {1, 1, 0, to, to, -1, -1, 0, below, below};
        double[] direction = {dx, dy, 0, dx, dy, dx, dy, 0, dx, dy};
        double[] row = new double[2 * factor.length];
        for (int k = 0; k < factor.length; k++) {
            row[k] = (1 - t) / 2 * factor[k] * direction[k];
            row[factor.length + k] = (1 + t) / 2 * factor[k] * direction[k];
        }
        return row;
    }

    private static void add(double[] k, double[] row, double factor) {
        int n = row.length;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] += factor * row[i] * row[j];
            }
        }
    }
}
