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
            for (int from = 0, to; from < edits.size(); from = to) {
                to = endOfRun(from);
                now = applied(edits.subList(from, to), now);
            }
            return now;
        }

        @Override
        public Edit inverse(Survey before) {
            List<Edit> back = new ArrayList<>();
            Survey now = before;
            for (int from = 0, to; from < edits.size(); from = to) {
                to = endOfRun(from);
                for (Edit edit : edits.subList(from, to)) {
                    back.add(
                            edit.inverse(now)); // of a run from the last to the first no item has moved before its turn
                }
                now = applied(edits.subList(from, to), now);
            }
            Collections.reverse(back);
            return new Together(back);
        }

        /** Where items that are put in one behind the other, or taken away from the last to the first, end. */
        private int endOfRun(int from) {
            int to = from + 1;
            while (to < edits.size() && follows(edits.get(from), edits.get(to), to - from)) {
                to++;
            }
            return to;
        }

        private static boolean follows(Edit first, Edit next, int after) {
            return first instanceof Insert<?> a
                            && next instanceof Insert<?> b
                            && b.part.equals(a.part)
                            && b.at == a.at + after
                    || first instanceof Remove<?> c
                            && next instanceof Remove<?> d
                            && d.part.equals(c.part)
                            && d.at == c.at - after;
        }

        /** A run at once, as each edit copies the whole list. */
        private static Survey applied(List<Edit> run, Survey survey) {
            Edit first = run.get(0);
            if (run.size() > 1 && first instanceof Insert<?> insert) {
                return inserted(insert.part, insert.at, run, survey);
            } else if (first instanceof Remove<?> remove) {
                return remove.part.spliced(survey, remove.at - run.size() + 1, run.size(), List.of());
            }
            return first.apply(survey);
        }

        private static <T> Survey inserted(Part<T> part, int at, List<Edit> run, Survey survey) {
            List<T> items = run.stream()
                    .map(e -> part.type().cast(((Insert<?>) e).item))
                    .toList();
            return part.spliced(survey, at, 0, items);
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
