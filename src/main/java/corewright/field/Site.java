package corewright.field;

/** What one observation says of the latent field at its place. */
public sealed interface Site {
    /** The field is {@code value}, with a normal error. */
    record Value(double value, double error) implements Site {
        public Value {
            if (!Double.isFinite(value) || !(error > 0)) {
                throw new IllegalArgumentException("site of value " + value + " with error " + error);
            }
        }
    }

    /**
     * The field plus normal noise lies between two bounds, either of which may be infinite; with probability
     * {@code doubt} the observation has nothing to do with the field and falls here with probability {@code chance}.
     */
    record Interval(double low, double high, double noise, double doubt, double chance) implements Site {
        public Interval {
            if (!(low < high) || !(noise > 0) || !(doubt >= 0 && doubt < 1)) {
                throw new IllegalArgumentException("site from " + low + " to " + high + " with noise " + noise);
            }
        }
    }
}
