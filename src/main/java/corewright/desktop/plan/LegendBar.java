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
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Pane;
import org.jspecify.annotations.Nullable;

/**
 * The strip under the plan: what a sign means, and touching it hides what it stands for. Entries that do not fit two rows fold away
 * behind a key.
 */
public final class LegendBar extends Pane {
    private static final int SHARP = 2;
    private static final int ROWS = 2;
    private static final double GAP = 2;

    private final Jobs jobs;
    private final List<ToggleButton> entries = new ArrayList<>();
    private final ToggleButton more = new ToggleButton();
    private @Nullable ScreenLook swatched;
    private Measure measured = Measure.METRIC;
    private Jobs.Job painting = () -> {};
    private boolean settled;
    private boolean unfolded;

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
        more.setId("legend-more");
        more.getStyleClass().addAll("legend-entry", "legend-more");
        more.setSelected(true); // its words are never struck through
        more.setOnAction(e -> {
            unfolded = !unfolded;
            more.setSelected(true);
            requestLayout();
        });
        getChildren().add(more);
    }

    @Override
    protected double computePrefHeight(double width) {
        return flow(width < 0 ? getWidth() : width, false) * row()
                + getInsets().getTop()
                + getInsets().getBottom();
    }

    @Override
    protected void layoutChildren() {
        flow(getWidth(), true);
    }

    private double row() {
        return Math.max(more.minHeight(-1), more.prefHeight(-1));
    }

    /**
     * Row by row from the left.
     *
     * @param place whether to place them, or only to count
     * @return how many rows are shown
     */
    private int flow(double width, boolean place) {
        List<ToggleButton> shown = entries.stream().filter(Node::isManaged).toList();
        int all = rows(shown, width, Integer.MAX_VALUE, false);
        boolean folds = all > ROWS;
        if (place) {
            more.setVisible(folds);
            more.setText(unfolded ? "fewer" : "more");
            more.setAccessibleText(unfolded ? "Fold the legend to two rows" : "Show the whole legend");
            shown.forEach(e -> e.setVisible(true));
            rows(shown, width, folds && !unfolded ? ROWS : Integer.MAX_VALUE, true);
        }
        return folds && !unfolded ? ROWS : folds ? rows(withMore(shown), width, Integer.MAX_VALUE, false) : all;
    }

    private List<ToggleButton> withMore(List<ToggleButton> shown) {
        List<ToggleButton> all = new ArrayList<>(shown);
        all.add(more);
        return all;
    }

    private int rows(List<ToggleButton> shown, double width, int most, boolean place) {
        Insets in = getInsets();
        double right = width - in.getRight();
        double x = in.getLeft();
        int row = 0;
        boolean full = false;
        for (ToggleButton entry : shown) {
            double w = entry.prefWidth(-1);
            double room = row == most - 1 ? more.prefWidth(-1) + GAP : 0;
            if (x > in.getLeft() && x + w + room > right) {
                full |= row == most - 1;
                if (!full) {
                    x = in.getLeft();
                    row++;
                }
            }
            if (place) {
                entry.setVisible(!full);
                entry.resizeRelocate(x, in.getTop() + row * row(), w, row());
            }
            x += full ? 0 : w + GAP;
        }
        if (place && more.isVisible()) {
            boolean next = x + more.prefWidth(-1) > right;
            more.resizeRelocate(
                    next ? in.getLeft() : x, in.getTop() + (next ? row + 1 : row) * row(), more.prefWidth(-1), row());
        }
        return row + 1;
    }

    /** @param none of which there is nothing to show */
    public void show(Set<ScreenLayer> layers, ScreenLook look, Measure measure, Set<ScreenLayer> none) {
        for (ToggleButton entry : entries) {
            ScreenLayer layer = (ScreenLayer) entry.getUserData();
            entry.setSelected(layers.contains(layer));
            entry.setManaged(!none.contains(layer));
            entry.setVisible(entry.isManaged() && entry.isVisible());
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
