package corewright.assessment;

import java.io.IOException;
import java.nio.file.Files;

/**
 * Many sequences of readings, logs and runs; {@code PlanRevisionsTest} has a few of them in the gate.
 *
 * <p>{@code java corewright.assessment.PlanSequencesBench 200}
 */
public final class PlanSequencesBench {
    private PlanSequencesBench() {}

    public static void main(String[] args) throws IOException {
        int sequences = Integer.parseInt(args[0]);
        var survey = PlanRevisionsTest.survey(Files.createTempDirectory("sequences"));
        PlanSequences.Sums sums = new PlanSequences.Sums();
        int failed = 0;
        for (int seed = 1; seed <= sequences; seed++) {
            try {
                new PlanSequences(survey, seed).run(sums);
            } catch (AssertionError | RuntimeException e) {
                failed++;
                System.out.println("sequence " + seed + ": " + e);
            }
            if (seed % 10 == 0) {
                System.out.println(seed + " sequences, " + failed + " failed: " + sums);
            }
        }
    }
}
