package corewright.field;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A block's observations, its own first, then those heard from outside, and what came of its own. The run itself is not
 * kept: it takes room with the square of its members.
 *
 * @param own how many are the block's own
 * @param doubt of its own: probability that it has nothing to do with the field
 * @param surprise of its own: standard deviations from what all others say
 */
@SuppressWarnings("ArrayRecordComponent")
record Block(
        int own, Places places, List<Site> observed, Sites sites, double[] doubt, double[] surprise, boolean settled) {

    static Block of(int own, Places places, List<Site> observed, ExpectationPropagation run, boolean settled) {
        int[] first = IntStream.range(0, own).toArray();
        Sites sites = new Sites(own);
        run.noteIn(sites, first);
        return new Block(
                own,
                places,
                observed,
                sites,
                Arrays.stream(first).mapToDouble(run::doubt).toArray(),
                Arrays.stream(first).mapToDouble(run::surprise).toArray(),
                settled);
    }

    /** Whether it heard the same, bit for bit. */
    boolean same(int others, Places there, List<Site> said) {
        return own == others && observed.equals(said) && places.same(there);
    }
}
