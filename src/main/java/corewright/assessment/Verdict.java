package corewright.assessment;

import corewright.damage.Coverage;
import corewright.damage.DamageMap;
import corewright.survey.Finding;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.List;

/**
 * Whether a verdict on the deck may be given at all, and what must be said where not. Every headline asks here first: the
 * owner's title, the command's summary and the window's slip. While it is withheld the map tells no region, so that nothing
 * is decided, planned or bought from it.
 *
 * @param doubts messages of the gate that must be settled first, the first the gravest
 * @param coverage of every face
 */
public record Verdict(List<String> doubts, List<Coverage> coverage) {
    public Verdict {
        doubts = List.copyOf(doubts);
        coverage = List.copyOf(coverage);
    }

    /** The verdict on a survey, by what was found odd in it. */
    public static Verdict of(Survey survey, List<Finding> findings) {
        List<String> doubts = findings.stream()
                .filter(f -> f.severity() == Finding.Severity.HAZARD && f.subject() == Subject.PLAUSIBILITY)
                .map(Finding::message)
                .toList();
        return new Verdict(doubts, Coverage.of(survey));
    }

    /** Whether the deck may be spoken of as a whole. */
    public boolean free() {
        return doubts.isEmpty() && coverage.stream().allMatch(Coverage::whole);
    }

    /** Something in the survey cannot well be so: nothing may be said of the deck, good or bad. */
    public boolean withheld() {
        return !doubts.isEmpty() || coverage.stream().allMatch(Coverage::nothing);
    }

    /** The map as far as it may be told: while a doubt is open nothing is said of any place. What was not read it knows. */
    DamageMap on(DamageMap map) {
        return doubts.isEmpty() ? map : map.withheld(sentence());
    }

    /** Whether anything may be said of a face. */
    public boolean read(String face) {
        return coverage.stream().noneMatch(c -> c.face().equals(face) && c.nothing());
    }

    /** What stands before or in place of a verdict; empty where it is free. */
    public String sentence() {
        if (doubts.size() > 1) {
            return "No verdict yet. " + doubts.get(0) + " " + (doubts.size() - 1)
                    + (doubts.size() == 2 ? " more thing" : " more things") + " cannot well be so either.";
        }
        if (!doubts.isEmpty()) {
            return "No verdict yet. " + doubts.get(0);
        }
        String unread = Coverage.unread(coverage);
        return unread.isEmpty() ? "" : (withheld() ? "No verdict is given. " : "") + unread;
    }
}
