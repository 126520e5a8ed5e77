package corewright.damage;

import corewright.field.Site;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.Readings;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a person said of single readings, put into effect: a reading set aside is taken out before anything is made of it; a
 * trusted one loses the doubt the program has of it, beside metal and against its neighbours alike. Later judgements win.
 */
final class Judged {
    /** Doubt left of a trusted reading: less than any contradiction, more than nothing, so that no logarithm is infinite. */
    private static final double HARDLY = 1e-12;

    /** Scatter left of a trusted call, in the field's unit: a quarter of that of a call by ear, so that it prevails. */
    private static final double SCATTER = 0.25;

    private final Map<Reading.Key, ReadingOverride> overrides = new HashMap<>();
    private final Set<Reading.Key> matched = new HashSet<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Survey survey;

    Judged(Survey all) {
        all.judgements().readings().forEach(o -> overrides.put(o.key(), o));
        Readings r = all.readings();
        Readings kept = overrides.isEmpty()
                ? r
                : new Readings(
                        kept(r.moisture()),
                        kept(r.taps()),
                        kept(r.probes()),
                        kept(r.feelers()),
                        kept(r.plugs()),
                        kept(r.temperatures()),
                        kept(r.curedTaps()));
        all.judgements().readings().stream()
                .map(ReadingOverride::key)
                .distinct()
                .filter(k -> !matched.contains(k))
                .forEach(k -> findings.add(new Finding(
                        Finding.Severity.DOUBT,
                        new Origin("survey.yaml", 0),
                        new About.OfJudgement(k),
                        Subject.JUDGEMENT_OF_NOTHING,
                        "no reading of that kind, id and place: the judgement " + k.id() + " speaks of nothing",
                        "kept in the survey, without effect on the map")));
        survey = all.with(kept);
    }

    private <R extends Reading> List<R> kept(List<R> readings) {
        List<R> kept = new ArrayList<>();
        for (R reading : readings) {
            Reading.Key key = reading.key();
            ReadingOverride override = overrides.get(key);
            if (override != null) {
                matched.add(key);
                findings.add(finding(reading, override));
            }
            if (override == null || override.trust() == Trust.TRUSTED) {
                kept.add(reading);
            }
        }
        return kept;
    }

    private static Finding finding(Reading reading, ReadingOverride override) {
        boolean trusted = override.trust() == Trust.TRUSTED;
        String why = override.reason().isEmpty() ? "no reason given" : override.reason();
        return new Finding(
                Finding.Severity.HINT,
                reading.origin(),
                About.of(reading),
                trusted ? Subject.TRUSTED : Subject.SET_ASIDE,
                (trusted ? "trusted by the surveyor: " : "set aside by the surveyor: ") + why,
                trusted ? "taken at its word, whatever is near it" : "says nothing of the deck");
    }

    /** The survey without what was set aside. */
    Survey survey() {
        return survey;
    }

    boolean trusted(Reading reading) {
        return !overrides.isEmpty() && overrides.containsKey(reading.key());
    }

    /** Whether a meter reading stands beside metal without being doubted for it. */
    boolean trusted(List<Moisture> repeats) {
        return repeats.stream().anyMatch(this::trusted);
    }

    /** What trusted readings say, without doubt. */
    List<Observation> heard(List<Observation> observations) {
        return observations.stream()
                .map(o -> trusted(o.reading()) && o.site() instanceof Site.Interval s
                        ? new Observation(
                                o.spot(),
                                new Site.Interval(
                                        s.low(),
                                        s.high(),
                                        Math.min(SCATTER, s.noise()),
                                        Math.min(HARDLY, s.doubt()),
                                        s.chance()),
                                o.reading())
                        : o)
                .toList();
    }

    /** Findings on a face; those on no face of the survey are told with the first. */
    List<Finding> findings(String face) {
        String first = survey.faces().get(0).name();
        return findings.stream()
                .filter(f -> {
                    String own = f.about().face();
                    boolean known =
                            survey.faces().stream().anyMatch(x -> x.name().equals(own));
                    return (known ? own : first).equals(face);
                })
                .toList();
    }
}
