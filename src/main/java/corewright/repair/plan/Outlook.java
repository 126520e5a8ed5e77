package corewright.repair.plan;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How a plan does in cavities other than the most likely one, by simulation.
 *
 * @param emptySmall share that stays empty in a cavity as small as one in ten
 * @param emptyLarge share that stays empty in one as large as one in ten, what is held back poured where nothing shows
 * @param emptyLargeWithout the same with nothing held back
 * @param heldLikelyG mixed grams of the most likely space that are held back: P50 plus waste less what the cups for the holes hold
 * @param heldBackG mixed grams to be held back in all, up to P90 plus waste
 * @param shows places at which mix shows in the most likely cavity but not in the large one before anything of the
 *     held-back mix is poured, by their ids
 */
public record Outlook(
        double emptySmall,
        double emptyLarge,
        double emptyLargeWithout,
        double heldLikelyG,
        double heldBackG,
        List<String> shows) {
    /** Nothing simulated. */
    public static final Outlook NONE = new Outlook(0, 0, 0, 0, 0, List.of());

    public Outlook {
        shows = List.copyOf(shows);
    }

    /** The same with other ids. */
    public Outlook renamed(UnaryOperator<String> name) {
        return new Outlook(
                emptySmall,
                emptyLarge,
                emptyLargeWithout,
                heldLikelyG,
                heldBackG,
                shows.stream().map(name).toList());
    }
}
