package corewright.repair.mix;

import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Grams into each hole as a person reads them: whole grams, or tenths where a hole takes less than ten. They add up to the
 * cavity's to the last digit (largest remainder).
 *
 * @param netG into all holes
 */
public record HoleShares(List<Hole> holes, double netG) {
    private static final double TENTHS_BELOW_G = 10.5;

    /** Tenths of a gram in the finer unit. */
    private static final double TENTHS = 10;

    public HoleShares {
        holes = List.copyOf(holes);
    }

    /**
     * The same holes with shares that are whole numbers of the unit shown; the cavity they fill stays as large.
     *
     * @param wishedG into all of them
     */
    public static HoleShares of(List<Hole> holes, double wishedG) {
        double whole = holes.stream().mapToDouble(Hole::servedMm3).sum();
        boolean tenths = holes.stream().anyMatch(h -> wishedG * h.servedMm3() / whole < TENTHS_BELOW_G);
        double perG = tenths ? TENTHS : 1;
        long units = Math.max(1, Math.round(wishedG * perG));
        double[] wanted =
                holes.stream().mapToDouble(h -> units * h.servedMm3() / whole).toArray();
        long[] given =
                Arrays.stream(wanted).mapToLong(w -> (long) Math.floor(w)).toArray();
        long left = units - Arrays.stream(given).sum();
        IntStream.range(0, wanted.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> given[i] - wanted[i]))
                .limit(left)
                .forEach(i -> given[i]++);
        List<Hole> rounded = new ArrayList<>();
        for (int i = 0; i < wanted.length; i++) {
            rounded.add(holes.get(i).serving(whole * given[i] / units));
        }
        return new HoleShares(rounded, units / perG);
    }
}
