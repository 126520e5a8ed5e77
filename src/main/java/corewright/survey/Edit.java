package corewright.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One change a person makes to a survey. Its inverse is an edit too, so undo needs nothing else:
 * {@code e.inverse(s).apply(e.apply(s))} equals {@code s}.
 *
 * <p>An edit that does not fit the survey (no such index or face, a second heading, a survey without a face) is refused
 * with an {@link IllegalArgumentException} or {@link IndexOutOfBoundsException}, and the survey stays as it is.
 */
public sealed interface Edit {
    /** The survey with the change made. */
    Survey apply(Survey survey);

    /** What takes the change back; {@code before} is the survey it was made in. */
    Edit inverse(Survey before);

    /** Adds {@code item} so that it stands at {@code at}; at the end where that is the list's size. */
    record Insert<T>(Part<T> part, int at, T item) implements Edit {
        @Override
        public Survey apply(Survey survey) {
            return part.spliced(survey, at, 0, List.of(item));
        }

        @Override
        public Edit inverse(Survey before) {
            return new Remove<>(part, at);
        }
    }

    /** Takes away what stands at {@code at}. */
    record Remove<T>(Part<T> part, int at) implements Edit {
        @Override
        public Survey apply(Survey survey) {
            return part.spliced(survey, at, 1, List.of());
        }

        @Override
        public Edit inverse(Survey before) {
            return new Insert<>(part, at, part.of(before).get(at));
        }
    }

    /** Exchanges what stands at {@code at}; the way to change one value of a reading, a setting, the heading. */
    record Replace<T>(Part<T> part, int at, T item) implements Edit {
        @Override
        public Survey apply(Survey survey) {
            return part.spliced(survey, at, 1, List.of(item));
        }

        @Override
        public Edit inverse(Survey before) {
            return new Replace<>(part, at, part.of(before).get(at));
        }
    }

    /** Several changes made and taken back as one, in this order: a pasted column, a face with its readings. */
    record Together(List<Edit> edits) implements Edit {
        public Together {
            edits = List.copyOf(edits);
        }

        @Override
        public Survey apply(Survey survey) {
            Survey now = survey;
            for (Edit edit : edits) {
                now = edit.apply(now);
            }
            return now;
        }

        @Override
        public Edit inverse(Survey before) {
            List<Edit> back = new ArrayList<>();
            Survey now = before;
            for (Edit edit : edits) {
                back.add(edit.inverse(now));
                now = edit.apply(now);
            }
            Collections.reverse(back);
            return new Together(back);
        }
    }

    /** Adds at the end of a part. */
    static <T> Edit add(Survey survey, Part<T> part, T item) {
        return new Insert<>(part, part.of(survey).size(), item);
    }

    /** Exchanges {@code old}, which must be in the survey, for {@code item}. */
    static <T> Edit replace(Survey survey, Part<T> part, T old, T item) {
        return new Replace<>(part, indexOf(survey, part, old), item);
    }

    /** Takes {@code item} away, which must be in the survey. */
    static <T> Edit remove(Survey survey, Part<T> part, T item) {
        return new Remove<>(part, indexOf(survey, part, item));
    }

    /** Exchanges the one thing of a part that has exactly one. */
    static <T> Edit put(Part<T> part, T item) {
        return new Replace<>(part, 0, item);
    }

    private static <T> int indexOf(Survey survey, Part<T> part, T item) {
        int at = part.of(survey).indexOf(item);
        if (at < 0) {
            throw new IllegalArgumentException("not in the survey's " + part + ": " + item);
        }
        return at;
    }
}
