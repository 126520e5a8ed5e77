package corewright.desktop;

import javafx.application.Platform;

/** The toolkit begins once a machine and outlives every window. */
public final class WindowToolkit {
    static {
        Platform.startup(() -> Platform.setImplicitExit(false));
    }

    private WindowToolkit() {}

    /** Begins it, if that is not done yet. */
    public static void begin() {}
}
