package corewright.field;

/**
 * Ordinary kriging: the mean is unknown and constant, the weights sum to one. Source: Isaaks and Srivastava (1989), ch. 12;
 * solved by the covariance's Cholesky factor and the generalised least squares mean (Chiles and Delfiner 2012, section
 * 3.4), which is the same thing as the bordered system.
 *
 * <p>Coincident samples are merged first. Under {@link Target#VALUE} a node at a sample gets that sample's value and its
 * error variance.
 */
public final class OrdinaryKriging extends Kriging {
    /** Of the value: exact at the samples. */
    public OrdinaryKriging(Samples samples, Variogram variogram) {
        this(samples, variogram, Target.VALUE);
    }

    public OrdinaryKriging(Samples samples, Variogram variogram, Target target) {
        super(new KrigingSystem(some(samples.merged()), variogram, Mean.unknown(), target));
    }

    private static Samples some(Samples samples) {
        if (samples.size() == 0) {
            throw new IllegalArgumentException(
                    "ordinary kriging needs at least one sample: with none the mean is unknown");
        }
        return samples;
    }
}
