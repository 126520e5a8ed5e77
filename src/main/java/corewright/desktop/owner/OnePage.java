package corewright.desktop.owner;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** A page that grows smaller, down to what can still be read, until it fits the room there is. */
final class OnePage extends Region {
    /** Sentences of 16 px are then 11 px, as the plan's own. */
    private static final double SMALLEST = 0.7;

    private static final double FINER = 0.02;

    private final Region page;
    private final Scale scale = new Scale(1, 1);

    OnePage(Region page) {
        this.page = page;
        page.getTransforms().add(scale);
        getChildren().add(page);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return high(width, SMALLEST);
    }

    @Override
    protected double computePrefHeight(double width) {
        return high(width, 1);
    }

    private double high(double width, double by) {
        return Math.ceil(page.prefHeight(width / by) * by);
    }

    @Override
    protected void layoutChildren() {
        double by = 1;
        while (by - FINER >= SMALLEST && high(getWidth(), by) > getHeight()) {
            by -= FINER;
        }
        scale.setX(by);
        scale.setY(by);
        page.resizeRelocate(0, 0, getWidth() / by, getHeight() / by);
    }
}
