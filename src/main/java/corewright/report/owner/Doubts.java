package corewright.report.owner;

import corewright.report.page.Wording;
import corewright.survey.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What was doubted, in the owner's words: how many, why, and what it does to the plan. */
final class Doubts {
    /** Told one by one; the rest is counted. */
    private static final int TOLD = 2;

    /** What a subject of findings means to an owner, of one and of several, those that move the plan most first. */
    private enum Known {
        METAL(
                "metal",
                "reading near metal may be falsely high and counts for less than it shows",
                "readings near metal may be falsely high and count for less than they show"),
        CONTRADICTION(
                "contradiction",
                "reading contradicts its neighbours; the plan follows the neighbours",
                "readings contradict their neighbours; the plan follows the neighbours"),
        FEW(
                "few readings",
                "part of the deck has too few readings to tell how far one speaks for its surroundings",
                "parts of the deck have too few readings to tell how far one speaks for its surroundings");

        private final String subject;
        private final String one;
        private final String several;

        Known(String subject, String one, String several) {
            this.subject = subject;
            this.one = one;
            this.several = several;
        }

        String words(long count) {
            return " " + Wording.sentence(Wording.count((int) count)) + " " + (count == 1 ? one : several) + ".";
        }
    }

    private Doubts() {}

    /** Empty where nothing was doubted; else sentences that begin with a space. */
    static String of(List<Finding> findings) {
        Map<String, Long> counts = findings.stream()
                .filter(f -> f.severity() != Finding.Severity.HINT)
                .collect(Collectors.groupingBy(Finding::subject, LinkedHashMap::new, Collectors.counting()));
        List<String> told = new ArrayList<>();
        for (Known known : Known.values()) {
            Long count = told.size() < TOLD ? counts.remove(known.subject) : null;
            if (count != null) {
                told.add(known.words(count));
            }
        }
        int rest = (int) counts.values().stream().mapToLong(Long::longValue).sum();
        String others = rest == 0
                ? ""
                : " " + Wording.sentence(Wording.count(rest, told.isEmpty() ? "doubt" : "more doubt"))
                        + ": see findings.csv.";
        return String.join("", told) + others;
    }
}
