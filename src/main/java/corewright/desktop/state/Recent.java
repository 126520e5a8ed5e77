package corewright.desktop.state;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/** Surveys opened lately, the last first; kept where the system keeps preferences. */
public final class Recent {
    private static final int KEPT = 6;
    private static final String KEY = "recent-";

    private final Supplier<Preferences> where;

    /** @param where asked at the first use, for preferences are slow to set up */
    public Recent(Supplier<Preferences> where) {
        this.where = where;
    }

    /** Those that are still there; away from the window's thread, as it reads the disk. */
    public synchronized List<Path> list() {
        Preferences store = where.get();
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < KEPT; i++) {
            String path = store.get(KEY + i, "");
            if (!path.isEmpty() && Files.exists(Path.of(path))) {
                paths.add(Path.of(path));
            }
        }
        return paths;
    }

    public synchronized void opened(Path path) {
        List<Path> paths = new ArrayList<>(list());
        paths.remove(path.toAbsolutePath());
        paths.add(0, path.toAbsolutePath());
        write(paths);
    }

    /** Leaves a path out from now on. */
    public synchronized void forget(Path path) {
        List<Path> paths = new ArrayList<>(list());
        paths.remove(path.toAbsolutePath());
        write(paths);
    }

    private void write(List<Path> paths) {
        Preferences store = where.get();
        for (int i = 0; i < KEPT; i++) {
            store.put(KEY + i, i < paths.size() ? paths.get(i).toString() : "");
        }
        try {
            store.flush();
        } catch (BackingStoreException e) {
            // the list is a convenience: a home that cannot be written only goes without it
        }
    }
}
