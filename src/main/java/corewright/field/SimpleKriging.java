package corewright.field;

/**
 * Simple kriging: the mean is known, for certain or with a normal prior. Without samples the answer is the prior. Source:
 * Isaaks and Srivastava (1989), ch. 12; prior mean: Omre (1987), Math. Geology 19:25-39.
 *
 * <p>Coincident samples are merged first. Under {@link Target#VALUE} a node at a sample gets that sample's value and its
 * error variance.
 */
public final class SimpleKriging extends Kriging {
    public SimpleKriging(Samples samples, Variogram variogram, Mean mean, Target target) {
        super(new KrigingSystem(samples.merged(), variogram, informed(mean), target));
    }

    private static Mean informed(Mean mean) {
        if (Double.isInfinite(mean.variance())) {
            throw new IllegalArgumentException("simple kriging needs a mean; take ordinary kriging");
        }
        return mean;
    }
}
