package corewright.sandwich;

import corewright.sandwich.spec.Elastic;
import corewright.sandwich.spec.Skin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Stresses at the cells' centres, from the strains the elements assume there. */
final class Stresses {
    private final PanelModel model;

    /** What presses on the outer skin at each node, MPa. */
    private final double[] pressure;

    private final double[] x;
    private final boolean large;

    /**
     * @param forces on the outer skin, by node
     * @param large whether membrane strains hold von Karman's terms
     */
    Stresses(PanelModel model, double[] forces, double[] x, boolean large) {
        this.model = model;
        pressure = pressure(model.mesh, forces);
        this.x = x;
        this.large = large;
    }

    List<CellStress> all() {
        boolean[] clear = model.clear();
        List<CellStress> stresses = new ArrayList<>();
        for (int c = 0; c < model.mesh.cells.length; c++) {
            stresses.add(at(c, clear[c]));
        }
        return stresses;
    }

    private static double[] pressure(Mesh mesh, double[] forces) {
        double[] areas = new double[forces.length];
        for (int c = 0; c < mesh.cells.length; c++) {
            for (int v : mesh.cells[c]) {
                areas[v] += mesh.shape(c).area() / mesh.cells[c].length;
            }
        }
        double[] pressure = new double[forces.length];
        Arrays.setAll(pressure, v -> forces[v] / areas[v]);
        return pressure;
    }

    /**
     * Mean compression through the core. Where the skins deflect as one, by equilibrium: what presses on the outer skin falls off to nothing at
     * the inner one, evenly as core shear carries it, and within some millimetres of where it presses. Where they do so on one side of a cell only,
     * the larger of both.
     */
    private double squeeze(int c, double strain) {
        double squeezed = model.zones.get(model.mesh.zone[c]).material().ezMPa() * strain;
        double half = press(c) / 2;
        boolean apart = Arrays.stream(model.mesh.cells[c]).noneMatch(model.together::get);
        return apart || Math.abs(squeezed) > Math.abs(half) ? squeezed : half;
    }

    private double press(int c) {
        return Arrays.stream(model.mesh.cells[c])
                .mapToDouble(v -> pressure[v])
                .average()
                .orElse(0);
    }

    private CellStress at(int c, boolean clear) {
        CellShape cell = model.mesh.shape(c);
        CellRows rows = new CellRows(cell);
        double[] centre = cell.centre();
        double r = centre[0];
        double s = centre[1];
        int surfaces = model.surfaces(c);
        double[] q = model.cellDisplacements(c, x);
        Zone zone = model.zones.get(model.mesh.zone[c]);
        double slipX = 0;
        double slipY = 0;
        double squeeze = 0;
        if (zone.bonded()) {
            // two layers: their mean, which is what the whole core's thickness sees
            List<CellStiffness.Layer> layers = CellStiffness.Layer.of(model.panel, surfaces);
            for (CellStiffness.Layer layer : layers) {
                double[][] below = rows.slip(r, s, 1, layer.armInnerMm());
                double[][] above = rows.slip(r, s, -1, layer.armOuterMm());
                double share = 1 / (layer.thicknessMm() * layers.size());
                slipX +=
                        share * (dot(below[0], layer.inner(), surfaces, q) + dot(above[0], layer.outer(), surfaces, q));
                slipY +=
                        share * (dot(below[1], layer.inner(), surfaces, q) + dot(above[1], layer.outer(), surfaces, q));
            }
            double[] w = rows.deflection(r, s);
            squeeze = (dot(w, 0, surfaces, q) - dot(w, 1, surfaces, q))
                    / model.panel.core().thicknessMm();
        }
        double[] shape = cell.corner(r, s);
        double px = 0;
        double py = 0;
        for (int a = 0; a < cell.n; a++) {
            px += shape[a] * cell.x[a];
            py += shape[a] * cell.y[a];
        }
        return new CellStress(
                new CellStress.Place(
                        px,
                        py,
                        cell.area(),
                        zone.bonded(),
                        zone.bonded() && model.mesh.zone[c] > 0,
                        clear,
                        zone.material()),
                zone.material().gxzMPa() * slipX,
                zone.material().gyzMPa() * slipY,
                squeeze(c, squeeze),
                press(c),
                skin(rows, centre, model.panel.outer(), 0, surfaces, q, large),
                skin(rows, centre, model.panel.inner(), 1, surfaces, q, large));
    }

    private CellStress.SkinStress skin(
            CellRows rows, double[] at, Skin skin, int surface, int surfaces, double[] q, boolean karman) {
        double[][] e = rows.membrane(at[0], at[1]);
        double[][] k = rows.curvature(at[0], at[1]);
        double[] strain = new double[3];
        double[] bending = new double[3];
        for (int i = 0; i < 3; i++) {
            strain[i] = dot(e[i], surface, surfaces, q);
            bending[i] = skin.thicknessMm() / 2 * dot(k[i], surface, surfaces, q);
        }
        if (karman) {
            double[][] slope = rows.slope(at[0], at[1]);
            double[] more = Karman.strain(dot(slope[0], surface, surfaces, q), dot(slope[1], surface, surfaces, q));
            for (int i = 0; i < 3; i++) {
                strain[i] += more[i];
            }
        }
        Elastic elastic = skin.elastic();
        return new CellStress.SkinStress(
                PlaneStress.of(elastic.stress(strain)), PlaneStress.of(elastic.stress(bending)));
    }

    /** A surface's row times its part of a cell's displacements. */
    static double dot(double[] row, int surface, int surfaces, double[] q) {
        int per = CellRows.PER_SURFACE;
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += row[k] * q[(k / per * surfaces + surface) * per + k % per];
        }
        return sum;
    }
}
