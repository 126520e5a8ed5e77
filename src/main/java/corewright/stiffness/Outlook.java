package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import org.locationtech.jts.geom.Geometry;

/**
 * How bad things truly are: as estimated, or as in the better or the worse tenth of cases; one thing at a time, or all together.
 *
 * @param areaFactor damaged area of the face over what is estimated
 * @param depth of empty space
 * @param water what it left of the core
 * @param foamDerating share of the foam's modulus to count on
 * @param expansionFactor of the mix, over what its sheet says
 */
record Outlook(double areaFactor, Kind depth, Kind water, double foamDerating, double expansionFactor) {
    enum Kind {
        BETTER,
        MIDDLE,
        WORSE
    }

    /** The middle of 0.5 to 0.7, which is common practice until a cured sample is tested. */
    static final Outlook MIDDLE = new Outlook(1, Kind.MIDDLE, Kind.MIDDLE, 0.6, 1);

    static Outlook better(FaceDamage face) {
        return new Outlook(
                ratio(face.damagedMm2().p10(), face.damagedMm2().p50()), Kind.BETTER, Kind.BETTER, Doubt.FOAM_HIGH, 1);
    }

    static Outlook worse(FaceDamage face) {
        return new Outlook(
                ratio(face.damagedMm2().p90(), face.damagedMm2().p50()), Kind.WORSE, Kind.WORSE, Doubt.FOAM_LOW, 1);
    }

    /** As estimated but for one thing, at the low or the high end of its range. */
    static Outlook only(Doubt doubt, boolean high, FaceDamage face) {
        Outlook end = high ? worse(face) : better(face);
        return switch (doubt) {
            case AREA -> new Outlook(end.areaFactor, Kind.MIDDLE, Kind.MIDDLE, MIDDLE.foamDerating, 1);
            case DEPTH -> new Outlook(1, end.depth, Kind.MIDDLE, MIDDLE.foamDerating, 1);
            case WATER -> new Outlook(1, Kind.MIDDLE, high ? Kind.BETTER : Kind.WORSE, MIDDLE.foamDerating, 1);
            case FOAM -> new Outlook(1, Kind.MIDDLE, Kind.MIDDLE, high ? Doubt.FOAM_HIGH : Doubt.FOAM_LOW, 1);
            case EXPANSION ->
                new Outlook(
                        1,
                        Kind.MIDDLE,
                        Kind.MIDDLE,
                        MIDDLE.foamDerating,
                        high ? Doubt.EXPANSION_HIGH : Doubt.EXPANSION_LOW);
        };
    }

    private static double ratio(double part, double middle) {
        return middle > 0 ? part / middle : 1;
    }

    /**
     * A region's extent: its likely polygon, moved outward or inward all round until its area has the face's ratio. The
     * possible extent bounds it: more cannot be damaged than cannot be ruled out.
     */
    Geometry extent(Region region) {
        if (areaFactor == 1) {
            return region.likely();
        }
        double move =
                (areaFactor - 1) * region.likely().getArea() / region.likely().getLength();
        Geometry moved = region.likely().buffer(move, 2);
        return move > 0
                ? Overlay.union(Pieces.areal(Overlay.intersection(moved, region.possible())), region.likely())
                : moved;
    }

    /** Mean empty height of a region, millimetres, by the quantiles of its volume; at most the core. */
    double depthMm(Region region, double coreMm) {
        Quantiles volume = region.voidMm3();
        double part =
                switch (depth) {
                    case BETTER -> volume.p10();
                    case MIDDLE -> volume.p50();
                    case WORSE -> volume.p90();
                };
        double mean = volume.p50() > 0 ? region.meanVoidDepthMm() * part / volume.p50() : region.meanVoidDepthMm();
        return Math.min(coreMm, mean);
    }
}
