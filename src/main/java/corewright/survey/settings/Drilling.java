package corewright.survey.settings;

/**
 * How holes are drilled and filled. All figures are common practice without a source unless said; a survey overrides
 * them under {@code drilling} in survey.yaml.
 *
 * @param holeDiameterMm bit
 * @param edgeClearanceMm least distance of a hole from the region's edge and from supports
 * @param depthMarginMm what is left under the drill's tip above the inner skin
 * @param pressureKPa at the hole
 * @param rateMlPerS what the tool delivers
 * @param reachSafety share of the computed reach that is relied on
 * @param reachCapMm never rely on more than this
 * @param wasteFraction of what is mixed: pot, nozzle, hole backflow
 * @param mixingS to weigh and stir a batch
 * @param largestBatchG exotherm: never more in one pot
 * @param highestFillMm a higher space is filled in lifts, each left to harden before the next
 * @param nozzleLengthMm of a long nozzle, pushed in through an access
 * @param nozzleOuterMm its diameter
 * @param nozzleBoreMm inside
 */
public record Drilling(
        double holeDiameterMm,
        double edgeClearanceMm,
        double depthMarginMm,
        double pressureKPa,
        double rateMlPerS,
        double reachSafety,
        double reachCapMm,
        double wasteFraction,
        double mixingS,
        double largestBatchG,
        double highestFillMm,
        double nozzleLengthMm,
        double nozzleOuterMm,
        double nozzleBoreMm) {
    static final Drilling DEFAULT = new Drilling(6.4, 12.5, 1.5, 40, 3, 0.5, 150, 0.15, 60, 200, 12, 300, 6, 5);

    public Drilling {
        Check.positive("holeDiameterMm", holeDiameterMm);
        Check.notNegative("edgeClearanceMm", edgeClearanceMm);
        Check.notNegative("depthMarginMm", depthMarginMm);
        Check.positive("pressureKPa", pressureKPa);
        Check.positive("rateMlPerS", rateMlPerS);
        Check.within("reachSafety", reachSafety, 0.05, 1);
        Check.positive("reachCapMm", reachCapMm);
        Check.within("wasteFraction", wasteFraction, 0, 0.9);
        Check.notNegative("mixingS", mixingS);
        Check.positive("largestBatchG", largestBatchG);
        Check.positive("highestFillMm", highestFillMm);
        Check.notNegative("nozzleLengthMm", nozzleLengthMm);
        Check.positive("nozzleOuterMm", nozzleOuterMm);
        Check.positive("nozzleBoreMm", nozzleBoreMm);
    }
}
