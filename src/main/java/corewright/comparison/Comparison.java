package corewright.comparison;

import java.util.List;
import java.util.stream.Stream;

/**
 * Two surveys of one boat, compared.
 *
 * @param totals of all compared faces together; empty where none could be
 * @param faces those of the first survey in its order, then those that only the second has
 */
public record Comparison(Side before, Side after, List<Change> totals, List<FaceComparison> faces) {
    public Comparison {
        totals = List.copyOf(totals);
        faces = List.copyOf(faces);
    }

    /** Every figure, the whole first. */
    public List<Change> figures() {
        return Stream.concat(totals.stream(), faces.stream().flatMap(f -> f.figures().stream()))
                .toList();
    }

    /** Whether anything is said to have changed. */
    public boolean claims() {
        return figures().stream().anyMatch(Change::proven);
    }
}
