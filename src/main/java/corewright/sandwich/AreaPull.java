package corewright.sandwich;

import corewright.linear.SparseVector;
import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * By what the pull of the skins of one loose area multiplies the deflection under feet on it and about it. Feet are reckoned
 * ({@link LargeDeflection}) a few at a time, each time those least like the ones known ({@link FootLikeness}), until two
 * batches in a row came out as foretold; the rest are foretold. So a foot between others is off by more than the tolerance only where it
 * is less like them than the last batch was.
 */
final class AreaPull {
    /**
     * Rings about an area by the distance of a foot's square, mm: on it, beside it, and farther off, each only if the one before is
     * moved by the pull. That reaches far where a whole side of a panel is loose.
     */
    private static final double[] RINGS_MM = {25, 150, 400, Double.POSITIVE_INFINITY};

    /** A ring that pull changes by less than this part is the last: half of what rounding the figure to a per cent hides. */
    private static final double UNMOVED = 0.005;

    /** Part by which a foretold ratio may be off. */
    private static final double FORETOLD = 0.0075;

    /** Feet reckoned in each ring at most: time for them goes with their number, and most are soon foretold well. */
    private static final int[] MOST = {80, 40, 12, 10};

    /** Batches in a row that must come out as foretold. */
    private static final int GOOD = 2;

    /** Feet that must be known before others are foretold, unless pull moves none of them. */
    private static final int FIRST = 6;

    /** Feet reckoned side by side while few are known, and later. */
    private static final int FEW = 2;

    private static final int BATCH = 4;

    /** Deflections below this part of the thinner skin make no pull worth telling: 0.2 (1/8)² is 0.3 %. */
    private static final double SLIGHT = 0.125;

    /** Forces out of balance that are left, as part of those that bend the area: some 0.01 % of a foot's deflection. */
    private static final double BALANCE = 1e-4;

    /** Feet on an area from which on it is reduced to its deflections first. */
    private static final int MANY = 4;

    /** Numbers in the tangents that are kept, 64 MB: all of most areas. */
    private static final int TANGENTS = 8_000_000;

    /** So many feet most alike give a foot a shape to begin from. */
    private static final int ALIKE = 2;

    private final FootLoads loads;
    private final int[] area;
    private final Place[] places;
    private final FootLikeness alike;

    /** Distance of each foot from the area, as the rings count it. */
    private final double[] apart;

    private final double[] ratio;
    private final List<Integer> known = new ArrayList<>();

    /** Displacements of the area's nodes under feet that are known; only deflections of the reduced area. */
    private final double[][] shapes;

    private final ReducedFoot.@Nullable Settled[] settled;

    private @Nullable ReducedArea reduced;

    /** @param places with contact */
    AreaPull(FootLoads loads, int[] area, Place[] places) {
        this.loads = loads;
        this.area = area;
        this.places = places;
        alike = new FootLikeness(loads.feet, area, places);
        apart = loads.apart(area);
        ratio = new double[places.length];
        shapes = new double[places.length][];
        settled = new ReducedFoot.Settled[places.length];
        Arrays.fill(ratio, Double.NaN);
    }

    /**
     * Ratios by foot, NaN where the pull does not reach or no equilibrium is found.
     *
     * @param reckoned set for feet that are not foretold
     */
    double[] ratios(boolean[] reckoned) {
        LargeDeflection large = null;
        for (int ring = 0; ring < RINGS_MM.length; ring++) {
            int[] here = ring(ring);
            if (here.length == 0 || (ring == RINGS_MM.length - 1 && known.isEmpty())) {
                continue; // a foot so far off is moved only where nearer ones are
            }
            if (large == null) {
                large = loads.model.large(area);
                reduced = here.length > MANY && ReducedArea.pays(large) ? new ReducedArea(large) : null;
            }
            boolean moved = reckon(large, here, MOST[ring]);
            for (int k : here) {
                if (Double.isNaN(ratio[k]) && !known.isEmpty()) {
                    ratio[k] = alike.between(k, known, ratio);
                }
            }
            if (ring > 0 && !moved) {
                break;
            }
        }
        known.forEach(k -> reckoned[k] = true);
        return ratio;
    }

    /** Feet of a ring that sink enough for the skins to pull. */
    private int[] ring(int ring) {
        double thin = Math.min(
                loads.model.panel.outer().thicknessMm(),
                loads.model.panel.inner().thicknessMm());
        double from = ring == 0 ? Double.NEGATIVE_INFINITY : RINGS_MM[ring - 1];
        return IntStream.range(0, apart.length)
                .filter(k -> apart[k] >= from && apart[k] < RINGS_MM[ring])
                .filter(k -> places[k].deflectionMm() > SLIGHT * thin)
                .toArray();
    }

    /** Reckons feet until a batch is foretold well; says whether pull moves any. */
    private boolean reckon(LargeDeflection large, int[] here, int most) {
        int softest = Arrays.stream(here)
                .reduce((a, b) -> places[b].deflectionMm() > places[a].deflectionMm() ? b : a)
                .orElseThrow();
        int[] order = alike.leastAlikeFirst(here, softest);
        boolean moved = false;
        int good = 0;
        int to = 0;
        int last = Math.min(order.length, most);
        for (int from = 0; from < last; from = to) {
            to = Math.min(last, from + batch());
            int[] some = Arrays.copyOfRange(order, from, to);
            double[] foretold = Arrays.stream(some).mapToDouble(k -> from(k)).toArray();
            Reckoned[] whole = Arrays.stream(some)
                    .parallel()
                    .mapToObj(k -> whole(large, k))
                    .toArray(Reckoned[]::new);
            double worst = 0;
            for (int i = 0; i < some.length; i++) {
                if (whole[i] != null) {
                    double found = whole[i].mm / places[some[i]].deflectionMm();
                    ratio[some[i]] = found;
                    shapes[some[i]] = whole[i].shape;
                    settled[some[i]] = whole[i].settled.orElse(null);
                    known.add(some[i]);
                    moved |= Math.abs(found - 1) > UNMOVED;
                    worst = Math.max(worst, Double.isNaN(foretold[i]) ? 1 : Math.abs(foretold[i] / found - 1));
                }
            }
            letTangentsGo();
            good = worst < FORETOLD ? good + 1 : 0;
            if (good == GOOD) {
                break;
            }
        }
        return moved;
    }

