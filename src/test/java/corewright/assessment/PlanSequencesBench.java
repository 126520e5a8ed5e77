package corewright.assessment;

import java.io.IOException;
import java.nio.file.Files;

/**
 * Many sequences of readings, logs and runs; {@code PlanRevisionsTest} has a few of them in the gate.
 *
 * <p>{@code java corewright.assessment.PlanSequencesBench 200 1001 [lean]}: how many, the first seed, and whether only the last revision of
 * each is made again without what is remembered, which takes a third of the time
 */
public final class PlanSequencesBench {
    private PlanSequencesBench() {}

    public static void main(String[] args) throws IOException {
        int sequences = Integer.parseInt(args[0]);
        var survey = PlanRevisionsTest.survey(Files.createTempDirectory("sequences"));
        PlanSequences.Sums sums = new PlanSequences.Sums();
        int failed = 0;
        int first = Integer.parseInt(args[1]);
        boolean lean = args.length > 2;
        for (int done = 1; done <= sequences; done++) {
            int seed = first + done - 1;
            try {
                new PlanSequences(survey, seed, lean).run(sums);
            } catch (AssertionError | RuntimeException e) {
                failed++;
                System.out.println("sequence " + seed + ": " + e);
            }
            if (done % 5 == 0) {
                System.out.println(done + " sequences, " + failed + " failed: " + sums);
            }
        }
    }
}
