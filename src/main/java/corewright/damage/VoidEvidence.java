package corewright.damage;

import corewright.field.Site;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings as statements on u, where void depth = core tanh(max(u, 0)): zero where u is negative, thinning to the rim,
 * never above the core.
 */
final class VoidEvidence {
    /** Scatter of a depth read at a drill bit, common practice. */
    private static final double DEPTH_ERROR_MM = 0.5;

    /** Never trust a depth to better than this in u. */
    private static final double LEAST_ERROR = 0.05;

    /** Deeper than this share of the core the depth only bounds u: tanh has gone flat. */
    private static final double FULL_SHARE = 0.95;

    /** Sound taps farther than this from any sign of a cavity say nothing new and only cost time. */
    private static final double NEAR_MM = 200;

    private static final double COIN = 0.5;

    private VoidEvidence() {}

    /** Everything a face's readings say of the empty height under the outer skin. */
    static List<Observation> of(Survey survey, Readings readings, TapScale scale) {
        List<Observation> observations = new ArrayList<>();
        for (Probe probe : readings.probes()) {
            double core = survey.laminateAt(probe.spot()).coreMm();
            observations.add(new Observation(probe.spot(), depth(probe.voidDepthMm(), core), probe));
        }
        for (Feeler feeler : readings.feelers()) {
            addFeeler(survey, feeler, observations);
        }
        List<Tap> taps =
                readings.taps().stream().filter(t -> t.side() == Side.OUTER).toList();
        List<Spot> signs = new ArrayList<>();
        observations.forEach(o -> signs.add(o.spot()));
        taps.stream().filter(t -> scale.call(t) == Sound.HOLLOW).forEach(t -> signs.add(t.spot()));
        for (Tap tap : taps) {
            if (scale.call(tap) == Sound.SOUND && signs.stream().anyMatch(s -> near(s, tap.spot()))) {
                observations.add(new Observation(tap.spot(), none(0.15, 0.02), tap));
            }
        }
        return observations;
    }

    /** Whether some reading measured or felt an empty height, as against a tap that only rules it out. */
    static boolean measured(List<Observation> observations) {
        return observations.stream().anyMatch(o -> !(o.reading() instanceof Tap));
    }

    /** u at a depth; infinite beyond the core. */
    static double latent(double depthMm, double coreMm) {
        double share = Math.min(depthMm / coreMm, 1 - 1e-9);
        return 0.5 * Math.log((1 + share) / (1 - share));
    }

    static double depthMm(double u, double coreMm) {
        return u > 0 ? coreMm * Math.tanh(u) : 0;
    }

    private static Site depth(double depthMm, double coreMm) {
        if (depthMm < LooseEvidence.GAP_MM) {
            return none(0.05, 0.01);
        }
        double share = depthMm / coreMm;
        if (share > FULL_SHARE) {
            return new Site.Interval(latent(FULL_SHARE * coreMm, coreMm), Double.POSITIVE_INFINITY, 0.05, 0.01, COIN);
        }
        double slope = 1 / (coreMm * (1 - share * share));
        return new Site.Value(latent(depthMm, coreMm), DEPTH_ERROR_MM * slope + LEAST_ERROR);
    }

    /** Empty all along the rod; a noted depth stands for its whole way; firm core ends it. */
    private static void addFeeler(Survey survey, Feeler feeler, List<Observation> observations) {
        Double depthMm = feeler.voidDepthMm();
        for (Spot spot : LooseEvidence.along(feeler)) {
            double core = survey.laminateAt(spot).coreMm();
            Site site = depthMm != null && depthMm >= LooseEvidence.GAP_MM
                    ? depth(depthMm, core)
                    : new Site.Interval(latent(0.5, core), Double.POSITIVE_INFINITY, 0.15, 0.02, COIN);
            observations.add(new Observation(spot, site, feeler));
        }
        if (feeler.end() == FeelerEnd.FIRM) {
            observations.add(new Observation(feeler.tip(), none(0.15, 0.02), feeler));
        }
    }

    private static Site none(double noise, double doubt) {
        return new Site.Interval(Double.NEGATIVE_INFINITY, 0, noise, doubt, COIN);
    }

    private static boolean near(Spot a, Spot b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm()) <= NEAR_MM;
    }
}
