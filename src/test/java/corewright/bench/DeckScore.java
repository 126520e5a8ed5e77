package corewright.bench;

import corewright.damage.Condition;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.reuse.Memory;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * How a map compares with the truth of one deck.
 *
 * @param overlap how well the cells of each kind of damage agree
 * @param litres the volume's quantiles
 * @param trueLitres the volume's truth
 * @param damagedM2 the damaged area's quantiles
 * @param trueM2 its truth
 */
record DeckScore(
        String deck,
        Overlap overlap,
        Quantiles litres,
        double trueLitres,
        Quantiles damagedM2,
        double trueM2,
        int regions,
        double millis) {
    /** Intersection over union of the cells of each kind of damage; NaN where neither truth nor map has any. */
    record Overlap(double wet, double delaminated, double empty) {}

    /** Maps the survey, timed, and scores the map. */
    static DeckScore of(String name, Survey survey, Truth truth) {
        long start = System.nanoTime();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        return of(name, map, truth, (System.nanoTime() - start) / 1e6);
    }

    static DeckScore of(String name, DamageMap map, Truth truth, double millis) {
        Overlap overlap = new Overlap(
                overlap(truth.wet(), truth::wetAt, map, DeckScore::wet),
                overlap(truth.loose(), truth::looseAt, map, r -> r.condition().loose()),
                overlap(truth.depth(), truth::emptyAt, map, r -> r.condition() == Condition.VOID));
        return new DeckScore(
                name,
                overlap,
                map.voidMm3().times(1e-6),
                truth.litres(),
                map.damagedMm2().times(1e-6),
                truth.damagedM2(),
                map.regions().size(),
                millis);
    }

    private static boolean wet(Region r) {
        return r.condition() == Condition.WET
                || r.condition() == Condition.WET_DELAMINATED
                || (r.condition() == Condition.VOID && r.pWetMean() > 0.5);
    }

    /** Square metres where the map is wrong on water, and on looseness, added up. */
    static double wrongM2(DamageMap map, Truth truth) {
        return differing(truth.wet(), truth::wetAt, map, DeckScore::wet)
                + differing(
                        truth.loose(), truth::looseAt, map, r -> r.condition().loose());
    }

    private static double differing(TruthGrid grid, IntPredicate truth, DamageMap map, Predicate<Region> counts) {
        int[] counted = counted(grid, truth, map, counts);
        return (counted[1] - counted[0]) * grid.cell * grid.cell / 1e6;
    }

    private static double overlap(TruthGrid grid, IntPredicate truth, DamageMap map, Predicate<Region> counts) {
        int[] counted = counted(grid, truth, map, counts);
        return (double) counted[0] / counted[1];
    }

    /** Cells in both map and truth, and in either. */
    private static int[] counted(TruthGrid grid, IntPredicate truth, DamageMap map, Predicate<Region> counts) {
        List<IndexedPointInAreaLocator> areas = new ArrayList<>();
        map.regions().stream().filter(counts).forEach(r -> areas.add(new IndexedPointInAreaLocator(r.likely())));
        int both = 0;
        int either = 0;
        for (int i = 0; i < grid.size(); i++) {
            if (grid.onDeck(i)) {
                Coordinate centre = new Coordinate(grid.x(i), grid.y(i));
                boolean said = areas.stream().anyMatch(a -> a.locate(centre) != Location.EXTERIOR);
                boolean is = truth.test(i);
                both += said && is ? 1 : 0;
                either += said || is ? 1 : 0;
            }
        }
        return new int[] {both, either};
    }

    double volumeError() {
        return trueLitres > 0.3 ? Math.abs(litres.p50() - trueLitres) / trueLitres : Double.NaN;
    }

    boolean covered() {
        return litres.p10() <= trueLitres && trueLitres <= litres.p90();
    }

    boolean areaCovered() {
        return damagedM2.p10() <= trueM2 && trueM2 <= damagedM2.p90();
    }

    static String head() {
        return "deck      wet   delam  void   true l    p10    p50    p90  error  in  true m2   p10   p50   p90  in  regions   ms";
    }

    String line() {
        return String.format(
                Locale.ROOT,
                "%-8s %.3f  %.3f  %.3f  %6.3f  %6.3f %6.3f %6.3f  %5.3f  %-3s  %6.3f %6.3f %6.3f %6.3f  %-3s  %4d  %5.0f",
                deck,
                overlap.wet,
                overlap.delaminated,
                overlap.empty,
                trueLitres,
                litres.p10(),
                litres.p50(),
                litres.p90(),
                volumeError(),
                covered() ? "yes" : "no",
                trueM2,
                damagedM2.p10(),
                damagedM2.p50(),
                damagedM2.p90(),
                areaCovered() ? "yes" : "no",
                regions,
                millis);
    }
}
