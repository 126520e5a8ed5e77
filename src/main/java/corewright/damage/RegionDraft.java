package corewright.damage;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A region before it has its number.
 *
 * @param pWetMean over the cells of {@code likely}
 * @param voidMm3 from draws summed over those cells
 */
record RegionDraft(
        Bay bay,
        Condition condition,
        Polygon likely,
        Geometry possible,
        double pWetMean,
        Quantiles voidMm3,
        Depth depth) {
    /** Void depth over a region's cells. */
    record Depth(double meanMm, double maxMm) {}

    /**
     * Gravest first: void by volume, then wet-delaminated, delaminated and wet by area. A loose skin carries nothing
     * today, water will one day; ours to choose.
     */
    private static final Comparator<RegionDraft> GRAVITY = Comparator.comparingInt(
                    (RegionDraft r) -> switch (r.condition) {
                        case VOID -> 0;
                        case WET_DELAMINATED -> 1;
                        case DELAMINATED -> 2;
                        case WET -> 3;
                        case SOUND -> 4;
                    })
            .thenComparingDouble(r -> r.condition == Condition.VOID ? -r.voidMm3.p50() : 0)
            .thenComparingDouble(r -> -r.likely.getArea())
            .thenComparing(r -> r.bay.name())
            .thenComparingDouble(r -> r.likely.getEnvelopeInternal().getMinX())
            .thenComparingDouble(r -> r.likely.getEnvelopeInternal().getMinY());

    /** All drafts of a survey in the order of their numbers. */
    static List<RegionDraft> gravestFirst(Collection<RegionDraft> drafts) {
        return drafts.stream().sorted(GRAVITY).toList();
    }

    Region named(String id, double cellMm) {
        return new Region(
                id,
                bay.face(),
                bay.name(),
                condition,
                likely,
                possible,
                wellInside(likely, cellMm),
                pWetMean,
                voidMm3,
                depth.meanMm,
                depth.maxMm);
    }

    /** The centre of the largest circle inside. */
    static Point wellInside(Polygon polygon, double cellMm) {
        return MaximumInscribedCircle.getCenter(polygon, cellMm / 4);
    }
}
