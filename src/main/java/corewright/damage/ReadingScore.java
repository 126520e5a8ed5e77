package corewright.damage;

import corewright.field.Normal;
import corewright.field.Site;
import corewright.survey.Moisture;
import corewright.survey.Reading;
import corewright.survey.Tap;

/** A kind of reading as one figure a reading, so that readings can be set beside what is foretold of them. */
enum ReadingScore {
    /** The moisture index, cut off where a reading only says dry or wet. */
    INDEX {
        @Override
        double of(double latent) {
            return Math.max(Insight.LEAST_INDEX, Math.min(Insight.MOST_INDEX, 200 / (1 + Math.exp(-latent))));
        }

        @Override
        double bound() {
            return 0;
        }

        @Override
        double byChance() {
            return 0.5;
        }

        @Override
        boolean counts(Reading reading) {
            return reading instanceof Moisture m && !m.reference();
        }
    },
    /** 0 sound, 0.5 dull, 1 hollow. */
    CALL {
        @Override
        double of(double latent) {
            return latent < -LooseEvidence.DULL_BAND ? 0 : latent < LooseEvidence.DULL_BAND ? 0.5 : 1;
        }

        @Override
        double bound() {
            return -LooseEvidence.DULL_BAND;
        }

        @Override
        double byChance() {
            return 2.0 / 3; // of three calls two are not "sound"
        }

        @Override
        boolean counts(Reading reading) {
            return reading instanceof Tap;
        }
    };

    /** Nodes of the means over a normal: 161 from -4 to 4, which takes a step function to 0.02 of its height. */
    private static final int NODES = 161;

    private static final double STEP = 0.05;

    /** The score of a value of the field. */
    abstract double of(double latent);

    /** Above this a reading comes true: wet, or not sound. */
    abstract double bound();

    /** Probability that a reading which has nothing to do with the field comes true. */
    abstract double byChance();

    abstract boolean counts(Reading reading);

    /** The score as read. */
    double seen(Site site) {
        return site instanceof Site.Interval i ? of(inside(i)) : of(((Site.Value) site).value());
    }

    /** A value within the bounds, beyond the one that is given where only one is. */
    private static double inside(Site.Interval i) {
        if (Double.isInfinite(i.low())) {
            return i.high() - 1e-9;
        }
        return Double.isInfinite(i.high()) ? i.low() + 1e-9 : 0.5 * (i.low() + i.high());
    }

    /** Whether a reading says on which side of {@link #bound} it lies. */
    boolean tells(Site site) {
        return !(site instanceof Site.Interval i) || i.low() >= bound() || i.high() <= bound();
    }

    boolean came(Site site) {
        return site instanceof Site.Interval i ? i.low() >= bound() : ((Site.Value) site).value() > bound();
    }

    /** Standard deviation of a reading about the field, in the field's unit. */
    static double scatter(Site site) {
        return site instanceof Site.Interval i ? i.noise() : ((Site.Value) site).error();
    }

    /** Probability of a score from low to high, both counted in, of a latent value's mean and standard deviation. */
    double within(double mean, double sd, double low, double high) {
        double inside = 0;
        double all = 0;
        for (int i = 0; i < NODES; i++) {
            double b = -4 + i * STEP;
            double w = Normal.density(b);
            double s = of(mean + sd * b);
            inside += s >= low && s <= high ? w : 0;
            all += w;
        }
        return inside / all;
    }

    /**
     * Mean squared half-difference of two readings' scores whose latent values have a mean, a shared variance and each a
     * variance of its own: the variance of the score given what is shared, averaged over that.
     */
    double halfSquare(double mean, double shared, double own) {
        double sum = 0;
        double weights = 0;
        double step = 2 * STEP;
        for (int i = 0; i < NODES; i += 2) {
            double a = -4 + i * STEP;
            double w = Normal.density(a) * step;
            sum += w * variance(mean + Math.sqrt(Math.max(0, shared)) * a, Math.sqrt(own));
            weights += w;
        }
        return sum / weights;
    }

    private double variance(double mean, double sd) {
        double sum = 0;
        double squares = 0;
        double weights = 0;
        for (int i = 0; i < NODES; i++) {
            double b = -4 + i * STEP;
            double w = Normal.density(b);
            double s = of(mean + sd * b);
            sum += w * s;
            squares += w * s * s;
            weights += w;
        }
        double average = sum / weights;
        return Math.max(0, squares / weights - average * average);
    }
}
