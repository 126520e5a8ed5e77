package corewright.desktop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Application;
import org.jspecify.annotations.Nullable;

/** Opens the window, or says in one sentence what the system lacks for it. */
public final class Desktop {
    private static final String APT = "apt-get install -y --no-install-recommends ";

    private Desktop() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @throws IOException with one sentence, where this system cannot show a window
     */
    public static void open(@Nullable Path file) throws IOException {
        String os = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (os.contains("linux") && blank(System.getenv("DISPLAY"))) {
            throw new IOException(noDisplay());
        }
        WarmUp.begin(file);
        try {
            Application.launch(DesktopApp.class, file == null ? new String[0] : new String[] {file.toString()});
        } catch (RuntimeException | LinkageError e) {
            String sentence = missing(e);
            if (sentence.isEmpty()) {
                throw e;
            }
            throw new IOException(sentence, e);
        }
    }

    private static boolean blank(@Nullable String text) {
        return text == null || text.isBlank();
    }

    private static String noDisplay() {
        return "No display: the window needs a screen; on a machine without one install a virtual one with \"" + APT
                + "xvfb libgtk-3-0\" and start \"xvfb-run corewright desktop\".";
    }

    /** What to install, from what the toolkit says of itself; empty where the failure is ours. */
    public static String missing(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            String text = String.valueOf(t.getMessage());
            if (text.contains("Unable to open DISPLAY")) {
                return noDisplay();
            }
            if (text.contains("glass GTK") || text.contains("glassgtk")) {
                return "The system's GTK 3 is missing: install it with \"" + APT + "libgtk-3-0 libxtst6\".";
            }
            if (text.contains("javafx_font") || text.contains("pango")) {
                return "The system's fonts cannot be used: install them with \"" + APT
                        + "libpango-1.0-0 libpangoft2-1.0-0 libfreetype6 fontconfig fonts-dejavu-core\".";
            }
        }
        return "";
    }
}
