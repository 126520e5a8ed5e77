package corewright.damage;

import corewright.survey.Moisture;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A straight line between two meters' scales from places read with both: {@code other = offset + slope value}.
 *
 * <p>Both meters scatter, so neither is regressed on the other: the line through the means whose slope is the ratio of the
 * standard deviations (reduced major axis; Sokal and Rohlf, Biometry, 3rd ed. 1995, section 14.13).
 *
 * @param places read with both
 */
record MeterMatch(double offset, double slope, int places) {
    /** Two readings this near are of one place: the width of a meter's sensor is some 50 mm, half of it either way. */
    private static final double SAME_PLACE_MM = 25;

    /** Fewer common places settle no line; judgement. */
    private static final int ENOUGH = 5;

    /** Meters that agree less than this are not read as one; judgement. */
    private static final double LEAST_CORRELATION = 0.8;

    /** The line, or null where the common places do not show one. Readings off scale say nothing of it. */
    static @Nullable MeterMatch of(List<Moisture> own, List<Moisture> other) {
        List<double[]> pairs = new ArrayList<>();
        for (Moisture a : own) {
            Moisture nearest = null;
            double least = SAME_PLACE_MM;
            for (Moisture b : other) {
                double d = Math.hypot(
                        a.spot().xMm() - b.spot().xMm(),
                        a.spot().yMm() - b.spot().yMm());
                boolean comparable = !a.offScale()
                        && !b.offScale()
                        && a.side() == b.side()
                        && a.spot().face().equals(b.spot().face());
                if (comparable && d <= least) {
                    least = d;
                    nearest = b;
                }
            }
            if (nearest != null) {
                pairs.add(new double[] {a.value(), nearest.value()});
            }
        }
        return pairs.size() < ENOUGH ? null : line(pairs);
    }

    private static @Nullable MeterMatch line(List<double[]> pairs) {
        double meanX = pairs.stream().mapToDouble(p -> p[0]).average().orElse(0);
        double meanY = pairs.stream().mapToDouble(p -> p[1]).average().orElse(0);
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (double[] p : pairs) {
            xx += (p[0] - meanX) * (p[0] - meanX);
            yy += (p[1] - meanY) * (p[1] - meanY);
            xy += (p[0] - meanX) * (p[1] - meanY);
        }
        if (!(xy > LEAST_CORRELATION * Math.sqrt(xx * yy))) {
            return null;
        }
        double slope = Math.sqrt(yy / xx);
        return new MeterMatch(meanY - slope * meanX, slope, pairs.size());
    }

    /** What this meter would show where the other shows {@code value}. */
    double onOwnScale(double value) {
        return (value - offset) / slope;
    }
}
