package corewright.mutation;

import corewright.intake.Intake;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Readings;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How many of each kind a survey holds, taps by their sound and what is drawn by its kind, and what was said about it.
 *
 * @param said findings by subject and words, without their lines, which move as lines do
 */
record Counts(Map<String, Integer> of, Set<String> said) {
    static Counts of(Intake intake) {
        Survey survey = intake.survey();
        Readings r = survey.readings();
        Map<String, Integer> of = new TreeMap<>();
        of.put("moisture", r.moisture().size());
        of.put("probes", r.probes().size());
        of.put("feelers", r.feelers().size());
        of.put("plugs", r.plugs().size());
        of.put("temperatures", r.temperatures().size());
        of.put("log", survey.log().size());
        of.put("photos", survey.photos().size());
        of.put("loads", survey.loads().size());
        of.put("faces", survey.faces().size());
        taps("tap ", r.taps(), of);
        taps("cured tap ", r.curedTaps(), of);
        for (Face face : survey.faces()) {
            for (Feature feature : face.features()) {
                of.merge(feature.getClass().getSimpleName(), 1, Integer::sum);
            }
        }
        Set<String> said = intake.findings().stream().map(Counts::words).collect(Collectors.toSet());
        return new Counts(of, said);
    }

    private static void taps(String what, List<Tap> taps, Map<String, Integer> of) {
        taps.forEach(tap -> of.merge(what + tap.sound(), 1, Integer::sum));
    }

    private static String words(Finding finding) {
        return finding.subject() + ": " + finding.message();
    }

    /** Kinds of which a mutant holds fewer than this, with both numbers; empty where none. */
    String fewerIn(Counts mutant) {
        return of.entrySet().stream()
                .filter(e -> mutant.of.getOrDefault(e.getKey(), 0) < e.getValue())
                .map(e -> e.getKey() + " " + mutant.of.getOrDefault(e.getKey(), 0) + " of " + e.getValue())
                .collect(Collectors.joining(", "));
    }

    /** What is said of a mutant and not of this. */
    Set<String> newIn(Counts mutant) {
        Set<String> more = new HashSet<>(mutant.said);
        more.removeAll(said);
        return more;
    }
}
