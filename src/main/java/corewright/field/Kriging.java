package corewright.field;

/** Best linear estimates from samples, under one variogram and one state of knowledge of the mean. Immutable. */
public abstract sealed class Kriging permits OrdinaryKriging, SimpleKriging {
    /** Beyond this many samples the all-samples form would need gigabytes and minutes: ask for neighbours. */
    public static final int MOST_SAMPLES_AT_ONCE = 6000;

    final KrigingSystem system;

    Kriging(KrigingSystem system) {
        this.system = system;
    }

    /**
     * Estimates at nodes, in their order.
     *
     * @param nodesX coordinate unit, same length as nodesY
     * @param neighbours how many nearest samples each node uses; 0 uses all
     */
    public final Estimates estimate(double[] nodesX, double[] nodesY, int neighbours) {
        return system.estimate(nodesX, nodesY, neighbours);
    }

    /** The samples as used: one a place. */
    public final Samples samples() {
        return system.samples;
    }
}
