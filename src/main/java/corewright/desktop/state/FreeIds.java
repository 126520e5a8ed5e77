package corewright.desktop.state;

import corewright.survey.Reading;
import java.util.List;

/** Names for readings taken in this window. */
public final class FreeIds {
    private FreeIds() {}

    /** The next number after the largest used with a prefix. */
    public static String next(List<? extends Reading> readings, String prefix) {
        long most = readings.stream()
                .map(Reading::id)
                .filter(id -> id.matches(prefix + "[0-9]{1,9}"))
                .mapToLong(id -> Long.parseLong(id.substring(prefix.length())))
                .max()
                .orElse(0);
        return prefix + (most + 1);
    }
}
