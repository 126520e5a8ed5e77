package corewright.survey;

import java.util.Arrays;
import java.util.concurrent.CancellationException;

/**
 * Something could not be calculated for one panel or region by a defect of this program; all else stands.
 *
 * @param what that is missing, as it stands in a sentence: "the stiffness"
 * @param about the panel or region
 * @param cause for whoever mends it
 */
public record Defect(String what, About about, String cause) {
    /** What a failure cost. Work that is no longer wanted is no failure: that goes on up. */
    public static Defect of(String what, About about, RuntimeException failure) {
        if (failure instanceof CancellationException) {
            throw failure;
        }
        String place = Arrays.stream(failure.getStackTrace())
                .filter(f -> f.getClassName().startsWith("corewright."))
                .findFirst()
                .map(f -> " at " + f.getClassName() + " " + f.getLineNumber())
                .orElse("");
        return new Defect(what, about, failure + place);
    }

    /** In one sentence, wherever the figure is missed. */
    public String sentence() {
        return "By a defect of this program " + what + " of " + about.id() + " could not be calculated.";
    }

    /** For the list of findings. */
    public Finding finding() {
        return new Finding(
                Finding.Severity.DOUBT,
                new Origin("", 0),
                about,
                Subject.DEFECT,
                sentence(),
                "It is missing wherever it would stand; everything else is as it should be. (" + cause + ")");
    }
}
