package corewright.store;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A finding on imported files as it stands in a row: of a reading, a feature, a face, a place or a file.
 *
 * @param about the kind of reading, or else of thing
 * @param id the reading's id, the feature's or face's name
 */
record ImportNote(
        Finding.Severity severity,
        Origin origin,
        String about,
        String id,
        @Nullable Spot spot,
        Subject subject,
        String message,
        String effect) {
    /** The table of notes as one of findings. */
    static Table<Finding> table(Table<ImportNote> notes) {
        return new Table<>(notes.name(), notes.columns(), finding -> notes.row().apply(of(finding)), row -> notes.item()
                .apply(row)
                .finding());
    }

    private static ImportNote of(Finding f) {
        About about = f.about();
        String id = about instanceof About.OfFace face ? face.face() : about.id();
        return new ImportNote(
                f.severity(), f.origin(), kind(about), id, about.spot(), f.subject(), f.message(), f.effect());
    }

    private static String kind(About about) {
        if (about instanceof About.OfReading of) {
            return Scalar.word(of.reading().kind());
        }
        if (about instanceof About.OfFeature) {
            return "feature";
        }
        if (about instanceof About.OfFace) {
            return "face";
        }
        if (about instanceof About.OfPlace) {
            return "place";
        }
        if (about instanceof About.OfFile) {
            return "file";
        }
        throw new IllegalArgumentException("no file tells of " + about);
    }

    private Finding finding() {
        return new Finding(severity, origin, thing(), subject, message, effect);
    }

    private About thing() {
        return switch (about) {
            case "file" -> new About.OfFile(origin);
            case "face" -> new About.OfFace(id);
            case "feature" -> new About.OfFeature(id, place());
            case "place" -> new About.OfPlace(place());
            default -> {
                Object kind = Objects.requireNonNull(new Scalar(Reading.Kind.class, "about", false).read(about));
                yield new About.OfReading(new Reading.Key((Reading.Kind) kind, id, place()), place());
            }
        };
    }

    private Spot place() {
        if (spot == null) {
            throw new IllegalArgumentException("geom: found nothing, expected the place of a " + about);
        }
        return spot;
    }
}
