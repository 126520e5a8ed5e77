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

/**
 * Feet on a panel, one at a time.
 *
 * <p><b>Steps.</b> (1) linear: {@code g'K⁻¹f}, f a foot's forces and g the interpolation at its centre; (2) contact, for feet
 * on a loose area or beside one: the compliance of the nodes that may meet, with each other and with each foot, once; then a
 * complementarity problem a foot, from its neighbour's nodes in touch ({@link Contact}); (3) von Karman's strain, for feet on a loose area:
 * {@link LargeDeflection} at some places of each area, spread over it, and the ratio to contact alone between them.
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

    /**
     * Rings about an area by the distance of a foot's square: on it, beside it, and farther off, each only if the one before is
     * moved by the skins' pull. That reaches far where a whole side of a panel is loose.
     */
    private static final double[] RINGS_MM = {25, 150, 400, Double.POSITIVE_INFINITY};

    /** Places with von Karman's strain on an area, and in each ring about it; where no more feet stand there, all. */
    private static final int PLACES = 9;

    private static final int PLACES_ABOUT = 4;

    /** A ring that pull changes by less than this part is the last: half of what rounding the figure to a per cent hides. */
    private static final double UNMOVED = 0.005;

    /** Deflections below this part of the thinner skin make no pull worth telling: 0.2 (1/8)² is 0.3 %. */
    private static final double SLIGHT = 0.125;

    private final PanelModel model;
    private final List<Foot> feet;

    /** Pushes of the loose nodes under each foot, where any touch. */
    private final double[][] pushes;

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
        if (theory != Theory.LINEAR && model.loose.nodes.length > 0) {
            rest(places);
        }
        if ((theory == Theory.LARGE || theory == Theory.LARGE_BETWEEN) && !model.loose.none()) {
            pull(places);
        }
        return List.of(places);
    }

    /** Step 2. */
    private void rest(Place[] places) {
        int[] near = beside(model.loose.cells, REACH_MM);
        if (near.length == 0) {
            return;
        }
        List<SparseVector> vectors = new ArrayList<>(Contact.pushes(model));
        int n = vectors.size();
        Arrays.stream(near).forEach(k -> vectors.add(feet.get(k).force()));
        Arrays.stream(near).forEach(k -> vectors.add(feet.get(k).ask()));
        double[][] c = model.factor.compliance(vectors, n);
        Contact contact = new Contact(
                model.loose, Arrays.stream(c).map(row -> Arrays.copyOf(row, n)).toArray(double[][]::new));
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
            double[] ratio = pull(area, places, reckoned);
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

    /** Step 3 on one area: by what its pull multiplies the deflection under each foot; NaN where it does not reach. */
    private double[] pull(int[] area, Place[] places, boolean[] reckoned) {
        double thin =
                Math.min(model.panel.outer().thicknessMm(), model.panel.inner().thicknessMm());
        double[] ratio = new double[places.length];
        Arrays.fill(ratio, Double.NaN);
        LargeDeflection large = null;
        List<Integer> known = new ArrayList<>();
        for (int ring = 0; ring < RINGS_MM.length; ring++) {
            double inner = ring == 0 ? Double.NEGATIVE_INFINITY : RINGS_MM[ring - 1];
            BitSet nearer = new BitSet();
            Arrays.stream(beside(area, inner)).forEach(nearer::set);
            int[] feetHere = Arrays.stream(beside(area, RINGS_MM[ring]))
                    .filter(k -> !nearer.get(k) && places[k].deflectionMm() > SLIGHT * thin)
                    .toArray();
            if (feetHere.length == 0) {
                continue;
            }
            if (large == null) {
                large = new LargeDeflection(model, area);
            }
            boolean moved = false;
            int[] some = spread(feetHere, places, ring == 0 ? PLACES : PLACES_ABOUT);
            double[] whole = whole(large, area, some, places);
            for (int i = 0; i < some.length; i++) {
                if (!Double.isNaN(whole[i])) {
                    ratio[some[i]] = whole[i] / places[some[i]].deflectionMm();
                    reckoned[some[i]] = true;
                    known.add(some[i]);
                    moved |= Math.abs(ratio[some[i]] - 1) > UNMOVED;
                }
            }
            between(feetHere, known, ratio);
            if (ring > 0 && !moved) {
                break;
            }
        }
        return ratio;
    }

    private double[] whole(LargeDeflection large, int[] area, int[] some, Place[] places) {
        return Arrays.stream(some)
                .parallel()
                .mapToDouble(k -> whole(large, area, k, places[k].linearMm()))
                .toArray();
    }

    /** Fills in ratios from those known, weighted by the inverse fourth power of the distance. */
    private void between(int[] here, List<Integer> known, double[] ratio) {
        for (int k : here) {
            if (known.isEmpty() || !Double.isNaN(ratio[k])) {
                continue;
            }
            double sum = 0;
            double weights = 0;
            for (int i : known) {
                double apart = feet.get(k).centre().distance(feet.get(i).centre());
                double weight = Math.pow(Math.max(apart, 1), -4); // within a millimetre it is the same place
                sum += weight * ratio[i];
                weights += weight;
            }
            ratio[k] = sum / weights;
        }
    }

    /**
     * Deflection under a foot with the skins' pull on an area; other areas rest as they do without it. NaN if no
     * equilibrium is found.
     */
    private double whole(LargeDeflection large, int[] area, int k, double linearMm) {
        double[] others = new double[model.matrix.size()];
        if (pushes[k] != null) {
            model.addPushes(elsewhere(area, pushes[k]), others);
        }
        double[] load = others.clone();
        feet.get(k).force().addTo(load);
        return large.settle(model.factor.solve(load), large.nothing())
                .map(settled -> {
                    double[] more = large.forces(settled);
                    Arrays.setAll(more, i -> more[i] + others[i]);
                    return linearMm + feet.get(k).ask().dot(model.factor.solve(more));
                })
                .orElse(Double.NaN);
    }

    /** Pushes without those of an area. */
    private double[] elsewhere(int[] area, double[] push) {
        BitSet own = new BitSet();
        Arrays.stream(area).forEach(c -> Arrays.stream(model.mesh.cells[c]).forEach(own::set));
        double[] rest = push.clone();
        for (int n = 0; n < rest.length; n++) {
            if (own.get(model.loose.nodes[n])) {
                rest[n] = 0;
            }
        }
        return rest;
    }

    /** The feet at which an area gives most, then each time the one farthest from those taken. */
    private int[] spread(int[] on, Place[] places, int most) {
        if (on.length <= most) {
            return on;
        }
        List<Integer> taken = new ArrayList<>();
        int next = on[0];
        for (int k : on) {
            next = places[k].deflectionMm() > places[next].deflectionMm() ? k : next;
        }
        double[] apart = new double[on.length];
        Arrays.fill(apart, Double.POSITIVE_INFINITY);
        while (taken.size() < most) {
            taken.add(next);
            int farthest = 0;
            for (int i = 0; i < on.length; i++) {
                apart[i] = Math.min(
                        apart[i],
                        feet.get(on[i]).centre().distance(feet.get(next).centre()));
                farthest = apart[i] > apart[farthest] ? i : farthest;
            }
            next = on[farthest];
        }
        return taken.stream().mapToInt(k -> k).toArray();
    }

    /** Feet whose square is within a distance of any of the cells' boxes. */
    private int[] beside(int[] cells, double distance) {
        double reach = FootLoadMap.SIDE_MM / 2 + distance;
        return IntStream.range(0, feet.size())
                .filter(k ->
                        Arrays.stream(cells).anyMatch(c -> within(c, feet.get(k).centre(), reach)))
                .toArray();
    }

    private boolean within(int cell, Coordinate p, double reach) {
        CellShape shape = model.mesh.shape(cell);
        return p.x > Arrays.stream(shape.x).min().orElseThrow() - reach
                && p.x < Arrays.stream(shape.x).max().orElseThrow() + reach
                && p.y > Arrays.stream(shape.y).min().orElseThrow() - reach
                && p.y < Arrays.stream(shape.y).max().orElseThrow() + reach;
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
