package corewright.sandwich;

import corewright.linear.SparseVector;
import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
    /** Feet farther from every loose area are linear: docs/stiffness.md says what that leaves out. */
    private static final double REACH_MM = 250;

    /** A foot whose square is no farther than this from an area stands on it. */
    private static final double BESIDE_MM = 25;

    /** Places of an area with von Karman's strain; where no more feet stand on it, all. */
    private static final int PLACES = 9;

    /** Deflections below this part of the thinner skin make no pull worth telling: 0.2 (1/8)² is 0.3 %. */
    private static final double SLIGHT = 0.125;

    private final PanelModel model;
    private final List<Foot> feet;

    FootLoads(PanelModel model, List<Coordinate> centres) {
        this.model = model;
        feet = centres.stream()
                .parallel()
                .flatMap(c -> Foot.at(model, c).stream())
                .toList();
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
            for (int[] area : model.loose.areas()) {
                pull(area, places);
            }
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
                    double less = dot(push, column(c, n + near.length + k));
                    Place p = places[near[k]];
                    places[near[k]] =
                            new Place(p.x(), p.y(), p.linearMm() - less, p.linearMm(), Theory.CONTACT);
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

    /** Step 3 on one area. */
    private void pull(int[] area, Place[] places) {
        double thin = Math.min(
                model.panel.outer().thicknessMm(), model.panel.inner().thicknessMm());
        int[] on = Arrays.stream(beside(area, BESIDE_MM))
                .filter(k -> places[k].deflectionMm() > SLIGHT * thin)
                .toArray();
        if (on.length == 0) {
            return;
        }
        LargeDeflection large = new LargeDeflection(model, area);
        int[] some = spread(on, places);
        OptionalDouble[] whole = Arrays.stream(some)
                .parallel()
                .mapToObj(k -> whole(large, feet.get(k), places[k]))
                .toArray(OptionalDouble[]::new);
        int[] known = IntStream.range(0, some.length)
                .filter(i -> whole[i].isPresent())
                .toArray();
        Place[] before = places.clone();
        for (int k : on) {
            double ratio = between(before[k], known, i -> before[some[i]], i -> whole[i].orElseThrow());
            int at = k;
            boolean reckoned = Arrays.stream(known).anyMatch(i -> some[i] == at);
            if (known.length > 0) {
                places[k] = new Place(
                        before[k].x(),
                        before[k].y(),
                        ratio * before[k].deflectionMm(),
                        before[k].linearMm(),
                        reckoned ? Theory.LARGE : Theory.LARGE_BETWEEN);
            }
        }
    }

    /** Deflection under a foot with the skins' pull on an area; empty if no equilibrium is found. */
    private OptionalDouble whole(LargeDeflection large, Foot foot, Place place) {
        double[] load = new double[model.matrix.size()];
        foot.force().addTo(load);
        double[] linear = model.factor.solve(load);
        Optional<LargeDeflection.Settled> settled = large.settle(linear, large.nothing());
        return settled.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(place.linearMm()
                        + foot.ask().dot(model.factor.solve(large.forces(settled.get()))));
    }

    private interface PlaceAt {
        Place at(int i);
    }

    private interface WholeAt {
        double at(int i);
    }

    /** Ratio of whole to contact alone, weighted by the inverse square of the distance; at a known place its own. */
    private static double between(Place p, int[] known, PlaceAt places, WholeAt whole) {
        double sum = 0;
        double weights = 0;
        for (int i : known) {
            Place q = places.at(i);
            double ratio = whole.at(i) / q.deflectionMm();
            double squared = (p.x() - q.x()) * (p.x() - q.x()) + (p.y() - q.y()) * (p.y() - q.y());
            if (squared == 0) {
                return ratio;
            }
            sum += ratio / (squared * squared);
            weights += 1 / (squared * squared);
        }
        return sum / weights;
    }

    /** The feet at which an area gives most, then each time the one farthest from those taken. */
    private int[] spread(int[] on, Place[] places) {
        if (on.length <= PLACES) {
            return on;
        }
        List<Integer> taken = new ArrayList<>();
        int next = on[0];
        for (int k : on) {
            next = places[k].deflectionMm() > places[next].deflectionMm() ? k : next;
        }
        double[] apart = new double[on.length];
        Arrays.fill(apart, Double.POSITIVE_INFINITY);
        while (taken.size() < PLACES) {
            taken.add(next);
            int farthest = 0;
            for (int i = 0; i < on.length; i++) {
                apart[i] = Math.min(
                        apart[i], feet.get(on[i]).centre().distance(feet.get(next).centre()));
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
                .filter(k -> Arrays.stream(cells).anyMatch(c -> within(c, feet.get(k).centre(), reach)))
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
