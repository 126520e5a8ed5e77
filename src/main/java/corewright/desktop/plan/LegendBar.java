package corewright.desktop.plan;

import corewright.desktop.state.Jobs;
import corewright.desktop.state.Sight;
import corewright.drawing.kit.Measure;
import corewright.drawing.screen.ScreenLayer;
import corewright.drawing.screen.ScreenLook;
import corewright.drawing.screen.ScreenSwatch;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import org.jspecify.annotations.Nullable;

/** The strip under the plan: what a sign means, and touching it hides what it stands for. */
public final class LegendBar extends FlowPane {
    private static final int SHARP = 2;

    private final Jobs jobs;
    private final List<ToggleButton> entries = new ArrayList<>();
    private @Nullable ScreenLook swatched;
    private Measure measured = Measure.METRIC;
    private Jobs.Job painting = () -> {};
    private boolean settled;

    public LegendBar(Sight sight, Jobs jobs) {
        this.jobs = jobs;
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

    /** @param none of which there is nothing to show */
    public void show(Set<ScreenLayer> layers, ScreenLook look, Measure measure, Set<ScreenLayer> none) {
        for (ToggleButton entry : entries) {
            ScreenLayer layer = (ScreenLayer) entry.getUserData();
            entry.setSelected(layers.contains(layer));
            entry.setVisible(!none.contains(layer));
            entry.setManaged(entry.isVisible());
        }
        if (!look.equals(swatched) || measure != measured) {
            swatched = look;
            measured = measure;
            settled = false;
            painting.cancel();
            painting = jobs.run(() -> swatches(look, measure), this::swatch, e -> settled = true);
        }
    }

    /** Whether every sample is that of the appearance shown. */
    public boolean settled() {
        return settled;
    }

    private void swatch(Map<ScreenLayer, Pixels> samples) {
        settled = true;
        for (ToggleButton entry : entries) {
            Pixels pixels = samples.get((ScreenLayer) entry.getUserData());
            if (pixels != null) {
                ImageView sample = new ImageView(pixels.image());
                sample.setFitWidth(ScreenSwatch.WIDTH);
                sample.setFitHeight(ScreenSwatch.HEIGHT);
                entry.setGraphic(sample);
            }
        }
    }

    /** For the key L and a number. */
    public void toggle(int number) {
        if (number >= 1 && number <= entries.size()) {
            entries.get(number - 1).fire();
        }
    }

    /** Away from the window's thread. */
    private static Map<ScreenLayer, Pixels> swatches(ScreenLook look, Measure measure) {
        Map<ScreenLayer, Pixels> samples = new EnumMap<>(ScreenLayer.class);
        for (ScreenLayer layer : ScreenLayer.values()) {
            BufferedImage image = new BufferedImage(
                    ScreenSwatch.WIDTH * SHARP, ScreenSwatch.HEIGHT * SHARP, BufferedImage.TYPE_INT_ARGB_PRE);
            Graphics2D g = image.createGraphics();
            g.scale(SHARP, SHARP);
            g.setRenderingHint(java.awt.RenderingHints.KEY_ANTIALIASING, java.awt.RenderingHints.VALUE_ANTIALIAS_ON);
            ScreenSwatch.paint(g, layer, look, measure);
            g.dispose();
            samples.put(layer, Pixels.of(image));
        }
        return samples;
    }
}
