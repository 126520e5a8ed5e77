package corewright.desktop;

import corewright.drawing.kit.FontFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** The bundled typefaces and the style sheet. */
final class Theme {
    private Theme() {}

    static void dress(Scene scene) {
        for (String file : FontFiles.ALL) {
            try (InputStream in = FontFiles.open(file)) {
                Font.loadFont(in, 12);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        URL sheet = Theme.class.getResource("desktop.css");
        if (sheet == null) {
            throw new IllegalStateException("the style sheet is missing from the program");
        }
        scene.getStylesheets().add(sheet.toExternalForm());
    }
}
