package corewright.sandwich;

import corewright.sandwich.spec.UnsupportedPanelException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * How far the outer skin gives way under a foot, at every place of a panel, from one factorisation ({@link FootLoads}).
 *
 * @param sideMm side of the foot
 * @param forceN its force
 * @param places in order of y, then x
 */
public record FootLoadMap(double sideMm, double forceN, List<Place> places) {
    /** A usual foot: 1 kN on 100 x 100 mm, a heavy person on one foot (common practice for decks). */
    public static final double SIDE_MM = 100;

    public static final double FORCE_N = 1000;

    /** How many foretold places are reckoned at most to find the softest. */
    private static final int DOUBTED = 12;

    public FootLoadMap {
        places = List.copyOf(places);
    }

    /**
     * Deflection of the outer skin under the foot's centre.
     *
     * @param linearMm the same were loose skins to pass through what is below, and slopes small
     * @param theory what {@code deflectionMm} rests on; linear where contact and large slopes change nothing worth telling
     */
    public record Place(double x, double y, double deflectionMm, double linearMm, Theory theory) {
        /** A linear figure. */
        public Place(double x, double y, double deflectionMm) {
            this(x, y, deflectionMm, deflectionMm, Theory.LINEAR);
        }
    }

    /**
     * A foot at every place of a square grid that lies inside the panel, linear.
     *
     * @param stepMm distance of places; with the mesh's size, or 100 mm, little is missed
     */
    public static FootLoadMap of(PanelModel model, double stepMm) {
        return of(model, stepMm, Theory.LINEAR);
    }

    /** The same by a theory. */
    public static FootLoadMap of(PanelModel model, double stepMm, Theory theory) {
        return at(model, grid(model, stepMm), theory);
    }

    /** A foot at each of the given places that lie on the panel, linear. */
    public static FootLoadMap at(PanelModel model, List<Coordinate> centres) {
        return at(model, centres, Theory.LINEAR);
    }

    /** A foot at each of the given places that lie on the panel, by a theory. */
    public static FootLoadMap at(PanelModel model, List<Coordinate> centres, Theory theory) {
        List<Place> places = new ArrayList<>(new FootLoads(model, centres).places(theory));
        places.sort(Comparator.comparingDouble(Place::y).thenComparingDouble(Place::x));
        return new FootLoadMap(SIDE_MM, FORCE_N, places);
    }

    /** The same with places put in place of those with the same coordinates. */
    public FootLoadMap with(List<Place> better) {
        return new FootLoadMap(
                sideMm,
                forceN,
                places.stream()
                        .map(p -> better.stream()
                                .filter(b -> b.x() == p.x() && b.y() == p.y())
                                .findFirst()
                                .orElse(p))
                        .toList());
    }

    /**
     * The same map with its softest place reckoned, not between others: the softest few that are not, until one that is gives
     * more than any other by what may be wrong with it.
     *
     * @param model of which the map is
     */
    public FootLoadMap sure(PanelModel model) {
        FootLoadMap map = this;
        for (int k = 0; k < DOUBTED; k++) {
            double sure = map.places.stream()
                    .filter(p -> p.theory().doubt() == 0)
                    .mapToDouble(Place::deflectionMm)
                    .max()
                    .orElse(0);
            Place doubted = map.places.stream()
                    .filter(p -> p.theory().doubt() > 0)
                    .max(Comparator.comparingDouble(FootLoadMap::most))
                    .orElse(null);
            if (doubted == null || most(doubted) < sure) {
                break;
            }
            map = map.with(at(model, List.of(new Coordinate(doubted.x(), doubted.y())), Theory.LARGE)
                    .places());
        }
        return map;
    }

    private static double most(Place place) {
        return place.deflectionMm() * (1 + place.theory().doubt());
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
}
