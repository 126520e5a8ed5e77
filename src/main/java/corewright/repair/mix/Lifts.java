package corewright.repair.mix;

import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.settings.Drilling;
import java.util.List;

/**
 * In how many lifts a place is filled: a space that is higher than the mix may be poured heats itself, so that it takes equal parts
 * one on top of the other, each hard before the next. That is so where liquid lies level; where it runs down it stands as high as the
 * space whatever is poured, and there are no lifts.
 *
 * @param highestMm one lift at most
 */
public record Lifts(double highestMm) {
    /** One lift, whatever the height. */
    public static final Lifts NONE = new Lifts(Double.POSITIVE_INFINITY);

    /** A steeper face lets a puddle of a reach run together at its low end. Practice. */
    private static final double LEVEL_DEG = 5;

    private static final double FLAT_DEG = 180;

    public static Lifts of(Face face, Drilling drilling) {
        double fromLevelDeg = Math.min(face.tiltDeg(), FLAT_DEG - face.tiltDeg());
        return fromLevelDeg <= LEVEL_DEG ? new Lifts(drilling.highestFillMm()) : NONE;
    }

    /** Lifts at a hole, by the empty height round it. */
    public int at(Hole hole) {
        return Math.max(1, (int) Math.ceil(hole.gapMm() / highestMm - 1e-9));
    }

    /** Most lifts at any of some holes, at least 1. */
    public int most(List<Hole> holes) {
        return holes.stream().mapToInt(this::at).max().orElse(1);
    }

    /** Number of the lift that a cup is for, from 1: it goes where cups went that are hard by then. */
    public static int number(Batch cup, List<Batch> cups) {
        return 1
                + cups.stream()
                        .filter(c -> onTop(cup, c))
                        .mapToInt(c -> number(c, cups))
                        .max()
                        .orElse(0);
    }

    /** Whether no further lift goes on top of a cup. */
    public static boolean last(Batch cup, List<Batch> cups) {
        return cups.stream().noneMatch(c -> onTop(c, cup));
    }

    private static boolean onTop(Batch upper, Batch lower) {
        return upper.mixAtS() >= lower.hardAtS() - 1e-6
                && lower.holes().stream().anyMatch(upper.holes()::contains);
    }
}
