package corewright.desktop;

import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/**
 * Where the window stands: as it was left, never larger than the screen and never off it.
 *
 * @param maximised whether it fills the screen
 */
record WindowPlace(double x, double y, double width, double height, boolean maximised) {
    private static final double WIDTH = 1440;
    private static final double HEIGHT = 900;

    /** At 1440 x 900 in the middle, or as large as the screen allows. */
    static WindowPlace first(WindowPlace screen) {
        double w = Math.min(WIDTH, screen.width);
        double h = Math.min(HEIGHT, screen.height);
        return new WindowPlace(
                screen.x + (screen.width - w) / 2,
                screen.y + (screen.height - h) / 2,
                w,
                h,
                w >= screen.width || h >= screen.height);
    }

    /** The same brought onto a screen. */
    WindowPlace on(WindowPlace screen) {
        double w = Math.min(width, screen.width);
        double h = Math.min(height, screen.height);
        return new WindowPlace(
                Math.max(screen.x, Math.min(x, screen.x + screen.width - w)),
                Math.max(screen.y, Math.min(y, screen.y + screen.height - h)),
                w,
                h,
                maximised);
    }

    /** As it was left; at the first time {@link #first}. */
    static WindowPlace read(Preferences store, WindowPlace screen) {
        double w = store.getDouble("window-width", 0);
        double h = store.getDouble("window-height", 0);
        if (!(w > 0 && h > 0)) {
            return first(screen);
        }
        return new WindowPlace(
                        store.getDouble("window-x", 0),
                        store.getDouble("window-y", 0),
                        w,
                        h,
                        store.getBoolean("window-maximised", false))
                .on(screen);
    }

    void write(Preferences store) {
        store.putDouble("window-x", x);
        store.putDouble("window-y", y);
        store.putDouble("window-width", width);
        store.putDouble("window-height", height);
        store.putBoolean("window-maximised", maximised);
        try {
            store.flush();
        } catch (BackingStoreException e) {
            // a home that cannot be written only goes without it
        }
    }
}
