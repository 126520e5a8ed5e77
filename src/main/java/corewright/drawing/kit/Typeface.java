package corewright.drawing.kit;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;

/**
 * The six bundled typefaces: Asap for words, Asap Condensed for figures, each regular, semibold and bold. All weights
 * share one set of widths and figures are tabular, so emphasis never moves anything. SIL Open Font License 1.1.
 */
public enum Typeface {
    TEXT("Asap_400Regular.ttf", 400),
    TEXT_SEMIBOLD("Asap_600SemiBold.ttf", 600),
    TEXT_BOLD("Asap_700Bold.ttf", 700),
    CONDENSED("AsapCondensed_400Regular.ttf", 400),
    CONDENSED_SEMIBOLD("AsapCondensed_600SemiBold.ttf", 600),
    CONDENSED_BOLD("AsapCondensed_700Bold.ttf", 700);

    /** Size at which widths are measured, large enough that no grid of the rasteriser shows in them. */
    static final float MEASURE_SIZE = 1000;

    /** Fixed: antialiased, fractional, no device transform, so widths are the font's own on every machine. */
    static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final String file;
    private final Font unit;
    private final Font measure;

    Typeface(String file, int weight) {
        this.file = file;
        this.unit = load(file, weight);
        this.measure = unit.deriveFont(MEASURE_SIZE);
    }

    /** The TrueType file, for embedding; the caller closes it. */
    public InputStream stream() {
        return FontFiles.open(file);
    }

    /** The full name by which AWT and PDF know this weight: {@code Asap SemiBold}. Unique among the six. */
    public String fullName() {
        return unit.getFontName(java.util.Locale.ROOT);
    }

    /** The font at a size in user units, which are millimetres here. */
    public Font font(double sizeMm) {
        return unit.deriveFont((float) sizeMm);
    }

    Font measure() {
        return measure;
    }

    /**
     * The weight attribute selects nothing (the file is the weight) but makes SVG writers name it; the glyphs drawn are the
     * same, pixel for pixel.
     */
    private static Font load(String file, int weight) {
        Float awtWeight =
                switch (weight) {
                    case 600 -> TextAttribute.WEIGHT_DEMIBOLD;
                    case 700 -> TextAttribute.WEIGHT_BOLD;
                    default -> TextAttribute.WEIGHT_REGULAR;
                };
        try {
            Font font = Font.createFont(Font.TRUETYPE_FONT, unpacked(file).toFile());
            return font.deriveFont(Map.of(TextAttribute.WEIGHT, awtWeight));
        } catch (IOException e) {
            throw new UncheckedIOException("bundled font cannot be read: " + file, e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("bundled font is damaged: " + file, e);
        }
    }

    /** Java wants a file, and would itself put one where it stays when the program is killed. */
    private static Path unpacked(String file) throws IOException {
        Path path = Files.createTempFile(Path.of(System.getProperty("java.io.tmpdir")), "typeface", ".ttf");
        path.toFile().deleteOnExit();
        try (InputStream in = FontFiles.open(file)) {
            Files.copy(in, path, StandardCopyOption.REPLACE_EXISTING);
        }
        return path;
    }
}
