package corewright.bench;

import corewright.damage.Condition;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
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
 * @param wet intersection over union of cells; NaN where neither truth nor map has any
 * @param gapWet ten-bin mean absolute gap between stated and true share
 * @param litres the volume's quantiles
 * @param trueLitres the volume's truth
 */
record DeckScore(String deck, Overlap overlap, Quantiles litres, double trueLitres, int regions, double millis) {
    /** Intersection over union of the cells of each kind of damage; NaN where neither truth nor map has any. */
    record Overlap(double wet, double delaminated, double empty) {}

    static DeckScore of(Path folder, Survey survey) throws IOException {
        long start = System.nanoTime();
        DamageMap map = Damage.map(survey);
        double millis = (System.nanoTime() - start) / 1e6;
        TruthGrid wet = TruthGrid.read(folder.resolve("truth-wet.asc"));
        TruthGrid loose = TruthGrid.read(folder.resolve("truth-delaminated.asc"));
        TruthGrid depth = TruthGrid.read(folder.resolve("truth-void-depth-mm.asc"));
        IntPredicate trulyEmpty = i -> depth.at(i) > 0.5;
        Overlap overlap = new Overlap(
                overlap(
                        wet,
                        i -> wet.at(i) > 0.5,
                        map,
                        r -> r.condition() == Condition.WET
                                || r.condition() == Condition.WET_DELAMINATED
                                || (r.condition() == Condition.VOID && r.pWetMean() > 0.5)),
                overlap(loose, i -> loose.at(i) > 0.5 || trulyEmpty.test(i), map, r -> r.condition()
                        .loose()),
                overlap(depth, trulyEmpty, map, r -> r.condition() == Condition.VOID));
        double litres = 0;
        for (int i = 0; i < depth.size(); i++) {
            litres += depth.onDeck(i) ? depth.at(i) * depth.cell * depth.cell / 1e6 : 0;
        }
        String name = String.valueOf(folder.getFileName());
        return new DeckScore(
                name, overlap, map.voidMm3().times(1e-6), litres, map.regions().size(), millis);
    }

    private static double overlap(TruthGrid grid, IntPredicate truth, DamageMap map, Predicate<Region> counts) {
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
        return (double) both / either;
    }

    double volumeError() {
        return trueLitres > 0.3 ? Math.abs(litres.p50() - trueLitres) / trueLitres : Double.NaN;
    }

    boolean covered() {
        return litres.p10() <= trueLitres && trueLitres <= litres.p90();
    }

    static String head() {
        return "deck      wet   delam  void   true l    p10    p50    p90  error  in  regions   ms";
    }

    String line() {
        return String.format(
                Locale.ROOT,
                "%-8s %.3f  %.3f  %.3f  %6.3f  %6.3f %6.3f %6.3f  %5.3f  %-3s  %4d  %5.0f",
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
                regions,
                millis);
    }
}
