package corewright.sandwich;

import corewright.linear.SparseVector;
import corewright.sandwich.spec.Load;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;

/**
 * A foot on a panel.
 *
 * @param spots where it stands
 * @param force its forces on unknowns
 * @param ask the interpolation of the outer skin's deflection at its centre, on unknowns
 */
record Foot(Coordinate centre, List<LoadVector.Spot> spots, SparseVector force, SparseVector ask) {
    static Optional<Foot> at(PanelModel model, Coordinate centre) {
        return model.loads.locate(centre.x, centre.y).map(spot -> {
            double[] row = new CellRows(model.mesh.shape(spot.cell())).deflection(spot.r(), spot.s());
            int[] corners = model.mesh.cells[spot.cell()];
            Map<Integer, Double> ask = new TreeMap<>();
            for (int a = 0; a < corners.length; a++) {
                for (int k = 0; k < CellRows.PER_SURFACE; k++) {
                    put(model, ask, corners[a], k, row[a * CellRows.PER_SURFACE + k]);
                }
            }
            Map<Integer, Double> force = new TreeMap<>();
            Load.Force foot = (Load.Force) Load.foot(centre, FootLoadMap.SIDE_MM, FootLoadMap.FORCE_N);
            List<LoadVector.Spot> spots = model.loads.spotsOver(foot.area());
            model.loads.nodal(spots, foot.forceN()).forEach((v, f) -> put(model, force, v, 2, f));
            return new Foot(centre, spots, SparseVector.of(force), SparseVector.of(ask));
        });
    }

    private static void put(PanelModel model, Map<Integer, Double> to, int node, int displacement, double amount) {
        double[] row = model.nodes.row(node, displacement);
        for (int c = 0; c < row.length; c++) {
            if (row[c] * amount != 0) {
                to.merge(model.matrix.first(node) + c, row[c] * amount, Double::sum);
            }
        }
    }
}
