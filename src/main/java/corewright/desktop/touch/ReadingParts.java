package corewright.desktop.touch;

import corewright.survey.Edit;
import corewright.survey.Part;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Readings of whatever kind in their lists. */
final class ReadingParts {
    private ReadingParts() {}

    /** The list that holds readings of that kind. */
    @SuppressWarnings("unchecked") // the kind says what the list holds
    private static <R extends Reading> Part<R> part(Reading.Kind kind) {
        return (Part<R>)
                switch (kind) {
                    case MOISTURE -> Part.MOISTURE;
                    case TAP -> Part.TAPS;
                    case PROBE -> Part.PROBES;
                    case FEELER -> Part.FEELERS;
                    case PLUG -> Part.PLUGS;
                    case TEMPERATURE -> Part.TEMPERATURES;
                };
    }

    static List<Reading> of(Survey survey, Reading.Kind kind) {
        return part(kind).of(survey);
    }

    /** Everything read on a face that a map rests on. */
    static List<Reading> on(Survey survey, String face) {
        return Stream.of(
                        Reading.Kind.PROBE,
                        Reading.Kind.PLUG,
                        Reading.Kind.FEELER,
                        Reading.Kind.MOISTURE,
                        Reading.Kind.TAP)
                .flatMap(k -> of(survey, k).stream())
                .filter(r -> r.spot().face().equals(face))
                .toList();
    }

    static boolean holds(Survey survey, Reading reading) {
        return of(survey, reading.key().kind()).contains(reading);
    }

    static Edit add(Survey survey, Reading reading) {
        return Edit.add(survey, part(reading.key().kind()), reading);
    }

    /** What a person thinks of a reading follows it to another place. */
    static Edit replace(Survey survey, Reading before, Reading now) {
        Edit exchanged = Edit.replace(survey, part(before.key().kind()), before, now);
        if (before.key().equals(now.key())) {
            return exchanged;
        }
        List<Edit> edits = new ArrayList<>(List.of(exchanged));
        List<ReadingOverride> all = Part.DOUBTS.of(survey);
        for (int i = 0; i < all.size(); i++) {
            ReadingOverride o = all.get(i);
            if (o.concerns(before)) {
                edits.add(new Edit.Replace<>(Part.DOUBTS, i, ReadingOverride.of(now, o.trust(), o.reason())));
            }
        }
        return new Edit.Together(edits);
    }

    /** With what a person thought of it. */
    static Edit remove(Survey survey, Reading reading) {
        List<Edit> edits = new ArrayList<>(List.of(unjudged(survey, reading)));
        edits.add(Edit.remove(survey, part(reading.key().kind()), reading));
        return new Edit.Together(edits);
    }

    /** What a person thinks of it; the last word counts. */
    static Optional<ReadingOverride> judgement(Survey survey, Reading reading) {
        return Part.DOUBTS.of(survey).stream().filter(o -> o.concerns(reading)).reduce((first, last) -> last);
    }

    static Edit judged(Survey survey, Reading reading, ReadingOverride.Trust trust, String reason) {
        Edit before = unjudged(survey, reading);
        Survey without = before.apply(survey);
        return new Edit.Together(
                List.of(before, Edit.add(without, Part.DOUBTS, ReadingOverride.of(reading, trust, reason))));
    }

    /** The program's own opinion counts again. */
    static Edit unjudged(Survey survey, Reading reading) {
        List<Edit> edits = new ArrayList<>();
        List<ReadingOverride> all = Part.DOUBTS.of(survey);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).concerns(reading)) {
                edits.add(new Edit.Remove<>(Part.DOUBTS, i));
            }
        }
        return new Edit.Together(edits);
    }
}
