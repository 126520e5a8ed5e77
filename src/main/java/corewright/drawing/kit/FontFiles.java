package corewright.drawing.kit;

import java.io.InputStream;
import java.util.List;

/** The bundled TrueType files, for those who read them without setting up all of AWT's fonts. */
public final class FontFiles {
    /** In the order of {@link Typeface}. */
    public static final List<String> ALL = List.of(
            "Asap_400Regular.ttf",
            "Asap_600SemiBold.ttf",
            "Asap_700Bold.ttf",
            "AsapCondensed_400Regular.ttf",
            "AsapCondensed_600SemiBold.ttf",
            "AsapCondensed_700Bold.ttf");

    private FontFiles() {}

    /** The caller closes it. */
    public static InputStream open(String file) {
        InputStream in = FontFiles.class.getResourceAsStream("fonts/" + file);
        if (in == null) {
            throw new IllegalStateException("bundled font is missing: " + file);
        }
        return in;
    }
}
