package corewright.survey;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Something a person should know: a reading doubted or set aside, a thing assumed, a thing that cannot be known. Not an
 * error: the survey is worked on all the same.
 *
 * @param origin where what it is about was read from
 * @param message place, fact
 * @param effect what it does to the result
 */
public record Finding(Severity severity, Origin origin, About about, Subject subject, String message, String effect) {
    /** From what can hurt or spoil to what would merely help. */
    public enum Severity {
        /** Can hurt somebody or spoil the work. */
        HAZARD,
        /** The result is less certain for it. */
        DOUBT,
        /** Would make the result better. */
        HINT
    }

    /** What is said of what, in whatever words. Two stages that say the same of one thing say it once. */
    public record Fact(About about, Subject subject) {}

    public Fact fact() {
        return new Fact(about, subject);
    }

    /** The reading that it doubts: one that counts for less than it shows, or for nothing. */
    public Optional<Reading.Key> doubted() {
        return severity == Severity.DOUBT
                        && about instanceof About.OfReading of
                        && subject.standing() != Subject.Standing.TAKEN
                ? Optional.of(of.reading())
                : Optional.empty();
    }

    /**
     * Findings of stages in the order of the chain; a fact that an earlier stage has told is not told again.
     *
     * @param stages findings of each stage; one stage may tell of several facts of one kind
     */
    public static List<Finding> once(List<List<Finding>> stages) {
        Set<Finding> all = new LinkedHashSet<>();
        Set<Fact> told = new HashSet<>();
        for (List<Finding> stage : stages) {
            List<Fact> own = new ArrayList<>();
            for (Finding finding : stage) {
                if (!told.contains(finding.fact())) {
                    all.add(finding);
                    own.add(finding.fact());
                }
            }
            told.addAll(own);
        }
        return List.copyOf(all);
    }
}
