package corewright.sandwich;

import corewright.linear.SparseVector;
import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Feet on a panel, one at a time.
 *
 * <p><b>Steps of a map.</b> (1) linear: {@code g'K⁻¹f}, f a foot's forces and g the interpolation at its centre; (2) contact, for feet
 * on a loose area or beside one: the compliance of the nodes that may meet, with each other and with each foot, once; then a
 * complementarity problem a foot, from its neighbour's nodes in touch ({@link Contact}); (3) von Karman's strain, for feet on a loose area:
 * {@link AreaPull}, at some places of each area, and the ratio to contact alone between them; (4) the same strain in what is bonded too: {@link
 * PanelRatios}, at some places of the panel. A few feet are reckoned by the whole theory at once ({@link PanelPull}).
 *
 * <p>Memory beside the model: a number for each pair of a loose node and a foot beside a loose area, and for each pair of
 * loose nodes; and for one area at a time a dense matrix of the unknowns on its rim. For 1000 loose nodes and 500 feet 16 MB,
 * for a rim of 150 nodes 18 MB.
 *
 * <p>Feet are shared out among threads by row and by area; figures do not depend on how many there are.
 */
final class FootLoads {
    /** Feet whose square is farther than this from every loose area are without contact: it changes less than 0.1 % there. */
    private static final double REACH_MM = 150;

    /** So few feet are solved for one by one. */
    private static final int FEW = 8;

    /** How far displacements may move in a last repetition, as part of them: a foot is then off by less than a printed digit. */
    private static final double SETTLED = 5e-4;

    final PanelModel model;
    final List<Foot> feet;

    /** Pushes of the loose nodes under each foot, where any touch. */
    final double[][] pushes;

    FootLoads(PanelModel model, List<Coordinate> centres) {
        this.model = model;
        feet = centres.stream()
                .parallel()
                .flatMap(c -> Foot.at(model, c).stream())
                .toList();
        pushes = new double[feet.size()][];
    }

    /** In the order of the feet; those off the panel are left out. */
    List<Place> places(Theory theory) {
        double[] linear = model.factor.products(
                feet.stream().map(Foot::force).toList(),
                feet.stream().map(Foot::ask).toList());
        Place[] places = IntStream.range(0, linear.length)
                .mapToObj(k -> new Place(feet.get(k).centre().x, feet.get(k).centre().y, linear[k]))
                .toArray(Place[]::new);
        boolean large = theory == Theory.LARGE || theory == Theory.LARGE_BETWEEN;
        if (large && places.length <= FEW) {
            IntStream.range(0, places.length).parallel().forEach(k -> places[k] = whole(places[k], k));
            return List.of(places);
        }
        if (theory != Theory.LINEAR && model.loose.nodes.length > 0) {
            rest(places);
        }
        if (large) {
            pull(places);
            new PanelRatios(this, places).apply();
        }
        return List.of(places);
    }

    /** Step 2. */
    private void rest(Place[] places) {
        int[] near = beside(model.loose.cells, REACH_MM);
        if (near.length <= FEW) {
            Arrays.stream(near).forEach(k -> rest(places, k));
            return;
        }
        List<SparseVector> vectors = new ArrayList<>(Contact.pushes(model));
        int n = vectors.size();
        Arrays.stream(near).forEach(k -> vectors.add(feet.get(k).force()));
        Arrays.stream(near).forEach(k -> vectors.add(feet.get(k).ask()));
        double[][] c = model.factor.compliance(vectors, n);
        Contact contact = new Contact(
                model.loose, Arrays.stream(c).map(row -> Arrays.copyOf(row, n)).toArray(double[][]::new));
        model.keep(contact);
        rows(near).parallelStream().forEach(row -> {
            BitSet touching = new BitSet();
            for (int k : row) {
                double[] approach = column(c, n + k);
                double[] push = contact.settle(approach, touching);
                if (!touching.isEmpty()) {
                    pushes[near[k]] = push;
                    double less = dot(push, column(c, n + near.length + k));
                    Place p = places[near[k]];
                    places[near[k]] = new Place(p.x(), p.y(), p.linearMm() - less, p.linearMm(), Theory.CONTACT);
                }
            }
        });
    }

    /** Step 2 of one foot, by solving for it. */
    private void rest(Place[] places, int k) {
        double[] approach = model.approaches(model.solveLoose(feet.get(k).force()));
        BitSet touching = new BitSet();
        double[] push = model.contact().settle(approach, touching);
        if (!touching.isEmpty()) {
            pushes[k] = push;
            Place p = places[k];
            double less =
                    dot(push, model.approaches(model.solveLoose(feet.get(k).ask())));
            places[k] = new Place(p.x(), p.y(), p.linearMm() - less, p.linearMm(), Theory.CONTACT);
        }
    }

    /** Positions in {@code near} of feet with the same y, row by row. */
    private List<int[]> rows(int[] near) {
        TreeMap<Double, List<Integer>> rows = new TreeMap<>();
        for (int k = 0; k < near.length; k++) {
            rows.computeIfAbsent(feet.get(near[k]).centre().y, y -> new ArrayList<>())
                    .add(k);
        }
        return rows.values().stream()
                .map(row -> row.stream().mapToInt(k -> k).toArray())
                .toList();
    }

    /** Step 3: areas one after the other, so that only one is in memory; where two move a foot, their ratios multiply. */
    private void pull(Place[] places) {
        double[] factor = new double[places.length];
        Arrays.fill(factor, Double.NaN);
        boolean[] reckoned = new boolean[places.length];
        for (int[] area : model.loose.areas()) {
            double[] ratio = new AreaPull(this, area, places).ratios(reckoned);
            for (int k = 0; k < factor.length; k++) {
                if (!Double.isNaN(ratio[k])) {
                    factor[k] = Double.isNaN(factor[k]) ? ratio[k] : factor[k] * ratio[k];
                }
            }
        }
        for (int k = 0; k < factor.length; k++) {
            if (!Double.isNaN(factor[k])) {
                Place p = places[k];
                places[k] = new Place(
                        p.x(),
                        p.y(),
                        factor[k] * p.deflectionMm(),
                        p.linearMm(),
                        reckoned[k] ? Theory.LARGE : Theory.LARGE_BETWEEN);
            }
        }
    }

    /** A foot with the whole theory, not between others; as it is where no equilibrium is found. */
    Place whole(Place p, int k) {
        Foot foot = feet.get(k);
        return model.pull()
                .settle(model.full(foot.force()), SETTLED)
                .map(found -> new Place(p.x(), p.y(), foot.ask().dot(found), p.linearMm(), Theory.LARGE))
                .orElse(p);
    }

    /** Feet whose square is within a distance of any of the cells' boxes. */
    private int[] beside(int[] cells, double distance) {
        double[] apart = apart(cells);
        return IntStream.range(0, apart.length).filter(k -> apart[k] < distance).toArray();
    }

    /** How far each foot's square is from the nearest of the cells' boxes, along x or y, whichever is more; negative where they overlap. */
    double[] apart(int[] cells) {
        double[] apart = new double[feet.size()];
        Arrays.fill(apart, Double.POSITIVE_INFINITY);
        for (int c : cells) {
            Envelope box = model.mesh.box(c);
            for (int k = 0; k < apart.length; k++) {
                Coordinate p = feet.get(k).centre();
                double x = Math.max(box.getMinX() - p.x, p.x - box.getMaxX());
                double y = Math.max(box.getMinY() - p.y, p.y - box.getMaxY());
                apart[k] = Math.min(apart[k], Math.max(x, y) - FootLoadMap.SIDE_MM / 2);
            }
        }
        return apart;
    }

    private static double[] column(double[][] rows, int k) {
        return Arrays.stream(rows).mapToDouble(row -> row[k]).toArray();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
