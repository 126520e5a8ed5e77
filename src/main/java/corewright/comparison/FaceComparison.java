package corewright.comparison;

import corewright.damage.FaceDamage;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One face of both surveys.
 *
 * @param before null where only the second survey has it
 * @param after null where only the first survey has it
 * @param whyNot why it cannot be compared, a sentence; empty where it can
 * @param notes what a reader must know of it, a sentence each
 * @param totals of the whole face
 * @param regions of the first survey, in its order
 * @param news damaged in the second survey only
 * @param panels stiffness of the panels that both surveys have
 */
public record FaceComparison(
        String name,
        @Nullable FaceDamage before,
        @Nullable FaceDamage after,
        String whyNot,
        List<String> notes,
        List<Change> totals,
        List<RegionChange> regions,
        List<NewPlace> news,
        List<Change> panels) {
    public FaceComparison {
        notes = List.copyOf(notes);
        totals = List.copyOf(totals);
        regions = List.copyOf(regions);
        news = List.copyOf(news);
        panels = List.copyOf(panels);
    }

    static FaceComparison open(String name, @Nullable FaceDamage before, @Nullable FaceDamage after, String whyNot) {
        return new FaceComparison(name, before, after, whyNot, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public boolean compared() {
        return whyNot.isEmpty();
    }

    /** Every figure of the face. */
    public List<Change> figures() {
        return Stream.of(
                        totals.stream(),
                        regions.stream().flatMap(r -> r.figures().stream()),
                        news.stream().map(NewPlace::figure),
                        panels.stream())
                .flatMap(s -> s)
                .toList();
    }
}
