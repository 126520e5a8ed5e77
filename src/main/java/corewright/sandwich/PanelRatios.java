package corewright.sandwich;

import corewright.sandwich.FootLoadMap.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How far feet sink with the pull of all skins of a panel, of which the pull of loose skins is known. Skins stiffen with the square of the
 * deflection, so with m the deflection before and w with it, {@code w + A w³ = m}; A depends on the place alone, and that little. It is reckoned by the
 * whole theory ({@link PanelPull}) for a few feet at a time, each time those least like the ones known ({@link FootLikeness}), until a batch
 * came out as foretold; the rest are foretold. Where the softest foot does not move, none does.
 */
final class PanelRatios {
    /** Part by which a foretold deflection may be off. */
    private static final double FORETOLD = 0.0075;

    /** A panel of which the softest foot moves by less than this part is told without: half of what rounding it to a per cent hides. */
    private static final double UNMOVED = 0.005;

    /** Feet that sink less than this part of the softest tell nothing of A, and A nothing of them. */
    private static final double SINKS = 0.3;

    /** Feet reckoned side by side. */
    private static final int BATCH = 2;

    /** Feet reckoned at most. */
    private static final int MOST = 40;

    private final FootLoads loads;
    private final Place[] places;
    private final FootLikeness alike;

    /** A of each foot that is known. */
    private final double[] stiffening;

    private final Place[] whole;
    private final List<Integer> known = new ArrayList<>();

    /** @param places with the pull of loose skins */
    PanelRatios(FootLoads loads, Place[] places) {
        this.loads = loads;
        this.places = places;
        alike = new FootLikeness(loads.feet, loads.model.loose.cells, places);
        stiffening = new double[places.length];
        whole = new Place[places.length];
    }

    /** Puts the deflections to the places. */
    void apply() {
        int softest = IntStream.range(0, places.length)
                .boxed()
                .max(Comparator.comparingDouble(k -> places[k].deflectionMm()))
                .orElseThrow();
        double most = places[softest].deflectionMm();
        reckon(new int[] {softest});
        if (Math.abs(whole[softest].deflectionMm() / most - 1) > UNMOVED) {
            int[] sinking = IntStream.range(0, places.length)
                    .filter(k -> places[k].deflectionMm() > SINKS * most)
                    .toArray();
            int[] order = alike.leastAlikeFirst(sinking, softest);
            boolean good = false;
            for (int from = 1; !good && from < Math.min(MOST, order.length); from += BATCH) {
                good = reckon(Arrays.copyOfRange(order, from, Math.min(from + BATCH, order.length)));
            }
            for (int k = 0; k < places.length; k++) {
                places[k] = foretold(k);
            }
        }
        known.forEach(k -> places[k] = whole[k]);
    }

    /** Reckons some feet; says whether they came out as foretold. */
    private boolean reckon(int[] some) {
        Place[] foretold = known.isEmpty()
                ? new Place[0]
                : IntStream.of(some).mapToObj(this::foretold).toArray(Place[]::new);
        IntStream.of(some).parallel().forEach(k -> whole[k] = loads.whole(places[k], k));
        boolean good = true;
        for (int i = 0; i < some.length; i++) {
            int k = some[i];
            double mm = whole[k].deflectionMm();
            stiffening[k] = (places[k].deflectionMm() / mm - 1) / (mm * mm);
            known.add(k);
            good &= foretold.length == 0 || Math.abs(foretold[i].deflectionMm() / mm - 1) < FORETOLD;
        }
        return good;
    }

    private Place foretold(int k) {
        Place p = places[k];
        double w = Karman.stiffened(p.deflectionMm(), Math.max(0, alike.between(k, known, stiffening)));
        Theory theory = p.theory() == Theory.LARGE_BETWEEN ? p.theory() : Theory.LARGE_BONDED_BETWEEN;
        return new Place(p.x(), p.y(), w, p.linearMm(), theory);
    }
}
