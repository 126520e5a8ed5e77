package corewright.survey.settings;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The rules that turn probabilities into regions and regions into methods. All are common practice or our own choice,
 * none comes from a standard; a survey overrides any of them under {@code thresholds} in survey.yaml, in snake case.
 *
 * @param likely probability above which a place belongs to a region
 * @param possible probability from which damage cannot be ruled out
 * @param undecidedLow readings leave the question open from this probability ...
 * @param undecidedHigh ... to this one
 * @param voidDepthMm empty height above which a place counts as void
 * @param smallestRegionMm2 smaller patches join their neighbour
 * @param metalInfluenceMm a meter reads falsely high within this distance of metal
 * @param dryPlugPercent a plug at or below this proves the core dry
 * @param wetPlugPercent a plug at or above this proves the core wet
 * @param injectLargestMm2 a loose dry patch larger than this is opened, not injected
 * @param monitorIndex a bonded wet patch whose mean moisture index stays below this is watched, not dried (100 = the
 *     meter's wet reading)
 * @param looseGapMm height taken for a skin that is loose with no measured void
 * @param recoreMarginMm sound core cut away around damage that is opened
 * @param scarfRatio width of the scarf ground round a cut over the outer skin's thickness
 * @param cutWet core beside a wet region is cut out with it from this probability of wet on
 */
public record Thresholds(
        double likely,
        double possible,
        double undecidedLow,
        double undecidedHigh,
        double voidDepthMm,
        double smallestRegionMm2,
        double metalInfluenceMm,
        double dryPlugPercent,
        double wetPlugPercent,
        double injectLargestMm2,
        double monitorIndex,
        double looseGapMm,
        double recoreMarginMm,
        double scarfRatio,
        double cutWet) {
    /** Common practice where a handbook gives none; see docs/methods.md. */
    public static final Thresholds DEFAULT =
            new Thresholds(0.5, 0.1, 0.3, 0.7, 0.5, 5000, 100, 15, 20, 400_000, 120, 0.3, 25, 12, 0.2);

    public Thresholds {
        Check.within("likely", likely, 0.05, 0.95);
        Check.within("possible", possible, 0.01, likely);
        Check.within("undecidedLow", undecidedLow, 0, likely);
        Check.within("undecidedHigh", undecidedHigh, likely, 1);
        Check.positive("voidDepthMm", voidDepthMm);
        Check.notNegative("smallestRegionMm2", smallestRegionMm2);
        Check.notNegative("metalInfluenceMm", metalInfluenceMm);
        Check.positive("dryPlugPercent", dryPlugPercent);
        Check.within("wetPlugPercent", wetPlugPercent, dryPlugPercent, 500);
        Check.notNegative("injectLargestMm2", injectLargestMm2);
        Check.notNegative("monitorIndex", monitorIndex);
        Check.positive("looseGapMm", looseGapMm);
        Check.notNegative("recoreMarginMm", recoreMarginMm);
        Check.within("scarfRatio", scarfRatio, 4, 100);
        Check.within("cutWet", cutWet, 0.01, 1);
    }

    /** The same with another water content at or below which a plug proves the core dry. */
    public Thresholds withDryPlug(double percent) {
        return new Thresholds(
                likely,
                possible,
                undecidedLow,
                undecidedHigh,
                voidDepthMm,
                smallestRegionMm2,
                metalInfluenceMm,
                percent,
                wetPlugPercent,
                injectLargestMm2,
                monitorIndex,
                looseGapMm,
                recoreMarginMm,
                scarfRatio,
                cutWet);
    }

    /** As written in survey.yaml. */
    public static List<String> keys() {
        return Stream.of(Thresholds.class.getRecordComponents())
                .map(Thresholds::key)
                .toList();
    }

    /** The value of that key. */
    public double of(String key) {
        try {
            for (RecordComponent component : Thresholds.class.getRecordComponents()) {
                if (key(component).equals(key)) {
                    return (double) component.getAccessor().invoke(this);
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("settings records are public", e);
        }
        throw new IllegalArgumentException("no threshold is called " + key);
    }

    private static String key(RecordComponent component) {
        return component.getName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }
}
