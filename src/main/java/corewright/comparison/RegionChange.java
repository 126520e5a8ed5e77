package corewright.comparison;

import corewright.damage.Region;
import corewright.decision.Method;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a region of the first survey.
 *
 * @param method what was advised for it; null where no plan was made
 * @param figures of the region's place in both surveys; the first is the one that {@code fate} rests on
 * @param leftMm2 of it that is damaged in the second survey
 */
public record RegionChange(Region region, @Nullable Method method, Fate fate, List<Change> figures, double leftMm2) {
    public RegionChange {
        figures = List.copyOf(figures);
    }

    /** What became of a place. */
    public enum Fate {
        /** What was wrong is gone, proven. */
        MENDED("mended"),
        /** Less is wrong than was, proven, but not nothing. */
        PARTLY("partly mended"),
        /** Damage is proven where the first survey read and found none. */
        NEW("new"),
        /** The readings do not prove that it changed. */
        NOT_PROVEN("not proven"),
        /** One of the surveys did not read there. */
        NOT_READ("not read again"),
        /** Both read there, but their readings cannot be compared. */
        NOT_COMPARABLE("cannot be compared");

        private final String word;

        Fate(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
