package corewright.desktop;

import corewright.drawing.ScreenLayer;
import corewright.drawing.ScreenLook;
import corewright.drawing.ScreenSwatch;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.FlowPane;
import org.jspecify.annotations.Nullable;

/** The strip under the plan: what a sign means, and touching it hides what it stands for. */
final class LegendBar extends FlowPane {
    private static final int SHARP = 2;

    private final List<ToggleButton> entries = new ArrayList<>();
    private @Nullable ScreenLook swatched;

    LegendBar(Sight sight) {
        getStyleClass().add("legend");
        setAccessibleText("Legend; each entry shows or hides what it stands for");
        int number = 1;
        for (ScreenLayer layer : ScreenLayer.values()) {
            ToggleButton entry = new ToggleButton(layer.word());
            entry.getStyleClass().add("legend-entry");
            entry.setId("layer-" + layer.name().toLowerCase(java.util.Locale.ROOT));
            entry.setUserData(layer);
            entry.setAccessibleText("Layer " + number++ + ", " + layer.word());
            entry.setOnAction(e -> sight.toggle(layer));
            entries.add(entry);
            getChildren().add(entry);
        }
    }

    /** @param photographs whether there are any to show */
    void show(Set<ScreenLayer> layers, ScreenLook look, boolean photographs) {
        boolean other = !look.equals(swatched);
        swatched = look;
        for (ToggleButton entry : entries) {
            ScreenLayer layer = (ScreenLayer) entry.getUserData();
            entry.setSelected(layers.contains(layer));
            entry.setVisible(photographs || layer != ScreenLayer.PHOTOGRAPHS);
            entry.setManaged(entry.isVisible());
            if (other) {
                ImageView sample = new ImageView(swatch(layer, look));
                sample.setFitWidth(ScreenSwatch.WIDTH);
                sample.setFitHeight(ScreenSwatch.HEIGHT);
                entry.setGraphic(sample);
            }
        }
    }

    /** For the key L and a number. */
    void toggle(int number) {
        if (number >= 1 && number <= entries.size()) {
            entries.get(number - 1).fire();
        }
    }

    private static Image swatch(ScreenLayer layer, ScreenLook look) {
        int w = ScreenSwatch.WIDTH * SHARP;
        int h = ScreenSwatch.HEIGHT * SHARP;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.scale(SHARP, SHARP);
        g.setRenderingHint(java.awt.RenderingHints.KEY_ANTIALIASING, java.awt.RenderingHints.VALUE_ANTIALIAS_ON);
        ScreenSwatch.paint(g, layer, look);
        g.dispose();
        WritableImage fx = new WritableImage(w, h);
        int[] pixels = ((java.awt.image.DataBufferInt) image.getRaster().getDataBuffer()).getData();
        fx.getPixelWriter().setPixels(0, 0, w, h, PixelFormat.getIntArgbPreInstance(), pixels, 0, w);
        return fx;
    }
}
