package corewright.repair.plan;

import java.util.List;

/**
 * One mix.
 *
 * @param holes ids of the holes it goes into, in order
 * @param partAG grams of resin
 * @param partBG grams of hardener
 * @param mixAtS when to begin mixing, from the start of the day's work
 * @param workUntilS out of the pot by then
 * @param firstRiseS begins to rise
 * @param hardAtS hard
 */
public record Batch(
        int number,
        String region,
        List<String> holes,
        double partAG,
        double partBG,
        double mixAtS,
        double workUntilS,
        double firstRiseS,
        double hardAtS) {
    public Batch {
        holes = List.copyOf(holes);
    }

    /** The same batch with other grams. */
    public Batch of(double otherAG, double otherBG) {
        return new Batch(number, region, holes, otherAG, otherBG, mixAtS, workUntilS, firstRiseS, hardAtS);
    }

    /** The same batch at another place in the day. */
    public Batch movedTo(int newNumber, double byS) {
        return new Batch(
                newNumber,
                region,
                holes,
                partAG,
                partBG,
                mixAtS + byS,
                workUntilS + byS,
                firstRiseS + byS,
                hardAtS + byS);
    }
}
