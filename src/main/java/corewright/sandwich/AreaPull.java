package corewright.sandwich;

import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * By what the pull of the skins of one loose area multiplies the deflection under feet on it and about it. Feet are reckoned
 * ({@link LargeDeflection}) a few at a time, each time those least like the ones known ({@link FootLikeness}), until a whole
 * batch came out as foretold; the rest are foretold. So a foot between others is off by more than the tolerance only where it
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
    private static final int[] MOST = {14, 6, 4, 4};

    /** Feet to begin a ring with, and a batch: an even number, as most machines have an even number of processors. */
    private static final int FIRST = 6;

    private static final int BATCH = 4;

    /** Deflections below this part of the thinner skin make no pull worth telling: 0.2 (1/8)² is 0.3 %. */
    private static final double SLIGHT = 0.125;

    /** Forces out of balance that are left, as part of those that bend the area: some 0.01 % of a foot's deflection. */
    private static final double BALANCE = 1e-4;

    private final FootLoads loads;
    private final int[] area;
    private final Place[] places;
    private final FootLikeness alike;
    private final double[] ratio;
    private final List<Integer> known = new ArrayList<>();

    /** @param places with contact */
    AreaPull(FootLoads loads, int[] area, Place[] places) {
        this.loads = loads;
        this.area = area;
        this.places = places;
        alike = new FootLikeness(loads.model, area, places);
        ratio = new double[places.length];
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
        BitSet nearer = new BitSet();
        if (ring > 0) {
            Arrays.stream(loads.beside(area, RINGS_MM[ring - 1])).forEach(nearer::set);
        }
        return Arrays.stream(loads.beside(area, RINGS_MM[ring]))
                .filter(k -> !nearer.get(k) && places[k].deflectionMm() > SLIGHT * thin)
                .toArray();
    }

    /** Reckons feet until a batch is foretold well; says whether pull moves any. */
    private boolean reckon(LargeDeflection large, int[] here, int most) {
        int softest = Arrays.stream(here)
                .reduce((a, b) -> places[b].deflectionMm() > places[a].deflectionMm() ? b : a)
                .orElseThrow();
        int[] order = alike.leastAlikeFirst(here, softest);
        boolean moved = false;
        int to = 0;
        int last = Math.min(order.length, most);
        for (int from = 0; from < last; from = to) {
            to = Math.min(last, from + (from == 0 ? FIRST : BATCH));
            int[] some = Arrays.copyOfRange(order, from, to);
            double[] foretold = Arrays.stream(some).mapToDouble(k -> from(k)).toArray();
            double[] whole = Arrays.stream(some)
                    .parallel()
                    .mapToDouble(k -> whole(large, k))
                    .toArray();
            double worst = 0;
            for (int i = 0; i < some.length; i++) {
                double found = whole[i] / places[some[i]].deflectionMm();
                if (!Double.isNaN(found)) {
                    ratio[some[i]] = found;
                    known.add(some[i]);
                    moved |= Math.abs(found - 1) > UNMOVED;
                    worst = Math.max(worst, Double.isNaN(foretold[i]) ? 1 : Math.abs(foretold[i] / found - 1));
                }
            }
            if (worst < FORETOLD) {
                break;
            }
        }
        return moved;
    }

    private double from(int foot) {
        return known.size() < FIRST ? Double.NaN : alike.between(foot, known, ratio);
    }

    /**
     * Deflection under a foot with the pull of this area; other areas rest as they do without it. NaN if no equilibrium is
     * found.
     */
    private double whole(LargeDeflection large, int k) {
        PanelModel model = loads.model;
        Foot foot = loads.feet.get(k);
        double[] others = new double[model.matrix.size()];
        if (loads.pushes[k] != null) {
            model.addPushes(elsewhere(loads.pushes[k]), others);
        }
        double[] load = others.clone();
        foot.force().addTo(load);
        return large.settle(model.factor.solve(load), large.nothing(), BALANCE)
                .map(settled -> {
                    double[] more = large.forces(settled);
                    Arrays.setAll(more, i -> more[i] + others[i]);
                    return places[k].linearMm() + foot.ask().dot(model.factor.solve(more));
                })
                .orElse(Double.NaN);
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
