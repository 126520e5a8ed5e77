package corewright.sandwich;

import corewright.linear.SparseVector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;

/**
 * How far the outer skin gives way under a foot, at every place of a panel, from one factorisation: for each place the
 * deflection there is g' K⁻¹ f, with f the foot's forces and g the interpolation at its centre. Linear: a loose skin that
 * meets what is below is stiffer than said.
 *
 * @param sideMm side of the foot
 * @param forceN its force
 * @param places in order of y, then x
 */
public record FootLoadMap(double sideMm, double forceN, List<Place> places) {
    /** A usual foot: 1 kN on 100 x 100 mm, a heavy person on one foot (common practice for decks). */
    public static final double SIDE_MM = 100;

    public static final double FORCE_N = 1000;

    public FootLoadMap {
        places = List.copyOf(places);
    }

    /** Deflection of the outer skin under the foot's centre. */
    public record Place(double x, double y, double deflectionMm) {}

    /**
     * A foot at every place of a square grid that lies inside the panel.
     *
     * @param stepMm distance of places; with the mesh's size, or 100 mm, little is missed
     */
    public static FootLoadMap of(PanelModel model, double stepMm) {
        return at(model, grid(model, stepMm));
    }

    /** A foot at each of the given places that lie on the panel. */
    public static FootLoadMap at(PanelModel model, List<Coordinate> centres) {
        List<Foot> feet = centres.stream()
                .parallel()
                .flatMap(c -> Foot.at(model, c).stream())
                .toList();
        double[] deflections = model.factor.products(
                feet.stream().map(Foot::force).toList(),
                feet.stream().map(Foot::ask).toList());
        List<Place> places = new ArrayList<>();
        for (int k = 0; k < deflections.length; k++) {
            Coordinate c = feet.get(k).centre();
            places.add(new Place(c.x, c.y, deflections[k]));
        }
        places.sort(Comparator.comparingDouble(Place::y).thenComparingDouble(Place::x));
        return new FootLoadMap(SIDE_MM, FORCE_N, places);
    }

    /** Where the panel gives most. */
    public Place softest() {
        return places.stream()
                .max(Comparator.comparingDouble(Place::deflectionMm))
                .orElseThrow(() -> new UnsupportedPanelException("no foot fits on the panel"));
    }

    /** Force over deflection at a place. */
    public double stiffnessNPerMm(Place place) {
        return forceN / place.deflectionMm();
    }

    private static List<Coordinate> grid(PanelModel model, double stepMm) {
        var box = model.panel.outline().getEnvelopeInternal();
        int nx = (int) Math.max(1, Math.round(box.getWidth() / stepMm));
        int ny = (int) Math.max(1, Math.round(box.getHeight() / stepMm));
        List<Coordinate> centres = new ArrayList<>();
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                centres.add(new Coordinate(
                        box.getMinX() + (i + 0.5) * box.getWidth() / nx,
                        box.getMinY() + (j + 0.5) * box.getHeight() / ny));
            }
        }
        return centres;
    }

    /** A foot: its forces and the interpolation at its centre, both on unknowns. */
    private record Foot(Coordinate centre, SparseVector force, SparseVector ask) {
        static java.util.Optional<Foot> at(PanelModel model, Coordinate centre) {
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
                model.loads.nodal(Load.foot(centre, SIDE_MM, FORCE_N)).forEach((v, f) -> put(model, force, v, 2, f));
                return new Foot(centre, SparseVector.of(force), SparseVector.of(ask));
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
}