    /** Keeps the latest tangents alone. */
    private void letTangentsGo() {
        int size = reduced == null ? 1 : reduced.w.length;
        int most = Math.max(BATCH, TANGENTS / (size * size));
        for (int k : known.subList(0, Math.max(0, known.size() - most))) {
            settled[k] = settled[k] == null ? null : settled[k].withoutTangent();
        }
    }

    /** The first alone, as the others begin from its shape. */
    private int batch() {
        return known.isEmpty() ? 1 : known.size() < FIRST ? FEW : BATCH;
    }

    /** What a foot is foretold: anything where pull moved none so far, nothing where it moved some of too few. */
    private double from(int foot) {
        boolean still = !known.isEmpty() && known.stream().allMatch(k -> Math.abs(ratio[k] - 1) < UNMOVED);
        return known.size() < FIRST && !still ? Double.NaN : alike.between(foot, known, ratio);
    }

    /** Deflection under a foot, and displacements of the area's nodes. */
    @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
    private record Reckoned(double mm, double[] shape, Optional<ReducedFoot.Settled> settled) {}

    /** A foot with the pull of this area; other areas rest as they do without it. Null if no equilibrium is found. */
    private @Nullable Reckoned whole(LargeDeflection large, int k) {
        return reduced == null ? full(large, k) : reduced(reduced, k);
    }

    private @Nullable Reckoned reduced(ReducedArea on, int k) {
        PanelModel model = loads.model;
        Foot foot = loads.feet.get(k);
        double[] push = loads.pushes[k];
        double[] elsewhere = push == null ? new double[0] : elsewhere(push);
        boolean apart = Arrays.stream(elsewhere).allMatch(p -> p == 0);
        List<SparseVector> forces =
                new ArrayList<>(List.of(apart ? foot.force() : model.withPushes(foot.force(), elsewhere), foot.ask()));
        if (push != null) {
            forces.add(model.withPushes(foot.force(), push));
        }
        double[][] carried = on.carried(forces);
        List<ReducedFoot.Settled> like = alike.mostAlike(k, known, ALIKE).stream()
                .map(other -> settled[other])
                .toList();
        Optional<double[]> resting = push == null ? Optional.empty() : Optional.of(on.deflections(carried[2]));
        double more = apart
                ? 0
                : model.withPushes(SparseVector.of(Map.of()), elsewhere).dot(model.solveLoose(foot.ask()));
        return new ReducedFoot(on, carried[0])
                .settle(like, resting, BALANCE)
                .map(found -> new Reckoned(
                        places[k].linearMm() + more + found.at(carried[1]), found.shape(), Optional.of(found)))
                .orElse(null);
    }

    private @Nullable Reckoned full(LargeDeflection large, int k) {
        PanelModel model = loads.model;
        Foot foot = loads.feet.get(k);
        double[] others = new double[model.matrix.size()];
        if (loads.pushes[k] != null) {
            model.addPushes(elsewhere(loads.pushes[k]), others);
        }
        double[] load = others.clone();
        foot.force().addTo(load);
        double[] local = large.on.local(model.solveLoose(SparseVector.of(load)));
        return large.settle(local, guesses(large, k, local), BALANCE, null)
                .map(settled -> {
                    double[] shape = LargeDeflection.sum(local, settled.added(), 1);
                    OptionalDouble here = large.on.at(shape, foot.ask());
                    double[] more = here.isPresent() ? new double[0] : large.forces(settled);
                    Arrays.setAll(more, i -> more[i] + others[i]);
                    double mm = here.orElseGet(
                            () -> places[k].linearMm() + SparseVector.of(more).dot(model.solveLoose(foot.ask())));
                    return new Reckoned(mm, shape, Optional.empty());
                })
                .orElse(null);
    }

    /** As contact alone leaves the area, and as it is under the feet most alike. */
    private List<double[]> guesses(LargeDeflection large, int k, double[] local) {
        List<double[]> totals = new ArrayList<>();
        alike.mostAlike(k, known, ALIKE).forEach(foot -> totals.add(shapes[foot]));
        if (loads.pushes[k] != null) {
            SparseVector load = loads.model.withPushes(loads.feet.get(k).force(), loads.pushes[k]);
            totals.add(large.on.local(loads.model.solveLoose(load)));
        }
        return totals.stream()
                .map(total -> LargeDeflection.sum(total, local, -1))
                .toList();
    }

    /** Pushes without those of this area. */
    private double[] elsewhere(double[] push) {
        BitSet own = new BitSet();
        Arrays.stream(area)
                .forEach(c -> Arrays.stream(loads.model.mesh.cells[c]).forEach(own::set));
        double[] rest = push.clone();
        for (int n = 0; n < rest.length; n++) {
            if (own.get(loads.model.loose.nodes[n])) {
                rest[n] = 0;
            }
        }
        return rest;
    }
}
