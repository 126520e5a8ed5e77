package corewright.report.owner;

import corewright.report.page.Wording;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What was doubted, in the owner's words: how many, why, and what it does to the plan. */
final class OwnerDoubts {
    /** Told one by one; the rest is counted. */
    private static final int TOLD = 2;

    /** What a subject of findings means to an owner, of one and of several, those that move the plan most first. */
    private enum Known {
        METAL(
                Subject.METAL,
                "reading near metal may be falsely high and counts for less than it shows",
                "readings near metal may be falsely high and count for less than they show"),
        CONTRADICTION(
                Subject.CONTRADICTION,
                "reading contradicts its neighbours; the plan follows the neighbours",
                "readings contradict their neighbours; the plan follows the neighbours"),
        FEW(
                Subject.FEW_READINGS,
                "part of the deck has too few readings to tell how far one speaks for its surroundings",
                "parts of the deck have too few readings to tell how far one speaks for its surroundings");

        private final Subject subject;
        private final String one;
        private final String several;

        Known(Subject subject, String one, String several) {
            this.subject = subject;
            this.one = one;
            this.several = several;
        }

        String words(int count) {
            return " " + Wording.sentence(Wording.count(count)) + " " + (count == 1 ? one : several) + ".";
        }
    }

    private OwnerDoubts() {}

    /** Empty where nothing was doubted; else sentences that begin with a space. */
    static String of(List<Finding> findings) {
        Map<Subject, Set<About>> doubted = new EnumMap<>(Subject.class);
        for (Finding f : findings) {
            if (f.severity() != Finding.Severity.HINT) {
                doubted.computeIfAbsent(f.subject(), s -> new LinkedHashSet<>()).add(f.about());
            }
        }
        doubted.values().forEach(OwnerDoubts::dropFacesOfBays);
        List<String> told = new ArrayList<>();
        for (Known known : Known.values()) {
            Set<About> things = told.size() < TOLD ? doubted.remove(known.subject) : null;
            if (things != null) {
                told.add(known.words(things.size()));
            }
        }
        String byHand = doubted.remove(Subject.RULE_BY_HAND) == null
                ? ""
                : " Rules or limits were set by hand: the survey record says which, by whom and why.";
        int rest = doubted.values().stream().mapToInt(Set::size).sum();
        String others = rest == 0
                ? ""
                : " " + Wording.sentence(Wording.count(rest, told.isEmpty() ? "doubt" : "more doubt"))
                        + ": see findings.csv.";
        return String.join("", told) + byHand + others;
    }

    /** What is said of a face's bays is not counted again for the face. */
    private static void dropFacesOfBays(Set<About> things) {
        Set<String> faces = things.stream()
                .filter(About.OfBay.class::isInstance)
                .map(About::face)
                .collect(Collectors.toSet());
        things.removeIf(a -> a instanceof About.OfFace face && faces.contains(face.face()));
    }
}
