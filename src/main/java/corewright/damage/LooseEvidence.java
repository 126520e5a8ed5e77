package corewright.damage;

import corewright.field.Site;
import corewright.survey.About;
import corewright.survey.Feeler;
import corewright.survey.Finding;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings as statements on looseness f: an ordered scale in units of the scatter of a call by ear, bonded below zero,
 * loose above. A call is dull within a band about zero, where the edge of a loose patch is heard.
 */
final class LooseEvidence {
    /** Half width of the dull band, in units of the scatter of a call; chosen by trial on simulated decks. */
    static final double DULL_BAND = 1.5;

    /** Share of calls that have nothing to do with the skin: misheard, written in the wrong row; common practice. */
    private static final double MISHEARD = 0.02;

    private static final double ONE_OF_THREE = 1.0 / 3;

    /** A smaller gap is within the error of a depth read at a drill bit. */
    static final double GAP_MM = 0.3;

    /** Spacing of the statements a rod makes along its way. */
    private static final double ROD_STEP_MM = 40;

    private LooseEvidence() {}

    /** Everything a face's readings say of the bond under the outer skin; what is set aside goes to {@code findings}. */
    static List<Observation> of(Readings readings, TapScale scale, List<Finding> findings) {
        List<Observation> observations = new ArrayList<>();
        for (Tap tap : readings.taps()) {
            if (tap.side() == Side.INNER) {
                findings.add(fromBelow(tap));
            } else {
                observations.add(new Observation(tap.spot(), site(scale.call(tap)), tap));
            }
        }
        for (Probe probe : readings.probes()) {
            if (probe.voidDepthMm() >= GAP_MM) {
                observations.add(new Observation(probe.spot(), site(Sound.HOLLOW), probe));
            }
        }
        for (Feeler feeler : readings.feelers()) {
            along(feeler).forEach(s -> observations.add(new Observation(s, site(Sound.HOLLOW), feeler)));
        }
        return observations;
    }

    private static Site site(Sound sound) {
        double low = sound == Sound.SOUND ? Double.NEGATIVE_INFINITY : sound == Sound.DULL ? -DULL_BAND : DULL_BAND;
        double high = sound == Sound.SOUND ? -DULL_BAND : sound == Sound.DULL ? DULL_BAND : Double.POSITIVE_INFINITY;
        return new Site.Interval(low, high, 1, MISHEARD, ONE_OF_THREE);
    }

    /** Places along a rod, its entry included; the tip too where the rod had not met core. */
    static List<Spot> along(Feeler feeler) {
        Spot a = feeler.spot();
        Spot b = feeler.tip();
        double length = Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
        int steps = Math.max(1, (int) Math.ceil(length / ROD_STEP_MM));
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            double t = (double) i / steps;
            spots.add(new Spot(a.face(), a.xMm() + t * (b.xMm() - a.xMm()), a.yMm() + t * (b.yMm() - a.yMm())));
        }
        if (feeler.end() == corewright.survey.FeelerEnd.BEYOND) {
            spots.add(b);
        }
        return spots;
    }

    private static Finding fromBelow(Tap tap) {
        return new Finding(
                Finding.Severity.DOUBT,
                tap.origin(),
                About.of(tap),
                Subject.TAP_FROM_BELOW,
                "a tap on the inner skin tells of the inner bond only",
                "set aside: the map shows the bond under the outer skin");
    }
}
