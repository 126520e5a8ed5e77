package corewright.desktop.state;

import java.util.ArrayList;
import java.util.List;

/** What was done in this window, by name, so that undo can say what it takes back. */
final class Deeds {
    private static final String EARLIER = "an earlier change";

    private final List<String> names = new ArrayList<>();
    private int cursor;

    void done(String name) {
        names.subList(cursor, names.size()).clear();
        names.add(name);
        cursor++;
    }

    void undone() {
        cursor = Math.max(0, cursor - 1);
    }

    void redone() {
        cursor = Math.min(names.size(), cursor + 1);
    }

    /** What undo would take back; changes made before the window was opened have no name. */
    String last() {
        return cursor > 0 ? names.get(cursor - 1) : EARLIER;
    }

    String next() {
        return cursor < names.size() ? names.get(cursor) : EARLIER;
    }
}
