package corewright.sandwich;

import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * By what the pull of all skins of a panel multiplies the deflection under feet of which the pull of loose skins is known. Feet are
 * reckoned by the whole theory ({@link PanelPull}) a few at a time, each time those least like the ones known ({@link FootLikeness}),
 * until a batch came out as foretold; the rest are foretold. Where the softest does not move, none does.
 */
final class PanelRatios {
    /** Part by which a foretold ratio may be off. */
    private static final double FORETOLD = 0.005;

    /** A panel of which the softest foot moves by less than this part is told without: half of what that foot is told to. */
    private static final double UNMOVED = 0.0025;

    /** Feet reckoned side by side. */
    private static final int BATCH = 2;

    /** Feet reckoned at most. */
    private static final int MOST = 40;

    private final FootLoads loads;
    private final Place[] places;
    private final FootLikeness alike;
    private final double[] ratio;
    private final Place[] whole;
    private final List<Integer> known = new ArrayList<>();

    /** @param places with the pull of loose skins */
    PanelRatios(FootLoads loads, Place[] places) {
        this.loads = loads;
        this.places = places;
        alike = new FootLikeness(loads.model, loads.model.loose.cells, places);
        ratio = new double[places.length];
        whole = new Place[places.length];
    }

    /** Puts the ratios to the places. */
    void apply() {
        int[] all = IntStream.range(0, places.length).toArray();
        int softest = IntStream.of(all)
                .boxed()
                .max(Comparator.comparingDouble(k -> places[k].deflectionMm()))
                .orElseThrow();
        int[] order = alike.leastAlikeFirst(all, softest);
        reckon(new int[] {softest});
        if (Math.abs(ratio[softest] - 1) > UNMOVED) {
            boolean good = false;
            for (int from = 1; !good && from < Math.min(MOST, order.length); from += BATCH) {
                good = reckon(Arrays.copyOfRange(order, from, Math.min(from + BATCH, order.length))) && from > 1;
            }
            for (int k : all) {
                places[k] = foretold(k);
            }
        }
        known.forEach(k -> places[k] = whole[k]);
    }

    /** Reckons some feet; says whether they came out as foretold. */
    private boolean reckon(int[] some) {
        double[] foretold = IntStream.of(some)
                .mapToDouble(k -> known.isEmpty() ? 1 : alike.between(k, known, ratio))
                .toArray();
        IntStream.of(some).parallel().forEach(k -> whole[k] = loads.whole(places[k], k));
        boolean good = true;
        for (int i = 0; i < some.length; i++) {
            int k = some[i];
            ratio[k] = whole[k].deflectionMm() / places[k].deflectionMm();
            known.add(k);
            good &= Math.abs(foretold[i] / ratio[k] - 1) < FORETOLD;
        }
        return good;
    }

    private Place foretold(int k) {
        Place p = places[k];
        double mm = p.deflectionMm() * alike.between(k, known, ratio);
        Theory theory = p.theory() == Theory.LARGE_BETWEEN ? p.theory() : Theory.LARGE_BONDED_BETWEEN;
        return new Place(p.x(), p.y(), mm, p.linearMm(), theory);
    }
}
